package org.coursewright.estimate.ui.price;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

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
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

/** What the building costs: line by line, as it is built up, and how far it may be off. */
public final class PriceEditor extends EstimateEditor {

    private CTabFolder pages;
    private LineTable lines;
    private List<LaterPage> contents = List.of();
    private ShownResult<PriceOutcome> price;

    /** Called by the platform. */
    public PriceEditor() {
        super(EstimatePart.PRICE);
    }

    @Override
    protected void createBody(Composite body) {
        body.setLayout(new FillLayout());
        pages = new CTabFolder(body, SWT.TOP);
        LaterPage first = new LaterPage(pages, PriceText.lines, this::lines);
        contents = List.of(first, new LaterPage(pages, PriceText.buildUp, this::buildUp),
                new LaterPage(pages, PriceText.range, page -> new RangePage(page)::show),
                new LaterPage(pages, PriceText.specials, this::specials));
        pages.setSelection(0);
        first.want(Optional.empty());
        pages.addListener(SWT.Selection, event -> showChosen());
        price = show(PriceResults.RANGE, outcome -> contents.forEach(page -> page.show(outcome)));
    }

    private Consumer<PriceOutcome> lines(Composite page) {
        lines = new LineTable(page, new Rates(project(), this::execute), this::select);
        return lines::show;
    }

    private Consumer<PriceOutcome> buildUp(Composite page) {
        return new BuildUpPage(page, new Shares(project(), this::execute))::show;
    }

    /** Every length is nested anew for it, so it is worked out once somebody wants to see it, and apart from the price. */
    private Consumer<PriceOutcome> specials(Composite page) {
        SpecialPage specials = new SpecialPage(page, () -> ProjectFormat.of(project()));
        show(PriceResults.MAKE_OR_CUT, specials::show);
        return outcome -> {
            // shown by a result of its own
        };
    }

    private void showChosen() {
        contents.stream().filter(page -> page.isIn(pages.getSelection())).forEach(page -> page.want(price.last()));
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
