package org.coursewright.estimate.ui.part;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Above every part of an estimate: what it comes to, whether that is being worked out, what is wrong with it. */
final class StateLine extends Composite {

    private final Label headline;
    private final Label state;

    StateLine(Composite parent) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 6).spacing(12, 2).applyTo(this);
        headline = new Label(this, SWT.WRAP);
        headline.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(1, SWT.DEFAULT).applyTo(
                headline);
        state = new Label(this, SWT.NONE);
        GridDataFactory.swtDefaults().applyTo(state);
    }

    void addButton(String words, Runnable pressed) {
        ((GridLayout) getLayout()).numColumns++;
        Button button = new Button(this, SWT.PUSH);
        button.setText(words);
        button.addListener(SWT.Selection, event -> pressed.run());
    }

    void show(String words, String work) {
        show(headline, words);
        show(state, work);
    }

    /** Makes room only for what has changed: laying out a whole editor takes longer than somebody should wait. */
    private static void show(Label label, String words) {
        if (!label.getText().equals(words)) {
            label.setText(words);
            label.requestLayout();
        }
    }
}
