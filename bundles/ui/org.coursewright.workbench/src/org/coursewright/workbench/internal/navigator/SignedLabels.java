package org.coursewright.workbench.internal.navigator;

import org.eclipse.jface.viewers.DecoratingStyledCellLabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.ui.PlatformUI;

/** Shows texts at once and leaves the signs on icons, which the platform's decorators make in the background, for later. */
final class SignedLabels extends DecoratingStyledCellLabelProvider {

    private final ProjectTreeLabels labels;

    SignedLabels(ProjectTreeLabels labels) {
        super(labels, PlatformUI.getWorkbench().getDecoratorManager().getLabelDecorator(), null);
        this.labels = labels;
    }

    @Override
    public void update(ViewerCell cell) {
        StyledString text = labels.getStyledText(cell.getElement());
        if (!text.getString().equals(cell.getText())) {
            cell.setText(text.getString());
            cell.setStyleRanges(text.getStyleRanges());
        }
        if (cell.getImage() == null) {
            cell.setImage(labels.getImage(cell.getElement()));
        }
        super.update(cell);
    }
}
