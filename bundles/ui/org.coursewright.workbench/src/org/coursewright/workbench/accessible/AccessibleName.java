package org.coursewright.workbench.accessible;

import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** Names controls for those who hear the screen. */
public final class AccessibleName extends AccessibleAdapter {

    /** Under this key a control keeps its name, for whoever wants to know it here. */
    private static final String KEY = AccessibleName.class.getName();

    private final Supplier<String> name;

    private AccessibleName(Supplier<String> name) {
        this.name = name;
    }

    /**
     * @param control to be named
     * @param name its name from now on
     */
    public static void give(Control control, String name) {
        give(control, () -> name);
    }

    /**
     * @param control to be named
     * @param name asked for its name each time
     */
    public static void give(Control control, Supplier<String> name) {
        AccessibleName given = new AccessibleName(name);
        control.getAccessible().addAccessibleListener(given);
        control.setData(KEY, given);
    }

    /**
     * @param control of the window
     * @return the name it was given
     */
    public static Optional<String> of(Control control) {
        return control.getData(KEY) instanceof AccessibleName given ? Optional.of(given.name.get()) : Optional.empty();
    }

    @Override
    public void getName(AccessibleEvent event) {
        event.result = name.get();
    }
}
