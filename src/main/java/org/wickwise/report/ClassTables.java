package org.wickwise.report;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.wickwise.lesson.ClassSummary;
import org.wickwise.lesson.ClassSummary.GroupRow;
import org.wickwise.lesson.ClassSummary.PooledRow;
import org.wickwise.lesson.GroupPlan;
import org.wickwise.rulebook.Conclusion.Reading;
import org.wickwise.rulebook.Conclusion.StripVerdict;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.text.Cells;
import org.wickwise.text.Numbers;

/**
 * What the plans of a class come to, as tables (RFC 4180, decimal points, UTF-8): one row a group, one row a dye in an eluent,
 * one row a spot.
 */
public final class ClassTables {

    private static final int DECIMALS = 4;

    private ClassTables() {}

    public static void groups(ClassSummary summary, Appendable out) throws IOException {
        try (CSVPrinter table = new CSVPrinter(
                out,
                CSVFormat.RFC4180
                        .builder()
                        .setHeader("group", "standing", "way", "strips to run", "rows left out")
                        .get())) {
            for (GroupRow row : summary.groups()) {
                table.printRecord(
                        Cells.guarded(row.group()),
                        row.standing().words(),
                        Cells.guarded(row.way()),
                        Cells.guarded(row.toRun()),
                        row.leftOut());
            }
        }
    }

    public static void pooled(ClassSummary summary, Appendable out) throws IOException {
        try (CSVPrinter table = new CSVPrinter(
                out,
                CSVFormat.RFC4180
                        .builder()
                        .setHeader(
                                "solvent",
                                "stationary phase",
                                "dye",
                                "groups",
                                "mean Rf",
                                "standard uncertainty of the mean",
                                "median Rf",
                                "standard deviation between groups",
                                "standard uncertainty of one reading",
                                "groups far out")
                        .get())) {
            for (PooledRow row : summary.pooled()) {
                table.printRecord(
                        Cells.guarded(row.eluent()),
                        Cells.guarded(row.phase()),
                        Cells.guarded(row.dye()),
                        row.groups(),
                        Numbers.fixed(row.mean(), DECIMALS),
                        Numbers.fixed(row.uncertainty(), DECIMALS),
                        Numbers.fixed(row.median(), DECIMALS),
                        Numbers.fixed(row.between(), DECIMALS),
                        Numbers.fixed(row.own(), DECIMALS),
                        Cells.guarded(String.join("; ", row.farOut())));
            }
        }
    }

    /** Writes strip after strip, one row a spot, with what was thought of the strip. */
    public static final class OfStrips {

        private final CSVPrinter table;

        public OfStrips(Appendable out) throws IOException {
            this.table = new CSVPrinter(
                    out,
                    CSVFormat.RFC4180
                            .builder()
                            .setHeader(
                                    "group",
                                    "solvent",
                                    "stationary phase",
                                    "replicate",
                                    "front mm",
                                    "dye",
                                    "reading",
                                    "Rf",
                                    "standard uncertainty",
                                    "strip is",
                                    "file",
                                    "row")
                            .get());
        }

        public void add(GroupPlan planned) throws IOException {
            if (planned.plan().isEmpty()) {
                return;
            }
            Judgement judgement = planned.plan().get().judgement();
            for (Strip strip : judgement.judged().strips()) {
                for (Spot spot : strip.spots()) {
                    for (Dye dye : spot.dyes()) {
                        add(planned.group(), judgement, strip, spot, dye);
                    }
                }
            }
        }

        private void add(String group, Judgement judgement, Strip strip, Spot spot, Dye dye) throws IOException {
            Optional<RetardationFactor> factor = judgement.retardationFactor(strip, dye);
            table.printRecord(
                    Cells.guarded(group),
                    Cells.guarded(strip.eluent().name()),
                    Cells.guarded(strip.phase().name()),
                    strip.replicate(),
                    strip.frontMillimetres().isPresent()
                            ? Numbers.plain(strip.frontMillimetres().getAsDouble(), DECIMALS)
                            : "",
                    Cells.guarded(dye.name()),
                    spot.position().words(),
                    factor.map(found -> Numbers.fixed(found.value(), DECIMALS)).orElse(""),
                    factor.map(found -> Numbers.fixed(found.uncertainty(), DECIMALS))
                            .orElse(""),
                    verdict(judgement, strip),
                    Cells.guarded(strip.place().file()),
                    strip.place().line());
        }

        private static String verdict(Judgement judgement, Strip strip) {
            return List.of(Reading.VOID, Reading.DOUBTFUL, Reading.USABLE).stream()
                    .filter(reading -> judgement.holds(new StripVerdict(strip, reading)))
                    .map(Reading::word)
                    .findFirst()
                    .orElse("");
        }
    }
}
