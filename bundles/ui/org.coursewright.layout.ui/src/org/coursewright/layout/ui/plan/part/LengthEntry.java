package org.coursewright.layout.ui.plan.part;

import java.util.Optional;
import java.util.function.Function;

import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.LengthFormatException;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.keys.IBindingService;

/** A small field over the plan into which a length is typed. Enter takes it, Esc or a click elsewhere leaves it. */
public final class LengthEntry {

    private static final int WIDTH = 110;
    private static final int REFUSAL_WIDTH = 260;

    private final Composite plan;
    private final LengthFormat format;
    private final String name;
    private final Function<Length, Optional<String>> take;
    private Composite box;

    /**
     * @param plan to appear over
     * @param format of lengths
     * @param name what is typed, for those who hear the screen
     * @param take given the length; tells why it cannot be
     */
    public LengthEntry(Composite plan, LengthFormat format, String name, Function<Length, Optional<String>> take) {
        this.plan = plan;
        this.format = format;
        this.name = name;
        this.take = take;
    }

    /**
     * Appears, and has the keys until it is left.
     *
     * @param at upper left corner in pixels of the plan's window
     * @param typed what it holds at first
     */
    public void open(Point at, String typed) {
        box = new Composite(plan, SWT.BORDER);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(box);
        Text text = new Text(box, SWT.SINGLE);
        GridDataFactory.fillDefaults().hint(WIDTH, SWT.DEFAULT).applyTo(text);
        AccessibleName.give(text, name);
        text.setText(typed);
        text.addListener(SWT.DefaultSelection, event -> take(text));
        text.addListener(SWT.FocusIn, event -> windowTakesKeys(false));
        text.addListener(SWT.FocusOut, event -> close());
        text.addListener(SWT.Dispose, event -> windowTakesKeys(true));
        text.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_ESCAPE) {
                event.doit = false;
                leave();
            }
        });
        fit(at);
        text.setFocus();
        if (typed.length() > 1) {
            text.selectAll();
        } else {
            text.setSelection(typed.length());
        }
    }

    /** Keys that edit text, such as Delete, would change the plan instead if the window took them. */
    private static void windowTakesKeys(boolean taken) {
        PlatformUI.getWorkbench().getService(IBindingService.class).setKeyFilterEnabled(taken);
    }

    private void fit(Point at) {
        box.pack();
        int x = Math.max(0, Math.min(at.x, plan.getClientArea().width - box.getSize().x));
        int y = Math.max(0, Math.min(at.y, plan.getClientArea().height - box.getSize().y));
        box.setLocation(x, y);
        box.moveAbove(null);
    }

    private void take(Text text) {
        Optional<String> refusal = refusal(text.getText());
        if (refusal.isEmpty()) {
            leave();
        } else if (!box.isDisposed()) {
            say(refusal.get());
        }
    }

    private Optional<String> refusal(String typed) {
        try {
            return take.apply(format.parse(typed));
        } catch (LengthFormatException e) {
            return Optional.of(e.getMessage());
        }
    }

    private void say(String reason) {
        Label label = box.getChildren().length == 1 ? new Label(box, SWT.WRAP) : (Label) box.getChildren()[1];
        label.setText(reason);
        GridDataFactory.fillDefaults().hint(REFUSAL_WIDTH, SWT.DEFAULT).applyTo(label);
        fit(new Point(box.getLocation().x, box.getLocation().y));
    }

    private void leave() {
        close();
        if (!plan.isDisposed()) {
            plan.setFocus();
        }
    }

    private void close() {
        if (!box.isDisposed()) {
            box.dispose();
        }
    }
}
