package org.coursewright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/** The dark style sheet, whose text is all there is to check without a desktop. */
class DarkStyleTest {

    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);

    /** A colour that a style sheet gives takes the place of the desktop's grey for what is disabled. */
    @Test
    void widgetsThatAreOftenDisabledKeepTheDesktopsColours() throws IOException {
        String rules = COMMENT.matcher(Files.readString(Path.of("css/dark.css"))).replaceAll("");

        assertThat(rules).contains("Table").doesNotContainPattern("\\b(Combo|CCombo|Button|Spinner|Text)\\b");
    }
}
