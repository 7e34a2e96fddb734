package org.coursewright.help.view;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

import org.coursewright.help.page.PageAddress;
import org.coursewright.help.page.PageReader;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.preference.JFacePreferences;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.part.ViewPart;

/** Shows help pages; links lead from one to the other. */
public final class HelpView extends ViewPart {

    /** Under which the view is registered. */
    public static final String ID = "org.coursewright.help.pages";

    private static final int MARGIN = 12;
    private static final int LINE_GAP = 3;
    /** About as wide as the mark of an item, so that its further lines stand below its first word. */
    private static final int ITEM_INDENT = 22;

    private final Deque<PageAddress> visited = new ArrayDeque<>();
    private StyledText widget;
    private PagePictures pictures;
    private PageText page;
    private IAction back;

    @Override
    public void createPartControl(Composite parent) {
        widget = new StyledText(parent, SWT.READ_ONLY | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL);
        widget.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
        widget.setLineSpacing(LINE_GAP);
        widget.setCaret(null);
        widget.addListener(SWT.MouseUp, this::follow);
        widget.addListener(SWT.KeyDown, this::goBackByKey);
        widget.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = HelpText.accessibleName;
            }
        });
        pictures = new PagePictures(widget);
        back = action(HelpText.back, "back", this::goBack);
        IToolBarManager tools = getViewSite().getActionBars().getToolBarManager();
        tools.add(back);
        tools.add(action(HelpText.home, "home", () -> go(PageAddress.HOME)));
        widget.addListener(SWT.Resize, event -> pictures.show(page, visited.peek()));
        IPropertyChangeListener recoloured = event -> inkLinks(event.getProperty());
        JFaceResources.getColorRegistry().addListener(recoloured);
        widget.addListener(SWT.Dispose, event -> JFaceResources.getColorRegistry().removeListener(recoloured));
        go(PageAddress.HOME);
    }

    /** Links follow the look of the workbench. */
    private void inkLinks(String changed) {
        if (JFacePreferences.HYPERLINK_COLOR.equals(changed)) {
            show(visited.peek());
        }
    }

    private static IAction action(String label, String icon, Runnable does) {
        Action action = new Action(label) {
            @Override
            public void run() {
                does.run();
            }
        };
        action.setImageDescriptor(ResourceLocator
                .imageDescriptorFromBundle(HelpView.class, "icons/" + icon + ".png").orElseThrow());
        return action;
    }

    /** @param address of the page to show from now on; a page that is not there is told on a page */
    public void go(PageAddress address) {
        visited.push(address);
        show(address);
    }

    private void goBack() {
        if (visited.size() > 1) {
            visited.pop();
            show(visited.peek());
        }
    }

    private void goBackByKey(Event key) {
        if (key.keyCode == SWT.BS || key.keyCode == SWT.ARROW_LEFT && key.stateMask == SWT.ALT) {
            goBack();
        }
    }

    private void show(PageAddress address) {
        Optional<String> text = Pages.text(address);
        page = new PageText(PageReader.read(text.orElseGet(() -> NLS.bind(HelpText.noSuchPage, address.path()))));
        widget.setText(page.text());
        widget.setStyleRanges(page.styles());
        page.items().forEach(offset -> widget.setLineWrapIndent(widget.getLineAtOffset(offset), 1, ITEM_INDENT));
        pictures.show(page, address);
        widget.setTopIndex(0);
        back.setEnabled(visited.size() > 1);
    }

    private void follow(Event click) {
        int offset = widget.getOffsetAtPoint(new Point(click.x, click.y));
        page.linkAt(offset).flatMap(target -> visited.peek().follow(target)).ifPresent(this::go);
    }

    @Override
    public void setFocus() {
        widget.setFocus();
    }
}
