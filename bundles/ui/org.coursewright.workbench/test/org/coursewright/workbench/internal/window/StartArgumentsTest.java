package org.coursewright.workbench.internal.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;

import org.junit.jupiter.api.Test;

class StartArgumentsTest {

    @Test
    void severalProjectsAreTakenInTheOrderGiven() {
        assertThat(StartArguments.of("-project", "b.coursewright", "-project", "a.coursewright").projects())
                .containsExactly(Path.of("b.coursewright"), Path.of("a.coursewright"));
    }

    @Test
    void plainProjectFileNeedsNoOption() {
        assertThat(StartArguments.of("plans/clinic.coursewright").projects())
                .containsExactly(Path.of("plans/clinic.coursewright"));
    }

    @Test
    void fileNamedByTheOptionMayHaveAnyExtension() {
        assertThat(StartArguments.of("-project", "clinic.backup").projects()).containsExactly(Path.of("clinic.backup"));
    }

    @Test
    void whatBelongsToThePlatformIsLeftAlone() {
        assertThat(StartArguments.of("-showLocation", "-perspective", "planning").projects()).isEmpty();
    }

    @Test
    void optionWithoutFileNamesNone() {
        assertThat(StartArguments.of("-project").projects()).isEmpty();
    }
}
