package org.thalweg.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thalweg.stock.CuttingProblem.BarType;

/**
 * The pieces of a request sorted into kinds that are alike to the saw, longest first: what has one length and the same to
 * keep apart from is one kind; pieces that belong together are one long piece.
 */
final class PieceKinds {

    private final CuttingCase asked;
    private final List<Group> groups;
    private final Map<String, Integer> tooLong = new LinkedHashMap<>();
    private final long costOfMissing;

    /**
     * Pieces that go on a bar in one.
     *
     * @param parts  side by side, longest first; mostly one
     * @param copies how many times
     */
    record Source(List<CutPiece> parts, int copies) {}

    /** One kind. */
    private record Group(long length, Optional<String> apart, List<Source> sources) {
        int wanted() {
            return sources.stream().mapToInt(Source::copies).sum();
        }

        List<String> ids() {
            return sources.stream()
                    .flatMap(source -> source.parts().stream())
                    .map(CutPiece::id)
                    .distinct()
                    .toList();
        }
    }

    PieceKinds(CuttingCase asked) {
        this.asked = asked;
        Map<List<Object>, Group> groups = new LinkedHashMap<>();
        for (Source source : sources()) {
            long length = length(source);
            Optional<String> apart = source.parts().get(0).apart();
            if (fits(length)) {
                groups.computeIfAbsent(List.of(length, apart), key -> new Group(length, apart, new ArrayList<>()))
                        .sources()
                        .add(source);
            } else {
                source.parts().forEach(part -> tooLong.merge(part.id(), source.copies(), Integer::sum));
            }
        }
        this.groups = groups.values().stream()
                .sorted(Comparator.comparingLong(Group::length).reversed())
                .toList();
        this.costOfMissing = costOfMissing();
    }

    /** In the order of the request; pieces that belong together stand where the first of them does. */
    private List<Source> sources() {
        Map<String, List<CutPiece>> together = new LinkedHashMap<>();
        List<Source> sources = new ArrayList<>();
        for (CutPiece piece : asked.pieces()) {
            if (piece.together().isEmpty()) {
                sources.add(new Source(List.of(piece), piece.count()));
                continue;
            }
            List<CutPiece> parts = together.get(piece.together().get());
            if (parts == null) {
                parts = new ArrayList<>();
                together.put(piece.together().get(), parts);
                sources.add(new Source(parts, 1));
            }
            for (int i = 0; i < piece.count(); i++) {
                parts.add(piece);
            }
        }
        together.values()
                .forEach(parts ->
                        parts.sort(Comparator.comparingLong(CutPiece::length).reversed()));
        return sources;
    }

    private long length(Source source) {
        return source.parts().stream()
                .mapToLong(part -> part.length() + asked.kerf())
                .sum();
    }

    private boolean fits(long length) {
        return asked.stock().stream().anyMatch(bar -> bar.length() + asked.kerf() >= length);
    }

    private boolean fitsUnlimited(long length) {
        return asked.stock().stream().anyMatch(bar -> bar.count().isEmpty() && bar.length() + asked.kerf() >= length);
    }

    boolean none() {
        return groups.isEmpty();
    }

    /** What the saw sees. The last sort of bar may be one that nobody has: what is on it stays uncut. */
    CuttingProblem problem() {
        List<BarType> bars = new ArrayList<>();
        for (StockBar bar : asked.stock()) {
            bars.add(new BarType(bar.length() + asked.kerf(), bar.cost(), available(bar)));
        }
        groups.stream()
                .map(Group::length)
                .filter(length -> !fitsUnlimited(length))
                .findFirst()
                .ifPresent(length -> bars.add(new BarType(length, costOfMissing, CuttingProblem.UNLIMITED)));
        CuttingProblem problem = new CuttingProblem(
                groups.stream().mapToLong(Group::length).toArray(),
                groups.stream().mapToInt(Group::wanted).toArray(),
                bars.toArray(BarType[]::new));
        return problem.apartBy(apart());
    }

    /** As many as there are pieces are as good as no limit, if they cost something. */
    private int available(StockBar bar) {
        boolean limited = bar.count().orElse(Integer.MAX_VALUE) < pieces() || bar.cost() == 0;
        return limited ? Math.min(bar.count().orElse(0), pieces()) : CuttingProblem.UNLIMITED;
    }

    /** More than any plan that needs no bar that nobody has: it has no more bars than there are, nor than there are pieces. */
    private long costOfMissing() {
        long step = 0;
        for (StockBar bar : asked.stock()) {
            step = CuttingProblem.gcd(bar.cost(), step);
        }
        long cost = Math.max(1, step);
        long dearest = 0;
        for (StockBar bar : asked.stock()) {
            cost += bar.cost() * Math.min(bar.count().orElse(Integer.MAX_VALUE), pieces());
            dearest = Math.max(dearest, bar.cost());
        }
        return Math.min(cost, Math.max(1, step) + dearest * pieces());
    }

    long missing() {
        return costOfMissing;
    }

    private int pieces() {
        return asked.pieces().stream().mapToInt(CutPiece::count).sum();
    }

    private int[] apart() {
        List<String> words = groups.stream()
                .flatMap(group -> group.apart().stream())
                .distinct()
                .toList();
        return groups.stream()
                .mapToInt(group -> group.apart().map(words::indexOf).orElse(-1) + 1)
                .toArray();
    }

    List<CuttingPlan.Kind> priced() {
        return groups.stream()
                .map(group -> new CuttingPlan.Kind(group.length(), group.wanted(), group.ids(), group.apart()))
                .toList();
    }

    List<Source> sources(int kind) {
        return groups.get(kind).sources();
    }

    /** How many of each piece are, alone or with what they belong to, longer than every bar. */
    Map<String, Integer> tooLong() {
        return tooLong;
    }
}
