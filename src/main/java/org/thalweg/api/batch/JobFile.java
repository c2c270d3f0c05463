package org.thalweg.api.batch;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;

/**
 * A file of jobs, one a line, as it was when it was looked at.
 *
 * @param path     where it lies
 * @param size     in bytes
 * @param modified when it was last written, as the file system says
 */
record JobFile(Path path, long size, String modified) {

    private static final int CHUNK = 8192;

    static JobFile at(Path path) throws IOException {
        BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
        return new JobFile(
                path, attributes.size(), attributes.lastModifiedTime().toString());
    }

    String name() {
        return path.getFileName().toString();
    }

    /**
     * Where the first line begins that does not begin before {@code position}; the size where none does. Reads no more
     * than the line it falls into.
     */
    long lineFrom(long position) throws IOException {
        if (position <= 0 || position >= size) {
            return Math.max(0, Math.min(position, size));
        }
        try (FileChannel channel = FileChannel.open(path)) {
            ByteBuffer chunk = ByteBuffer.allocate(CHUNK);
            long at = position - 1;
            while (channel.read(chunk.clear(), at) > 0) {
                chunk.flip();
                for (int i = 0; i < chunk.limit(); i++) {
                    if (chunk.get(i) == '\n') {
                        return Math.min(at + i + 1, size);
                    }
                }
                at += chunk.limit();
            }
        }
        return size;
    }

    /** Its bytes from {@code from} to before {@code to}; fewer only where the file was cut off meanwhile. */
    InputStream open(long from, long to) throws IOException {
        return new Stretch(FileChannel.open(path).position(from), to - from);
    }

    /** Notices what was written while it was read. */
    void checkUnchanged() throws IOException {
        if (!equals(at(path))) {
            throw new BatchFailure(path + " was written while it was read. Run again when it is whole.");
        }
    }

    private static final class Stretch extends InputStream {

        private final FileChannel channel;
        private long left;

        Stretch(FileChannel channel, long left) {
            this.channel = channel;
            this.left = left;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            if (left == 0) {
                return length == 0 ? 0 : -1;
            }
            int read = channel.read(ByteBuffer.wrap(into, offset, (int) Math.min(length, left)));
            left -= Math.max(0, read);
            return read;
        }

        @Override
        public void close() throws IOException {
            channel.close();
        }
    }
}
