package org.coursewright.core.session;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.UUID;

import org.coursewright.model.project.Marked;
import org.coursewright.model.project.Project;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.xmi.XMLResource;

/**
 * Ids that follow from what an element is, so that a project made twice from the same schedules is the same file twice.
 *
 * <p>The id of an element is a name-based UUID (RFC 4122, version 3) of its path: kind, and mark or position, from the
 * project down. It is kept from then on, whatever becomes of the mark.
 */
public final class ElementIds {

    private ElementIds() {
    }

    /**
     * Gives every element of a project that is in no file yet its id.
     *
     * @param project made in memory, in no resource
     * @throws IllegalArgumentException if it is in a resource, where ids must not change
     */
    public static void seed(Project project) {
        if (project.eResource() != null) {
            throw new IllegalArgumentException("The project has ids already; they are not changed.");
        }
        ProjectResource resource = ProjectResource.inOwnSet(URI.createURI("new" + ProjectStore.EXTENSION));
        resource.getContents().add(project);
        seed(resource, project, "");
    }

    private static void seed(XMLResource resource, EObject element, String path) {
        resource.setID(element, idOf(path));
        for (EObject child : element.eContents()) {
            seed(resource, child, path + "/" + step(child));
        }
    }

    private static String step(EObject child) {
        String feature = child.eContainingFeature().getName();
        if (child instanceof Marked marked && isAloneWithItsMark(marked)) {
            return feature + "=" + marked.getMark();
        }
        return feature + "#" + siblings(child).indexOf(child);
    }

    private static boolean isAloneWithItsMark(Marked element) {
        return element.getMark() != null && siblings(element).stream()
                .filter(other -> other instanceof Marked marked && element.getMark().equals(marked.getMark()))
                .count() == 1;
    }

    private static java.util.List<EObject> siblings(EObject child) {
        return child.eContainer().eContents().stream()
                .filter(other -> other.eContainingFeature() == child.eContainingFeature()).toList();
    }

    private static String idOf(String path) {
        UUID uuid = UUID.nameUUIDFromBytes(("coursewright" + path).getBytes(StandardCharsets.UTF_8));
        ByteBuffer bytes = ByteBuffer.allocate(2 * Long.BYTES).putLong(uuid.getMostSignificantBits())
                .putLong(uuid.getLeastSignificantBits());
        return "_" + Base64.getUrlEncoder().withoutPadding().encodeToString(bytes.array());
    }
}
