package org.coursewright.layout.ui.proposal;

import java.util.Optional;
import java.util.function.Function;

import org.coursewright.core.proposal.ProposalChanges;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.edit.DisplayFormat;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.proposal.Proposal;
import org.coursewright.model.proposal.ProposalState;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.TableColumn;

/** The columns of the table of proposals. */
record ProposalColumns(TableViewer table, TableColumnLayout layout) {

    void add() {
        column(ProposalText.columnAnswer, 14, ProposalColumns::answer);
        column(ProposalText.columnMark, 9, each -> text(each.getMark()));
        column(ProposalText.columnWhere, 16, ProposalColumns::where);
        column(ProposalText.columnDimension, 9, each -> ElementLabels.of(each.getDimension()));
        column(ProposalText.columnFrom, 10, each -> length(each, each.getFrom()));
        column(ProposalText.columnTo, 10, each -> length(each, each.getTo()));
        column(ProposalText.columnChange, 9, ProposalColumns::change);
        column(ProposalText.columnSpares, 40, each -> text(each.getReason())).setToolTipText(
                ProposalText.columnSparesHint);
        column(ProposalText.columnComment, 20, each -> text(each.getComment()));
    }

    private TableColumn column(String title, int weight, Function<Proposal, String> text) {
        TableViewerColumn column = new TableViewerColumn(table, SWT.NONE);
        column.getColumn().setText(title);
        column.setLabelProvider(ColumnLabelProvider.createTextProvider(each -> text.apply((Proposal) each)));
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, true));
        return column.getColumn();
    }

    private static String answer(Proposal proposal) {
        String answer = ElementLabels.of(proposal.getState());
        boolean toBeMade = proposal.getState() == ProposalState.OPEN || proposal.getState() == ProposalState.REFUSED;
        return toBeMade && !new ProposalChanges(proposal).isTimely() ? NLS.bind(ProposalText.outdated, answer) : answer;
    }

    private static String where(Proposal proposal) {
        String wall = proposal.getWall() == null ? "" : ElementLabels.of(proposal.getWall());
        return proposal.getOpening() == null ? wall : wall + ", " + ElementLabels.of(proposal.getOpening());
    }

    private static String change(Proposal proposal) {
        return Optional.ofNullable(proposal.getTo()).map(to -> to.minus(proposal.getFrom()))
                .map(change -> (change.signum() > 0 ? "+" : "") + length(proposal, change)).orElse("");
    }

    private static String length(Proposal proposal, Length length) {
        LengthFormat format = DisplayFormat.of(proposal);
        return length == null ? "" : format.format(length);
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
