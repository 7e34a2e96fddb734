package org.coursewright.model.edit;

import java.util.HashSet;
import java.util.Iterator;
import java.util.Optional;
import java.util.Set;

import org.coursewright.model.project.Marked;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Marks: the short names by which people tell walls, openings and everything else apart. */
public final class Marks {

    /** Greatest length of a mark (characters), common practice, no source: it must fit on a drawing. */
    public static final int LONGEST = 40;

    private Marks() {
    }

    /**
     * Whether an element may bear a mark.
     *
     * @param element in its project, or not in it yet
     * @param project an element of the project it belongs to
     * @param mark wanted
     * @return why not: blank, too long, or borne by another of its kind
     */
    public static Optional<Refusal> refusal(Marked element, EObject project, String mark) {
        if (mark == null || mark.isBlank()) {
            return Optional.of(Refusal.of("mark.blank", ElementLabels.of(element.eClass())));
        }
        if (mark.length() > LONGEST || !mark.equals(mark.strip())
                || mark.codePoints().anyMatch(Character::isISOControl)) {
            return Optional.of(Refusal.of("mark.form", mark.strip(), LONGEST));
        }
        return bearer(element, project, mark).map(
                other -> Refusal.of("mark.taken", mark, ElementLabels.of(element.eClass()), next(element, project)));
    }

    /**
     * A mark that no element of that kind bears yet.
     *
     * @param kind of element
     * @param project an element of the project
     * @param prefix what the mark starts with, such as "W"
     * @return the prefix with the least number that is free
     */
    public static String free(EClass kind, EObject project, String prefix) {
        Set<String> taken = new HashSet<>();
        for (Iterator<EObject> all = contents(project); all.hasNext();) {
            if (all.next() instanceof Marked other && other.eClass() == kind) {
                taken.add(other.getMark());
            }
        }
        int number = 1;
        while (taken.contains(prefix + number)) {
            number++;
        }
        return prefix + number;
    }

    private static String next(Marked element, EObject project) {
        return free(element.eClass(), project, element.eClass().getName().substring(0, 1));
    }

    private static Optional<Marked> bearer(Marked element, EObject project, String mark) {
        for (Iterator<EObject> all = contents(project); all.hasNext();) {
            if (all.next() instanceof Marked other && other != element && other.eClass() == element.eClass()
                    && mark.equals(other.getMark())) {
                return Optional.of(other);
            }
        }
        return Optional.empty();
    }

    private static Iterator<EObject> contents(EObject project) {
        return EcoreUtil.getRootContainer(project).eAllContents();
    }
}
