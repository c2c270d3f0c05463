package org.thalweg.api.json;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/** Bytes of a text looked at eight at a time. */
final class Eight {

    private static final VarHandle BYTES = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
    private static final long ONES = 0x0101010101010101L;
    private static final long HIGH_BITS = 0x8080808080808080L;
    private static final long QUOTES = '"' * ONES;
    private static final long BACKSLASHES = '\\' * ONES;
    private static final long SPACES = ' ' * ONES;
    /** Odd, so that multiplying by it loses nothing. */
    private static final long MIXER = 0x9E3779B97F4A7C15L;

    private Eight() {}

    /** The first byte from {@code from} on that may not stand in a string, or not for itself: a quote, a backslash, a control, a negative byte. */
    static int special(byte[] text, int from, int end) {
        int i = from;
        for (; i + Long.BYTES <= end; i += Long.BYTES) {
            long found = special((long) BYTES.get(text, i));
            if (found != 0) {
                return i + Long.numberOfTrailingZeros(found) / Byte.SIZE;
            }
        }
        while (i < end && text[i] >= ' ' && text[i] != '"' && text[i] != '\\') {
            i++;
        }
        return i;
    }

    /** The lowest bit that is set is the high bit of the first special byte; those above it may lie. */
    private static long special(long eight) {
        long quotes = eight ^ QUOTES;
        long backslashes = eight ^ BACKSLASHES;
        long found = ((quotes - ONES) & ~quotes) | ((backslashes - ONES) & ~backslashes) | (eight - SPACES) | eight;
        return found & HIGH_BITS;
    }

    /** A hash of the bytes from {@code from} to {@code to}. Of up to eight bytes no two of one length have the same. */
    static long hash(byte[] text, int from, int to) {
        long mixed = 0;
        int i = from;
        for (; i + Long.BYTES < to; i += Long.BYTES) {
            mixed = mix(mixed ^ (long) BYTES.get(text, i));
        }
        return mix(mixed ^ last(text, i, to)) ^ (to - from);
    }

    private static long mix(long eight) {
        long mixed = eight * MIXER;
        return mixed ^ (mixed >>> 32);
    }

    /** The last one to eight bytes; nought for none. */
    private static long last(byte[] text, int from, int to) {
        if (from == to) {
            return 0;
        }
        if (from + Long.BYTES <= text.length) {
            int spare = Long.SIZE - Byte.SIZE * (to - from);
            return (long) BYTES.get(text, from) << spare >>> spare;
        }
        long bytes = 0;
        for (int i = to - 1; i >= from; i--) {
            bytes = bytes << Byte.SIZE | text[i] & 0xFF;
        }
        return bytes;
    }
}
