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
 * {@code wall W3, course 2}, {@code opening D1 in wall W3} or {@code walls W3 and W4}.
 *
 * @param project to which the elements belong
 */
record ElementByName(Project project) {

    private static final String SEVERAL = "s ";

    /** @return the element whose kind and mark the name begins with, the project itself if there is none */
    Optional<EObject> find(String name) {
        String wanted = name.toLowerCase(Locale.ROOT);
        return marked().filter(element -> begins(wanted, element))
                .max(Comparator.comparingInt(element -> element.getMark().length())).map(EObject.class::cast)
                .or(() -> Optional.of(project));
    }

    private Stream<Marked> marked() {
        return StreamSupport.stream(Spliterators.spliteratorUnknownSize(project.eAllContents(), Spliterator.ORDERED),
                false).filter(Marked.class::isInstance).map(Marked.class::cast)
                .filter(element -> element.getMark() != null);
    }

    private static boolean begins(String text, Marked element) {
        String kind = ElementLabels.of(element.eClass());
        return Stream.of(kind + " ", kind + SEVERAL).map(each -> (each + element.getMark()).toLowerCase(Locale.ROOT))
                .anyMatch(name -> begins(text, name));
    }

    private static boolean begins(String text, String name) {
        return text.startsWith(name)
                && (text.length() == name.length() || !Character.isLetterOrDigit(text.charAt(name.length())));
    }
}
