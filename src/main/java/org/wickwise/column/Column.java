package org.wickwise.column;

import java.util.OptionalDouble;
import org.wickwise.reason.Ground;
import org.wickwise.reason.Reason;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;

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

    /** "1.4 column volumes (about 21 mL)"; without millilitres when the size is unknown. */
    public String inWords(double columnVolumes) {
        String words = Numbers.plain(columnVolumes, 1)
                + (Math.abs(columnVolumes - 1) < 0.05 ? " column volume" : " column volumes");
        OptionalDouble one = columnVolumeMillilitres();
        return one.isEmpty() ? words : words + " (about " + Numbers.poured(columnVolumes * one.getAsDouble()) + " mL)";
    }

    @Override
    public Reason reason() {
        return new Reason.Stated("the column is " + phase.name(), place);
    }
}
