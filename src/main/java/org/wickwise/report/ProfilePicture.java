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
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/**
 * What is to be expected at the outlet, as an SVG picture: the steps over the volume for which they are poured, a bell curve
 * for each band, the volumes to keep below. It needs no colour: curves differ in their dashes and carry names.
 */
public final class ProfilePicture {

    private static final double WIDTH = 900;
    private static final double MARGIN = 20;
    private static final double LEFT = 50;
    private static final double RIGHT = WIDTH - 30;
    private static final double PLOT_HEIGHT = 220;
    private static final double AXIS_HEIGHT = 62;
    private static final double FONT = 12;
    private static final double LINE = 15;
    private static final double BAR_TO_NEXT = 20;
    private static final double SAMPLE = 34;
    private static final double SIGMAS_SHOWN = 4;

    private final Plan plan;
    private final Elution elution;
    private final Column column;
    private final List<Step> steps;
    private final VolumeAxis volumes;
    private final ProfileCurves curves;
    private final Drawing drawing = new Drawing();
    private final Drawing lanes = new Drawing();
    private double y = MARGIN + FONT;

    private ProfilePicture(Plan plan) {
        this.plan = plan;
        this.elution = plan.elution().orElseThrow();
        this.column = plan.judged().column();
        this.steps = plan.route().map(Route::steps).orElseThrow();
        double lastBand = elution.bands().values().stream()
                .mapToDouble(band -> band.middleMillilitres() + SIGMAS_SHOWN * band.sigmaMillilitres())
                .max()
                .orElseThrow();
        double last = Math.max(lastBand, elution.pouredBefore(steps.size()));
        this.volumes = new VolumeAxis(LEFT, RIGHT, last, column.columnVolumeMillilitres());
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
        double topOfSteps = y;
        steps();
        double top = y + curves.namesHeight();
        double axis = top + PLOT_HEIGHT;
        changes(topOfSteps, axis);
        curves.draw(drawing, top, axis);
        y = axis + AXIS_HEIGHT;
        kept();
        drawing.add(lanes);
        notes();
        return drawing.page(
                "profile",
                WIDTH,
                y + MARGIN,
                "Predicted elution profile: " + plan.judged().title(),
                inWords());
    }

    private void heading() {
        paragraph(plan.judged().title(), 17, "font-size=\"17\" font-weight=\"bold\"");
        paragraph("Predicted elution profile: estimated from the strips, not seen on a column.", FONT, "");
        String packing = plan.packing().map(Eluent::name).orElseThrow();
        String one = column.columnVolumeMillilitres().isPresent()
                ? "One column volume is about "
                        + Numbers.poured(column.columnVolumeMillilitres().getAsDouble()) + " mL."
                : "The size of the column is not known, so volumes are column volumes.";
        paragraph("Column of " + column.phaseName() + ", packed with " + packing + ". " + one, FONT, "");
        y += LINE;
    }

    /** Each eluent over the volume for which it is poured. */
    private void steps() {
        for (int i = 0; i < steps.size(); i++) {
            double before = elution.pouredBefore(i);
            lane(
                    "step-lane",
                    pouring(i),
                    Optional.empty(),
                    before,
                    before + elution.poured().get(i),
                    2);
        }
    }

    private String pouring(int step) {
        boolean guess = !elution.bands().keySet().containsAll(steps.get(step).leaving());
        return "Step " + (step + 1) + ": " + steps.get(step).eluent() + ", about "
                + volumes.volume(elution.poured().get(step)) + (guess ? " (a guess, not measured)" : "");
    }

    private void changes(double topOfSteps, double axis) {
        for (int i = 0; i < steps.size(); i++) {
            double x = volumes.x(elution.pouredBefore(i));
            drawing.line(x, topOfSteps, x, axis, "class=\"step\" stroke=\"#777777\"");
        }
    }

    private void kept() {
        drawing.text(MARGIN, y, "font-weight=\"bold\"", "Keep");
        y += LINE + 4;
        for (Flask kept : flasks()) {
            lane("kept", keeping(kept), Optional.of(kept.dyes().get(0)), kept.from(), kept.to(), 8);
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

    /** Words over a bar; words that would run out of the picture begin further left. */
    private void lane(String kind, String words, Optional<Dye> curve, double from, double to, double thickness) {
        double indent = curve.isPresent() ? SAMPLE : 4;
        List<String> lines = Lettering.wrapped(words, RIGHT - LEFT - indent, FONT);
        double widest = lines.stream()
                .mapToDouble(line -> Lettering.width(line, FONT))
                .max()
                .orElse(0);
        double x = Math.max(LEFT, Math.min(volumes.x(from), RIGHT - widest - indent));
        curve.ifPresent(dye -> lanes.line(x, y - 4, x + SAMPLE - 6, y - 4, curves.style(dye)));
        lanes.texts(x + indent, y, LINE, Drawing.HALO, lines);
        y += (lines.size() - 1) * LINE + 6;
        lanes.rectangle(
                volumes.x(from),
                y,
                volumes.x(to) - volumes.x(from),
                thickness,
                "class=\"" + kind + "\" fill=\"#000000\"");
        y += thickness + BAR_TO_NEXT;
    }

    private void notes() {
        y += 4;
        if (!missing().isEmpty()) {
            paragraph(missing(), FONT, "");
        }
        paragraph("Every curve holds the same amount of dye, whatever the mixture holds.", FONT, "");
        paragraph(
                "What to keep is reckoned for the wanted purity, every dye in the same amount; go by the colour in the end.",
                FONT,
                "");
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

    /** Lines across the picture; moves on below them. */
    private void paragraph(String words, double fontSize, String style) {
        List<String> lines = Lettering.wrapped(words, WIDTH - 2 * MARGIN, fontSize);
        drawing.texts(MARGIN, y, fontSize + 4, style, lines);
        y += lines.size() * (fontSize + 4);
    }
}
