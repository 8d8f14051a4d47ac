package org.wickwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.wickwise.text.Numbers;

/**
 * Volumes along a picture, from the first drop of the first step: in millilitres where the size of the column is known, in
 * column volumes elsewhere. Takes column volumes.
 *
 * @param last the column volumes at the right end, above 0
 * @param columnVolumeMillilitres one column volume, where it is known
 */
record VolumeAxis(double left, double right, double last, OptionalDouble columnVolumeMillilitres) {

    private static final double LEAST_TICK_DISTANCE = 55;

    private static final double FINE_MILLILITRES = 10;

    /** @param label the number at the tick, in the unit of the axis */
    record Tick(double x, String label) {}

    double x(double columnVolumes) {
        return left + (right - left) * columnVolumes / last;
    }

    String title() {
        return (columnVolumeMillilitres.isPresent() ? "mL" : "column volumes")
                + " poured, from the first drop of step 1";
    }

    /** "59 mL" or "3.6 column volumes". */
    String volume(double columnVolumes) {
        return columnVolumeMillilitres.isPresent()
                ? number(columnVolumes) + " mL"
                : number(columnVolumes) + (number(columnVolumes).equals("1") ? " column volume" : " column volumes");
    }

    /** "39 to 59 mL", rounded the way a volume is poured. */
    String span(double from, double to) {
        return number(from) + " to " + volume(to);
    }

    /** "129 to 140 mL", as fine as the axis is read. */
    String place(double from, double to) {
        return columnVolumeMillilitres.isPresent() && to * columnVolumeMillilitres.getAsDouble() >= FINE_MILLILITRES
                ? Numbers.plain(from * columnVolumeMillilitres.getAsDouble(), 0) + " to "
                        + Numbers.plain(to * columnVolumeMillilitres.getAsDouble(), 0) + " mL"
                : span(from, to);
    }

    private String number(double columnVolumes) {
        return columnVolumeMillilitres.isPresent()
                ? Numbers.poured(columnVolumes * columnVolumeMillilitres.getAsDouble())
                : Numbers.plain(columnVolumes, 1);
    }

    /** Ticks at 1, 2 or 5 times a power of ten, as close as their numbers can be read. */
    List<Tick> ticks() {
        double unit = columnVolumeMillilitres.orElse(1);
        double end = last * unit;
        RoundStep step = RoundStep.atLeast(end * LEAST_TICK_DISTANCE / (right - left));
        List<Tick> ticks = new ArrayList<>();
        for (int i = 0; i * step.size() <= end; i++) {
            ticks.add(new Tick(x(i * step.size() / unit), Numbers.plain(i * step.size(), step.decimals())));
        }
        return ticks;
    }
}
