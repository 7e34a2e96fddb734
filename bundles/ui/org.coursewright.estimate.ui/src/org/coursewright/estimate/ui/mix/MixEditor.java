package org.coursewright.estimate.ui.mix;

import java.util.List;
import java.util.Optional;

import org.coursewright.core.cost.MixSheet;
import org.coursewright.core.cost.MixSheets;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.core.display.ProjectFormat;
import org.coursewright.estimate.ui.part.EstimateEditor;
import org.coursewright.estimate.ui.part.EstimatePart;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.estimate.ui.part.ShownResult;
import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** One mix at a time: its parts by volume and mass, for a cubic metre, a batch and a block, and the checks on it. */
public final class MixEditor extends EstimateEditor {

    private ScrolledComposite scrolled;
    private Combo choice;
    private Label uses;
    private Label hint;
    private PartTable parts;
    private WaterFields water;
    private BatchCard batch;
    private MixNotes notes;
    private ShownResult<MixSheets> mixes;
    private Optional<String> wanted = Optional.empty();

    /** Called by the platform. */
    public MixEditor() {
        super(EstimatePart.MIXES);
    }

    @Override
    protected void createBody(Composite body) {
        body.setLayout(new FillLayout());
        scrolled = new ScrolledComposite(body, SWT.V_SCROLL);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        Composite page = new Composite(scrolled, SWT.NONE);
        scrolled.setContent(page);
        GridLayoutFactory.fillDefaults().margins(8, 4).spacing(6, 8).applyTo(page);
        createChoice(page);
        parts = new PartTable(page, this::execute, this::explain);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(parts.control());
        hint = new Label(page, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(hint);
        water = new WaterFields(page, this::execute, this::explain);
        batch = new BatchCard(page);
        notes = new MixNotes(page);
        mixes = show(PriceResults.MIXES, this::take);
    }

    private void createChoice(Composite page) {
        Composite row = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(6, 2).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        new Label(row, SWT.NONE).setText(MixText.mix);
        choice = new Combo(row, SWT.READ_ONLY);
        AccessibleName.give(choice, MixText.accessibleMixes);
        choice.addListener(SWT.Selection, event -> choose(choice.getText()));
        uses = new Label(row, SWT.NONE);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).applyTo(uses);
    }

    private void take(MixSheets sheets) {
        List<String> marks = sheets.sheets().stream().map(MixSheet::mark).toList();
        choice.setItems(marks.toArray(String[]::new));
        marks.stream().filter(mark -> wanted.filter(mark::equals).isPresent()).findFirst().or(() -> marks.stream()
                .findFirst()).ifPresent(this::choose);
    }

    private void choose(String mark) {
        wanted = Optional.of(mark);
        choice.select(choice.indexOf(mark));
        mixes.last().stream().flatMap(all -> all.sheets().stream()).filter(sheet -> sheet.mark().equals(mark))
                .findFirst()
                .ifPresent(this::show);
    }

    private void show(MixSheet sheet) {
        Optional<MixDesign> design = design(sheet.mark());
        uses.setText(sheet.uses().isEmpty()
                ? MixText.notUsed
                : NLS.bind(MixText.usedFor, String.join(", ", sheet
                        .uses())));
        parts.show(design, sheet);
        water.show(design);
        batch.show(sheet);
        notes.show(sheet, ProjectFormat.of(project()));
        explain(Optional.empty());
        select(design);
        fit();
    }

    private void explain(Optional<String> refusal) {
        hint.setText(refusal.orElse(mixes.last().stream().flatMap(all -> all.sheets().stream()).filter(sheet -> wanted
                .filter(sheet.mark()::equals).isPresent()).map(
                        sheet -> NLS.bind(MixText.perCubicMetre, Figures.number(
                                sheet.perCubicMetre(), 1)) + " " + MixText.typeHint)
                .findFirst().orElse("")));
        fit();
    }

    private void fit() {
        Composite page = (Composite) scrolled.getContent();
        page.layout(true, true);
        scrolled.setMinHeight(page.computeSize(scrolled.getClientArea().width, SWT.DEFAULT).y);
    }

    private Optional<MixDesign> design(String mark) {
        return Optional.ofNullable(project().getCatalogue()).stream().flatMap(catalogue -> catalogue.getMixDesigns()
                .stream()).filter(mix -> mark.equals(mix.getMark())).findFirst();
    }

    @Override
    protected String headline() {
        return Optional.ofNullable(mixes).flatMap(ShownResult::last).map(all -> all.sheets().isEmpty()
                ? MixText.headlineNone
                : NLS.bind(MixText.headline, all.sheets().size())).orElse(MixText.notYet);
    }

    @Override
    protected void reveal(EObject element) {
        if (element instanceof MixDesign mix && mix.getMark() != null) {
            wanted = Optional.of(mix.getMark());
            mixes.last().ifPresent(all -> choose(mix.getMark()));
        }
    }

    @Override
    public void setFocus() {
        super.setFocus();
        parts.control().setFocus();
    }
}
