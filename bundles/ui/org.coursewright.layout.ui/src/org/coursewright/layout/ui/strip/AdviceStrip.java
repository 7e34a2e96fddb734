package org.coursewright.layout.ui.strip;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/**
 * Under a wall: cuts against the place of the opening or jamb that is selected or dragged. A click brings the opening there.
 */
public final class AdviceStrip extends Canvas {

    private static final int HEIGHT = 112;
    /** Least width of the words, so that the columns stay where they are while words change. */
    private static final int WORDS = 270;
    /** Width of a number of cuts beside the columns. */
    private static final int NUMBER = 64;
    private static final int MARGIN = 8;
    private static final int OVER = 18;
    private static final int UNDER = 26;

    private final Consumer<OpeningPlace> bring;
    private Optional<StripContent> content = Optional.empty();

    /**
     * @param parent of the strip
     * @param bring told to which place the opening is to be brought
     */
    public AdviceStrip(Composite parent, Consumer<OpeningPlace> bring) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.bring = bring;
        addListener(SWT.Paint, event -> {
            Graphics graphics = new SWTGraphics(event.gc);
            content.ifPresent(shown -> paint(graphics, shown));
            graphics.dispose();
        });
        addListener(SWT.MouseMove, event -> hint(pointAt(event.x).map(this::words).orElse(null)));
        addListener(SWT.MouseUp, event -> pointAt(event.x).ifPresent(this::bring));
        AccessibleName.give(this, this::spoken);
    }

    /** @param shown from now on */
    public void show(StripContent shown) {
        if (!content.equals(Optional.of(shown))) {
            content = Optional.of(shown);
            redraw();
        }
    }

    /** @return what is shown, empty if nothing has been yet */
    public Optional<StripContent> content() {
        return content;
    }

    /** @return what is to be read */
    public String spoken() {
        return content.map(StripWords::new).map(StripWords::title).orElse("");
    }

    @Override
    public Point computeSize(int wide, int high, boolean changed) {
        return new Point(wide == SWT.DEFAULT ? WORDS * 2 : wide, high == SWT.DEFAULT ? HEIGHT : high);
    }

    private void paint(Graphics graphics, StripContent shown) {
        graphics.setBackgroundColor(shown.ink().basic().paper());
        graphics.fillRectangle(0, 0, getSize().x, getSize().y);
        graphics.setForegroundColor(shown.ink().basic().faint());
        graphics.drawLine(0, 0, getSize().x, 0);
        graphics.setForegroundColor(shown.ink().basic().text());
        graphics.drawText(new StripWords(shown).title(), MARGIN, MARGIN);
        scale().ifPresent(scale -> new StripPainter(shown, scale).paint(graphics));
    }

    private Optional<StripScale> scale() {
        int left = Math.max(WORDS, FigureUtilities.getTextExtents(spoken(), getFont()).width) + MARGIN + NUMBER;
        Rectangle area = new Rectangle(left, OVER, Math.max(1, getSize().x - left - MARGIN),
                Math.max(1, getSize().y - OVER - UNDER));
        return content.flatMap(StripContent::cuts).filter(cuts -> !cuts.points().isEmpty())
                .map(cuts -> new StripScale(cuts, area));
    }

    private Optional<ProfilePoint> pointAt(int x) {
        return scale().flatMap(scale -> scale.at(x));
    }

    private void bring(ProfilePoint point) {
        content.flatMap(StripContent::cuts).map(cuts -> cuts.place(point)).ifPresent(bring);
    }

    private String words(ProfilePoint point) {
        StripContent shown = content.orElseThrow();
        return new StripWords(shown).hint(shown.cuts().orElseThrow(), point);
    }

    private void hint(String words) {
        if (!Objects.equals(words, getToolTipText())) {
            setToolTipText(words);
        }
    }
}
