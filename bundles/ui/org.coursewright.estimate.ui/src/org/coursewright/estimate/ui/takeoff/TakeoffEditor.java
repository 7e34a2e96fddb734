package org.coursewright.estimate.ui.takeoff;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.bond.LayoutResults;
import org.coursewright.core.bond.UnitCount;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.core.cost.QuantityGroup;
import org.coursewright.core.cost.QuantityTable;
import org.coursewright.core.display.Amount;
import org.coursewright.core.display.ProjectFormat;
import org.coursewright.core.finding.Severity;
import org.coursewright.core.takeoff.WallTaken;
import org.coursewright.estimate.ui.part.EstimateEditor;
import org.coursewright.estimate.ui.part.EstimatePart;
import org.coursewright.estimate.ui.part.ShownResult;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The table of everything that the building takes: grouped, filtered, searched, added up, and each line explained. */
public final class TakeoffEditor extends EstimateEditor {

    private static final int[] TABLE_TO_EXPLANATION = {60, 40};

    private SelectionBar bar;
    private QuantityTree tree;
    private Label count;
    private ShowMe showMe;
    private Amount written;
    private ShownResult<LayoutOutcome> layout;
    private ShownResult<QuantityTable> table;

    /** Called by the platform. */
    public TakeoffEditor() {
        super(EstimatePart.TAKEOFF);
    }

    @Override
    protected void createBody(Composite body) {
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(body);
        bar = new SelectionBar(body, this::refresh);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        SashForm sash = new SashForm(body, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        written = words();
        tree = new QuantityTree(sash, written);
        showMe = new ShowMe(sash, new WallOpener(getSite()));
        sash.setWeights(TABLE_TO_EXPLANATION);
        count = new Label(body, SWT.NONE);
        GridDataFactory.fillDefaults().indent(8, 0).grab(true, false).applyTo(count);
        tree.viewer().addSelectionChangedListener(event -> explain());
        layout = show(LayoutResults.LAYOUT, laid -> explain());
        table = show(PriceResults.QUANTITIES, this::take);
    }

    private Amount words() {
        return new Amount(ProjectFormat.of(project()));
    }

    /** The same results are written otherwise in another unit. */
    @Override
    protected void projectEdited() {
        if (!words().equals(written)) {
            refresh();
        }
    }

    private void take(QuantityTable taken) {
        bar.offer(taken.rows());
        refresh();
    }

    private void refresh() {
        table.last().ifPresent(taken -> {
            List<QuantityGroup> groups = bar.selection().of(taken.rows());
            written = words();
            tree.show(groups, written);
            count.setText(NLS.bind(TakeoffText.shown, groups.stream().mapToInt(group -> group.rows().size()).sum(),
                    taken.rows().size()));
            count.requestLayout();
            explain();
        });
    }

    private void explain() {
        showMe.show(tree.selected(), marks(), this::laid, words());
    }

    private Map<Integer, UnitCount> laid(String wall) {
        return layout.last().<Map<Integer, UnitCount>>map(laid -> laid.courses(wall)).orElse(Map.of());
    }

    private Set<String> marks() {
        return table.last().stream().flatMap(taken -> taken.takeoff().walls().stream()).map(WallTaken::mark).collect(
                Collectors.toSet());
    }

    @Override
    protected String headline() {
        return Optional.ofNullable(table).flatMap(ShownResult::last).map(TakeoffEditor::headline).orElse(
                TakeoffText.notYet);
    }

    private static String headline(QuantityTable taken) {
        long laid = taken.takeoff().walls().stream().map(WallTaken::pieces).mapToLong(pieces -> pieces.whole() + pieces
                .special() + pieces.cut()).sum();
        String words = NLS.bind(TakeoffText.headline, new Object[]{taken.rows().size(), laid, taken.takeoff().walls()
                .size()});
        long findings = taken.findings().stream().filter(each -> each.severity() != Severity.NOTE).count();
        return findings == 0 ? words : NLS.bind(TakeoffText.headlineFindings, words, findings);
    }

    @Override
    protected void reveal(EObject element) {
        // no single element is shown
    }

    @Override
    public void setFocus() {
        super.setFocus();
        tree.viewer().getTree().setFocus();
    }
}
