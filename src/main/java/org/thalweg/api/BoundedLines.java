package org.thalweg.api;

import java.io.IOException;
import java.io.InputStream;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Arrays;

/**
 * The lines of a stream, one after the other in one buffer. Lines end with a line feed, with or without a carriage return before
 * it; the last one may lack it. Blank lines are counted and passed over. Of a line with more bytes than are read nothing is kept.
 */
public final class BoundedLines {

    private static final int FIRST_SIZE = 1 << 16;
    private static final VarHandle EIGHT = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
    private static final long LINE_FEEDS = 0x0A0A0A0A0A0A0A0AL;
    private static final long ONES = 0x0101010101010101L;
    private static final long HIGH_BITS = 0x8080808080808080L;

    private final InputStream in;
    private final int most;
    private byte[] buffer;
    /** What was read and is not yet told lies from {@code at} to {@code filled}. */
    private int at;

    private int filled;
    private boolean ended;
    private int from;
    private int to;
    private boolean overlong;
    private long number;
    /** Of all bytes that came, how many; and how many of them lie before the line. */
    private long read;

    private long offset;

    /** Lines of at most {@code most} bytes, line feed and carriage return not counted. */
    public BoundedLines(InputStream in, int most) {
        this.in = in;
        this.most = most;
        this.buffer = new byte[Math.min(FIRST_SIZE, most + 2)];
    }

    /** Goes on to the next line that is not blank; false when there is none. */
    public boolean next() throws IOException {
        while (more()) {
            number++;
            if (overlong || !blank()) {
                return true;
            }
        }
        return false;
    }

    /** The bytes the line lies in, until the next one is asked for. */
    public byte[] buffer() {
        return buffer;
    }

    /** Where the line begins. */
    public int from() {
        return from;
    }

    /** Behind its last byte. */
    public int to() {
        return to;
    }

    /** A copy of the line. */
    public byte[] copy() {
        return Arrays.copyOfRange(buffer, from, to);
    }

    /** Whether the line has more bytes than are read; then it is empty here. */
    public boolean overlong() {
        return overlong;
    }

    /** The number of the line, from 1; blank lines count. */
    public long number() {
        return number;
    }

    /** How many bytes lie before the line. */
    public long offset() {
        return offset;
    }

    /** Whether everything read so far has been told, so that the next line has to be waited for. */
    public boolean drained() {
        return at == filled;
    }

    private boolean more() throws IOException {
        offset = read - (filled - at);
        overlong = false;
        int searched = at;
        while (true) {
            int feed = lineFeed(searched);
            if (feed < filled) {
                take(feed, feed + 1);
                return true;
            }
            searched = filled;
            if (filled - at > most + 1) {
                overlong = true;
                at = filled;
                searched = at;
            }
            if (ended) {
                boolean last = overlong || at < filled;
                take(filled, filled);
                return last;
            }
            searched -= makeRoom();
            fill();
        }
    }

    /** The line ends before {@code end}, the next one begins at {@code next}. */
    private void take(int end, int next) {
        from = at;
        to = end > at && buffer[end - 1] == '\r' ? end - 1 : end;
        at = next;
        if (overlong || to - from > most) {
            overlong = true;
            to = from;
        }
    }

    /** Makes room behind what is kept; answers how far that was moved. */
    private int makeRoom() {
        if (filled < buffer.length) {
            return 0;
        }
        int kept = filled - at;
        int moved = at;
        byte[] roomier =
                kept > buffer.length / 2 ? new byte[Math.min(2 * buffer.length, most + 2 + FIRST_SIZE)] : buffer;
        System.arraycopy(buffer, at, roomier, 0, kept);
        buffer = roomier;
        at = 0;
        filled = kept;
        return moved;
    }

    private void fill() throws IOException {
        int more = in.read(buffer, filled, buffer.length - filled);
        if (more < 0) {
            ended = true;
        } else {
            filled += more;
            read += more;
        }
    }

    private boolean blank() {
        for (int i = from; i < to; i++) {
            if (buffer[i] != ' ' && buffer[i] != '\t' && buffer[i] != '\r') {
                return false;
            }
        }
        return true;
    }

    /** The first line feed from {@code begin} on, eight bytes at a time; {@code filled} when there is none. */
    private int lineFeed(int begin) {
        int i = begin;
        for (; i + Long.BYTES <= filled; i += Long.BYTES) {
            long bytes = (long) EIGHT.get(buffer, i) ^ LINE_FEEDS;
            long zeros = (bytes - ONES) & ~bytes & HIGH_BITS;
            if (zeros != 0) {
                return i + Long.numberOfTrailingZeros(zeros) / Byte.SIZE;
            }
        }
        while (i < filled && buffer[i] != '\n') {
            i++;
        }
        return i;
    }
}
