package org.wickwise.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wickwise.column.Column;
import org.wickwise.column.ColumnSizes;
import org.wickwise.plan.Keeping.Flask;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.text.Numbers;

/**
 * In what portions to collect: the table's fraction for the bore, or less where the narrowest band that is to be kept would
 * fill too few of them.
 *
 * @param millilitres of one portion, two significant digits
 * @param ofTable the table's fraction; empty where the bore lies outside it
 * @param narrowest the dye whose band decided; empty where the table did
 */
public record Portions(double millilitres, OptionalDouble ofTable, Optional<Dye> narrowest, List<Reason> grounds) {

    private static final String TO_A_BAND = "portions to a band";
    private static final String SMALLEST = "smallest portion";

    public Portions {
        grounds = List.copyOf(grounds);
    }

    /** Empty where neither the table nor a band tells. */
    public static Optional<Portions> of(Route route, Judgement judgement, ColumnSizes sizes) {
        return of(route, Keeping.of(route, judgement), judgement, sizes);
    }

    static Optional<Portions> of(Route route, Keeping keeping, Judgement judgement, ColumnSizes sizes) {
        Column column = judgement.judged().column();
        OptionalDouble table = column.boreMillimetres().isEmpty()
                ? OptionalDouble.empty()
                : sizes.fractionMillilitres(column.boreMillimetres().getAsDouble());
        OptionalDouble columnVolume = column.columnVolumeMillilitres();
        Optional<Dye> narrowest = columnVolume.isEmpty() ? Optional.empty() : narrowest(route, keeping);
        List<Reason> grounds = new ArrayList<>();
        table.ifPresent(any -> grounds.add(sizes.reason()));
        column.sizeStated().ifPresent(grounds::add);
        if (narrowest.isPresent()) {
            double band =
                    route.elution().bands().get(narrowest.get()).baseWidthMillilitres() * columnVolume.getAsDouble();
            double share = Math.max(judgement.limit(SMALLEST), band / judgement.limit(TO_A_BAND));
            if (table.isEmpty() || share < table.getAsDouble()) {
                grounds.add(judgement.limits().get(TO_A_BAND).reason());
                grounds.add(judgement.limits().get(SMALLEST).reason());
                grounds.add(VolumeLines.plates(judgement));
                return Optional.of(new Portions(rounded(share, RoundingMode.DOWN), table, narrowest, grounds));
            }
        }
        return table.isEmpty()
                ? Optional.empty()
                : Optional.of(new Portions(
                        rounded(table.getAsDouble(), RoundingMode.HALF_UP), table, Optional.empty(), grounds));
    }

    private static Optional<Dye> narrowest(Route route, Keeping keeping) {
        return keeping.flasks().stream()
                .filter(flask -> flask.dyes().size() == 1 && !flask.isEmpty())
                .map(Flask::dyes)
                .map(dyes -> dyes.get(0))
                .min(Comparator.comparingDouble(
                        dye -> route.elution().bands().get(dye).sigmaMillilitres()));
    }

    private static double rounded(double value, RoundingMode mode) {
        return BigDecimal.valueOf(Numbers.steady(value))
                .round(new MathContext(2, mode))
                .doubleValue();
    }

    /** "7.1 mL". */
    public String shown() {
        return Numbers.poured(millilitres) + " mL";
    }

    /** How the size was reckoned. */
    public String formula() {
        return narrowest.isEmpty()
                ? "the table's fraction, between its rows as the square of the bore"
                : "four standard deviations of the narrowest band that is to be kept, that of "
                        + narrowest.get()
                        + ", / portions to a band, rounded down, and no less than the smallest portion"
                        + (ofTable.isEmpty()
                                ? ""
                                : "; the table's fraction, " + Numbers.poured(ofTable.getAsDouble())
                                        + " mL, is larger");
    }
}
