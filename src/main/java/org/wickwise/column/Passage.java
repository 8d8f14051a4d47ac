package org.wickwise.column;

/**
 * One dye's way through a row of mixing cells. Each step solves the cells' equations to second order: the flux out of a
 * cell is its share times what it holds half-way. In one eluent that moves the dye by 0, 1 or 2 cells with the mean and
 * the variance of the exact (Poisson) solution, so steps may be as long as a cell's own time. What leaves a cell enters
 * the next. Only cells that hold dye are worked on.
 */
final class Passage {

    private static final double LEFT_AT_THE_END = 1e-9;
    private static final double CONSERVED = 1e-9;

    private final Inlet inlet;
    private final int cells;
    private final double loadMillilitres;
    private final double largestShare;
    private final double negligible;

    private final double[] held;
    private final double[] share;
    /** What enters each cell in a step; the last is what leaves the column. */
    private final double[] flux;

    private final Outflow.Collector collector = new Outflow.Collector();
    private int first;
    private int last;
    private int oldest;
    private int newest;
    private double poured;
    private double fed;

    /** @param loadMillilitres what of the first pour holds the dye; 0 for a thin band in the first cell */
    Passage(Inlet inlet, int cells, double loadMillilitres, double largestShare) {
        this.inlet = inlet;
        this.cells = cells;
        this.loadMillilitres = loadMillilitres;
        this.largestShare = largestShare;
        negligible = LEFT_AT_THE_END / 100 / cells;
        held = new double[cells];
        share = new double[cells];
        flux = new double[cells + 1];
        last = Math.min(1, cells - 1);
        if (loadMillilitres == 0) {
            held[0] = 1;
            fed = 1;
        }
    }

    Outflow untilGone() {
        return until(Double.POSITIVE_INFINITY);
    }

    Outflow until(double endMillilitres) {
        while (poured < endMillilitres && (fed < 1 || 1 - collector.total() > LEFT_AT_THE_END)) {
            double step = Math.min(nextStep(), endMillilitres - poured);
            if (step == Double.POSITIVE_INFINITY) {
                break;
            }
            pour(step);
        }
        double left = leftOnBed();
        if (!(Math.abs(fed - collector.total() - left) <= CONSERVED)) {
            throw new IllegalStateException("of " + fed + " loaded, " + collector.total() + " left the column and "
                    + left + " is on it; expected these to add up");
        }
        return collector.outflow(left);
    }

    private double nextStep() {
        double inFirstCell = poured - first * inlet.cellMillilitres();
        newest = inlet.laterPourAt(inFirstCell, newest);
        oldest = inlet.laterPourAt(poured - last * inlet.cellMillilitres(), oldest);
        double step = inlet.millilitresFor(largestShare, oldest, newest, inFirstCell);
        return fed < 1 ? Math.min(step, loadMillilitres - poured) : step;
    }

    private void pour(double millilitres) {
        inlet.shares(poured, millilitres, first, last, oldest, share);
        flux[first] = feed(millilitres);
        flux[first + 1] = share[first] * (held[first] + (flux[first] - share[first] * held[first]) / 2);
        for (int i = first + 1; i <= last; i++) {
            flux[i + 1] = share[i] * (held[i] + (share[i - 1] * held[i - 1] - share[i] * held[i]) * 0.5);
        }
        for (int i = first; i <= last; i++) {
            held[i] += flux[i] - flux[i + 1];
        }
        if (last == cells - 1) {
            collector.collect(poured - loadMillilitres, millilitres, flux[cells]);
        } else {
            held[last + 1] += flux[last + 1];
        }
        poured += millilitres;
        followTheDye();
    }

    private double feed(double millilitres) {
        if (fed >= 1) {
            return 0;
        }
        boolean ends = poured + millilitres >= loadMillilitres;
        double amount = ends ? 1 - fed : millilitres / loadMillilitres;
        fed += amount;
        if (ends) {
            fed = 1;
        }
        return amount;
    }

    private void followTheDye() {
        while (last < cells - 1 && Math.max(held[last], held[last + 1]) > negligible) {
            last++;
        }
        while (fed >= 1 && first < last && held[first] < negligible) {
            first++;
        }
    }

    private double leftOnBed() {
        double sum = 0;
        for (double inCell : held) {
            sum += inCell;
        }
        return sum;
    }
}
