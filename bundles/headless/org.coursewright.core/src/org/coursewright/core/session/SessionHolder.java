package org.coursewright.core.session;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Who has a project open.
 *
 * @param user name of the account, or "unknown"
 * @param host name of the machine, or "unknown"
 * @param process number of the process on that machine, 0 if unknown
 * @param since when the project was opened, the epoch if unknown
 */
public record SessionHolder(String user, String host, long process, Instant since) {

    static final SessionHolder UNKNOWN = new SessionHolder("unknown", "unknown", 0, Instant.EPOCH);

    private static final Pattern STORED = Pattern.compile("(.+)\n(.+)\nprocess (\\d{1,18})\nsince (\\d{1,12}) .*\n");

    /** @return this process, from now on */
    static SessionHolder here() {
        return new SessionHolder(System.getProperty("user.name", "unknown"), hostName(), ProcessHandle.current().pid(),
                Instant.now().truncatedTo(ChronoUnit.SECONDS));
    }

    private static String hostName() {
        try {
            return InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException e) {
            // a machine whose name leads to no address: the message starts with the name
            return Objects.requireNonNullElse(e.getMessage(), "unknown").split(":")[0];
        }
    }

    /** @return the holder in words, such as "by ana on site-office (process 4711) since 2026-03-02T08:15:00Z" */
    String description() {
        return since.equals(Instant.EPOCH)
                ? "by a holder that left no name"
                : "by %s on %s (process %d) since %s".formatted(user, host, process, since);
    }

    /** @return the text kept in the lock file */
    String stored() {
        return "%s\n%s\nprocess %d\nsince %d (%s)\n".formatted(user, host, process, since.getEpochSecond(), since);
    }

    /**
     * Reads what {@link #stored()} wrote.
     *
     * @param text content of a lock file, possibly from another version or half written
     * @return the holder it names, or {@link #UNKNOWN}
     */
    static SessionHolder fromStored(String text) {
        Matcher matcher = STORED.matcher(text);
        return matcher.matches()
                ? new SessionHolder(matcher.group(1), matcher.group(2), Long.parseLong(matcher.group(3)),
                        Instant.ofEpochSecond(Long.parseLong(matcher.group(4))))
                : UNKNOWN;
    }
}
