package org.thalweg.roof;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Origin;
import org.thalweg.finding.Refusal;
import org.thalweg.finding.RefusalCode;
import org.thalweg.units.Length;

/**
 * Holds the planes of a plan against each other: at every corner all that meet there must be as high as the one that was
 * raised first, within the tolerance.
 *
 * <p>Told once for each plane that is off, at the corner where it is off the most. A plane that was raised by one that is off
 * is not held to account: mending the other moves it.
 */
final class HeightCheck {

    /** Decimals of a pitch over 12 that is told: as few as close the gap. */
    private static final int FEWEST_DECIMALS = 4;

    private static final int MOST_DECIMALS = 12;

    private final PlanSurvey survey;
    private final Corners corners;
    private final Outlines outlines;
    private final SlopedPlanes sloped;
    private final List<List<PlanMeetings.Meeting>> meetings;

    /** Whether a plane is off, or was raised by one that is. */
    private final boolean[] off;

    HeightCheck(
            PlanSurvey survey,
            Corners corners,
            Outlines outlines,
            SlopedPlanes sloped,
            List<List<PlanMeetings.Meeting>> meetings) {
        this.survey = survey;
        this.corners = corners;
        this.outlines = outlines;
        this.sloped = sloped;
        this.meetings = meetings;
        off = new boolean[meetings.size()];
    }

    private record Gap(int plane, int other, int corner, double metres) {}

    List<Refusal> refusals() {
        List<Gap> gaps = new ArrayList<>();
        for (int i = 0; i < sloped.raisedCount(); i++) {
            int plane = sloped.raised(i);
            int by = sloped.raisedBy(plane);
            Optional<Gap> widest = widest(plane);
            if (by >= 0 && off[by]) {
                off[plane] = true;
            } else if (widest.isPresent()) {
                off[plane] = true;
                gaps.add(widest.get());
            }
        }
        return gaps.stream().map(this::refusal).toList();
    }

    private Optional<Gap> widest(int plane) {
        Optional<Gap> widest = Optional.empty();
        double width = corners.reach;
        for (PlanMeetings.Meeting meeting : meetings.get(plane)) {
            int first = sloped.earliest(meeting);
            double gap = Math.abs(sloped.height(plane, meeting.corner()) - sloped.height(first, meeting.corner()));
            if (gap > width) {
                widest = Optional.of(new Gap(plane, first, meeting.corner(), gap));
                width = gap + survey.tolerance().hair();
            }
        }
        return widest;
    }

    private Refusal refusal(Gap gap) {
        String pitch = closing(gap)
                .map(found -> " A pitch of %s would close it.".formatted(found))
                .orElse(" No pitch of this plane alone would close it.");
        return Refusal.of(
                        RefusalCode.HEIGHTS_DISAGREE,
                        at(gap),
                        "This corner stands {height} high in its own plane and {other} in the plane at %s: {actual} apart, {limit} at most.%s"
                                        .formatted(
                                                survey.planes()
                                                        .get(gap.other)
                                                        .drawn()
                                                        .at()
                                                        .pointer(),
                                                pitch)
                                + " Mend the pitch, the fall or the corner; or if a wall stands between the two, name that side"
                                + " of the lower plane in \"edges\".",
                        Length.metres(gap.metres),
                        Length.metres(survey.tolerance().metres()))
                .tells("height", Length.metres(sloped.height(gap.plane, gap.corner)))
                .tells("other", Length.metres(sloped.height(gap.other, gap.corner)));
    }

    /** The plane's own corner; where it has none, the corner of the other plane that lies on its side. */
    private Origin at(Gap gap) {
        return corner(gap.plane, gap.corner)
                .or(() -> corner(gap.other, gap.corner))
                .orElseGet(() -> survey.planes().get(gap.plane).drawn().at());
    }

    private Optional<Origin> corner(int plane, int corner) {
        int end = outlines.firstSlot[outlines.firstRing[plane + 1]];
        for (int slot = outlines.firstSlot[outlines.firstRing[plane]]; slot < end; slot++) {
            if (outlines.corner[slot] == corner) {
                return Optional.of(outlines.cornerOrigin(slot));
            }
        }
        return Optional.empty();
    }

    /**
     * The pitch with which the plane would meet all the others that are not off themselves, in as few decimals as do; nothing
     * when there is none. The plane is turned about the corner where it was raised; each meeting allows a stretch of pitches.
     */
    private Optional<String> closing(Gap gap) {
        double least = 0;
        double most = PlaneReader.UPRIGHT.tan();
        for (PlanMeetings.Meeting meeting : meetings.get(gap.plane)) {
            double run = sloped.run(gap.plane, meeting.corner());
            for (int other : meeting.planes()) {
                if (other != gap.plane && (other == gap.other || !off[other])) {
                    double fall = sloped.anchorHeight(gap.plane) - sloped.height(other, meeting.corner());
                    double one = (fall - corners.reach) / run;
                    double two = (fall + corners.reach) / run;
                    // Along the level line of the corner where it was raised a plane stands as high at any pitch.
                    boolean never = Math.abs(run) <= survey.tolerance().hair();
                    if (never && Math.abs(fall) > corners.reach) {
                        return Optional.empty();
                    }
                    least = never ? least : Math.max(least, Math.min(one, two));
                    most = never ? most : Math.min(most, Math.max(one, two));
                }
            }
        }
        double exact = (sloped.anchorHeight(gap.plane) - sloped.height(gap.other, gap.corner))
                / sloped.run(gap.plane, gap.corner);
        return least <= most ? per12(Math.max(least, Math.min(most, exact)), least, most) : Optional.empty();
    }

    private static Optional<String> per12(double tan, double least, double most) {
        for (int decimals = FEWEST_DECIMALS; decimals <= MOST_DECIMALS; decimals++) {
            BigDecimal rise = BigDecimal.valueOf(12 * tan).setScale(decimals, RoundingMode.HALF_UP);
            double printed = rise.doubleValue() / 12;
            if (printed >= least && printed <= most) {
                String text =
                        rise.signum() == 0 ? "0" : rise.stripTrailingZeros().toPlainString();
                return Optional.of(text + ":12");
            }
        }
        return Optional.empty();
    }
}
