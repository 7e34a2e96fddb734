package org.coursewright.workbench.internal.newproject;

import java.util.List;
import java.util.stream.Collectors;

import org.coursewright.exchange.remark.Remark;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Lists everything that is wrong with schedules, file, line and column first, to be worked off one by one. */
final class RefusalDialog extends MessageDialog {

    private static final int WIDTH = 640;
    private static final int HEIGHT = 260;

    private final List<Remark> errors;

    RefusalDialog(Shell parent, List<Remark> errors) {
        super(parent, WizardText.windowTitle, null, NLS.bind(WizardText.refused, errors.size()), ERROR,
                new String[]{IDialogConstants.OK_LABEL}, 0);
        this.errors = errors;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    @Override
    protected Control createCustomArea(Composite parent) {
        Text list = new Text(parent, SWT.BORDER | SWT.MULTI | SWT.READ_ONLY | SWT.V_SCROLL | SWT.WRAP);
        list.setText(errors.stream().map(Remark::toString).collect(Collectors.joining("\n")));
        AccessibleName.give(list, WizardText.whatIsWrong);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, HEIGHT).applyTo(list);
        return list;
    }
}
