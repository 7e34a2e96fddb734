package org.coursewright.workbench.internal.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/**
 * What the workbench was asked on the command line to do.
 *
 * @param projects files to open, in the order given: each {@code -project FILE}, and each plain argument that ends in
 *        {@code .coursewright}; other arguments belong to the platform
 */
record StartArguments(List<Path> projects) {

    private static final String PROJECT = "-project";
    private static final String EXTENSION = ".coursewright";

    StartArguments {
        projects = List.copyOf(projects);
    }

    static StartArguments of(String... arguments) {
        List<Path> projects = new ArrayList<>();
        Iterator<String> rest = List.of(arguments).iterator();
        while (rest.hasNext()) {
            String argument = rest.next();
            if (argument.equals(PROJECT) && rest.hasNext()) {
                projects.add(Path.of(rest.next()));
            } else if (argument.endsWith(EXTENSION)) {
                projects.add(Path.of(argument));
            }
        }
        return new StartArguments(projects);
    }
}
