package org.thalweg.api;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A buyer's check of a lower bound, as {@code openapi/certificates.md} describes it. It knows a request whose lengths are
 * numbers, the answer to it, and sums; it shares nothing with the service.
 */
final class BuyersCheck {

    /** Pieces that take of a bar's length, or bars that take of a plan's cost; of those in one list at most one is taken. */
    private record Thing(long size, long worth, long count, String list) {}

    private BuyersCheck() {}

    /** The least any plan costs, by the answer's price list. */
    static long bound(JsonNode request, JsonNode answer) {
        JsonNode certificate = answer.path("certificate");
        double steps = certificate.path("stepsPerUnit").asDouble();
        long kerf = Math.round(request.path("kerf").asDouble() * steps);
        List<Thing> pieces = priced(certificate, wanted(request, answer, steps, kerf));
        List<Thing> bars = new ArrayList<>();
        for (int k = 0; k < request.path("stock").size(); k++) {
            long room = Math.round(request.at("/stock/" + k + "/length").asDouble() * steps) + kerf;
            long worth = certificate.at("/worths/" + k + "/worth").asLong();
            long[] most = most(pieces, room);
            must(most[most.length - 1] <= worth, "no pieces on a bar are worth more than it");
            JsonNode used = answer.at("/used/stock/" + k);
            long count = used.path("count").asLong(Integer.MAX_VALUE);
            bars.add(new Thing(used.path("cost").asLong(), worth, count, "bar " + k));
        }
        long worth = pieces.stream()
                .mapToLong(piece -> piece.worth() * piece.count())
                .sum();
        long[] most = most(bars, answer.path("cost").asLong());
        int spent = 0;
        while (spent < most.length && most[spent] < worth) {
            spent++;
        }
        return spent * step(bars);
    }

    /** By id, with a kerf; what is too long is not wanted, and pieces that come from one bar are one long piece. */
    private static Map<String, Thing> wanted(JsonNode request, JsonNode answer, double steps, long kerf) {
        Map<String, String> apart = new HashMap<>();
        request.path("apart").forEach(list -> list.forEach(id -> apart.put(id.asText(), "apart " + list)));
        Map<String, Thing> wanted = new HashMap<>();
        for (JsonNode piece : request.path("pieces")) {
            String id = piece.path("id").asText();
            long length = Math.round(piece.path("length").asDouble() * steps) + kerf;
            wanted.put(id, new Thing(length, 0, piece.path("count").asLong(1), apart.getOrDefault(id, "")));
        }
        for (JsonNode list : request.path("together")) {
            long length = 0;
            for (JsonNode id : list) {
                Thing part = wanted.replace(id.asText(), new Thing(0, 0, 0, ""));
                length += part.size() * part.count();
            }
            wanted.put(list.get(0).asText(), new Thing(length, 0, 1, ""));
        }
        for (JsonNode left : answer.path("unplaced")) {
            wanted.remove(
                    left.path("reason").asText().equals("tooLong")
                            ? left.path("id").asText()
                            : "");
        }
        return wanted;
    }

    /** The rows of the price list, which must be the pieces that are wanted. */
    private static List<Thing> priced(JsonNode certificate, Map<String, Thing> wanted) {
        List<Thing> rows = new ArrayList<>();
        for (JsonNode row : certificate.path("prices")) {
            long length = row.path("length").asLong();
            long count = row.path("count").asLong();
            List<Thing> those = new ArrayList<>();
            row.path("pieces").forEach(id -> those.add(wanted.getOrDefault(id.asText(), new Thing(-1, 0, 1, ""))));
            row.path("pieces").forEach(id -> wanted.remove(id.asText()));
            must(those.stream().allMatch(piece -> piece.count() == 0 || piece.size() == length), "lengths are true");
            must(those.stream().mapToLong(Thing::count).sum() == count, "as many are priced as are wanted");
            must(those.stream().map(Thing::list).distinct().count() == 1, "a row is of one list");
            String list = those.get(0).list();
            rows.add(
                    new Thing(length, row.path("price").asLong(), count, list.isEmpty() ? "row " + rows.size() : list));
        }
        must(wanted.isEmpty(), "every piece has a price");
        return rows;
    }

    /** A table: for every size up to the largest, in steps, the most that things which take no more are worth. */
    private static long[] most(List<Thing> things, long largest) {
        long step = step(things);
        long[] most = new long[(int) (largest / step) + 1];
        for (List<Thing> list : things.stream()
                .collect(groupingBy(Thing::list, TreeMap::new, toList()))
                .values()) {
            Thing first = list.get(0);
            long copies = first.list().startsWith("apart") ? 1 : first.count();
            for (long i = Math.min(copies, first.size() == 0 ? copies : largest / first.size()); i > 0; i--) {
                for (int used = most.length - 1; used >= 0; used--) {
                    for (Thing thing : list) {
                        int rest = (int) (used - thing.size() / step);
                        most[used] = Math.max(most[used], rest < 0 ? 0 : most[rest] + thing.worth());
                    }
                }
            }
        }
        return most;
    }

    private static long step(List<Thing> things) {
        return Math.max(1, things.stream().mapToLong(Thing::size).reduce(0, BuyersCheck::gcd));
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    private static void must(boolean holds, String law) {
        if (!holds) {
            throw new AssertionError("not so: " + law);
        }
    }
}
