package org.coursewright.layout.ui.plan.editor;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

import org.coursewright.diagram.ui.picture.Picture;
import org.coursewright.diagram.ui.picture.PngFile;
import org.coursewright.diagram.ui.picture.SvgFile;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

/**
 * Writes a plan to a file that somebody chooses.
 *
 * @param shell over which dialogs appear
 */
record PlanExport(Shell shell) {

    private static final String SVG = ".svg";

    void ask(Picture picture, String name) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(PlanText.exportTitle);
        dialog.setFilterExtensions(new String[]{"*.png", "*.svg"});
        dialog.setFilterNames(new String[]{PlanText.pngFiles, PlanText.svgFiles});
        dialog.setFileName(name + ".png");
        dialog.setOverwrite(true);
        String file = dialog.open();
        if (file != null) {
            write(picture, Path.of(file));
        }
    }

    private void write(Picture picture, Path file) {
        try {
            if (file.toString().toLowerCase(Locale.ROOT).endsWith(SVG)) {
                new SvgFile(file).write(picture);
            } else {
                new PngFile(file).write(picture, shell.getDisplay());
            }
        } catch (IOException e) {
            MessageDialog.openError(shell, PlanText.cannotExport, e.getMessage());
        }
    }
}
