package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;

import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever does not see the window is told what each part of it is. */
class AccessibilityTest {

    private static final Set<Class<? extends Control>> NEED_A_NAME = Set.of(Tree.class, Table.class, Text.class,
            Combo.class);

    private final Window window = new Window();

    @TempDir
    private Path folder;

    @BeforeEach
    void openTheProject() throws Exception {
        window.open(SampleProject.in(folder));
        window.page().showView("org.coursewright.workbench.history");
        window.select(SampleProject.NAME, "Building", "Storey Ground", "Wall W1", "Door D1");
    }

    @AfterEach
    void closeTheProject() {
        window.forgetEverything();
    }

    @Test
    void treesTablesAndFieldsHaveNames() {
        List<Control> all = Widgets.in(window.shell()).filter(each -> NEED_A_NAME.contains(each.getClass()))
                .filter(each -> !(each.getParent() instanceof StyledText)).toList();
        assertTrue(all.size() > 8, all::toString);
        assertEquals(List.of(), all.stream().filter(each -> AccessibleName.of(each).isEmpty()).toList());
    }
}
