package org.wickwise.column;

/**
 * Ways to step a row of n mixing cells through time, by how many plates N the row then shows when each step passes on a
 * share lambda of a cell (leading error of the scheme, read as dispersion).
 */
public enum CellSteps {
    /** Each cell passes on what it held before the step; lambda up to 1; N = n/(1 - lambda). */
    EXPLICIT {
        @Override
        double cellsPerPlate(double share) {
            return 1 - share;
        }
    },
    /** Each cell passes on from what it holds after the step; N = n/(1 + lambda). */
    IMPLICIT {
        @Override
        double cellsPerPlate(double share) {
            return 1 + share;
        }
    },
    /** The cells' equations solved exactly, or to second order as {@link MixingCells} does; N = n. */
    EXACT {
        @Override
        double cellsPerPlate(double share) {
            return 1;
        }
    };

    /**
     * Cells that show the wanted plates.
     *
     * @param plates above 0
     * @param share lambda, 0 or more and below 1
     */
    public long cellsFor(double plates, double share) {
        Expected.aboveZero("the number of plates", plates);
        if (!(share >= 0 && share < 1)) {
            throw new IllegalArgumentException(
                    "the share passed on in a step is " + share + "; expected 0 or more and below 1");
        }
        return Math.round(plates * cellsPerPlate(share));
    }

    abstract double cellsPerPlate(double share);
}
