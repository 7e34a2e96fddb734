package org.coursewright.core.session;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;

import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Takes the text of an older project file through one migration after the other. */
final class MigrationChain {

    private final Map<Integer, Migration> byVersion;

    MigrationChain(List<Migration> migrations) {
        byVersion = migrations.stream().collect(Collectors.toMap(Migration::fromVersion, Function.identity()));
    }

    /**
     * @param file for messages
     * @param text whole text of the file, scanned before
     * @param version it was written in, not the current one
     * @return the text in the current version
     * @throws ProjectFileException if there is no way to the current version
     */
    String toCurrent(Path file, String text, int version) throws ProjectFileException {
        refuseUnreachable(file, version);
        try {
            Document document = parse(text);
            for (int at = version; at < SchemaVersion.CURRENT; at++) {
                document = byVersion.get(at).migrate(document);
            }
            return print(document);
        } catch (ParserConfigurationException | SAXException | IOException | TransformerException e) {
            throw new ProjectFileException(file, "the file is of the older version %d and cannot be converted. %s"
                    .formatted(version, ProjectText.RESTORE), e);
        }
    }

    private void refuseUnreachable(Path file, int version) throws ProjectFileException {
        if (version > SchemaVersion.CURRENT) {
            throw new ProjectFileException(file, ("the file is of schema version %d, this program reads up to %d. "
                    + "Open it with a newer version of Coursewright.").formatted(version, SchemaVersion.CURRENT));
        }
        for (int at = version; at < SchemaVersion.CURRENT; at++) {
            if (!byVersion.containsKey(at)) {
                throw new ProjectFileException(file, ("the file is of schema version %d, which this program cannot "
                        + "convert. Open and save it with an older version of Coursewright first.").formatted(version));
            }
        }
    }

    private static Document parse(String text) throws ParserConfigurationException, SAXException, IOException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(text)));
    }

    private static String print(Document document) throws TransformerException {
        StringWriter out = new StringWriter();
        TransformerFactory.newDefaultInstance().newTransformer().transform(new DOMSource(document),
                new StreamResult(out));
        return out.toString();
    }
}
