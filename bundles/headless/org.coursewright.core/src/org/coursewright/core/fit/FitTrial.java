package org.coursewright.core.fit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.Advice;
import org.coursewright.core.bond.BondTranslator;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Tries proposals on a copy of the project. */
final class FitTrial {

    private final Project project;

    FitTrial(Project project) {
        this.project = project;
    }

    /** @return marks of walls that, the proposals made, do not read back as the engine laid them */
    Set<String> strays(Advice advice) {
        Project copy = EcoreUtil.copy(project);
        FitChanges changes = new FitChanges(copy);
        Set<String> strays = new HashSet<>();
        advice.proposals().forEach(proposal -> {
            List<ProjectCommand> commands = changes.commands(advice, proposal);
            boolean made = commands.stream().map(FitTrial::execute).reduce(true, Boolean::logicalAnd);
            if (!made || commands.isEmpty()) {
                strays.add(proposal.adjustable().wall());
            }
        });
        BondRequest read = BondTranslator.translate(copy).request();
        Set<String> changed = new HashSet<>();
        advice.proposals().forEach(proposal -> changed.add(proposal.adjustable().wall()));
        changed.stream().filter(mark -> !face(read, mark).equals(face(advice.changed(), mark))).forEach(strays::add);
        return strays.isEmpty() && !read.equals(advice.changed()) ? changed : strays;
    }

    private static boolean execute(ProjectCommand command) {
        boolean possible = command.canExecute();
        if (possible) {
            command.execute();
        }
        return possible;
    }

    private static List<WallFace> face(BondRequest request, String mark) {
        return request.walls().stream().filter(face -> face.mark().equals(mark)).toList();
    }
}
