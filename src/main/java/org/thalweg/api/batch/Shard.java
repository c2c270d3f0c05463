package org.thalweg.api.batch;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One of so many shares of the work.
 *
 * @param index from 0
 * @param count of all shares
 */
public record Shard(int index, int count) {

    /** More would be files too many for a folder; and a hundred million jobs would be a thousand each. */
    public static final int MOST = 99_999;

    private static final Pattern WRITTEN = Pattern.compile("(\\d{1,5})/(\\d{1,5})");

    public Shard {
        if (count < 1 || count > MOST || index < 0 || index >= count) {
            throw new IllegalArgumentException(
                    "There is no shard %d of %d: shards are counted from 0, and there are 1 to %d of them."
                            .formatted(index, count, MOST));
        }
    }

    /** Reads {@code 0/64}, the first of 64. */
    static Shard parse(String text) {
        Matcher parts = WRITTEN.matcher(text);
        if (!parts.matches()) {
            throw new IllegalArgumentException(
                    "'%s' is no shard; the first of 64 is written 0/64, the last 63/64.".formatted(text));
        }
        return new Shard(Integer.parseInt(parts.group(1)), Integer.parseInt(parts.group(2)));
    }

    /** Where it begins in {@code size} bytes cut into even shares; the next one begins where it ends. */
    long begin(long size) {
        return cut(size, index);
    }

    long end(long size) {
        return cut(size, index + 1);
    }

    private long cut(long size, int at) {
        return size / count * at + size % count * at / count;
    }

    /** File names sort as the shards do. */
    String file(String what, String ending) {
        return "%s-%05d-of-%05d.%s".formatted(what, index, count, ending);
    }

    @Override
    public String toString() {
        return index + "/" + count;
    }
}
