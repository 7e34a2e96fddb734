package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import javax.xml.parsers.DocumentBuilderFactory;

import org.coursewright.diagram.ui.picture.PicturePrint;
import org.coursewright.diagram.ui.picture.PngFile;
import org.coursewright.diagram.ui.picture.SvgFile;
import org.coursewright.layout.ui.plan.paint.PlanPicture;
import org.coursewright.layout.ui.plan.part.StoreyPaintings;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/** The plan leaves the window as a picture, a drawing or a page. */
class PlanPictureTest extends OnDemoPlan {

    @Test
    void pictureShowsTheWholePlan() throws Exception {
        Path png = folder.resolve("plan.png");
        PlanPicture picture = new StoreyPaintings(plan.editor().state()).picture().orElseThrow();
        new PngFile(png).write(picture, Display.getCurrent());

        ImageData image = new ImageData(png.toString());
        assertEquals(picture.size().width, image.width);
        assertTrue(IntStream.range(0, image.width * image.height)
                .map(at -> image.getPixel(at % image.width, at / image.width)).distinct().count() > 8);
    }

    @Test
    void drawingHasTheWordsOfThePlan() throws Exception {
        Path svg = folder.resolve("plan.svg");
        new SvgFile(svg).write(new StoreyPaintings(plan.editor().state()).picture().orElseThrow());

        Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(svg.toFile());
        NodeList texts = document.getElementsByTagName("text");
        Set<String> words = IntStream.range(0, texts.getLength()).mapToObj(i -> texts.item(i).getTextContent())
                .collect(Collectors.toSet());
        assertTrue(words.containsAll(Set.of("39'-10\"", "5'-4 3/4\"", "N1", "D1", "W1")), words::toString);
        assertTrue(document.getElementsByTagName("polygon").getLength() >= 26);
    }

    @Test
    void printFitsThePage() {
        PlanPicture picture = new StoreyPaintings(plan.editor().state()).picture().orElseThrow();
        Rectangle page = new Rectangle(10, 20, 2000, 3000);

        Rectangle printed = new PicturePrint(picture).fitted(page);

        assertEquals(page, page.union(printed));
        assertTrue(printed.width == 2000 || printed.height == 3000);
        assertEquals((double) picture.size().width / picture.size().height, (double) printed.width / printed.height,
                0.01);
    }
}
