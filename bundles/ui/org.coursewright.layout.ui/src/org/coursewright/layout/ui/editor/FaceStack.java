package org.coursewright.layout.ui.editor;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** Either the wall, or a sentence that says why there is none to be seen. */
final class FaceStack extends Composite {

    private static final int MARGIN = 16;

    private final StackLayout stack = new StackLayout();
    private final Composite hint;
    private final Label words;

    FaceStack(Composite parent) {
        super(parent, SWT.NONE);
        setLayout(stack);
        hint = new Composite(this, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(MARGIN, MARGIN).applyTo(hint);
        words = new Label(hint, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(words);
        stack.topControl = hint;
    }

    /** Shows a sentence, or the wall if the sentence is empty. */
    void show(String sentence, Control wall) {
        Control top = sentence.isEmpty() ? wall : hint;
        if (stack.topControl != top || !sentence.equals(words.getText())) {
            words.setText(sentence);
            stack.topControl = top;
            layout();
            hint.layout();
        }
    }
}
