package org.wickwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.wickwise.reason.Reason;
import org.wickwise.reason.Reason.Argument;
import org.wickwise.reason.Reason.Calculated;
import org.wickwise.reason.Reason.Chosen;
import org.wickwise.reason.Reason.Concluded;
import org.wickwise.reason.Reason.Limited;
import org.wickwise.reason.Reason.Observed;
import org.wickwise.reason.Reason.Stated;
import org.wickwise.reason.Reason.Tabled;
import org.wickwise.text.Words;

/**
 * What stands in the box of a reason.
 *
 * @param kind told by a word and by the outline
 * @param statement broken into lines
 * @param further why and whence, broken into lines
 */
record ReasonBox(Kind kind, List<String> statement, List<String> further) {

    static final double WIDTH = 250;
    static final double LINE = 15;

    private static final double MARGIN = 10;
    private static final double KIND_SIZE = 10;
    private static final double STATEMENT_SIZE = 12;
    private static final double FURTHER_SIZE = 10.5;

    /** Where a statement comes from. */
    enum Kind {
        OBSERVED("observed"),
        STATED("case file"),
        TABLED("table value"),
        LIMITED("limit"),
        RECKONED("reckoned"),
        RULED("rule"),
        CHOSEN("chosen"),
        SUMMED("put together");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** @param leftOut how many reasons it rests on that the picture leaves out */
    static ReasonBox of(Reason reason, int leftOut) {
        List<String> further = new ArrayList<>(further(reason));
        if (leftOut > 0) {
            further.add("... and rests on " + leftOut + " more, left out here");
        }
        return new ReasonBox(
                kind(reason),
                Lettering.wrapped(Words.capital(reason.statement()), WIDTH - 2 * MARGIN, STATEMENT_SIZE),
                further.stream()
                        .flatMap(words -> Lettering.wrapped(words, WIDTH - 2 * MARGIN, FURTHER_SIZE).stream())
                        .toList());
    }

    double height() {
        return LINE * (1 + statement.size() + further.size()) + MARGIN;
    }

    /** @param top of the box */
    void draw(Drawing drawing, double left, double top) {
        drawing.open("class=\"reason\"");
        drawing.meaning(kind.word() + ": " + String.join(" ", statement));
        outline(drawing, left, top);
        double line = top + LINE;
        drawing.text(left + MARGIN, line, "font-size=\"" + KIND_SIZE + "\" fill=\"#444444\"", kind.word());
        drawing.texts(left + MARGIN, line + LINE, LINE, "font-size=\"12\"", statement);
        drawing.texts(
                left + MARGIN,
                line + LINE * (1 + statement.size()),
                LINE,
                "font-size=\"" + FURTHER_SIZE + "\" font-style=\"italic\"",
                further);
        drawing.close();
    }

    private void outline(Drawing drawing, double left, double top) {
        String white = "fill=\"#ffffff\" stroke=\"#000000\" ";
        double height = height();
        switch (kind) {
            case OBSERVED -> {
                drawing.rectangle(left, top, WIDTH, height, white);
                drawing.rectangle(left, top, 5, height, "fill=\"#000000\"");
            }
            case STATED -> drawing.rectangle(left, top, WIDTH, height, white);
            case TABLED -> {
                drawing.rectangle(left, top, WIDTH, height, white);
                drawing.rectangle(left + 3, top + 3, WIDTH - 6, height - 6, white);
            }
            case LIMITED -> drawing.rectangle(left, top, WIDTH, height, white + "stroke-dasharray=\"5 3\"");
            case RECKONED -> drawing.rectangle(left, top, WIDTH, height, white + "rx=\"14\"");
            case RULED -> drawing.rectangle(left, top, WIDTH, height, white + "stroke-width=\"3\"");
            case CHOSEN -> drawing.path(cut(left, top, height), white + "stroke-width=\"3\"");
            case SUMMED -> drawing.path(cut(left, top, height), white);
        }
    }

    /** An outline with its corners cut off. */
    private static String cut(double left, double top, double height) {
        double corner = 8;
        double right = left + WIDTH;
        double bottom = top + height;
        return "M" + at(left + corner, top) + " L" + at(right - corner, top) + " L" + at(right, top + corner) + " L"
                + at(right, bottom - corner) + " L" + at(right - corner, bottom) + " L" + at(left + corner, bottom)
                + " L" + at(left, bottom - corner) + " L" + at(left, top + corner) + " Z";
    }

    private static String at(double x, double y) {
        return Drawing.number(x) + " " + Drawing.number(y);
    }

    private static Kind kind(Reason reason) {
        if (reason instanceof Observed) {
            return Kind.OBSERVED;
        }
        if (reason instanceof Stated) {
            return Kind.STATED;
        }
        if (reason instanceof Tabled) {
            return Kind.TABLED;
        }
        if (reason instanceof Limited) {
            return Kind.LIMITED;
        }
        if (reason instanceof Calculated) {
            return Kind.RECKONED;
        }
        if (reason instanceof Chosen chosen) {
            return chosen.comparisons().isEmpty() ? Kind.SUMMED : Kind.CHOSEN;
        }
        return Kind.RULED;
    }

    private static List<String> further(Reason reason) {
        if (reason instanceof Observed observed) {
            return List.of(observed.place().toString());
        }
        if (reason instanceof Stated stated) {
            return List.of(stated.place().toString());
        }
        if (reason instanceof Tabled tabled) {
            return List.of(String.join("; ", tabled.sources()));
        }
        if (reason instanceof Limited limited) {
            return List.of(limited.place().toString());
        }
        if (reason instanceof Calculated calculated) {
            return List.of(calculated.formula());
        }
        if (reason instanceof Concluded concluded) {
            return concluded(concluded);
        }
        Chosen chosen = (Chosen) reason;
        return chosen.comparisons().stream()
                .filter(comparison -> !chosen.statement().contains(comparison))
                .toList();
    }

    private static List<String> concluded(Concluded concluded) {
        List<String> lines = new ArrayList<>(
                concluded.arguments().stream().map(Argument::because).distinct().toList());
        lines.add("by "
                + concluded.arguments().stream()
                        .map(Argument::ruleId)
                        .distinct()
                        .collect(Collectors.joining(", ")));
        return lines;
    }
}
