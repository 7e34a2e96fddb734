package org.coursewright.architecture;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** What the rules ask of an XML file of the repository. */
record Xml(Document document) {

    static Xml parse(String text) {
        try {
            return new Xml(DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(
                    new StringReader(text))));
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new IllegalArgumentException("Not well-formed: " + text.lines().limit(3).toList(), e);
        }
    }

    List<Element> elements(String tag) {
        return all().filter(element -> element.getTagName().equals(tag)).toList();
    }

    /** All attributes of all elements with one of these names. */
    List<String> attributes(List<String> names) {
        return all().flatMap(element -> IntStream.range(0, element.getAttributes().getLength()).mapToObj(
                index -> (Attr) element.getAttributes().item(index))).filter(attribute -> names.contains(
                        attribute
                                .getName()))
                .map(Attr::getValue).toList();
    }

    private Stream<Element> all() {
        var nodes = document.getElementsByTagName("*");
        return IntStream.range(0, nodes.getLength()).mapToObj(nodes::item).map(Element.class::cast);
    }
}
