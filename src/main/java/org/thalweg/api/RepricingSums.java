package org.thalweg.api;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;

/**
 * What many jobs come to. Sums of two parts of a stream can be added up, in any order, and are the sums of the whole: so is the
 * hash, which is the sum of the SHA-256 of every answer line, taken as a number of 256 bits, the first byte the greatest, modulo 2²⁵⁶.
 */
public final class RepricingSums {

    private static final HexFormat HEX = HexFormat.of();
    private static final int HASH_INTS = 8;
    private static final long INT = 0xFFFF_FFFFL;

    private long jobs;
    private long failed;
    private final Map<String, Sum> totals = new TreeMap<>();
    private final int[] hash = new int[HASH_INTS];

    /** Sums in one currency. */
    private static final class Sum {
        private long jobs;
        private BigDecimal total = BigDecimal.ZERO;
        private long compared;
        private BigDecimal was = BigDecimal.ZERO;
        private BigDecimal change = BigDecimal.ZERO;
    }

    /** How many jobs, those without a total among them. */
    public long jobs() {
        return jobs;
    }

    /** How many of them have no total. */
    public long failed() {
        return failed;
    }

    /** A job with a total. */
    void priced(String currency, BigDecimal total) {
        jobs++;
        Sum sum = of(currency);
        sum.jobs++;
        sum.total = sum.total.add(total);
    }

    /** The job counted last came to {@code was} before. */
    void compared(String currency, BigDecimal was, BigDecimal change) {
        Sum sum = of(currency);
        sum.compared++;
        sum.was = sum.was.add(was);
        sum.change = sum.change.add(change);
    }

    void failed(long more) {
        jobs += more;
        failed += more;
    }

    /** An answer line's SHA-256. */
    void hashed(byte[] sha) {
        ByteBuffer bytes = ByteBuffer.wrap(sha);
        long carry = 0;
        for (int i = HASH_INTS - 1; i >= 0; i--) {
            carry += (hash[i] & INT) + (bytes.getInt(i * Integer.BYTES) & INT);
            hash[i] = (int) carry;
            carry >>>= Integer.SIZE;
        }
    }

    private Sum of(String currency) {
        return totals.computeIfAbsent(currency, key -> new Sum());
    }

    /** Adds what other jobs come to. */
    public void add(RepricingSums other) {
        jobs += other.jobs;
        failed += other.failed;
        other.totals.forEach((currency, more) -> {
            Sum sum = of(currency);
            sum.jobs += more.jobs;
            sum.total = sum.total.add(more.total);
            sum.compared += more.compared;
            sum.was = sum.was.add(more.was);
            sum.change = sum.change.add(more.change);
        });
        hashed(other.hashBytes());
    }

    private byte[] hashBytes() {
        ByteBuffer bytes = ByteBuffer.allocate(HASH_INTS * Integer.BYTES);
        for (int part : hash) {
            bytes.putInt(part);
        }
        return bytes.array();
    }

    /** The hash in 64 hexadecimal digits. */
    public String hash() {
        return HEX.formatHex(hashBytes());
    }

    /** As JSON: an object that {@link #read} reads. */
    public String json() {
        return "{" + members() + "}";
    }

    /** The summary of a stream priced by {@code engine} with the book whose digest is {@code book}. */
    public String summary(String engine, String book) {
        return "{\"engine\":\"" + engine + "\",\"book\":\"" + book + "\"," + members() + "}";
    }

    private String members() {
        StringBuilder json = new StringBuilder(256)
                .append("\"jobs\":")
                .append(jobs)
                .append(",\"failed\":")
                .append(failed)
                .append(",\"totals\":[");
        String between = "";
        for (Map.Entry<String, Sum> each : totals.entrySet()) {
            Sum sum = each.getValue();
            json.append(between)
                    .append(
                            "{\"currency\":\"%s\",\"jobs\":%d,\"total\":\"%s\",\"compared\":%d,\"was\":\"%s\",\"change\":\"%s\"}"
                                    .formatted(
                                            each.getKey(),
                                            sum.jobs,
                                            sum.total.toPlainString(),
                                            sum.compared,
                                            sum.was.toPlainString(),
                                            sum.change.toPlainString()));
            between = ",";
        }
        return json.append("],\"hash\":\"").append(hash()).append('"').toString();
    }

    /** Reads what {@link #json} or {@link #summary} wrote. */
    public static RepricingSums read(JsonNode json) {
        RepricingSums sums = new RepricingSums();
        sums.jobs = json.required("jobs").longValue();
        sums.failed = json.required("failed").longValue();
        for (JsonNode each : json.required("totals")) {
            Sum sum = sums.of(each.required("currency").textValue());
            sum.jobs = each.required("jobs").longValue();
            sum.total = new BigDecimal(each.required("total").textValue());
            sum.compared = each.required("compared").longValue();
            sum.was = new BigDecimal(each.required("was").textValue());
            sum.change = new BigDecimal(each.required("change").textValue());
        }
        sums.hashed(HEX.parseHex(json.required("hash").textValue()));
        return sums;
    }
}
