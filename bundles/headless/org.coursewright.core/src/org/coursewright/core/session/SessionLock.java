package org.coursewright.core.session;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Keeps a project to one session, in this process and in others.
 *
 * <p>The operating system drops the lock of a process that dies, so a lock file that was left behind is no obstacle. On
 * POSIX systems a process loses its lock as soon as it closes any channel on the same file; so within this process the
 * holders are kept in a map and the file is never opened a second time, except for a probe that stays open as long.
 */
final class SessionLock {

    private static final Map<Path, SessionHolder> HELD_HERE = new ConcurrentHashMap<>();

    /** The byte that is locked: far behind the text, so that others can read the text on any system. */
    private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

    private static final int LONGEST_TEXT = 4096;

    private final Path lockFile;
    private final FileChannel channel;
    private FileLock lock;
    private FileChannel probe;

    private SessionLock(Path lockFile) throws IOException {
        this.lockFile = lockFile;
        this.channel = FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.READ,
                StandardOpenOption.WRITE);
    }

    /**
     * @param file the project file as the caller named it, for messages
     * @param lockFile the file to lock
     * @return the lock, to be released at the end of the session
     * @throws ProjectInUseException if another session holds it
     * @throws ProjectFileException if no lock can be made here
     */
    static SessionLock acquire(Path file, Path lockFile) throws ProjectFileException {
        SessionHolder here = SessionHolder.here();
        SessionHolder other = HELD_HERE.putIfAbsent(lockFile, here);
        if (other != null) {
            throw new ProjectInUseException(file, other);
        }
        SessionLock lock = null;
        try {
            lock = acquire(file, lockFile, here);
            return lock;
        } catch (IOException e) {
            throw new ProjectFileException(file, "the project cannot be locked against others. Check that you may "
                    + "write to its folder, or copy the project to a local disk.", e);
        } finally {
            if (lock == null) {
                HELD_HERE.remove(lockFile);
            }
        }
    }

    private static SessionLock acquire(Path file, Path lockFile, SessionHolder here)
            throws IOException, ProjectInUseException {
        while (true) {
            SessionLock attempt = new SessionLock(lockFile);
            boolean kept = false;
            try {
                kept = attempt.isTaken(file, here);
            } finally {
                if (!kept) {
                    attempt.closeChannels();
                }
            }
            if (kept) {
                return attempt;
            }
        }
    }

    /** @return false if the lock file was deleted by its last holder meanwhile and must be made again */
    private boolean isTaken(Path file, SessionHolder here) throws IOException, ProjectInUseException {
        lock = channel.tryLock(LOCKED_BYTE, 1, false);
        if (lock == null) {
            throw new ProjectInUseException(file, SessionHolder.fromStored(read(channel)));
        }
        channel.truncate(0);
        channel.write(StandardCharsets.UTF_8.encode(here.stored()), 0);
        if (!Files.exists(lockFile)) {
            return false;
        }
        probe = FileChannel.open(lockFile, StandardOpenOption.READ);
        return read(probe).equals(here.stored());
    }

    private static String read(FileChannel channel) throws IOException {
        ByteBuffer text = ByteBuffer.allocate(LONGEST_TEXT);
        channel.read(text, 0);
        return StandardCharsets.UTF_8.decode(text.flip()).toString();
    }

    private void closeChannels() throws IOException {
        channel.close();
        if (probe != null) {
            probe.close();
        }
    }

    /** Lets others in. The file is deleted while it is still locked, so that nobody's lock file is deleted but ours. */
    void release() throws IOException {
        try {
            Files.deleteIfExists(lockFile);
        } finally {
            closeChannels();
            HELD_HERE.remove(lockFile);
        }
    }
}
