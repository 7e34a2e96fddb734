package org.coursewright.layout.ui.proposal;

import java.util.List;
import java.util.function.Consumer;

import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.proposal.Proposal;
import org.coursewright.model.proposal.ProposalState;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The table of proposals, with the buttons that answer them above it. */
final class ProposalsPanel extends Composite {

    private final Choices choices;
    private final Label words;
    private final TableViewer table;
    private final Button find;
    private final Button cancel;
    private final Button accept;
    private final Button refuse;
    private final Button reopen;
    private final Button comment;
    private boolean open;

    /** What can be chosen. */
    interface Choices {

        /** Look for proposals. */
        void find();

        /** Look no further. */
        void cancel();

        /**
         * @param proposals at least one
         * @param state what becomes of them
         */
        void answer(List<Proposal> proposals, ProposalState state);

        /** @param proposals at least one */
        void comment(List<Proposal> proposals);

        /** @param proposals those that are selected, perhaps none */
        void selected(List<Proposal> proposals);
    }

    ProposalsPanel(Composite parent, Choices choices) {
        super(parent, SWT.NONE);
        this.choices = choices;
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(0, 4).applyTo(this);
        Composite head = new Composite(this, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(12, 0).applyTo(head);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        Composite buttons = new Composite(head, SWT.NONE);
        buttons.setLayout(row());
        find = button(buttons, ProposalText.find, shown -> choices.find());
        cancel = button(buttons, ProposalText.cancel, shown -> choices.cancel());
        accept = button(buttons, ProposalText.accept, shown -> choices.answer(shown, ProposalState.ACCEPTED));
        refuse = button(buttons, ProposalText.refuse, shown -> choices.answer(shown, ProposalState.REFUSED));
        reopen = button(buttons, ProposalText.reopen, shown -> choices.answer(shown, ProposalState.OPEN));
        comment = button(buttons, ProposalText.comment, choices::comment);
        words = new Label(head, SWT.WRAP);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(1, SWT.DEFAULT)
                .applyTo(words);
        table = createTable();
        searching(false);
    }

    private static RowLayout row() {
        RowLayout row = new RowLayout();
        row.marginLeft = 0;
        row.marginTop = 0;
        row.marginBottom = 0;
        row.spacing = 6;
        return row;
    }

    private Button button(Composite parent, String text, Consumer<List<Proposal>> action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.addListener(SWT.Selection, event -> action.accept(selection()));
        return button;
    }

    private TableViewer createTable() {
        Composite frame = new Composite(this, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(frame);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        TableViewer made = new TableViewer(frame, SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL | SWT.BORDER);
        made.getTable().setHeaderVisible(true);
        made.getTable().setLinesVisible(true);
        new ProposalColumns(made, columns).add();
        made.setContentProvider(ArrayContentProvider.getInstance());
        made.addSelectionChangedListener(event -> {
            enable();
            choices.selected(selection());
        });
        AccessibleName.give(made.getControl(), ProposalText.accessibleName);
        return made;
    }

    /** The proposals that are selected, in the order they were offered in. */
    List<Proposal> selection() {
        IStructuredSelection selection = table.getStructuredSelection();
        return List.of(selection.toArray()).stream().map(Proposal.class::cast).toList();
    }

    /**
     * @param proposals to be listed
     * @param there whether a project is open
     */
    void show(List<Proposal> proposals, boolean there) {
        open = there;
        table.setInput(proposals);
        enable();
    }

    /** Shows a sentence over the table. */
    void say(String sentence) {
        words.setText(sentence);
        layout(true, true);
    }

    /** Whether proposals are being looked for. */
    void searching(boolean now) {
        cancel.setEnabled(now);
        enable();
    }

    private void enable() {
        boolean any = !selection().isEmpty();
        find.setEnabled(open && !cancel.getEnabled());
        accept.setEnabled(any && selection().stream().anyMatch(each -> each.getState() != ProposalState.ACCEPTED));
        refuse.setEnabled(any && selection().stream().anyMatch(each -> each.getState() == ProposalState.OPEN));
        reopen.setEnabled(any && selection().stream().anyMatch(each -> each.getState() == ProposalState.REFUSED));
        comment.setEnabled(selection().size() == 1);
    }

    /** @return what several proposals are called together */
    static String several(List<Proposal> proposals) {
        return proposals.size() == 1
                ? NLS.bind(ProposalText.alone, ElementLabels.of(proposals.get(0)))
                : NLS.bind(ProposalText.several, proposals.size());
    }

    @Override
    public boolean setFocus() {
        return table.getControl().setFocus();
    }
}
