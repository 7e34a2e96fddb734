package org.coursewright.layout.ui.plan.editor;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.diagram.ui.editor.HeaderRow;
import org.coursewright.model.building.Storey;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
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
        HeaderRow row = new HeaderRow(this);
        storey = new StoreyChoice(row, PlanText.storey, Optional.empty(), chosen -> chosen.ifPresent(wishes::show));
        underlay = new StoreyChoice(row, PlanText.underlay, Optional.of(PlanText.noUnderlay), wishes::underlay);
        for (PlanTools.Kind kind : PlanTools.Kind.values()) {
            tools.put(kind, row.toggle(PlanText.of(kind),
                    taken -> wishes.tool(taken ? kind : PlanTools.Kind.SELECT)));
        }
        row.check(PlanText.grid, wishes::grid).setSelection(true);
        row.check(PlanText.dimensions, wishes::dimensions).setSelection(true);
        row.push(PlanText.fit, wishes::fit);
        row.push(PlanText.export, wishes::export);
        words = new Label(this, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(words);
    }

    /** Shows which tool is taken up. */
    void show(PlanTools.Kind active) {
        tools.forEach((kind, button) -> button.setSelection(kind == active));
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
