package org.thalweg.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thalweg.finding.Finding;
import org.thalweg.finding.FindingCode;
import org.thalweg.finding.Place;
import org.thalweg.finding.Source;
import org.thalweg.geometry.Tolerance;
import org.thalweg.roof.Edge;
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

    private final Roof roof;
    private final TrimSpec spec;
    private final Tolerance tolerance;
    private final List<Optional<SeatedEdge>> seated;
    private final Joints joints;

    private Trims(Roof roof, TrimSpec spec) {
        this.roof = roof;
        this.spec = spec;
        tolerance = roof.tolerance();
        RingSides rings = new RingSides(roof);
        seated = new ArrayList<>(roof.edges().size());
        for (int i = 0; i < roof.edges().size(); i++) {
            seated.add(SeatedEdge.of(roof, rings, i, spec));
        }
        joints = new Joints(roof, rings, seated, spec.past());
    }

    /** The trim of every edge that gets one, in the order of {@link Roof#edges}. */
    public static List<Trim> layOut(Roof roof, TrimSpec spec) {
        Trims trims = new Trims(roof, spec);
        return trims.seated.stream()
                .flatMap(Optional::stream)
                .map(trims::layOut)
                .toList();
    }

    /**
     * How many pieces the trims of a roof take, about: long cuts at their ends not counted. Known before anything is laid out, so
     * that too many can be refused.
     */
    public static double pieceCount(Roof roof, TrimSpec spec) {
        double count = 0;
        for (Edge edge : roof.edges()) {
            if (Family.of(edge.kind()).isPresent()) {
                count += spec.order(edge.kind())
                        .map(order -> 1
                                + edge.length().metres()
                                        / (spec.stock().length().metres()
                                                - order.lap().metres()))
                        .orElse(0.0);
            }
        }
        return count;
    }

    private Trim layOut(SeatedEdge edge) {
        Sheet sheet = spec.sheet();
        Profile profile = edge.shape().bentTo(edge.seat().bend(), sheet.insideRadius(), sheet.thickness());
        FlatTrim flat = FlatTrim.of(profile, sheet.allowance());
        TrimEnd start = joints.end(edge, true);
        TrimEnd finish = joints.end(edge, false);
        Length run = Length.metres(edge.edge().length().metres()
                + start.reach().metres()
                + finish.reach().metres());
        List<TrimPiece> pieces = pieces(edge, start, finish, run);
        Place place = new Place(Place.Kind.EDGE, edge.edge().id(), edge.edge().at());
        List<Finding> findings = new ArrayList<>(flat.check(profile.name(), place, sheet.coilWidth(), tolerance));
        checkEnds(edge, start, finish, place, findings);
        checkPieces(profile.name(), pieces, place, findings);
        return new Trim(
                edge.index(),
                edge.edge(),
                edge.seat(),
                profile,
                flat,
                edge.section(),
                hand(edge),
                start,
                finish,
                run,
                pieces,
                findings);
    }

    private static Optional<Hand> hand(SeatedEdge edge) {
        return edge.seat().level() || edge.family().onTwoPlanes()
                ? Optional.empty()
                : Optional.of(edge.seat().mirrored() ? Hand.LEFT : Hand.RIGHT);
    }

    private List<TrimPiece> pieces(SeatedEdge edge, TrimEnd start, TrimEnd finish, Length run) {
        if (run.metres() <= tolerance.hair()) {
            return List.of();
        }
        Length lap = spec.order(edge.edge().kind()).orElseThrow().lap();
        boolean fromStart = !edge.seat().level() || spec.laidFrom() == Hand.LEFT;
        List<Length> lengths = new TrimPieces(spec.stock(), lap, tolerance)
                .lengths(run, (fromStart ? start : finish).depth(), (fromStart ? finish : start).depth());
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
                    i == 0 ? Length.ZERO : lap));
        }
        return pieces;
    }

    private void checkEnds(SeatedEdge edge, TrimEnd start, TrimEnd finish, Place place, List<Finding> findings) {
        double shortest = Double.POSITIVE_INFINITY;
        double length = edge.edge().length().metres();
        for (int leg = 0; leg < start.cuts().size(); leg++) {
            LegCut here = start.cuts().get(leg);
            LegCut there = finish.cuts().get(leg);
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

    private void checkPieces(String name, List<TrimPiece> pieces, Place place, List<Finding> findings) {
        Length shortest = spec.stock().shortest();
        pieces.stream()
                .map(TrimPiece::length)
                .min(Length::compareTo)
                .filter(length -> length.metres() < shortest.metres() - tolerance.hair())
                .ifPresent(length -> findings.add(Finding.of(
                        FindingCode.TRIM_PIECE_TOO_SHORT,
                        place,
                        "A piece of the " + name
                                + " at {place} is {actual} long where {limit} is the shortest that can be"
                                + " made. Cut it from a longer one, or let its neighbour run on.",
                        length,
                        shortest,
                        Source.REQUEST)));
    }
}
