package org.wickwise.column;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The equations that {@link MixingCells} steps through, written for a general integrator: the amount in each cell, then
 * the amount that has left and its first and second moment over the poured volume.
 */
final class CellEquations implements OrdinaryDifferentialEquation {

    private static final double LONGEST_STEP = 1e6;
    private static final double SHORTEST_STEP = 1e-12;

    private final double cellMillilitres;
    private final int cells;
    private final double[] start;
    private final double[] rate;

    CellEquations(List<Pour> pours, double columnVolumeMillilitres, int cells) {
        this.cellMillilitres = columnVolumeMillilitres / cells;
        this.cells = cells;
        start = new double[pours.size()];
        rate = new double[pours.size()];
        for (int i = 0; i < start.length; i++) {
            start[i] = i == 0 ? 0 : start[i - 1] + pours.get(i - 1).millilitres();
            rate[i] = 1 / (cellMillilitres * (1 + pours.get(i).retentionFactor()));
        }
    }

    @Override
    public int getDimension() {
        return cells + 3;
    }

    @Override
    public double[] computeDerivatives(double poured, double[] state) {
        double[] change = new double[cells + 3];
        double entering = 0;
        int pour = start.length - 1;
        for (int i = 0; i < cells; i++) {
            while (pour > 0 && poured - i * cellMillilitres < start[pour]) {
                pour--;
            }
            double leaving = state[i] * rate[pour];
            change[i] = entering - leaving;
            entering = leaving;
        }
        change[cells] = entering;
        change[cells + 1] = entering * poured;
        change[cells + 2] = entering * poured * poured;
        return change;
    }

    /**
     * The band at the outlet.
     *
     * @param tolerance absolute for the amounts, relative for all
     * @param endMillilitres poured in all
     * @param stopAtFronts whether the integrator begins anew whenever a front enters a cell, where the equations have a
     *     kink; otherwise its own choice of steps has to cope
     */
    Band solve(double tolerance, double endMillilitres, boolean stopAtFronts) {
        double[] absolute = new double[cells + 3];
        double[] relative = new double[cells + 3];
        Arrays.fill(absolute, tolerance);
        Arrays.fill(relative, tolerance);
        absolute[cells + 1] = tolerance * endMillilitres;
        absolute[cells + 2] = tolerance * endMillilitres * endMillilitres;
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(SHORTEST_STEP, LONGEST_STEP, absolute, relative);
        double[] loaded = new double[cells + 3];
        loaded[0] = 1;
        ODEState state = new ODEState(0, loaded);
        for (double stop : stops(endMillilitres, stopAtFronts)) {
            state = integrator.integrate(this, state, stop);
        }
        double[] end = state.getPrimaryState();
        double mean = end[cells + 1] / end[cells];
        return new Band(mean, Math.sqrt(Math.max(0, end[cells + 2] / end[cells] - mean * mean)));
    }

    private List<Double> stops(double endMillilitres, boolean stopAtFronts) {
        List<Double> stops = new ArrayList<>();
        if (stopAtFronts) {
            for (int pour = 1; pour < start.length; pour++) {
                for (int i = 0; i < cells; i++) {
                    stops.add(start[pour] + i * cellMillilitres);
                }
            }
        }
        stops.removeIf(stop -> stop >= endMillilitres);
        stops.add(endMillilitres);
        return stops.stream().distinct().sorted().toList();
    }
}
