package org.coursewright.layout.ui.editor;

import java.io.IOException;
import java.nio.file.Path;

import org.coursewright.diagram.ui.picture.PngFile;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.paint.FacePicture;
import org.coursewright.measure.LengthFormat;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

/**
 * Writes a wall face to a file that somebody chooses.
 *
 * @param shell over which dialogs appear
 */
record PictureExport(Shell shell) {

    void ask(FaceDrawing drawing, LengthFormat format) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(EditorText.exportTitle);
        dialog.setFilterExtensions(new String[]{"*.png"});
        dialog.setFilterNames(new String[]{EditorText.pngFiles});
        dialog.setFileName(drawing.layout().mark() + ".png");
        dialog.setOverwrite(true);
        String file = dialog.open();
        if (file != null) {
            write(drawing, format, Path.of(file));
        }
    }

    private void write(FaceDrawing drawing, LengthFormat format, Path file) {
        try {
            new PngFile(file).write(new FacePicture(drawing, format), shell.getDisplay());
        } catch (IOException e) {
            MessageDialog.openError(shell, EditorText.cannotExport, e.getMessage());
        }
    }
}
