package org.coursewright.workbench.internal.properties;

import java.util.Optional;

import org.coursewright.workbench.internal.element.ElementIcons;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Says below a field why what was typed is refused; takes no room while there is nothing to say. */
final class RefusalLine {

    private static final int COLUMNS = 2;
    /** Narrow, so that a long reason wraps instead of widening the form. */
    private static final int TEXT_WIDTH = 150;

    private final Composite line;
    private final Label text;

    RefusalLine(Composite form) {
        line = new Composite(form, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(line);
        GridDataFactory.fillDefaults().span(COLUMNS, 1).grab(true, false).exclude(true).applyTo(line);
        Label icon = new Label(line, SWT.NONE);
        icon.setImage(new LocalResourceManager(JFaceResources.getResources(), line)
                .create(ElementIcons.named("error")));
        GridDataFactory.swtDefaults().align(SWT.CENTER, SWT.TOP).applyTo(icon);
        text = new Label(line, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(text);
        line.setVisible(false);
    }

    /** @return whether the line now needs more or less room than before */
    boolean show(Optional<String> reason) {
        if (reason.orElse("").equals(text.getText())) {
            return false;
        }
        text.setText(reason.orElse(""));
        line.setVisible(reason.isPresent());
        ((GridData) line.getLayoutData()).exclude = reason.isEmpty();
        return true;
    }
}
