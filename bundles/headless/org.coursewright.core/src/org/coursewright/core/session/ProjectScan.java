package org.coursewright.core.session;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;

import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * A first look through a project file before anything is built from it: that it is well-formed XML, brings nothing in
 * from elsewhere, starts as a project and names each element once.
 */
final class ProjectScan {

    private static final int DEEPEST = 64;

    /** Far more than any building has, and few enough that reading them ends. */
    private static final int MOST_ELEMENTS = 100_000;

    private static final String XMI = "http://www.omg.org/XMI";

    private final Path file;
    private final String text;
    private final Map<String, Integer> lineOfId = new HashMap<>();
    private OptionalInt version = OptionalInt.empty();
    private int elements;

    private ProjectScan(Path file, String text) {
        this.file = file;
        this.text = text;
    }

    /**
     * @param file for messages
     * @param text whole text of the file
     * @return the schema version it was written in
     * @throws ProjectFileException at the first fault
     */
    static int versionOf(Path file, String text) throws ProjectFileException {
        ProjectScan scan = new ProjectScan(file, text);
        scan.run();
        return scan.version.orElseThrow();
    }

    private void run() throws ProjectFileException {
        try {
            XMLStreamReader reader = factory().createXMLStreamReader(new StringReader(text));
            refuseOtherDeclaration(reader);
            int depth = 0;
            while (reader.hasNext()) {
                int event = reader.next();
                depth += event == XMLStreamConstants.START_ELEMENT
                        ? 1
                        : event == XMLStreamConstants.END_ELEMENT ? -1 : 0;
                accept(event, depth, reader);
            }
        } catch (XMLStreamException e) {
            throw malformed(e);
        }
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
        return factory;
    }

    private void refuseOtherDeclaration(XMLStreamReader reader) throws ProjectFileException {
        String declared = reader.getCharacterEncodingScheme();
        if (declared != null && !declared.equalsIgnoreCase("UTF-8") && !declared.equalsIgnoreCase("US-ASCII")
                && !declared.equalsIgnoreCase("ASCII")) {
            throw fault(reader, "the file says that it is encoded as %s. Save it as UTF-8 and say so in its first line."
                    .formatted(declared));
        }
    }

    private void accept(int event, int depth, XMLStreamReader reader) throws ProjectFileException {
        if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
            throw fault(reader, "document types and entities are not allowed in a project file. Remove them.");
        }
        if (event != XMLStreamConstants.START_ELEMENT) {
            return;
        }
        if (depth > DEEPEST) {
            throw fault(reader, "elements are nested more than %d deep, which no project is. %s"
                    .formatted(DEEPEST, ProjectText.RESTORE));
        }
        elements++;
        if (elements > MOST_ELEMENTS) {
            throw fault(reader, "there are more than %d elements, which no project has. %s".formatted(MOST_ELEMENTS,
                    ProjectText.RESTORE));
        }
        if (depth == 1) {
            acceptRoot(reader);
        }
        acceptAttributes(reader);
    }

    private void acceptRoot(XMLStreamReader reader) throws ProjectFileException {
        String namespace = reader.getNamespaceURI() == null ? "" : reader.getNamespaceURI();
        version = SchemaVersion.of(namespace);
        if (version.isEmpty()) {
            throw fault(reader, "the file is not a Coursewright project: its root <%s> is of namespace \"%s\". "
                    .formatted(reader.getLocalName(), namespace) + "Choose a file that ends in .coursewright.");
        }
        if (version.getAsInt() == SchemaVersion.CURRENT && !reader.getLocalName().equals("Project")) {
            throw fault(reader, "the root of a project file is <Project>, not <%s>. %s"
                    .formatted(reader.getLocalName(), ProjectText.RESTORE));
        }
    }

    private void acceptAttributes(XMLStreamReader reader) throws ProjectFileException {
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            String name = reader.getAttributeLocalName(i);
            String value = reader.getAttributeValue(i);
            if (name.equals("href") || name.equals("schemaLocation")) {
                throw fault(reader, "<%s> refers to another file (%s=\"%s\"), which a project must not. Remove it."
                        .formatted(reader.getLocalName(), name, Shown.of(value)));
            }
            if (name.equals("id") && XMI.equals(reader.getAttributeNamespace(i))) {
                acceptId(reader, value);
            }
        }
    }

    private void acceptId(XMLStreamReader reader, String id) throws ProjectFileException {
        Integer first = lineOfId.putIfAbsent(id, reader.getLocation().getLineNumber());
        if (first != null) {
            throw fault(reader, "<%s> has the same xmi:id \"%s\" as an element in line %d. Give one of them another."
                    .formatted(reader.getLocalName(), Shown.of(id), first));
        }
    }

    private ProjectFileException fault(XMLStreamReader reader, String what) {
        return new ProjectFileException(file, place(reader.getLocation()), what, null);
    }

    private ProjectFileException malformed(XMLStreamException e) {
        Location at = e.getLocation();
        boolean atEnd = at != null && at.getCharacterOffset() >= text.stripTrailing().length() - 1;
        String what = atEnd
                ? "the file ends too early, so it was cut short. "
                : "the file is not well-formed XML here, so it is damaged or was changed by hand. ";
        return new ProjectFileException(file, at == null ? Place.UNKNOWN : place(at), what + ProjectText.RESTORE, e);
    }

    private static Place place(Location location) {
        return new Place(location.getLineNumber(), location.getColumnNumber());
    }
}
