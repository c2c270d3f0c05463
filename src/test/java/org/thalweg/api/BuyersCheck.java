package org.thalweg.api;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A buyer's check of a lower bound, as {@code openapi/certificates.md} describes it. It knows a request whose lengths are
 * numbers, the answer to it, and sums; it shares nothing with the service.
 */
final class BuyersCheck {

    /** Rows of the price list {length, count, price, list of apart or a number of its own}, and bars {cost, count, worth}. */
    private final List<long[]> rows = new ArrayList<>();

    private final List<long[]> bars = new ArrayList<>();
    private final Map<String, long[]> wanted = new LinkedHashMap<>();

    /** The least any plan costs, by the answer's price list. */
    static long bound(JsonNode request, JsonNode answer) {
        return new BuyersCheck().check(request, answer);
    }

    private long check(JsonNode request, JsonNode answer) {
        long steps = answer.at("/certificate/stepsPerUnit").asLong();
        long kerf = Math.round(request.path("kerf").asDouble() * steps);
        for (JsonNode piece : request.path("pieces")) {
            long length = Math.round(piece.path("length").asDouble() * steps) + kerf;
            wanted.put(
                    piece.path("id").asText(),
                    new long[] {length, piece.path("count").asLong(1)});
        }
        request.path("together").forEach(this::join);
        answer.path("unplaced").forEach(left -> wanted.remove(left.path("id").asText()));
        answer.at("/certificate/prices").forEach(this::readPrice);
        must(wanted.isEmpty(), "every piece has a price");
        for (int k = 0; k < request.path("stock").size(); k++) {
            JsonNode used = answer.at("/used/stock/" + k);
            long worth = answer.at("/certificate/worths/" + k + "/worth").asLong();
            long length = Math.round(request.at("/stock/" + k + "/length").asDouble() * steps);
            must(mostOn(length + kerf) <= worth, "no pieces on a bar are worth more than it");
            bars.add(new long[] {used.path("cost").asLong(), used.path("count").asLong(1 << 30), worth});
        }
        return leastCost(
                rows.stream().mapToLong(row -> row[1] * row[2]).sum(),
                answer.path("cost").asLong());
    }

    /** Pieces that come from one bar are one long piece. */
    private void join(JsonNode list) {
        long[] one = {0, 1};
        for (JsonNode id : list) {
            long[] piece = wanted.replace(id.asText(), new long[] {0, 0});
            one[0] += piece[0] * piece[1];
        }
        wanted.put(list.get(0).asText(), one);
    }

    private void readPrice(JsonNode price) {
        long[] row = {price.path("length").asLong(), 0, price.path("price").asLong(), rows.size() + 1000L};
        for (JsonNode id : price.path("pieces")) {
            long[] piece = wanted.getOrDefault(id.asText(), new long[] {-1, 1});
            must(piece[1] == 0 || piece[0] == row[0], "what is priced is as long as it is");
            row[1] += piece[1];
            wanted.remove(id.asText());
        }
        must(row[1] == price.path("count").asLong(), "as many are priced as are wanted");
        row[3] = price.path("apart").asLong(row[3]);
        rows.add(row);
    }

    /** The first table: the most that pieces on so much room are worth, at most one of each list of apart. */
    private long mostOn(long room) {
        long step = rows.stream().mapToLong(row -> row[0]).reduce(0, BuyersCheck::gcd);
        long[] best = new long[(int) (room / step) + 1];
        for (List<long[]> choice : rows.stream()
                .collect(groupingBy(row -> row[3], TreeMap::new, toList()))
                .values()) {
            long[] first = choice.get(0);
            for (long copies = first[3] < 1000 ? 1 : Math.min(first[1], room / first[0]); copies > 0; copies--) {
                for (int used = best.length - 1; used > 0; used--) {
                    for (long[] row : choice) {
                        int rest = (int) (used - row[0] / step);
                        best[used] = Math.max(best[used], rest < 0 ? 0 : best[rest] + row[2]);
                    }
                }
            }
        }
        return best[best.length - 1];
    }

    /** The second table: the least cost of bars that together are worth as much as the pieces, or what the plan costs. */
    private long leastCost(long worth, long highest) {
        long step = Math.max(1, bars.stream().mapToLong(bar -> bar[0]).reduce(0, BuyersCheck::gcd));
        long[] most = new long[(int) (highest / step) + 1];
        for (long[] bar : bars) {
            int cost = (int) (bar[0] / step);
            for (long copies = cost == 0 ? bar[1] : Math.min(bar[1], most.length / cost); copies > 0; copies--) {
                for (int spent = most.length - 1; spent >= cost; spent--) {
                    most[spent] = Math.max(most[spent], most[spent - cost] + bar[2]);
                }
            }
        }
        int spent = 0;
        while (spent < most.length && most[spent] < worth) {
            spent++;
        }
        return spent * step;
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
