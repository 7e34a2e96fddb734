package org.coursewright.diagram.ui.editor;

import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** A row of controls over a diagram. Where the window is narrow it takes another line. */
public final class HeaderRow extends Composite {

    /** @param header that has the row below what it has already; laid out as a grid */
    public HeaderRow(Composite header) {
        super(header, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(this);
        RowLayout layout = new RowLayout();
        layout.center = true;
        layout.spacing = 8;
        layout.marginLeft = 0;
        setLayout(layout);
    }

    /**
     * Adds a box to be ticked, at the end.
     *
     * @param text beside it
     * @param changed told whether it is ticked
     * @return the box, not ticked
     */
    public Button check(String text, Consumer<Boolean> changed) {
        Button button = button(SWT.CHECK, text);
        button.addListener(SWT.Selection, event -> changed.accept(button.getSelection()));
        return button;
    }

    /**
     * Adds a button that stays down, at the end.
     *
     * @param text on it
     * @param changed told whether it is down
     * @return the button, not down
     */
    public Button toggle(String text, Consumer<Boolean> changed) {
        Button button = button(SWT.TOGGLE, text);
        button.addListener(SWT.Selection, event -> changed.accept(button.getSelection()));
        return button;
    }

    /**
     * Adds a button, at the end.
     *
     * @param text on it
     * @param action run when it is pressed
     */
    public void push(String text, Runnable action) {
        button(SWT.PUSH, text).addListener(SWT.Selection, event -> action.run());
    }

    private Button button(int style, String text) {
        Button button = new Button(this, style);
        button.setText(text);
        return button;
    }
}
