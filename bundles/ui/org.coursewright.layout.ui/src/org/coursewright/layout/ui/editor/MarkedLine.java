package org.coursewright.layout.ui.editor;

import java.util.Optional;

import org.coursewright.layout.ui.face.MarkedPieces;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Says which pieces are marked, and takes the marks away; takes no room while there are none. */
final class MarkedLine extends Composite {

    private final Label words;

    /**
     * @param parent of the line
     * @param clear takes the marks away
     */
    MarkedLine(Composite parent, Runnable clear) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 2).applyTo(this);
        words = new Label(this, SWT.NONE);
        Button button = new Button(this, SWT.PUSH);
        button.setText(EditorText.clearMarks);
        button.addListener(SWT.Selection, event -> clear.run());
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(this);
        setVisible(false);
    }

    /**
     * @param marked which pieces, empty for none
     * @param count how many they are in the present layout
     */
    void show(Optional<MarkedPieces> marked, long count) {
        String sentence = marked.map(each -> words(each, count)).orElse("");
        if (!sentence.equals(words.getText())) {
            words.setText(sentence);
            setVisible(marked.isPresent());
            ((GridData) getLayoutData()).exclude = marked.isEmpty();
            words.requestLayout();
        }
    }

    private static String words(MarkedPieces marked, long count) {
        String kind = marked.kind().map(PieceWords::kind).orElse(EditorText.anyPiece);
        String words = NLS.bind(EditorText.marked, kind, count);
        return marked.course().isPresent()
                ? words + NLS.bind(EditorText.markedCourse, marked.course().getAsInt())
                : words;
    }
}
