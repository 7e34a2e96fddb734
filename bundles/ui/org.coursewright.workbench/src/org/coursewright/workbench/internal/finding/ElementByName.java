package org.coursewright.workbench.internal.finding;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.project.Marked;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.EObject;

/**
 * Finds elements by what findings call them: the kind and the mark, and perhaps more behind a comma or a space, such as
 * {@code wall W3, course 2} or {@code opening D1 in wall W3}.
 *
 * @param project to which the elements belong
 */
record ElementByName(Project project) {

    /** @return the element whose kind and mark the name begins with, the project itself if there is none */
    Optional<EObject> find(String name) {
        String wanted = name.toLowerCase(Locale.ROOT);
        return marked().filter(element -> begins(wanted, nameOf(element)))
                .max(Comparator.comparingInt(element -> nameOf(element).length())).map(EObject.class::cast)
                .or(() -> Optional.of(project));
    }

    private Stream<Marked> marked() {
        return StreamSupport.stream(Spliterators.spliteratorUnknownSize(project.eAllContents(), Spliterator.ORDERED),
                false).filter(Marked.class::isInstance).map(Marked.class::cast);
    }

    private static String nameOf(Marked element) {
        return (ElementLabels.of(element.eClass()) + " " + element.getMark()).toLowerCase(Locale.ROOT);
    }

    private static boolean begins(String text, String start) {
        return text.startsWith(start)
                && (text.length() == start.length() || !Character.isLetterOrDigit(text.charAt(start.length())));
    }
}
