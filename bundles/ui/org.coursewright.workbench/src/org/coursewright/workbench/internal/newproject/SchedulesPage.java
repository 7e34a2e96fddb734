package org.coursewright.workbench.internal.newproject;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.exchange.schedule.ScheduleFiles;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.LengthFormat;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Asks for the architect's schedules, and what a bare number in them means. */
final class SchedulesPage extends WizardPage {

    private static final int COLUMNS = 3;
    private static final String SCHEDULES = "*.csv";

    private final DisplayUnit usual;
    private FileChoice walls;
    private FileChoice openings;
    private FileChoice units;
    private Button millimetres;

    SchedulesPage(DisplayUnit usual) {
        super(SchedulesPage.class.getSimpleName(), WizardText.schedulesTitle, null);
        this.usual = usual;
        setDescription(WizardText.schedulesDescription);
        setPageComplete(false);
    }

    @Override
    public void createControl(Composite parent) {
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(COLUMNS).applyTo(page);
        walls = new FileChoice(page, WizardText.walls, SWT.OPEN, SCHEDULES, this::check);
        openings = new FileChoice(page, WizardText.openings, SWT.OPEN, SCHEDULES, this::check);
        units = new FileChoice(page, WizardText.units, SWT.OPEN, SCHEDULES, this::check);
        createUnits(page);
        setControl(page);
    }

    private void createUnits(Composite page) {
        new Label(page, SWT.NONE).setText(WizardText.bareNumbers);
        Composite choices = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(choices);
        GridDataFactory.fillDefaults().span(COLUMNS - 1, 1).applyTo(choices);
        Button inches = new Button(choices, SWT.RADIO);
        inches.setText(WizardText.inches);
        inches.setSelection(usual == DisplayUnit.INCH);
        millimetres = new Button(choices, SWT.RADIO);
        millimetres.setText(WizardText.millimetres);
        millimetres.setSelection(usual == DisplayUnit.MILLIMETRE);
    }

    private void check() {
        Optional<Path> missing = Stream.of(walls, openings, units)
                .flatMap(choice -> choice.file().stream()).filter(file -> !Files.isRegularFile(file)).findFirst();
        setErrorMessage(missing.map(file -> NLS.bind(WizardText.noSuchFile, file)).orElse(null));
        setPageComplete(missing.isEmpty() && walls.file().isPresent() && openings.file().isPresent());
    }

    /** @return the schedules, once the page is complete */
    ScheduleFiles files() {
        return new ScheduleFiles(walls.file().orElseThrow(), openings.file().orElseThrow(), units.file());
    }

    /** @return what a bare number means */
    LengthFormat format() {
        return millimetres.getSelection() ? LengthFormat.MILLIMETRES : LengthFormat.INCHES;
    }
}
