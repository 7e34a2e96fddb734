package org.coursewright.layout.ui.picture;

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
 * Writes a picture to a file that somebody chooses, in PNG or, if the name ends so, in SVG.
 *
 * @param shell over which dialogs appear
 */
public record PictureExport(Shell shell) {

    private static final String PNG = ".png";
    private static final String SVG = ".svg";

    /**
     * Asks for the file and writes it, or says why it cannot be written.
     *
     * @param picture to be written
     * @param title of the dialog
     * @param name that is proposed, without ending
     */
    public void ask(Picture picture, String title, String name) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(title);
        dialog.setFilterExtensions(new String[]{"*" + PNG, "*" + SVG});
        dialog.setFilterNames(new String[]{PictureText.pngFiles, PictureText.svgFiles});
        dialog.setFileName(name + PNG);
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
            MessageDialog.openError(shell, PictureText.cannotExport, e.getMessage());
        }
    }
}
