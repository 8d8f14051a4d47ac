package org.wickwise.column;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.wickwise.column.Setup.Particles;
import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;

/**
 * A published table of columns: how much each takes, and what it is run with. Between two rows loads follow the square of
 * the bore, as the cross-section does; outside the table there is no answer.
 *
 * @param phaseName what the table was made on
 * @param grains what size of them it was made on
 * @param wantedRf at which the wanted dye was run
 * @param bedMillimetres the bed the table is made for
 * @param surfaceFallMillimetresPerMinute how fast the surface of the liquid above the bed falls
 * @param easyGap the gap in Rf from which the larger loads hold
 * @param narrowGap the gap in Rf from which the smaller loads hold; below it the table gives none
 * @param rows by bore, the narrowest first
 */
public record ColumnSizes(
        String phaseName,
        Particles grains,
        double wantedRf,
        double bedMillimetres,
        double surfaceFallMillimetresPerMinute,
        double easyGap,
        double narrowGap,
        List<Row> rows,
        AdsorbentRatio ratio,
        String source,
        Place place)
        implements Ground {

    public ColumnSizes {
        rows = List.copyOf(rows);
    }

    /** One column of the table; loads in milligrams of mixture. */
    public record Row(
            double boreMillimetres,
            double eluentMillilitres,
            double easyLoadMilligrams,
            double narrowLoadMilligrams,
            double fractionMillilitres) {}

    /** Grams of adsorbent for a gram of mixture. */
    public record AdsorbentRatio(double easy, double usual, double hard, String source) {}

    /** Whether the table gives no load at a gap. */
    public boolean isTooNarrow(double gap) {
        return Numbers.steady(gap) < narrowGap;
    }

    /** The narrowest column of the table that takes a load at a gap; empty when none does, or the gap is too narrow. */
    public Optional<Row> smallestFor(double loadMilligrams, double gap) {
        return isTooNarrow(gap)
                ? Optional.empty()
                : rows.stream().filter(row -> load(row, gap) >= loadMilligrams).findFirst();
    }

    /**
     * What a column takes at a gap, in milligrams, in proportion to the height of its bed.
     *
     * @return empty when the bore lies outside the table or the gap is too narrow
     */
    public OptionalDouble capacityMilligrams(double boreMillimetres, double bedHeightMillimetres, double gap) {
        if (isTooNarrow(gap)) {
            return OptionalDouble.empty();
        }
        OptionalDouble atItsBed = atBore(boreMillimetres, row -> load(row, gap));
        return atItsBed.isEmpty()
                ? atItsBed
                : OptionalDouble.of(atItsBed.getAsDouble() * bedHeightMillimetres / bedMillimetres);
    }

    /**
     * The bore in millimetres that takes a load at a gap with the bed of the table; the narrowest of the table for less
     * than that takes.
     *
     * @return empty when the load lies above the table or the gap is too narrow
     */
    public OptionalDouble boreMillimetresFor(double loadMilligrams, double gap) {
        Optional<Row> enough = smallestFor(loadMilligrams, gap);
        if (enough.isEmpty() || enough.get().equals(rows.get(0))) {
            return enough.map(row -> OptionalDouble.of(row.boreMillimetres())).orElse(OptionalDouble.empty());
        }
        Row below = rows.get(rows.indexOf(enough.get()) - 1);
        double share = (loadMilligrams - load(below, gap)) / (load(enough.get(), gap) - load(below, gap));
        return OptionalDouble.of(Math.sqrt(square(below) + share * (square(enough.get()) - square(below))));
    }

    /** The volume of one fraction in millilitres; empty when the bore lies outside the table. */
    public OptionalDouble fractionMillilitres(double boreMillimetres) {
        return atBore(boreMillimetres, Row::fractionMillilitres);
    }

    /** The eluent in millilitres that wets a bed and elutes it; empty when the bore lies outside the table. */
    public OptionalDouble eluentMillilitres(double boreMillimetres) {
        return atBore(boreMillimetres, Row::eluentMillilitres);
    }

    /** Flow in millilitres per minute at which the table is run; for any bore. */
    public double flowMillilitresPerMinute(double boreMillimetres) {
        return Percolation.millilitresPerMinute(surfaceFallMillimetresPerMinute / 10, boreMillimetres);
    }

    private double load(Row row, double gap) {
        return Numbers.steady(gap) >= easyGap ? row.easyLoadMilligrams() : row.narrowLoadMilligrams();
    }

    private OptionalDouble atBore(double bore, ToDoubleFunction<Row> column) {
        for (int i = 0; i + 1 < rows.size(); i++) {
            Row narrow = rows.get(i);
            Row wide = rows.get(i + 1);
            if (bore >= narrow.boreMillimetres() && bore <= wide.boreMillimetres()) {
                double share = (bore * bore - square(narrow)) / (square(wide) - square(narrow));
                double from = column.applyAsDouble(narrow);
                return OptionalDouble.of(from + share * (column.applyAsDouble(wide) - from));
            }
        }
        return OptionalDouble.empty();
    }

    private static double square(Row row) {
        return row.boreMillimetres() * row.boreMillimetres();
    }

    public double narrowestMillimetres() {
        return rows.get(0).boreMillimetres();
    }

    public double widestMillimetres() {
        return rows.get(rows.size() - 1).boreMillimetres();
    }

    @Override
    public Reason reason() {
        return new Reason.Limited("the table of column sizes", place, source);
    }
}
