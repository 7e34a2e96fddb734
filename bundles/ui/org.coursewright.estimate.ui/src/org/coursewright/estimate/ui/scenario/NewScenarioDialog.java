package org.coursewright.estimate.ui.scenario;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.UnitSource;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.Refusal;
import org.coursewright.model.edit.command.AddScenarioCommand;
import org.coursewright.model.estimate.SpecialChoice;
import org.coursewright.model.project.Project;
import org.coursewright.workbench.WorkbenchIds;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Asks what is to be different in a new scenario. */
final class NewScenarioDialog extends TitleAreaDialog {

    private static final int FIELD_WIDTH = 420;
    private static final ImageDescriptor BANNER = ResourceLocator.imageDescriptorFromBundle(WorkbenchIds.BUNDLE,
            "icons/scenario-banner.png").orElseThrow();

    private final Project project;
    private Text mark;
    private Text note;
    private ChoiceField<SpecialChoice> specials;
    private CheckedElements<Wall> walls;
    private ChoiceField<Bond> bond;
    private ChoiceField<Optional<UnitType>> laidOf;
    private CheckedElements<UnitType> units;
    private ChoiceField<UnitSource> source;
    private ScenarioDraft draft;

    /**
     * @param parent of the dialog
     * @param project that the scenario is for
     */
    NewScenarioDialog(Shell parent, Project project) {
        super(parent);
        this.project = project;
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(ScenarioText.newTitle);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(10, 10).spacing(10, 8).applyTo(area);
        mark = text(area, ScenarioText.newMark);
        note = text(area, ScenarioText.newNote);
        specials = new ChoiceField<>(area, ScenarioText.newSpecials, SpecialChoice.VALUES, ElementLabels::of,
                this::changed);
        Composite lists = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true).applyTo(lists);
        GridLayoutFactory.fillDefaults().numColumns(2).equalWidth(true).spacing(10, 0).applyTo(lists);
        createWalls(group(lists, ScenarioText.newWalls));
        createUnits(group(lists, ScenarioText.newUnits));
        setTitle(ScenarioText.newTitle);
        setTitleImage(new LocalResourceManager(JFaceResources.getResources(), area).create(BANNER));
        return area;
    }

    private Text text(Composite area, String label) {
        new Label(area, SWT.NONE).setText(label);
        Text field = new Text(area, SWT.BORDER);
        field.addListener(SWT.Modify, event -> changed());
        AccessibleName.give(field, label);
        GridDataFactory.fillDefaults().grab(true, false).hint(FIELD_WIDTH, SWT.DEFAULT).applyTo(field);
        return field;
    }

    private static Group group(Composite parent, String title) {
        Group group = new Group(parent, SWT.NONE);
        group.setText(title);
        GridLayoutFactory.swtDefaults().numColumns(2).applyTo(group);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(group);
        return group;
    }

    private void createWalls(Group group) {
        walls = new CheckedElements<>(group, Wall.class, allWalls(), ScenarioText.newWalls, this::changed);
        bond = new ChoiceField<>(group, ScenarioText.newBond, Bond.VALUES, ElementLabels::of, this::changed);
        laidOf = new ChoiceField<>(group, ScenarioText.newLaidOf, Stream.concat(Stream.of(Optional
                .<UnitType>empty()), allUnits().stream().map(Optional::of)).toList(), unit -> unit.map(
                        ElementLabels::of).orElse(ScenarioText.newSameUnits),
                this::changed);
    }

    private void createUnits(Group group) {
        units = new CheckedElements<>(group, UnitType.class, allUnits(), ScenarioText.newUnits, this::changed);
        source = new ChoiceField<>(group, ScenarioText.newSource, UnitSource.VALUES, ElementLabels::of, this::changed);
    }

    private List<Wall> allWalls() {
        return Stream.ofNullable(project.getBuilding()).flatMap(building -> building.getStoreys().stream()).flatMap(
                storey -> storey.getWalls().stream()).toList();
    }

    private List<UnitType> allUnits() {
        return Stream.ofNullable(project.getCatalogue()).flatMap(catalogue -> catalogue.getUnitTypes().stream())
                .toList();
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, ScenarioText.newAdd, true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
        changed();
    }

    /** Says what is missing, or that it may be added. */
    private void changed() {
        Control ok = getButton(IDialogConstants.OK_ID);
        if (ok == null) {
            return;
        }
        draft = new ScenarioDraft(mark.getText().strip(), note.getText().strip(), specials.chosen(), walls.ticked(),
                bond.chosen(), laidOf.chosen(), units.ticked(), source.chosen());
        Optional<String> missing = draft.isDifferent()
                ? command().refusal().map(Refusal::reason)
                : Optional.of(ScenarioText.newSame);
        boolean untouched = draft.mark().isEmpty();
        setMessage(untouched ? ScenarioText.newMessage : missing.orElse(ScenarioText.newMessage));
        ok.setEnabled(missing.isEmpty());
    }

    /** @return the edit that adds what was said last */
    AddScenarioCommand command() {
        return new AddScenarioCommand(project, draft.scenario());
    }
}
