package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.common.NotDefinedException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.keys.IBindingService;
import org.eclipse.ui.views.IViewDescriptor;
import org.junit.jupiter.api.Test;

/** What quick access and the page of keys list. */
class CommandsTest {

    private static final String OURS = "org.coursewright.";

    @Test
    void everyCommandHasACategoryANameAndADescription() throws NotDefinedException {
        List<Command> commands = Arrays
                .stream(PlatformUI.getWorkbench().getService(ICommandService.class).getDefinedCommands())
                .filter(command -> command.getId().startsWith(OURS)).toList();
        assertTrue(commands.size() >= 6, commands::toString);
        for (Command command : commands) {
            assertEquals("Coursewright", command.getCategory().getName(), command.getId());
            assertFalse(command.getName().isBlank(), command.getId());
            assertFalse(Optional.ofNullable(command.getDescription()).orElse("").isBlank(), command.getId());
        }
    }

    @Test
    void keysOfTheGuideAreBound() {
        assertEquals("F1", key("org.coursewright.help.show"));
        assertEquals("Ctrl+3", key("org.eclipse.ui.window.quickAccess"));
        assertEquals("Ctrl+O", key("org.coursewright.workbench.openProject"));
        assertEquals("Ctrl+S", key("org.eclipse.ui.file.save"));
        assertEquals("Ctrl+Z", key("org.eclipse.ui.edit.undo"));
        assertEquals("F2", key("org.eclipse.ui.edit.rename"));
        assertEquals("F3", key("org.coursewright.workbench.openElement"));
        assertEquals("Shift+Ctrl+L", key("org.eclipse.ui.window.showKeyAssist").replace("Ctrl+Shift", "Shift+Ctrl"));
    }

    @Test
    void viewsAndPerspectivesAreThereUnderTheirNames() {
        assertEquals(List.of("Findings", "Help", "History", "Navigator", "Outline", "Properties"),
                Arrays.stream(PlatformUI.getWorkbench().getViewRegistry().getViews())
                        .filter(view -> view.getId().startsWith("org.coursewright.workbench")
                                || view.getId().startsWith("org.coursewright.help"))
                        .map(IViewDescriptor::getLabel).sorted().toList());
        assertEquals(List.of("Costing", "Planning", "Supplying", "Timing"),
                Arrays.stream(PlatformUI.getWorkbench().getPerspectiveRegistry().getPerspectives())
                        .map(perspective -> perspective.getLabel()).sorted().toList());
    }

    @Test
    void windowIsArrangedForOtherWorkAndBack() throws Exception {
        Window window = new Window();
        for (String work : List.of("costing", "timing", "supplying", "planning")) {
            PlatformUI.getWorkbench().showPerspective("org.coursewright.workbench." + work,
                    PlatformUI.getWorkbench().getWorkbenchWindows()[0]);
            Widgets.settle();
            assertTrue(window.page().findView("org.coursewright.workbench.navigator") != null, work);
            assertTrue(window.page().findView("org.coursewright.workbench.findings") != null, work);
        }
    }

    private static String key(String command) {
        return Optional.ofNullable(PlatformUI.getWorkbench().getService(IBindingService.class)
                .getBestActiveBindingFormattedFor(command)).orElse("");
    }
}
