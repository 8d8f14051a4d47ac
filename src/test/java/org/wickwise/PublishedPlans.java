package org.wickwise;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.wickwise.bench.CaseReader;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.plan.Step;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Solvent;

/** Plans for the published cases, and what their checklists look at. */
final class PublishedPlans {

    private PublishedPlans() {}

    static Plan plan(String file) {
        return Shipped.planOf(path(file));
    }

    /** The plan for a published case with some of its text changed, such as its column. */
    static Plan planOfVariant(String file, String written, String instead) {
        try {
            String text = Files.readString(path(file));
            assertThat(text).contains(written);
            return Shipped.bench().plan(CaseReader.parse(file, text.replace(written, instead), Shipped.data()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path path(String file) {
        return Shipped.PUBLISHED.resolve(file + ".yaml");
    }

    static List<Step> steps(Plan plan) {
        return plan.route().orElseThrow().steps();
    }

    static Eluent poured(Plan plan, int step) {
        return steps(plan).get(step).eluent();
    }

    /** The dyes of each fraction, in the order of leaving. */
    static List<List<String>> order(Plan plan) {
        return steps(plan).stream()
                .flatMap(step -> step.fractions().stream())
                .map(fraction -> fraction.stream().map(Dye::name).toList())
                .toList();
    }

    static double percent(Eluent eluent, String solvent) {
        return eluent.percentOf(solvent(solvent));
    }

    static Solvent solvent(String name) {
        return Shipped.data().solvent(name).orElseThrow();
    }

    static String text(Plan plan, Section section) {
        return plan.linesIn(section).stream().map(PlanLine::text).collect(Collectors.joining("\n"));
    }
}
