package org.coursewright.estimate.ui.price;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

import org.coursewright.core.cost.PriceOutcome;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

/** A page that is made once somebody wants to see it: to make all of them takes longer than somebody should wait. */
final class LaterPage {

    private final CTabItem item;
    private final Function<Composite, Consumer<PriceOutcome>> maker;
    private Optional<Consumer<PriceOutcome>> made = Optional.empty();

    /**
     * @param pages that it is one of
     * @param title of the page
     * @param maker makes what lies in it, and gives what shows a price there
     */
    LaterPage(CTabFolder pages, String title, Function<Composite, Consumer<PriceOutcome>> maker) {
        this.maker = maker;
        item = new CTabItem(pages, SWT.NONE);
        item.setText(title);
    }

    /** @param last price that there was */
    void want(Optional<PriceOutcome> last) {
        if (made.isEmpty()) {
            // what lies in a page has the ground of an editor, whatever the theme gives to the page itself
            Composite page = new Composite(item.getParent(), SWT.NONE);
            page.setLayout(new FillLayout());
            made = Optional.of(maker.apply(page));
            item.setControl(page);
            last.ifPresent(this::show);
        }
    }

    void show(PriceOutcome price) {
        made.ifPresent(page -> page.accept(price));
    }

    boolean isIn(CTabItem chosen) {
        return item == chosen;
    }
}
