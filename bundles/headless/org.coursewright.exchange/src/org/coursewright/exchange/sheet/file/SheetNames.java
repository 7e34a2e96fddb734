package org.coursewright.exchange.sheet.file;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Turns marks of walls into file names that every system takes and that differ even where capitals do not count. */
final class SheetNames {

    private static final int LONGEST = 60;

    private final Set<String> taken = new HashSet<>();

    String of(String mark) {
        String plain = mark.strip().replaceAll("[^A-Za-z0-9_-]", "_");
        String base = "wall-" + plain.substring(0, Math.min(plain.length(), LONGEST));
        String name = base;
        for (int next = 2; !taken.add(name.toLowerCase(Locale.ROOT)); next++) {
            name = base + "-" + next;
        }
        return name;
    }
}
