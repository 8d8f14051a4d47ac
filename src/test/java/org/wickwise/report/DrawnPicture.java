package org.wickwise.report;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** An SVG picture read back. */
final class DrawnPicture {

    /** A group that is moved as a whole. */
    static final Pattern TRANSLATION = Pattern.compile("translate\\(([0-9.]+) ([0-9.]+)\\)");

    private static final double USUAL_FONT = 12;

    private final Element root;

    /** @throws IllegalArgumentException when the picture is no XML */
    DrawnPicture(String svg) {
        try {
            Document document = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg)));
            this.root = document.getDocumentElement();
        } catch (Exception e) {
            throw new IllegalArgumentException("not well-formed: " + svg, e);
        }
    }

    Element root() {
        return root;
    }

    /** Elements of a class anywhere below another, in the order of drawing. */
    static List<Element> ofClass(Element above, String name) {
        return all(above, "*").stream()
                .filter(element -> element.getAttribute("class").equals(name))
                .toList();
    }

    static List<Element> all(Element above, String tag) {
        List<Element> elements = new ArrayList<>();
        NodeList nodes = above.getElementsByTagName(tag);
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    /** The text of the title right below an element; empty when it has none. */
    static String title(Element element) {
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child.getNodeName().equals("title")) {
                return child.getTextContent();
            }
        }
        return "";
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** All that a person can read in the picture, words broken over lines put together again. */
    String words() {
        return String.join(
                        " ",
                        all(root, "text").stream().map(Element::getTextContent).toList())
                .replace('\u00a0', ' ');
    }

    /** Words that begin left of the page or end right of it, however wide the reader's font; turned ones are passed over. */
    List<String> wordsOutside() {
        List<String> outside = new ArrayList<>();
        for (Element text : all(root, "text")) {
            double size = text.hasAttribute("font-size") ? number(text, "font-size") : USUAL_FONT;
            double width = Lettering.width(text.getTextContent(), size);
            double before =
                    switch (text.getAttribute("text-anchor")) {
                        case "end" -> width;
                        case "middle" -> width / 2;
                        default -> 0;
                    };
            Matcher moved = TRANSLATION.matcher(((Element) text.getParentNode()).getAttribute("transform"));
            double left = number(text, "x") + (moved.matches() ? Double.parseDouble(moved.group(1)) : 0) - before;
            if (!text.hasAttribute("transform") && (left < 0 || left + width > number(root, "width"))) {
                outside.add(text.getTextContent());
            }
        }
        return outside;
    }

    /** The volume at a coordinate, read off the axis's first and last tick. */
    double volume(double x) {
        List<Element> labels = all(ofClass(root, "ticks").get(0), "text");
        Element last = labels.get(labels.size() - 1);
        double left = number(labels.get(0), "x");
        double right = number(last, "x");
        return (x - left) / (right - left) * Double.parseDouble(last.getTextContent());
    }

    /** The points of a curve, x and y of each. */
    static List<double[]> points(Element curve) {
        String path = all(curve, "path").get(0).getAttribute("d");
        return Stream.of(path.substring(1).split(" L"))
                .map(point -> Stream.of(point.split(" "))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
    }
}
