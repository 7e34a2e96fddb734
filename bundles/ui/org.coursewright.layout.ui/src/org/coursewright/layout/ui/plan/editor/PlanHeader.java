package org.coursewright.layout.ui.plan.editor;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.coursewright.model.building.Storey;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Above a plan: which storey is shown, what is shown of it, and what the editor has to say. */
final class PlanHeader extends Composite {

    private final StoreyChoice storey;
    private final StoreyChoice underlay;
    private final Map<PlanTools.Kind, Button> tools = new EnumMap<>(PlanTools.Kind.class);
    private final Label words;

    /** What the header asks its editor for. */
    interface Wishes {
        void show(Storey storey);

        void underlay(Optional<Storey> storey);

        void grid(boolean shown);

        void dimensions(boolean shown);

        void tool(PlanTools.Kind kind);

        void fit();

        void export();
    }

    PlanHeader(Composite parent, Wishes wishes) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(8, 4).spacing(8, 2).applyTo(this);
        Composite row = new Composite(this, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        RowLayout layout = new RowLayout();
        layout.center = true;
        layout.spacing = 8;
        layout.marginLeft = 0;
        row.setLayout(layout);
        storey = new StoreyChoice(row, PlanText.storey, Optional.empty(), chosen -> chosen.ifPresent(wishes::show));
        underlay = new StoreyChoice(row, PlanText.underlay, Optional.of(PlanText.noUnderlay), wishes::underlay);
        for (PlanTools.Kind kind : PlanTools.Kind.values()) {
            tools.put(kind, tool(row, kind, wishes));
        }
        check(row, PlanText.grid, wishes::grid);
        check(row, PlanText.dimensions, wishes::dimensions);
        push(row, PlanText.fit, wishes::fit);
        push(row, PlanText.export, wishes::export);
        words = new Label(this, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(words);
    }

    private static Button tool(Composite row, PlanTools.Kind kind, Wishes wishes) {
        Button button = new Button(row, SWT.TOGGLE);
        button.setText(PlanText.of(kind));
        button.addListener(SWT.Selection, event -> wishes.tool(button.getSelection() ? kind : PlanTools.Kind.SELECT));
        return button;
    }

    /** Shows which tool is taken up. */
    void show(PlanTools.Kind active) {
        tools.forEach((kind, button) -> button.setSelection(kind == active));
    }

    private static void check(Composite row, String text, Consumer<Boolean> changed) {
        Button button = new Button(row, SWT.CHECK);
        button.setText(text);
        button.setSelection(true);
        button.addListener(SWT.Selection, event -> changed.accept(button.getSelection()));
    }

    private static void push(Composite row, String text, Runnable action) {
        Button button = new Button(row, SWT.PUSH);
        button.setText(text);
        button.addListener(SWT.Selection, event -> action.run());
    }

    /** Shows which storeys there are and which are chosen. */
    void show(List<Storey> storeys, Optional<Storey> chosen, Optional<Storey> under) {
        storey.show(storeys, chosen);
        underlay.show(storeys.stream().filter(each -> chosen.filter(each::equals).isEmpty()).toList(), under);
    }

    /** Says something; a refusal in the colour of trouble. */
    void say(String text, Optional<Color> trouble) {
        words.setText(text.replace("&", "&&"));
        words.setForeground(trouble.orElse(null));
        words.requestLayout();
    }
}
