package org.coursewright.exchange.sheet.file;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;

import org.coursewright.exchange.sheet.page.Anchor;
import org.coursewright.exchange.sheet.page.Label;
import org.coursewright.exchange.sheet.page.Mark;
import org.coursewright.exchange.sheet.page.Pen;
import org.coursewright.exchange.sheet.page.Shape;
import org.coursewright.exchange.sheet.page.SheetPage;
import org.coursewright.exchange.sheet.page.Spot;
import org.coursewright.exchange.sheet.page.Stroke;

/** A page as SVG 1.1, one user unit to the millimetre. */
final class SvgSheet {

    private static final int DECIMALS = 3;
    private static final double BOLD = 0.035;

    private final double height;
    private final StringBuilder svg = new StringBuilder();

    private SvgSheet(double height) {
        this.height = height;
    }

    static byte[] bytes(SheetPage page) {
        SvgSheet sheet = new SvgSheet(page.height());
        sheet.write(page);
        return sheet.svg.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void write(SheetPage page) {
        svg.append("""
                <?xml version="1.0" encoding="UTF-8"?>
                <svg xmlns="http://www.w3.org/2000/svg" width="%1$smm" height="%2$smm" viewBox="0 0 %1$s %2$s"
                    font-family="Liberation Sans, Arial, Helvetica, sans-serif">
                <title>%3$s</title>
                <rect width="%1$s" height="%2$s" fill="#fff"/>
                """.formatted(number(page.width()), number(page.height()), escaped(page.title())));
        page.marks().forEach(this::write);
        svg.append("</svg>\n");
    }

    private void write(Mark mark) {
        if (mark instanceof Stroke stroke) {
            svg.append("<path d=\"M%s L%s\"%s/>\n".formatted(place(stroke.from()), place(stroke.to()), pen(stroke
                    .pen())));
        } else if (mark instanceof Shape shape) {
            String grey = "%02x".formatted(shape.fill().grey());
            svg.append("<polygon points=\"%s\" fill=\"#%s%s%s\"%s/>\n".formatted(shape.corners().stream().map(
                    this::place).collect(Collectors.joining(" ")), grey, grey, grey, pen(shape.outline())));
        } else if (mark instanceof Label label) {
            write(label);
        }
    }

    private void write(Label label) {
        String turn = label.turned() ? " transform=\"rotate(-90 %s)\"".formatted(place(label.at())) : "";
        String bold = label.strong()
                ? " stroke=\"#000\" stroke-width=\"%s\"".formatted(number(label.size() * BOLD))
                : "";
        svg.append("<text x=\"%s\" y=\"%s\" dy=\"%s\" font-size=\"%s\" text-anchor=\"%s\"%s%s>%s</text>\n".formatted(
                number(label.at().x()), number(height - label.at().y()), number(Label.HALF_CAPITAL * label.size()),
                number(label.size()), anchor(label.anchor()), turn, bold, escaped(label.text())));
    }

    private static String anchor(Anchor anchor) {
        return switch (anchor) {
            case START -> "start";
            case MIDDLE -> "middle";
            case END -> "end";
        };
    }

    private static String pen(Pen pen) {
        if (pen == Pen.NONE) {
            return "";
        }
        String dashes = pen.dashes().isEmpty()
                ? ""
                : " stroke-dasharray=\"%s\"".formatted(pen.dashes().stream().map(SvgSheet::number).collect(Collectors
                        .joining(" ")));
        return " stroke=\"#000\" stroke-width=\"%s\"%s".formatted(number(pen.width()), dashes);
    }

    private String place(Spot spot) {
        return number(spot.x()) + "," + number(height - spot.y());
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
