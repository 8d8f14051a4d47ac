package org.wickwise.column;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;
import org.wickwise.text.Words;

/**
 * The column to be packed.
 *
 * @param boreMillimetres inner diameter, where it is known
 * @param bedMillimetres height of the packed bed, where it is known
 */
public record Column(
        StationaryPhase phase, OptionalDouble boreMillimetres, OptionalDouble bedMillimetres, Setup setup, Place place)
        implements Ground {

    public String phaseName() {
        return phase.name();
    }

    public String phaseKind() {
        return phase.kind();
    }

    /** Volume of the packed bed, pi d^2 L/4, in millilitres; empty when bore or bed is unknown. */
    public OptionalDouble bedMillilitres() {
        if (boreMillimetres.isEmpty() || bedMillimetres.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Bed.millilitres(boreMillimetres.getAsDouble(), bedMillimetres.getAsDouble()));
    }

    /** One column volume: the liquid the bed holds, porosity times bed volume, in millilitres. */
    public OptionalDouble columnVolumeMillilitres() {
        OptionalDouble bed = bedMillilitres();
        return bed.isEmpty() ? bed : OptionalDouble.of(bed.getAsDouble() * phase.totalPorosity());
    }

    /** Dry mass of the bed in grams. */
    public OptionalDouble bedGrams() {
        OptionalDouble bed = bedMillilitres();
        return bed.isEmpty() ? bed : OptionalDouble.of(bed.getAsDouble() * phase.packedDensityGramsPerMillilitre());
    }

    /** What the writer says of bore and bed; empty when neither is known. */
    public Optional<Reason> sizeStated() {
        List<String> known = new ArrayList<>();
        boreMillimetres.ifPresent(bore -> known.add("the bore is " + Numbers.plain(bore, 1) + " mm"));
        bedMillimetres.ifPresent(bed -> known.add("the bed is " + Numbers.plain(bed, 1) + " mm high"));
        return known.isEmpty() ? Optional.empty() : Optional.of(new Reason.Stated(Words.joined(known), place));
    }

    /** "1.4 column volumes (about 21 mL)"; without millilitres when the size is unknown. */
    public String inWords(double columnVolumes) {
        return inWords(columnVolumes, Numbers::poured);
    }

    /** The same, rounded up: as much as is to be kept ready. */
    public String readyInWords(double columnVolumes) {
        return inWords(columnVolumes, Numbers::ready);
    }

    /** "1.1 to 2 column volumes (18 to 33 mL)"; without millilitres when the size is unknown. */
    public String betweenInWords(double fromColumnVolumes, double toColumnVolumes) {
        String words =
                Numbers.plain(fromColumnVolumes, 1) + " to " + Numbers.plain(toColumnVolumes, 1) + " column volumes";
        OptionalDouble one = columnVolumeMillilitres();
        return one.isEmpty()
                ? words
                : words + " (" + Numbers.poured(fromColumnVolumes * one.getAsDouble()) + " to "
                        + Numbers.poured(toColumnVolumes * one.getAsDouble()) + " mL)";
    }

    private String inWords(double columnVolumes, DoubleFunction<String> rounded) {
        String words = Numbers.plain(columnVolumes, 1)
                + (Math.abs(columnVolumes - 1) < 0.05 ? " column volume" : " column volumes");
        OptionalDouble one = columnVolumeMillilitres();
        return one.isEmpty() ? words : words + " (about " + rounded.apply(columnVolumes * one.getAsDouble()) + " mL)";
    }

    @Override
    public Reason reason() {
        return new Reason.Stated("the column is " + phase.name(), place);
    }
}
