package org.wickwise.report;

import java.util.List;
import org.apache.commons.text.StringEscapeUtils;
import org.wickwise.text.Numbers;

/** The marks of an SVG picture in the order of drawing. Words are escaped, numbers have a point in every locale. */
final class Drawing {

    /** A white rim that keeps words readable where a line passes behind them. */
    static final String HALO = "paint-order=\"stroke\" stroke=\"#ffffff\" stroke-width=\"3\"";

    private static final double BETWEEN_LINES = 4;

    private final StringBuilder marks = new StringBuilder();

    /** Opens a group; what is drawn until it is closed belongs to it. */
    void open(String style) {
        marks.append("<g ").append(style).append(">\n");
    }

    void close() {
        marks.append("</g>\n");
    }

    /** What a group means, for readers who listen and for those who point at it. */
    void meaning(String words) {
        marks.append("<title>").append(escaped(words)).append("</title>\n");
    }

    void line(double x1, double y1, double x2, double y2, String style) {
        marks.append("<line x1=\"" + number(x1) + "\" y1=\"" + number(y1) + "\" x2=\"" + number(x2) + "\" y2=\""
                + number(y2) + "\" " + style + "/>\n");
    }

    void rectangle(double x, double y, double width, double height, String style) {
        marks.append("<rect x=\"" + number(x) + "\" y=\"" + number(y) + "\" width=\"" + number(width) + "\" height=\""
                + number(height) + "\" " + style + "/>\n");
    }

    void circle(double x, double y, double radius, String style) {
        marks.append("<circle cx=\"" + number(x) + "\" cy=\"" + number(y) + "\" r=\"" + number(radius) + "\" " + style
                + "/>\n");
    }

    /** @param path commands and coordinates as SVG writes them */
    void path(String path, String style) {
        marks.append("<path d=\"" + path + "\" " + style + "/>\n");
    }

    void text(double x, double y, String style, String words) {
        marks.append("<text x=\"" + number(x) + "\" y=\"" + number(y) + "\"" + (style.isEmpty() ? "" : " " + style)
                + ">" + escaped(words) + "</text>\n");
    }

    /** Lines of text under each other; the first one at y. */
    void texts(double x, double y, double lineHeight, String style, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            text(x, y + i * lineHeight, style, lines.get(i));
        }
    }

    /** Words broken at a width, the first line at y; gives the y of what follows. */
    double paragraph(double x, double y, double width, double fontSize, String style, String words) {
        double lineHeight = fontSize + BETWEEN_LINES;
        List<String> lines = Lettering.wrapped(words, width, fontSize);
        texts(x, y, lineHeight, style, lines);
        return y + lines.size() * lineHeight;
    }

    /** What was drawn apart, on top of what is here. */
    void add(Drawing other) {
        marks.append(other.marks);
    }

    /**
     * The whole picture.
     *
     * @param name a word that sets the picture's ids apart from those of other pictures on a page
     * @param title what it shows, in a line
     * @param description what it shows, in words, for those who cannot see it
     */
    String page(String name, double width, double height, String title, String description) {
        String size = "width=\"" + number(width) + "\" height=\"" + number(height) + "\"";
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + number(width) + " " + number(height) + "\" "
                + size + " font-family=\"sans-serif\" font-size=\"12\" role=\"img\" aria-labelledby=\"" + name
                + "-title " + name + "-description\">\n<title id=\"" + name + "-title\">" + escaped(title)
                + "</title>\n<desc id=\"" + name + "-description\">" + escaped(description) + "</desc>\n<rect " + size
                + " fill=\"#ffffff\"/>\n" + marks + "</svg>\n";
    }

    /** A coordinate; one that is no number is a fault and ends the drawing. */
    static String number(double value) {
        return Numbers.plain(value, 2);
    }

    private static String escaped(String words) {
        return StringEscapeUtils.escapeXml10(words);
    }
}
