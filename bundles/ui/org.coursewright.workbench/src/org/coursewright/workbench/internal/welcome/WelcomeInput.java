package org.coursewright.workbench.internal.welcome;

import org.coursewright.workbench.internal.element.ElementIcons;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/** What the welcome page is opened on; there is one. */
public record WelcomeInput() implements IEditorInput {

    @Override
    public boolean exists() {
        return true;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return ElementIcons.named("welcome");
    }

    @Override
    public String getName() {
        return WelcomeText.title;
    }

    /** @return null: at the next start the page is shown if no project is open */
    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return WelcomeText.title;
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        return null;
    }
}
