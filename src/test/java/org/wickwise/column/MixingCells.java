package org.wickwise.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/**
 * Tanks in series (Martin and Synge): in each cell the dye is always in equilibrium, each small volume moves mobile phase
 * into the next cell, and the eluent's composition travels as a sharp front. Slow and plain; a check of the closed form.
 */
final class MixingCells {

    private static final double COURANT = 0.05;

    private MixingCells() {}

    static Band elute(double k1, double k2, double switchedMillilitres, double columnVolume, int cells) {
        double cellVolume = columnVolume / cells;
        double step = COURANT * cellVolume;
        double[] amount = new double[cells];
        amount[0] = 1;
        double out = 0;
        double moment1 = 0;
        double moment2 = 0;
        double poured = 0;
        while (out < 1 - 1e-7 && poured < 400 * columnVolume) {
            double front = (poured - switchedMillilitres) / cellVolume;
            double carried = 0;
            for (int i = 0; i < cells; i++) {
                double k = i < front ? k2 : k1;
                double leaving = amount[i] * (1 - Math.exp(-step / (cellVolume * (1 + k))));
                amount[i] += carried - leaving;
                carried = leaving;
            }
            poured += step;
            out += carried;
            moment1 += carried * poured;
            moment2 += carried * poured * poured;
        }
        double held = 0;
        for (double inCell : amount) {
            held += inCell;
        }
        assertThat(out + held).as("mass is kept").isCloseTo(1, within(1e-9));
        double middle = moment1 / out;
        return new Band(middle, Math.sqrt(moment2 / out - middle * middle));
    }
}
