package org.coursewright.benchmarks;

import java.time.LocalDate;

/** When and on what figures were made. */
final class RunOn {

    private RunOn() {
    }

    static String today() {
        return LocalDate.now().toString();
    }

    static String machine() {
        return "Machine: %d cores shared with other work, %s %s, JDK %s, at most %d MB heap.".formatted(
                Runtime.getRuntime().availableProcessors(), System.getProperty("os.name"),
                System.getProperty("os.arch"), System.getProperty("java.version"),
                Runtime.getRuntime().maxMemory() >> 20);
    }
}
