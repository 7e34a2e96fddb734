package org.coursewright.estimate.ui.price;

import java.util.Optional;

import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.core.display.ProjectFormat;
import org.coursewright.estimate.ui.part.EstimateEditor;
import org.coursewright.estimate.ui.part.EstimatePart;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.estimate.ui.part.ShownResult;
import org.coursewright.model.estimate.Rate;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

/** What the building costs: line by line, as it is built up, and how far it may be off. */
public final class PriceEditor extends EstimateEditor {

    private CTabFolder pages;
    private LineTable lines;
    private BuildUpPage buildUp;
    private RangePage range;
    private SpecialPage specials;
    private boolean areSpecialsShown;
    private ShownResult<PriceOutcome> price;

    /** Called by the platform. */
    public PriceEditor() {
        super(EstimatePart.PRICE);
    }

    @Override
    protected void createBody(Composite body) {
        body.setLayout(new FillLayout());
        pages = new CTabFolder(body, SWT.TOP);
        lines = new LineTable(page(PriceText.lines), new Rates(project(), this::execute), this::select);
        buildUp = new BuildUpPage(page(PriceText.buildUp), new Shares(project(), this::execute));
        range = new RangePage(page(PriceText.range));
        specials = new SpecialPage(page(PriceText.specials), () -> ProjectFormat.of(project()));
        pages.setSelection(0);
        pages.addListener(SWT.Selection, event -> showSpecials());
        price = show(PriceResults.RANGE, this::take);
    }

    /** What lies in a page has the ground of an editor, whatever the theme gives to the page itself. */
    private Composite page(String title) {
        Composite page = new Composite(pages, SWT.NONE);
        page.setLayout(new FillLayout());
        CTabItem item = new CTabItem(pages, SWT.NONE);
        item.setText(title);
        item.setControl(page);
        return page;
    }

    /** Every length is nested anew for it, so it is worked out once somebody wants to see it. */
    private void showSpecials() {
        if (!areSpecialsShown && pages.getSelectionIndex() == pages.getItemCount() - 1) {
            areSpecialsShown = true;
            show(PriceResults.MAKE_OR_CUT, specials::show);
        }
    }

    private void take(PriceOutcome outcome) {
        lines.show(outcome);
        buildUp.show(outcome);
        range.show(outcome);
    }

    @Override
    protected String headline() {
        return Optional.ofNullable(price).flatMap(ShownResult::last).map(PriceEditor::headline).orElse(
                PriceText.notYet);
    }

    private static String headline(PriceOutcome outcome) {
        String total = Figures.money(outcome.total().total());
        String words = outcome.range().map(each -> NLS.bind(PriceText.headlineRange, new Object[]{total, Figures
                .number(each.p50().amount(), 0), Figures.number(each.p90().amount(), 0)}))
                .orElse(NLS.bind(PriceText.headline, total));
        long missing = outcome.lines().stream().filter(line -> line.priced().isEmpty()).count();
        return missing == 0 ? words : NLS.bind(PriceText.incomplete, words, missing);
    }

    @Override
    protected void reveal(EObject element) {
        if (element instanceof Rate rate) {
            pages.setSelection(0);
            lines.reveal(rate);
        }
    }

    @Override
    public void setFocus() {
        super.setFocus();
        pages.setFocus();
    }
}
