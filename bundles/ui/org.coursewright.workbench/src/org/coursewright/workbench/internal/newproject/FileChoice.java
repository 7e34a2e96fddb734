package org.coursewright.workbench.internal.newproject;

import java.nio.file.Path;
import java.util.Optional;

import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** A row of a wizard's page in which a file is named or looked for. */
final class FileChoice {

    private final Text path;

    /**
     * @param page of three columns
     * @param label what the file is
     * @param dialog {@code SWT.OPEN} or {@code SWT.SAVE}
     * @param pattern of names, such as {@code *.csv}
     * @param changed run each time another file is named
     */
    FileChoice(Composite page, String label, int dialog, String pattern, Runnable changed) {
        new Label(page, SWT.NONE).setText(NLS.bind(WizardText.label, label));
        path = new Text(page, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(path);
        AccessibleName.give(path, label);
        path.addListener(SWT.Modify, event -> changed.run());
        Button browse = new Button(page, SWT.PUSH);
        browse.setText(WizardText.browse);
        AccessibleName.give(browse, NLS.bind(WizardText.browseFor, label));
        browse.addListener(SWT.Selection, event -> look(label, dialog, pattern));
    }

    private void look(String label, int style, String pattern) {
        FileDialog dialog = new FileDialog(path.getShell(), style);
        dialog.setText(label);
        dialog.setFilterExtensions(new String[]{pattern, "*"});
        Optional.ofNullable(dialog.open()).ifPresent(path::setText);
    }

    /** @return the file named, empty if none is */
    Optional<Path> file() {
        String typed = path.getText().strip();
        return typed.isEmpty() ? Optional.empty() : Optional.of(Path.of(typed));
    }

    void propose(Path file) {
        path.setText(file.toString());
    }
}
