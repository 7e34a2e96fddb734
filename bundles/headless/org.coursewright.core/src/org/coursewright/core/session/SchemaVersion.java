package org.coursewright.core.session;

import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.coursewright.model.project.ProjectPackage;

/** The version of the project schema, which is the last segment of the namespace of a project file's root. */
final class SchemaVersion {

    private static final Pattern NAMESPACE = Pattern.compile("http://coursewright\\.org/project/(\\d{1,6})");

    /** What is written, and read without migration. */
    static final int CURRENT = of(ProjectPackage.eNS_URI).orElseThrow();

    private SchemaVersion() {
    }

    /** @return the version that a namespace stands for, empty if it is none of ours */
    static OptionalInt of(String namespace) {
        Matcher matcher = NAMESPACE.matcher(namespace);
        return matcher.matches() ? OptionalInt.of(Integer.parseInt(matcher.group(1))) : OptionalInt.empty();
    }
}
