package org.wickwise.why;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.wickwise.Benchmarks;
import org.wickwise.bench.Case;
import org.wickwise.command.Workbench;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.Planner;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.LaidOutCase;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.SolventData;

/** Questions put to a case that is judged, by a process that has been running for a while. */
@State(Scope.Benchmark)
public class AskingBenchmark {

    private static final int STRIP = 6;
    private static final int SPOT = 3;
    private static final double[] MILLIMETRES_FURTHER = {0, 3, -4, 1, -12};

    private SolventData data;
    private Judge judge;
    private Planner planner;
    private Plan plan;
    private Answers answers;
    private List<Case> readOtherwise;
    private LaidOutCase laidOut;
    private int next;

    @Setup
    public void judgeTheCase() {
        Workbench bench = Workbench.in(Path.of(""));
        data = bench.data();
        judge = bench.judge();
        planner = new Planner(judge.rulebook());
        Case written = ManySolvents.in(data);
        plan = planner.plan(judge.judge(written));
        answers = new Answers(plan, judge, planner);
        readOtherwise = new ArrayList<>();
        for (double further : MILLIMETRES_FURTHER) {
            readOtherwise.add(readOtherwise(written, further));
        }
        laidOut = judge.layOut(written);
        for (Case supposed : readOtherwise) {
            if (!bySupposing(supposed)
                    .reasons()
                    .keySet()
                    .equals(judge.judge(supposed).reasons().keySet())) {
                throw new IllegalStateException("supposing a reading concludes something else than judging afresh");
            }
        }
        Benchmarks.note(
                "%d dyes, %d strips, %d eluents with the blends proposed",
                written.dyes().size(),
                written.strips().size(),
                plan.judgement().eluents().size());
    }

    @TearDown
    public void close() {
        laidOut.close();
    }

    /** One reading is another than in the case judged before. */
    @Benchmark
    public Judgement oneReadingSupposed() {
        return bySupposing(nextCase());
    }

    @Benchmark
    public Judgement oneReadingJudgedAfresh() {
        return judge.judge(nextCase());
    }

    /** Every line of the answer, for each solvent of the table and the blend. */
    @Benchmark
    public List<PlanLine> whyNotForEverySolvent() {
        WhyNot whyNot = new WhyNot(plan, judge, planner);
        List<PlanLine> lines = new ArrayList<>();
        plan.judged().shelf().bottles().forEach(bottle -> lines.addAll(whyNot.of(bottle.contents())));
        return lines;
    }

    @Benchmark
    public List<PlanLine> whyASolvent() {
        return answer("ethyl acetate");
    }

    @Benchmark
    public List<PlanLine> whyASolventNobodyRan() {
        return answer("cyclohexane");
    }

    @Benchmark
    public List<PlanLine> whyADye() {
        return answer("dye c");
    }

    @Benchmark
    public List<PlanLine> whyAPair() {
        return answer("dye c and dye d");
    }

    @Benchmark
    public List<PlanLine> whyAStrip() {
        return answer("the strip in acetone");
    }

    private List<PlanLine> answer(String question) {
        return answers.to(question, "many-solvents.yaml");
    }

    private Judgement bySupposing(Case supposed) {
        return laidOut.suppose(supposed, judge.rulebook().limits());
    }

    private Case nextCase() {
        next = (next + 1) % readOtherwise.size();
        return readOtherwise.get(next);
    }

    private static Case readOtherwise(Case written, double furtherMillimetres) {
        List<Strip> strips = new ArrayList<>(written.strips());
        Strip strip = strips.get(STRIP);
        List<Spot> spots = new ArrayList<>(strip.spots());
        Spot spot = spots.get(SPOT);
        double travelled = ((Spot.Travelled) spot.position()).millimetres();
        spots.set(SPOT, new Spot(spot.dyes(), new Spot.Travelled(travelled + furtherMillimetres), spot.place()));
        strips.set(STRIP, strip.with(strip.frontMillimetres(), spots));
        return written.with(strips);
    }
}
