package org.wickwise.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.wickwise.column.Column;
import org.wickwise.column.ColumnSizes;
import org.wickwise.plan.Keeping.Flask;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** From where to where each dye is worth keeping, how pure and how complete it then is, and in which tubes it lands. */
final class KeepLines {

    private static final double PER_CENT = 100;
    /** From here on a share rounds to 100 %, which no Gaussian band reaches. */
    private static final double ROUNDS_TO_ALL = 0.995;

    private static final String REFERENCE = "sum of Gaussian bands, the cut points found on a grid;"
            + " bands by the fundamental equation of gradient elution, Drake 1955, Freiling 1955, from memory";

    private final Judgement judgement;
    private final Route route;
    private final Column column;
    private final Keeping keeping;
    private final OptionalDouble tubeMillilitres;

    KeepLines(Judgement judgement, Route route, Keeping keeping, ColumnSizes sizes) {
        this.judgement = judgement;
        this.route = route;
        this.column = judgement.judged().column();
        this.keeping = keeping;
        this.tubeMillilitres = column.boreMillimetres().isEmpty()
                ? OptionalDouble.empty()
                : sizes.fractionMillilitres(column.boreMillimetres().getAsDouble());
    }

    /** The line of one step; none where nothing that leaves in it was measured. */
    List<PlanLine> lines(int step) {
        List<Flask> flasks =
                keeping.flasks().stream().filter(flask -> flask.step() == step).toList();
        if (flasks.isEmpty()) {
            return List.of();
        }
        double before = route.elution().pouredBefore(step);
        String text = "Worth keeping, counted from here: "
                + flasks.stream().map(flask -> inWords(flask, before)).collect(Collectors.joining("; "))
                + ". Estimated, every dye in the same amount.";
        return List.of(new PlanLine("keep-" + (step + 1), Section.STEPS, text, reason(text, flasks)));
    }

    /** The dyes that the strips part and the bed does not; none where it parts all of them. */
    List<PlanLine> overlap() {
        List<Dye> overlapping = keeping.overlapping(judgement);
        if (overlapping.isEmpty()) {
            return List.of();
        }
        String names = Words.joined(overlapping.stream().map(Dye::name).toList());
        String text = "The strips part " + names
                + ", but a bed of so few plates lets them run into one another: too little of "
                + (overlapping.size() == 1 ? "it" : "each")
                + " comes off pure. A slower eluent, in which they lie lower on the strip and further apart, a longer bed or a"
                + " finer, better packed one would help.";
        List<Flask> flasks = keeping.flasks().stream()
                .filter(flask -> overlapping.containsAll(flask.dyes()))
                .toList();
        List<Reason> grounds = new ArrayList<>(
                List.of(judgement.limits().get("least recovery alone").reason()));
        grounds.add(reason(text, flasks));
        return List.of(new PlanLine("overlap", Section.DOUBTS, text, new Reason.Chosen(text, List.of(), grounds)));
    }

    private String inWords(Flask flask, double before) {
        String dyes = Words.joined(flask.dyes().stream().map(Dye::name).toList());
        if (flask.tooThin()) {
            return dyes + " as pure as wanted only in a thin end of its band that is not worth a flask";
        }
        if (flask.isEmpty()) {
            return dyes + " nowhere as pure as wanted (at best "
                    + percent(flask.purity().orElse(0.0)) + ")";
        }
        double from = Math.max(0, flask.from() - before);
        double to = flask.to() - before;
        String volumes = dyes + " from " + Numbers.plain(from, 1) + " to " + column.inWords(to) + tubes(from, to);
        return flask.purity().isEmpty()
                ? volumes + ", not parted"
                : volumes + ", purity " + percent(flask.purity().get()) + ", recovery "
                        + percent(flask.recovery().orElseThrow());
    }

    /** ", whole tubes 6 to 9 of 7.1 mL": those that lie wholly within; one across an end is neither pure nor lost. */
    private String tubes(double from, double to) {
        OptionalDouble columnVolume = column.columnVolumeMillilitres();
        if (tubeMillilitres.isEmpty() || columnVolume.isEmpty()) {
            return "";
        }
        double perTube = columnVolume.getAsDouble() / tubeMillilitres.getAsDouble();
        long first = (long) Math.ceil(from * perTube) + 1;
        long last = (long) Math.floor(to * perTube);
        String tubes = last < first
                ? ", less than a tube"
                : first == last ? ", whole tube " + first : ", whole tubes " + first + " to " + last;
        return tubes + " of " + Numbers.poured(tubeMillilitres.getAsDouble()) + " mL";
    }

    private static String percent(double share) {
        return share >= ROUNDS_TO_ALL ? "over 99 %" : Numbers.plain(PER_CENT * share, 0) + " %";
    }

    private Reason reason(String text, List<Flask> flasks) {
        List<Reason> grounds = new ArrayList<>();
        grounds.add(judgement.limits().get("wanted purity").reason());
        grounds.add(RouteLines.plates(judgement));
        for (Flask flask : flasks) {
            flask.dyes().forEach(dye -> grounds.addAll(route.groundsOfBand(dye, judgement)));
        }
        return new Reason.Calculated(
                text,
                "purity = the dye's own share of what lands in its flask; recovery = the share of the dye that lands there;"
                        + " each flask is as wide as the wanted purity allows, at most three standard deviations either side",
                REFERENCE,
                grounds);
    }
}
