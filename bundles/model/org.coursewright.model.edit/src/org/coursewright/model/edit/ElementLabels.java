package org.coursewright.model.edit;

import java.util.List;
import java.util.Locale;

import org.coursewright.model.building.Junction;
import org.coursewright.model.building.JunctionEnd;
import org.coursewright.model.building.Opening;
import org.coursewright.model.project.Marked;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;

/** What elements are called, the same in every view, message and report. */
public final class ElementLabels {

    private ElementLabels() {
    }

    /**
     * @param element of a project
     * @return kind and mark, such as "Wall W3", or what else tells it best
     */
    public static String of(EObject element) {
        if (element instanceof Project project && isGiven(project.getName())) {
            return project.getName();
        }
        if (element instanceof Junction junction) {
            return junctionLabel(junction);
        }
        if (element instanceof Marked marked) {
            String mark = isGiven(marked.getMark()) ? marked.getMark() : EditTexts.of("label.unmarked");
            return EditTexts.of("label.marked", kindOf(element), mark);
        }
        return kindOf(element);
    }

    /**
     * @param elements of a project, at least one
     * @return what they are called together, such as "Wall W3 and 2 more"
     */
    public static String of(List<? extends EObject> elements) {
        String first = of(elements.get(0));
        return switch (elements.size()) {
            case 1 -> first;
            case 2 -> EditTexts.of("label.pair", first, of(elements.get(1)));
            default -> EditTexts.of("label.several", first, elements.size() - 1);
        };
    }

    /**
     * @param element of a project
     * @return what kind of thing it is, such as "Wall"; openings are told apart by what they are for
     */
    public static String kindOf(EObject element) {
        return element instanceof Opening opening ? of(opening.getKind()) : of(element.eClass());
    }

    /**
     * @param kind a class of the model
     * @return its name for people, such as "Wall"
     */
    public static String of(EClass kind) {
        return EditTexts.of("kind." + kind.getName());
    }

    /**
     * @param choice a literal of an enumeration that the model uses
     * @return its name for people, such as "Window"
     */
    public static String of(Enum<?> choice) {
        return EditTexts.of("choice." + choice.getDeclaringClass().getSimpleName() + "." + choice.name());
    }

    /**
     * @param element of a project
     * @return the key of its icon: lower case, words joined by hyphens, such as "grade-beam"
     */
    public static String iconKey(EObject element) {
        String name = element instanceof Opening opening ? opening.getKind().getName() : element.eClass().getName();
        return name.replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }

    private static String junctionLabel(Junction junction) {
        String walls = junction.getEnds().stream().map(JunctionEnd::getWall).filter(wall -> wall != null)
                .map(wall -> isGiven(wall.getMark()) ? wall.getMark() : EditTexts.of("label.unmarked"))
                .reduce((a, b) -> EditTexts.of("label.joined", a, b)).orElseGet(() -> EditTexts.of("label.unmarked"));
        return EditTexts.of("label.marked", kindOf(junction), walls);
    }

    private static boolean isGiven(String text) {
        return text != null && !text.isBlank();
    }
}
