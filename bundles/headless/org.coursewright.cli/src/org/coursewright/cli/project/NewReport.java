package org.coursewright.cli.project;

import java.nio.file.Path;

import org.coursewright.cli.JsonText;

/** What was made. */
record NewReport(Path file, Contents contents) {

    String text() {
        return "Made %s: %s.".formatted(file, contents.summary());
    }

    String json() {
        return JsonText.document("coursewright.new/1", json -> {
            json.member("project", contents.name());
            json.member("file", file.toString());
            json.member("walls", contents.walls().size());
            json.member("openings", contents.openings());
            json.member("storeys", contents.storeys().size());
            json.member("units", contents.units().size());
        });
    }
}
