package org.coursewright.layout.ui.strip;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.advice.ProfilePoint.Basis;
import org.coursewright.layout.ui.trial.PlaceCuts;
import org.coursewright.measure.Length;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/** Under a wall: cuts against the place of the opening that is selected or dragged. A click brings the opening there. */
public final class AdviceStrip extends Canvas {

    private static final int HEIGHT = 112;
    private static final int WORDS = 250;
    private static final int MARGIN = 8;
    private static final int OVER = 18;
    private static final int UNDER = 26;

    private final Consumer<Length> bring;
    private Optional<StripContent> content = Optional.empty();

    /**
     * @param parent of the strip
     * @param bring told to which offset the opening is to be brought
     */
    public AdviceStrip(Composite parent, Consumer<Length> bring) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.bring = bring;
        addListener(SWT.Paint, event -> {
            Graphics graphics = new SWTGraphics(event.gc);
            content.ifPresent(shown -> paint(graphics, shown));
            graphics.dispose();
        });
        addListener(SWT.MouseMove, event -> hint(pointAt(event.x).map(this::words).orElse(null)));
        addListener(SWT.MouseUp, event -> pointAt(event.x).ifPresent(this::bring));
        AccessibleName.give(this, () -> content.map(AdviceStrip::title).orElse(""));
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
        graphics.drawText(title(shown), MARGIN, MARGIN);
        scale().ifPresent(scale -> new StripPainter(shown, scale).paint(graphics));
    }

    private static String title(StripContent shown) {
        if (shown.opening().isEmpty()) {
            return StripText.selectOpening;
        }
        String title = NLS.bind(StripText.title, shown.opening().get());
        return shown.cuts().map(cuts -> title + found(shown, cuts)).orElse(title + StripText.looking);
    }

    /** What the place where the opening is needs, and the fewest that any place needs that was laid. */
    private static String found(StripContent shown, PlaceCuts cuts) {
        String here = shown.at().flatMap(cuts::at).map(AdviceStrip::here).orElse("");
        String fewest = cuts.best().stream().findFirst()
                .map(point -> NLS.bind(StripText.fewest, point.cutPieces(), cuts.best().size())).orElse("");
        return here + fewest + StripText.legend + (cuts.goesOn() ? StripText.goesOn : "");
    }

    private static String here(ProfilePoint point) {
        if (point.unfillable() > 0) {
            return NLS.bind(StripText.hereUnfillable, point.unfillable());
        }
        if (point.lapViolations() > 0) {
            return NLS.bind(StripText.hereShort, point.cutPieces(), point.lapViolations());
        }
        return NLS.bind(point.basis() == Basis.BOUND ? StripText.hereAtLeast : StripText.here, point.cutPieces());
    }

    private Optional<StripScale> scale() {
        Rectangle area = new Rectangle(WORDS, OVER, Math.max(1, getSize().x - WORDS - MARGIN),
                Math.max(1, getSize().y - OVER - UNDER));
        return content.flatMap(StripContent::cuts).filter(cuts -> !cuts.points().isEmpty())
                .map(cuts -> new StripScale(cuts, area));
    }

    private Optional<ProfilePoint> pointAt(int x) {
        return scale().flatMap(scale -> scale.at(x));
    }

    private void bring(ProfilePoint point) {
        content.flatMap(StripContent::cuts).map(PlaceCuts::planned)
                .ifPresent(planned -> bring.accept(planned.plus(point.change())));
    }

    private String words(ProfilePoint point) {
        StripContent shown = content.orElseThrow();
        Length place = shown.cuts().orElseThrow().planned().plus(point.change());
        String words = point.basis() == Basis.BOUND ? StripText.atLeastThere : StripText.laidThere;
        return NLS.bind(words, new Object[]{shown.format().format(place), point.cutPieces(), point.lapViolations(),
                point.unfillable()});
    }

    private void hint(String words) {
        if (!Objects.equals(words, getToolTipText())) {
            setToolTipText(words);
        }
    }
}
