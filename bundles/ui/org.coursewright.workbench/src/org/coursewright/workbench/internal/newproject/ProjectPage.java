package org.coursewright.workbench.internal.newproject;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.coursewright.core.session.ProjectStore;
import org.coursewright.exchange.schedule.RuleChoice;
import org.coursewright.exchange.schedule.RuleTextException;
import org.coursewright.measure.LengthFormat;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Asks what the project is called, where it is kept and how its walls are laid. */
final class ProjectPage extends WizardPage {

    private static final int COLUMNS = 3;

    private final SchedulesPage schedules;
    private Text name;
    private FileChoice file;
    private Text rule;

    ProjectPage(SchedulesPage schedules) {
        super(ProjectPage.class.getSimpleName(), WizardText.projectTitle, null);
        this.schedules = schedules;
        setDescription(WizardText.projectDescription);
        setPageComplete(false);
    }

    @Override
    public void createControl(Composite parent) {
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(COLUMNS).applyTo(page);
        name = text(page, WizardText.name, "");
        file = new FileChoice(page, WizardText.file, SWT.SAVE, "*" + ProjectStore.EXTENSION, this::check);
        rule = text(page, WizardText.rule, WizardText.ruleHint);
        setControl(page);
    }

    private Text text(Composite page, String label, String hint) {
        new Label(page, SWT.NONE).setText(NLS.bind(WizardText.label, label));
        Text text = new Text(page, SWT.BORDER);
        text.setMessage(hint);
        GridDataFactory.fillDefaults().span(COLUMNS - 1, 1).grab(true, false).applyTo(text);
        AccessibleName.give(text, label);
        text.addListener(SWT.Modify, event -> check());
        return text;
    }

    private void check() {
        Optional<String> wrong = file.file().filter(path -> !hasFolder(path))
                .map(path -> NLS.bind(WizardText.noSuchFolder, path)).or(this::ruleRefusal);
        setErrorMessage(wrong.orElse(null));
        boolean replaces = wrong.isEmpty() && file.file().isPresent() && Files.exists(target());
        setMessage(replaces ? NLS.bind(WizardText.replaces, target()) : null, WARNING);
        setPageComplete(wrong.isEmpty() && file.file().isPresent() && !projectName().isEmpty());
    }

    private static boolean hasFolder(Path path) {
        return Files.isDirectory(path.toAbsolutePath().getParent());
    }

    private Optional<String> ruleRefusal() {
        try {
            rule(schedules.format());
            return Optional.empty();
        } catch (RuleTextException e) {
            return Optional.of(e.getMessage());
        }
    }

    /** @return how walls are laid */
    RuleChoice rule(LengthFormat format) throws RuleTextException {
        return rule.getText().isBlank()
                ? RuleChoice.usual(format.unit())
                : RuleChoice.parse(rule.getText().strip(), format);
    }

    /** @return what the project is called, once the page is complete */
    String projectName() {
        return name.getText().strip();
    }

    /** @return the file to make, once the page is complete */
    Path target() {
        Path named = file.file().orElseThrow().toAbsolutePath().normalize();
        return named.toString().endsWith(ProjectStore.EXTENSION)
                ? named
                : named.resolveSibling(named.getFileName() + ProjectStore.EXTENSION);
    }
}
