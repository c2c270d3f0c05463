package org.thalweg.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Place;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.Roof;
import org.thalweg.trim.TrimSpec.Sheet;
import org.thalweg.units.Length;

/**
 * Lays out the trims of a roof.
 *
 * <p>What is always true: the pieces of a trim less their laps are its run; a roof mirrored, moved or turned gets the same trims,
 * mirrored the other hand's.
 *
 * <p><b>Known limits.</b> Where an eave meets a rake the fasciae close on a plumb line and so do the bends above them, but legs
 * kicked out below come a little apart, for the section of the one is cut square and that of the other on the slope; so do the
 * steps of pitch breaks that bend unlike each other. A fascia and its roof leg are always laid plumb and in the plane; a kerb stands square to its plane.
 */
public final class Trims {

    private final TrimSpec spec;
    private final Tolerance tolerance;
    private final List<Ended> ended;

    private Trims(Roof roof, TrimSpec spec) {
        this.spec = spec;
        tolerance = roof.tolerance();
        RingSides rings = new RingSides(roof);
        List<Optional<SeatedEdge>> seated = new ArrayList<>(roof.edges().size());
        for (int i = 0; i < roof.edges().size(); i++) {
            seated.add(SeatedEdge.of(roof, rings, i, spec));
        }
        Joints joints = new Joints(roof, rings, seated, spec.past());
        ended = seated.stream()
                .flatMap(Optional::stream)
                .map(edge -> Ended.of(edge, joints.end(edge, true), joints.end(edge, false)))
                .toList();
    }

    /** An edge whose trim has its ends, but is not yet divided. */
    private record Ended(SeatedEdge edge, TrimEnd start, TrimEnd finish, Length run) {

        static Ended of(SeatedEdge edge, TrimEnd start, TrimEnd finish) {
            double length = edge.edge().length().metres();
            return new Ended(
                    edge,
                    start,
                    finish,
                    Length.metres(
                            length + start.reach().metres() + finish.reach().metres()));
        }
    }

    /** Finds every edge of a roof that gets a trim, and how each ends. */
    public static Trims on(Roof roof, TrimSpec spec) {
        return new Trims(roof, spec);
    }

    /** How many pieces the trims take. Known before they are cut, so that too many can be refused. */
    public long pieceCount() {
        long count = 0;
        for (Ended each : ended) {
            if (each.run().metres() > tolerance.hair()) {
                count += divided(each.edge()).count(each.run());
            }
        }
        return count;
    }

    /** The trim of every edge that gets one, in the order of {@link Roof#edges}. */
    public List<Trim> layOut() {
        return ended.stream().map(this::layOut).toList();
    }

    private Trim layOut(Ended ended) {
        SeatedEdge edge = ended.edge();
        Sheet sheet = spec.sheet();
        Profile profile = edge.shape().bentTo(edge.seat().bend(), sheet.insideRadius(), sheet.thickness());
        FlatTrim flat = FlatTrim.of(profile, sheet.allowance());
        Place place = new Place(Place.Kind.EDGE, edge.edge().id(), edge.edge().at());
        List<Finding> findings = new ArrayList<>(flat.check(place, sheet.coilWidth(), tolerance));
        checkEnds(ended, place, findings);
        FlatRun flatRun = new FlatRun(profile, flat, edge.edge().length(), ended.start(), ended.finish(), tolerance);
        List<TrimPiece> pieces = pieces(ended, flatRun);
        checkPieces(pieces, place, findings);
        return new Trim(
                edge.index(),
                edge.edge(),
                edge.seat(),
                profile,
                flat,
                edge.section(),
                hand(edge),
                ended.start(),
                ended.finish(),
                ended.run(),
                pieces,
                findings);
    }

    private static Optional<Hand> hand(SeatedEdge edge) {
        return edge.seat().level() || edge.family().onTwoPlanes()
                ? Optional.empty()
                : Optional.of(edge.seat().mirrored() ? Hand.LEFT : Hand.RIGHT);
    }

    private Length lap(SeatedEdge edge) {
        return spec.order(edge.edge().kind()).orElseThrow().lap();
    }

    private TrimPieces divided(SeatedEdge edge) {
        return new TrimPieces(spec.stock(), lap(edge), tolerance);
    }

    private List<TrimPiece> pieces(Ended ended, FlatRun flatRun) {
        SeatedEdge edge = ended.edge();
        TrimEnd start = ended.start();
        TrimEnd finish = ended.finish();
        Length run = ended.run();
        if (run.metres() <= tolerance.hair()) {
            return List.of();
        }
        Length lap = lap(edge);
        boolean fromStart = !edge.seat().level() || spec.laidFrom() == Hand.LEFT;
        List<Length> lengths =
                divided(edge).lengths(run, (fromStart ? start : finish).depth(), (fromStart ? finish : start).depth());
        List<TrimPiece> pieces = new ArrayList<>(lengths.size());
        double laid = 0;
        for (int i = 0; i < lengths.size(); i++) {
            double length = lengths.get(i).metres();
            double from = i == 0 ? 0 : laid - lap.metres();
            laid = from + length;
            double fromLow =
                    (fromStart ? from : run.metres() - laid) - start.reach().metres();
            pieces.add(new TrimPiece(
                    edge.edge().id() + "-" + (i + 1),
                    Length.metres(fromLow),
                    lengths.get(i),
                    i == 0 ? Length.ZERO : lap,
                    flatRun));
        }
        return pieces;
    }

    private void checkEnds(Ended ended, Place place, List<Finding> findings) {
        double shortest = Double.POSITIVE_INFINITY;
        double length = ended.edge().edge().length().metres();
        for (int leg = 0; leg < ended.start().cuts().size(); leg++) {
            LegCut here = ended.start().cuts().get(leg);
            LegCut there = ended.finish().cuts().get(leg);
            double inner = length + here.inner().metres() + there.inner().metres();
            double outer = length + here.outer().metres() + there.outer().metres();
            shortest = Math.min(shortest, Math.min(inner, outer));
        }
        if (shortest < -tolerance.hair()) {
            findings.add(Finding.of(
                    FindingCode.TRIM_ENDS_CROSS,
                    place,
                    "Edge {place} is so short that the cuts at the two ends of its trim cross: they leave {actual} along one of"
                            + " its lines. Fit that trim by hand.",
                    Length.metres(shortest),
                    Length.ZERO,
                    Source.GEOMETRY));
        }
    }

    private void checkPieces(List<TrimPiece> pieces, Place place, List<Finding> findings) {
        Length shortest = spec.stock().shortest();
        pieces.stream()
                .map(TrimPiece::length)
                .min(Length::compareTo)
                .filter(length -> length.metres() < shortest.metres() - tolerance.hair())
                .ifPresent(length -> findings.add(Finding.of(
                        FindingCode.TRIM_PIECE_TOO_SHORT,
                        place,
                        "A piece of the trim at {place} is {actual} long where {limit} is the shortest that can be made."
                                + " Cut it from a longer one, or let its neighbour run on.",
                        length,
                        shortest,
                        Source.REQUEST)));
    }
}
