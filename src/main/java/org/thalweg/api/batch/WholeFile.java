package org.thalweg.api.batch;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * A file that is there as a whole or not at all. It is written under another name beside its own, one that no other
 * process uses, brought to the disk, and then renamed.
 */
final class WholeFile implements Closeable {

    private static final String ENDING = ".tmp";

    private final Path target;
    private final Path written;
    private final FileChannel channel;

    private WholeFile(Path target, Path written, FileChannel channel) {
        this.target = target;
        this.written = written;
        this.channel = channel;
    }

    static WholeFile begin(Path target) throws IOException {
        Path written = target.resolveSibling(target.getFileName() + "." + UUID.randomUUID() + ENDING);
        return new WholeFile(
                target, written, FileChannel.open(written, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
    }

    static void write(Path target, byte[] content) throws IOException {
        try (WholeFile file = begin(target)) {
            file.out().write(content);
            file.publish();
        }
    }

    /** Removes what processes that were killed had begun of {@code target}. */
    static void removeBegun(Path target) throws IOException {
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            return;
        }
        try (DirectoryStream<Path> begun = Files.newDirectoryStream(folder, target.getFileName() + ".*" + ENDING)) {
            for (Path file : begun) {
                Files.deleteIfExists(file);
            }
        }
    }

    /** Where its content goes. Nothing is held back, so buffer it. */
    OutputStream out() {
        return Channels.newOutputStream(channel);
    }

    /** Everything is written: the file takes its name, in place of what had it. */
    void publish() throws IOException {
        channel.force(true);
        channel.close();
        Files.move(written, target, StandardCopyOption.ATOMIC_MOVE);
        forceName();
    }

    /** A name is in its folder, which has to reach the disk too; systems that can not open a folder need not be told. */
    private void forceName() {
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null) {
            return;
        }
        try (FileChannel names = FileChannel.open(folder)) {
            names.force(true);
        } catch (IOException e) {
            // The content is safe, and a name lost with the power is only work done again.
        }
    }

    /** Leaves nothing behind of a file that was not published. */
    @Override
    public void close() throws IOException {
        channel.close();
        Files.deleteIfExists(written);
    }
}
