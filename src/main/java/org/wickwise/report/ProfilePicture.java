package org.wickwise.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wickwise.column.Column;
import org.wickwise.plan.Elution;
import org.wickwise.plan.Keeping;
import org.wickwise.plan.Keeping.Flask;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.Route;
import org.wickwise.plan.Step;
import org.wickwise.reason.Reason;
import org.wickwise.report.VolumePage.Bar;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/**
 * What is to be expected at the outlet, as an SVG picture: the steps over the volume for which they are poured, a bell curve
 * for each band, the volumes to keep below. It needs no colour: curves differ in their dashes and carry names.
 */
public final class ProfilePicture {

    private static final Bar KEPT = new Bar("kept", 8, "fill=\"#000000\"");

    private final Plan plan;
    private final Elution elution;
    private final Column column;
    private final List<Step> steps;
    private final VolumePage page;
    private final VolumeAxis volumes;
    private final ProfileCurves curves;

    private ProfilePicture(Plan plan) {
        this.plan = plan;
        this.elution = plan.elution().orElseThrow();
        this.column = plan.judged().column();
        this.steps = plan.route().map(Route::steps).orElseThrow();
        double last = Math.max(ProfileCurves.end(elution.bands().values()), elution.pouredBefore(steps.size()));
        this.page = new VolumePage(last, column.columnVolumeMillilitres());
        this.volumes = page.volumes();
        this.curves = new ProfileCurves(elution.bands(), volumes);
    }

    /** Why there is nothing to draw, and the way out; empty when there is something. */
    public static Optional<String> obstacle(Plan plan) {
        if (plan.elution().isEmpty()) {
            return Optional.of("no profile can be drawn, because no plan is sound: "
                    + plan.line("refusal").map(ProfilePicture::obstacles).orElse("nothing comes off")
                    + "\n    `wickwise plan` for the same file says why, and which strip to run next");
        }
        if (plan.elution().get().bands().isEmpty()) {
            List<String> eluents = plan.route().map(Route::steps).orElseThrow().stream()
                    .map(step -> step.eluent().name())
                    .toList();
            return Optional.of("no profile can be drawn, because no dye was measured in every eluent that is poured up"
                    + " to its own step\n    run strips in " + Words.joined(eluents)
                    + ", and write down `front mm` and the `travel mm` of every dye");
        }
        return Optional.empty();
    }

    private static String obstacles(PlanLine refusal) {
        return refusal.reason() instanceof Reason.Chosen chosen
                ? chosen.grounds().stream().map(Reason::statement).collect(Collectors.joining("; "))
                : refusal.text();
    }

    /** @throws java.util.NoSuchElementException when there is an {@link #obstacle} */
    public static String of(Plan plan) {
        return new ProfilePicture(plan).picture();
    }

    private String picture() {
        heading();
        steps();
        double axis = page.plot(curves);
        curves.draw(page.drawing(), axis - VolumePage.PLOT_HEIGHT, axis);
        kept();
        page.layLanes();
        notes();
        return page.page(
                "profile", "Predicted elution profile: " + plan.judged().title(), inWords());
    }

    private void heading() {
        page.title(plan.judged().title());
        page.paragraph("Predicted elution profile: estimated from the strips, not seen on a column.");
        String packing = plan.packing().map(Eluent::name).orElseThrow();
        String one = column.columnVolumeMillilitres().isPresent()
                ? "One column volume is about "
                        + Numbers.poured(column.columnVolumeMillilitres().getAsDouble()) + " mL."
                : "The size of the column is not known, so volumes are column volumes.";
        page.paragraph("Column of " + column.phaseName() + ", packed with " + packing + ". " + one);
        page.space(VolumePage.LINE);
    }

    /** Each eluent over the volume for which it is poured. */
    private void steps() {
        for (int i = 0; i < steps.size(); i++) {
            double before = elution.pouredBefore(i);
            page.step(pouring(i), before, before + elution.poured().get(i));
        }
    }

    private String pouring(int step) {
        boolean guess = !elution.bands().keySet().containsAll(steps.get(step).leaving());
        return "Step " + (step + 1) + ": " + steps.get(step).eluent() + ", about "
                + volumes.volume(elution.poured().get(step)) + (guess ? " (a guess, not measured)" : "");
    }

    private void kept() {
        page.heading("Keep");
        for (Flask kept : flasks()) {
            Dye first = kept.dyes().get(0);
            page.lane(keeping(kept), Optional.of(curves.style(first)), kept.from(), kept.to(), KEPT);
        }
    }

    /** What is worth a flask. */
    private List<Flask> flasks() {
        return plan.keeping().map(Keeping::flasks).orElse(List.of()).stream()
                .filter(flask -> !flask.isEmpty())
                .toList();
    }

    private String keeping(Flask kept) {
        String tags = kept.dyes().stream().map(curves::tag).collect(Collectors.joining());
        return tags + names(kept.dyes()) + ", about " + volumes.place(kept.from(), kept.to()) + withinStep(kept);
    }

    /** The plan counts a volume from the first drop of its own step. */
    private String withinStep(Flask kept) {
        for (int i = 1; i < steps.size(); i++) {
            double before = elution.pouredBefore(i);
            if (steps.get(i).leaving().containsAll(kept.dyes()) && kept.to() > before) {
                return " (" + volumes.span(Math.max(0, kept.from() - before), kept.to() - before) + " of step "
                        + (i + 1) + ")";
            }
        }
        return "";
    }

    private void notes() {
        page.space(4);
        if (!missing().isEmpty()) {
            page.paragraph(missing());
        }
        page.paragraph("Every curve holds the same amount of dye, whatever the mixture holds.");
        page.paragraph(
                "What to keep is reckoned for the wanted purity, every dye in the same amount; go by the colour in the end.");
    }

    private String missing() {
        List<Dye> missing = plan.judged().dyes().stream()
                .filter(dye -> !elution.bands().containsKey(dye))
                .toList();
        return missing.isEmpty()
                ? ""
                : "No curve for " + names(missing) + ": not measured in every eluent poured up to "
                        + (missing.size() == 1 ? "its" : "their") + " own step.";
    }

    /** The picture in sentences, for readers who cannot see it. */
    private String inWords() {
        StringBuilder words = new StringBuilder("Estimated from the strips, not seen on a column. ");
        for (int i = 0; i < steps.size(); i++) {
            words.append(pouring(i)).append(". ");
        }
        flasks().forEach(kept -> words.append("Keep ").append(keeping(kept)).append(". "));
        return words + missing();
    }

    private static String names(List<Dye> dyes) {
        return Words.joined(dyes.stream().map(Dye::name).toList());
    }
}
