package org.wickwise.report;

import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Base64;
import java.util.List;
import org.apache.commons.text.StringEscapeUtils;
import org.wickwise.lesson.ClassSummary;
import org.wickwise.lesson.ClassSummary.GroupRow;
import org.wickwise.lesson.ClassSummary.Part;
import org.wickwise.lesson.ClassSummary.PooledRow;
import org.wickwise.lesson.GroupPlan;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/**
 * The plans of a class as one page for a browser or a printer: the class on the first sheet, then a sheet for each group to hand out.
 * The groups are written to a file beside the page as they come, so that the page of a large class is never held whole.
 */
public final class ClassPage implements Closeable {

    /** With more groups the page would grow heavy. */
    private static final int MOST_PICTURES = 60;

    private static final String STYLE =
            """
            body { max-width: 60rem; }
            table { border-collapse: collapse; width: 100%; margin: .75rem 0; font-size: .9rem; }
            th, td { text-align: left; vertical-align: top; border-bottom: 1px solid #8a8a8a; padding: .2rem .5rem .2rem 0; }
            th { border-bottom: 2px solid #1b1b1b; }
            td.number, th.number { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
            img { max-width: 100%; height: auto; }
            td.stands, td.dye { white-space: nowrap; }
            .far { font-weight: bold; }
            @media print {
              h2.group { break-before: page; border-top: none; margin-top: 0; }
              tr, li, img { break-inside: avoid; }
              body { font: 8.5pt/1.25 Georgia, serif; margin: 0; padding: 0; }
              th, td { padding: .05rem .4rem .05rem 0; }
              img { max-height: 10.5cm; }
              ul { margin: .1rem 0 .4rem; }
              h2, h3 { break-after: avoid; }
              h3 { margin-top: .6rem; }
              a { color: inherit; text-decoration: none; }
            }
            """;

    private final Path page;
    private final Path groupsFile;
    private final Writer groups;
    private int pictures;

    /** @throws IOException where nothing can be written beside the page */
    public ClassPage(Path page) throws IOException {
        this.page = page.toAbsolutePath();
        this.groupsFile = this.page.resolveSibling("." + this.page.getFileName() + ".groups");
        this.groups = Files.newBufferedWriter(groupsFile, StandardCharsets.UTF_8);
    }

    /** Adds the sheet of one group. */
    public void add(GroupPlan planned) throws IOException {
        groups.write("<h2 class=\"group\" id=\"" + anchor(planned.group()) + "\">Group " + escaped(planned.group())
                + "</h2>\n");
        if (planned.plan().isEmpty()) {
            groups.write("<p>No strip of this group could be taken:</p>\n<ul>\n");
            for (var problem : planned.leftOut()) {
                groups.write("<li>" + escaped(problem.toString()) + "</li>\n");
            }
            groups.write("</ul>\n");
            return;
        }
        Plan plan = planned.plan().get();
        groups.write("<p>" + escaped(plan.judged().inOneLine()) + "</p>\n");
        pictures++;
        if (pictures <= MOST_PICTURES) {
            groups.write(picture(plan));
        }
        for (Section section : Section.values()) {
            List<PlanLine> lines = plan.linesIn(section);
            if (!lines.isEmpty()) {
                groups.write("<h3>" + escaped(section.title()) + "</h3>\n" + list(lines));
            }
        }
    }

    /** Writes the page, in one go where it is to lie. */
    public void finish(ClassSummary summary) throws IOException {
        groups.close();
        Path whole = page.resolveSibling("." + page.getFileName() + ".whole");
        try {
            try (BufferedWriter out = Files.newBufferedWriter(whole, StandardCharsets.UTF_8);
                    Reader written = Files.newBufferedReader(groupsFile, StandardCharsets.UTF_8)) {
                out.write(HtmlPage.head("Class: " + summary.title(), STYLE));
                out.write("<h1>" + escaped("Class: " + summary.title()) + "</h1>\n");
                writeSummary(summary, out);
                written.transferTo(out);
                out.write(HtmlPage.END);
            }
            Files.move(whole, page, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(whole);
        }
    }

    private void writeSummary(ClassSummary summary, Writer out) throws IOException {
        out.write("<p>" + escaped(summary.parts().get(0).lines().get(0).text()) + "</p>\n");
        out.write("<table>\n<tr><th>Group</th><th>Stands</th><th>Way, or what to run again</th></tr>\n");
        for (GroupRow row : summary.groups()) {
            String what = row.way().isEmpty() ? row.toRun() : Words.capital(row.way()) + ".";
            out.write("<tr><td><a href=\"#" + anchor(row.group()) + "\">" + escaped(row.group())
                    + "</a></td><td class=\"stands\">" + row.standing().words() + "</td><td>" + escaped(what)
                    + "</td></tr>\n");
        }
        out.write("</table>\n");
        for (Part part : summary.parts()) {
            if (!part.inATable()) {
                out.write("<h3>" + escaped(part.title()) + "</h3>\n" + list(part.lines()));
            }
        }
        writePooled(summary, out);
        if (pictures > MOST_PICTURES) {
            out.write("<p>Pictures of the strips are drawn for the first " + MOST_PICTURES + " groups only.</p>\n");
        }
    }

    private static void writePooled(ClassSummary summary, Writer out) throws IOException {
        out.write("<h3>Rf over the whole class</h3>\n<table>\n<tr><th>Solvent</th><th>Dye</th>"
                + "<th class=\"number\">Groups</th><th class=\"number\">Mean Rf (95 %)</th>"
                + "<th class=\"number\">Median</th><th class=\"number\">Between groups</th>"
                + "<th class=\"number\">One reading</th><th>Far out</th></tr>\n");
        for (PooledRow row : summary.pooled()) {
            String far = row.farOut().isEmpty() ? "" : "group " + Words.joined(row.farOut());
            out.write("<tr><td>" + escaped(row.eluent()) + "</td><td class=\"dye\">" + escaped(row.dye()) + "</td>"
                    + number(String.valueOf(row.groups()))
                    + number(Numbers.fixed(row.mean(), 3) + " \u00b1 " + Numbers.fixed(2 * row.uncertainty(), 3))
                    + number(Numbers.fixed(row.median(), 3)) + number(Numbers.fixed(row.between(), 3))
                    + number(Numbers.fixed(row.own(), 3)) + "<td class=\"far\">" + escaped(far) + "</td></tr>\n");
        }
        out.write(
                "</table>\n<p>\u00b1 is twice the standard uncertainty. Between groups: standard deviation of the groups"
                        + " beyond the uncertainty of one reading (DerSimonian and Laird). Far out: flagged, and still counted.</p>\n");
    }

    private static String number(String text) {
        return "<td class=\"number\">" + text + "</td>";
    }

    private static String list(List<PlanLine> lines) {
        StringBuilder list = new StringBuilder("<ul>\n");
        lines.forEach(line -> list.append("<li><code>")
                .append(escaped(line.label()))
                .append("</code> ")
                .append(escaped(line.text()).replaceAll("`([^`]*)`", "<code>$1</code>"))
                .append("</li>\n"));
        return list.append("</ul>\n").toString();
    }

    /** An image of its own, since the names inside one picture would meet those of the next. */
    private static String picture(Plan plan) {
        byte[] svg = StripsPicture.of(plan.judgement()).getBytes(StandardCharsets.UTF_8);
        return "<p><img alt=\"" + escaped("The strips of " + plan.judged().title())
                + "\" src=\"data:image/svg+xml;base64," + Base64.getEncoder().encodeToString(svg) + "\"></p>\n";
    }

    private static String anchor(String group) {
        return "group-" + Words.slug(group);
    }

    private static String escaped(String text) {
        return StringEscapeUtils.escapeHtml4(text);
    }

    @Override
    public void close() throws IOException {
        groups.close();
        Files.deleteIfExists(groupsFile);
    }
}
