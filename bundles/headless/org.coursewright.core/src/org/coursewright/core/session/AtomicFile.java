package org.coursewright.core.session;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.time.Instant;
import java.util.UUID;

/**
 * Replaces a file as a whole: whoever reads it, also after a power cut, finds either the old content or the new.
 *
 * <p>The content is written to a file beside, forced to the disk, and then renamed over the old one; the folder is
 * forced as well, so that the new name outlives a power cut.
 */
final class AtomicFile {

    private static final String SUFFIX = ".tmp";

    private AtomicFile() {
    }

    /**
     * Replaces or creates a file.
     *
     * @param file to be replaced; a symbolic link is followed
     * @param content the whole new content
     * @throws IOException if it cannot be written; the old file is then untouched and nothing is left beside it
     */
    static void write(Path file, byte[] content) throws IOException {
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new AccessDeniedException(target.toString());
        }
        Path beside = besides(target);
        try {
            writeForced(beside, content);
            copyPermissions(target, beside);
            Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(beside);
        }
        forceFolder(target.getParent());
    }

    /** Forces the entries of a folder to the disk where the system can do so; Windows cannot and need not. */
    static void forceFolder(Path folder) throws IOException {
        if (Files.getFileAttributeView(folder, PosixFileAttributeView.class) == null) {
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }

    /**
     * Deletes what killed processes left when they were about to replace a file.
     *
     * @param file that was to be replaced, without symbolic links
     * @param before only what was written before this moment is deleted: others may be at work on what is younger
     * @throws IOException if the folder cannot be read or a file not be deleted
     */
    static void removeLeftovers(Path file, Instant before) throws IOException {
        try (DirectoryStream<Path> left = Files.newDirectoryStream(file.getParent(), each -> isBeside(each, file))) {
            for (Path each : left) {
                if (Files.getLastModifiedTime(each).toInstant().isBefore(before)) {
                    Files.deleteIfExists(each);
                }
            }
        }
    }

    private static Path besides(Path target) {
        return target.resolveSibling(prefix(target) + UUID.randomUUID() + SUFFIX);
    }

    private static boolean isBeside(Path candidate, Path target) {
        String name = candidate.getFileName().toString();
        return name.startsWith(prefix(target)) && name.endsWith(SUFFIX);
    }

    private static String prefix(Path target) {
        return "." + target.getFileName() + ".";
    }

    private static void writeForced(Path beside, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(content);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    private static void copyPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        PosixFileAttributeView fresh = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (Files.exists(from) && old != null && fresh != null) {
            fresh.setPermissions(old.readAttributes().permissions());
        }
    }
}
