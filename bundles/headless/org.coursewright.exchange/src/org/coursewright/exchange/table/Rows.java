package org.coursewright.exchange.table;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Rows of a schedule.
 *
 * @param <R> what a row is read as
 */
public final class Rows<R extends Schedule.Row> {

    private final boolean readable;
    private final List<R> all;
    private final List<R> sound;
    private final Map<String, R> soundByKey;
    private final Set<String> keys;

    private Rows(boolean readable, List<R> all, List<R> sound) {
        this.readable = readable;
        this.all = List.copyOf(all);
        this.sound = List.copyOf(sound);
        keys = all.stream().map(row -> Schedule.key(row.mark())).collect(Collectors.toSet());
        soundByKey = sound.stream()
                .collect(Collectors.toMap(row -> Schedule.key(row.mark()), Function.identity(),
                        (first, second) -> first));
    }

    /**
     * Rows of a table that could be read.
     *
     * @param all every row
     * @param sound those without a bad cell
     */
    public static <R extends Schedule.Row> Rows<R> of(List<R> all, List<R> sound) {
        return new Rows<>(true, all, sound);
    }

    /** No table was given. */
    public static <R extends Schedule.Row> Rows<R> none() {
        return of(List.of(), List.of());
    }

    /** A table was given, but nobody knows what it says. */
    public static <R extends Schedule.Row> Rows<R> unreadable() {
        return new Rows<>(false, List.of(), List.of());
    }

    public List<R> all() {
        return all;
    }

    public List<R> sound() {
        return sound;
    }

    public Optional<R> find(String mark) {
        return Optional.ofNullable(soundByKey.get(Schedule.key(mark)));
    }

    /** @return whether a row names the mark, sound or not, or might, because the table could not be read */
    public boolean mayName(String mark) {
        return !readable || keys.contains(Schedule.key(mark));
    }
}
