package org.coursewright.layout.ui.editor;

import org.coursewright.bond.Piece;
import org.coursewright.layout.ui.paint.FaceInk;
import org.coursewright.layout.ui.paint.Sample;
import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Below a wall face: what the fills and marks mean. */
final class Legend extends Composite {

    private static final int SAMPLE_WIDTH = 28;
    private static final int SAMPLE_HEIGHT = 14;

    private final FaceInk ink;

    /**
     * @param parent of the legend
     * @param ink that the wall is drawn with
     */
    Legend(Composite parent, FaceInk ink) {
        super(parent, SWT.NONE);
        this.ink = ink;
        RowLayout row = new RowLayout();
        row.spacing = 14;
        row.marginLeft = 8;
        setLayout(row);
        add(EditorText.whole, Sample.piece(Piece.Kind.WHOLE));
        add(EditorText.special, Sample.piece(Piece.Kind.SPECIAL));
        add(EditorText.cut, Sample.piece(Piece.Kind.CUT));
        add(EditorText.bearing, Sample.BEARING);
        add(EditorText.other, Sample.OTHER);
        add(EditorText.unfillable, Sample.UNFILLABLE);
        add(EditorText.pinned, Sample.PINNED);
        add(EditorText.shortLap, Sample.SHORT_LAP);
    }

    private void add(String text, Sample sample) {
        Composite entry = new Composite(this, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(5, 0).applyTo(entry);
        Canvas swatch = new Canvas(entry, SWT.DOUBLE_BUFFERED);
        GridDataFactory.fillDefaults().align(SWT.CENTER, SWT.CENTER).hint(SAMPLE_WIDTH, SAMPLE_HEIGHT).applyTo(swatch);
        swatch.addPaintListener(event -> {
            SWTGraphics graphics = new SWTGraphics(event.gc);
            sample.paint(graphics, ink, new Rectangle(0, 0, SAMPLE_WIDTH, SAMPLE_HEIGHT));
            graphics.dispose();
        });
        new Label(entry, SWT.NONE).setText(text);
    }
}
