package org.wickwise.column;

import java.util.List;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.wickwise.Benchmarks;

/**
 * One dye's elution volume and width under steps of eluent: the closed form, the mixing cells and a general integrator on
 * the equations of these cells. Each must come within the same limits of the converged answer, or nothing is measured.
 * The integrator is given the loosest tolerance that does, to a power of ten. It steps across the fronts; beginning anew
 * at each costs it more than the kinks do.
 */
@State(Scope.Benchmark)
public class ColumnBenchmark {

    private static final double COLUMN_VOLUME = 10;
    private static final int CELLS = 100;
    private static final double ALLOWED_OF_MIDDLE = 0.002;
    private static final double ALLOWED_OF_SIGMA = 0.03;

    private static final double CONVERGED = 1e-11;
    private static final int TIGHTEST_DECADE = 8;
    /** The integrator needs an end; so many standard deviations behind the middle less than 1e-9 is left. */
    private static final double SIGMAS_TO_THE_END = 8;

    /** One eluent, one switch and two; the switches are those of CV-408 and CV-409 in the table of check values. */
    public enum Pours {
        ONE_ELUENT(new Pour(100, 4)),
        ONE_SWITCH(new Pour(30, 20), new Pour(100, 1)),
        TWO_SWITCHES(new Pour(20, 50), new Pour(20, 5), new Pour(100, 0.5));

        private final List<Pour> inOrder;

        Pours(Pour... inOrder) {
            this.inOrder = List.of(inOrder);
        }
    }

    @Param
    private Pours pours;

    private CellEquations equations;
    private double end;
    private double tolerance;

    @Setup
    public void holdAllToTheSameLimits() {
        equations = new CellEquations(pours.inOrder, COLUMN_VOLUME, CELLS);
        Band closed = closedForm();
        end = closed.middleMillilitres() + SIGMAS_TO_THE_END * closed.sigmaMillilitres();
        Band converged = equations.solve(CONVERGED, end, true);
        tolerance = loosest(converged);
        Benchmarks.note(
                "%s, converged: %.3f mL, sigma %.4f mL",
                pours, converged.middleMillilitres(), converged.sigmaMillilitres());
        expectWithin("closed form", closed, converged);
        expectWithin("mixing cells", mixingCells(), converged);
        expectWithin("integrator at tolerance " + tolerance, integrator(), converged);
    }

    @Benchmark
    public Band closedForm() {
        return Band.of(pours.inOrder, COLUMN_VOLUME, CELLS).orElseThrow();
    }

    @Benchmark
    public Band mixingCells() {
        return new MixingCells(COLUMN_VOLUME, CELLS).elute(pours.inOrder).band().orElseThrow();
    }

    @Benchmark
    public Band integrator() {
        return equations.solve(tolerance, end, false);
    }

    private double loosest(Band converged) {
        return IntStream.rangeClosed(1, TIGHTEST_DECADE)
                .mapToDouble(decade -> Math.pow(10, -decade))
                .filter(candidate -> isWithin(equations.solve(candidate, end, false), converged))
                .findFirst()
                .orElseThrow();
    }

    private static boolean isWithin(Band found, Band converged) {
        return Math.abs(offMiddle(found, converged)) <= ALLOWED_OF_MIDDLE
                && Math.abs(offSigma(found, converged)) <= ALLOWED_OF_SIGMA;
    }

    private static double offMiddle(Band found, Band converged) {
        return found.middleMillilitres() / converged.middleMillilitres() - 1;
    }

    private static double offSigma(Band found, Band converged) {
        return found.sigmaMillilitres() / converged.sigmaMillilitres() - 1;
    }

    private static void expectWithin(String what, Band found, Band converged) {
        Benchmarks.note(
                "  %s: off by %.3f %% in volume, %.2f %% in width",
                what, 100 * offMiddle(found, converged), 100 * offSigma(found, converged));
        if (!isWithin(found, converged)) {
            throw new IllegalStateException(what + " is not within the limits; there is nothing to compare");
        }
    }
}
