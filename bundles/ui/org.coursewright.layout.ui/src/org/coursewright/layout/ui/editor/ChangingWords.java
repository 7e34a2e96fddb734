package org.coursewright.layout.ui.editor;

import java.util.function.Function;

import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Composite;

/**
 * Words in as many lines as they need, which may change many times a second: with each change of a label the window finds out
 * anew how large all of it has to be, which takes longer than drawing a wall.
 */
final class ChangingWords extends Composite {

    private String words = "";

    ChangingWords(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        addListener(SWT.Paint, event -> with(getSize().x, lines -> {
            lines.draw(event.gc, 0, 0);
            return lines;
        }));
        AccessibleName.give(this, () -> words);
    }

    /** Shows other words; what is round them is laid out anew only if they need other lines. */
    void say(String said) {
        if (!said.equals(words)) {
            words = said;
            redraw();
            if (computeSize(getSize().x, SWT.DEFAULT).y != getSize().y) {
                requestLayout();
            }
        }
    }

    @Override
    public Point computeSize(int wide, int high, boolean changed) {
        return with(wide, lines -> new Point(wide == SWT.DEFAULT ? lines.getBounds().width : wide,
                high == SWT.DEFAULT ? lines.getBounds().height : high));
    }

    private <T> T with(int width, Function<TextLayout, T> use) {
        TextLayout lines = new TextLayout(getDisplay());
        try {
            lines.setFont(getFont());
            lines.setWidth(width == SWT.DEFAULT ? SWT.DEFAULT : Math.max(1, width));
            lines.setText(words);
            return use.apply(lines);
        } finally {
            lines.dispose();
        }
    }
}
