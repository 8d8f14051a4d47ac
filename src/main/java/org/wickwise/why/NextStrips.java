package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.wickwise.bench.Case;
import org.wickwise.plan.Advantage;
import org.wickwise.plan.AskedOrder;
import org.wickwise.plan.Plan;
import org.wickwise.plan.Planner;
import org.wickwise.plan.Route;
import org.wickwise.plan.Step;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.WarmJudging;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;
import org.wickwise.text.ProblemsFound;

/**
 * Which strip is most worth running, and whether any is. Strips that may come out are drawn from what is known, judged
 * with those there are, and planned with; what that changes is the worth of the strip.
 *
 * @param plan without a further strip
 * @param firmness of the plan under as many redraws
 * @param prospects of every strip that may be run, the most worth first
 */
public record NextStrips(Plan plan, Firmness firmness, List<Prospect> prospects, int draws, long seed) {

    private static final double PER_CENT = 100;

    /** What is to be done. */
    public enum Advice {
        /** A strip is worth running. */
        RUN,
        /** The plan is firm, and no strip is worth running. */
        STOP_FIRM,
        /** The plan is not firm, and yet no strip is worth running. */
        STOP_IN_DOUBT,
        /** There is no plan, and no strip is worth running. */
        STOP_WITHOUT_PLAN
    }

    public NextStrips {
        prospects = List.copyOf(prospects);
    }

    /**
     * @param draws of each strip, at least 1
     * @param progress tells how many strips of how many were looked at, from any thread
     * @throws ProblemsFound when strips that should agree contradict each other
     */
    public static NextStrips of(
            Judge judge, Planner planner, Case written, int draws, long seed, IntFunction<IntConsumer> progress) {
        Judgement judgement = judge.judge(written);
        Plan plan = planner.plan(judgement);
        Firmness firmness = Firmness.of(judge, planner, written, draws, seed, any -> {});
        Beliefs beliefs = new Beliefs(judgement, seed);
        List<StripToRun> strips = StripToRun.all(judgement);
        IntConsumer done = progress.apply(strips.size());
        AtomicInteger looked = new AtomicInteger();
        List<Prospect> prospects = strips.parallelStream()
                .map(strip -> {
                    Prospect prospect = new Drawing(judge, planner, plan, beliefs, strip).prospect(draws);
                    done.accept(looked.incrementAndGet());
                    return prospect;
                })
                .sorted(Prospect.MOST_WORTH_FIRST)
                .toList();
        return new NextStrips(plan, firmness, prospects, draws, seed);
    }

    public Advice advice() {
        if (!worthRunning().isEmpty()) {
            return Advice.RUN;
        }
        if (plan.isRefusal()) {
            return Advice.STOP_WITHOUT_PLAN;
        }
        return isFirm() ? Advice.STOP_FIRM : Advice.STOP_IN_DOUBT;
    }

    /** Whether the plan stays in so many redraws that testing may stop. */
    public boolean isFirm() {
        return Numbers.steady(PER_CENT * firmness.share()) >= plan.judgement().limit("firm enough to stop testing");
    }

    /** The strips worth running, the most worth first. */
    public List<Prospect> worthRunning() {
        return prospects.stream().filter(this::isWorthRunning).toList();
    }

    /** Whether running a strip opens a better plan, or makes the right one be chosen more often, often enough. */
    boolean isWorthRunning(Prospect prospect) {
        return Numbers.steady(PER_CENT * prospect.worth()) >= plan.judgement().limit("chance worth a strip");
    }

    /** Draws what one strip may show. Keeps the case laid out with the strip, and changes only readings. */
    private record Drawing(Judge judge, Planner planner, Plan plan, Beliefs beliefs, StripToRun next) {

        private static final String REFUSED = "no plan";
        private static final String CONTRADICTED = "strips that contradict each other";

        /**
         * What is planned with some strips.
         *
         * @param judgement of them; empty where they contradict each other
         */
        private record Chosen(Optional<Judgement> judgement, Optional<Route> route) {

            String outcome() {
                return judgement.isEmpty()
                        ? CONTRADICTED
                        : route.map(Route::inShort).orElse(REFUSED);
            }
        }

        Prospect prospect(int draws) {
            Judgement judgement = plan.judgement();
            Strip unread = next.unread(judgement.judged(), judgement.limit("least front"));
            List<Strip> others = next.others(judgement.judged());
            Case extended = judgement.judged().with(joined(others, unread));
            List<Prospect.Draw> drawn = new ArrayList<>();
            try (WarmJudging judging = judge.keepWarm(extended)) {
                for (int drawing = 0; drawing < draws; drawing++) {
                    drawn.add(draw(judging, others, unread, drawing));
                }
            }
            return new Prospect(next, drawn);
        }

        private Prospect.Draw draw(WarmJudging judging, List<Strip> others, Strip unread, int drawing) {
            Truth truth = beliefs.draw(next, drawing);
            Strip exact = StripToRun.at(truth, unread);
            Chosen chosen = choose(judging, joined(others, beliefs.read(exact, drawing)));
            boolean changed = !isAsGood(plan.route(), chosen);
            Optional<Prospect.Right> right = Optional.empty();
            if (next.kind().isRepeat()) {
                Chosen best =
                        choose(judging, joined(others.stream().map(truth::read).toList(), exact));
                right = Optional.of(new Prospect.Right(
                        isAsGood(plan.route(), best),
                        chosen.judgement().isPresent() && isAsGood(chosen.route(), best)));
            }
            return new Prospect.Draw(
                    chosen.outcome(),
                    changed,
                    changed ? chosen.route().flatMap(this::better) : Optional.empty(),
                    right,
                    truth.dyes().stream()
                            .map(dye -> truth.retardation(dye, next.eluent()))
                            .toList());
        }

        private Chosen choose(WarmJudging judging, List<Strip> strips) {
            try {
                Judgement judgement = judging.with(strips);
                return new Chosen(Optional.of(judgement), planner.route(judgement));
            } catch (ProblemsFound contradiction) {
                return new Chosen(Optional.empty(), Optional.empty());
            }
        }

        /** Whether a route still works where another was chosen, and is worse by no more than a saving not worth a strip. */
        private boolean isAsGood(Optional<Route> route, Chosen best) {
            if (best.judgement().isEmpty() || route.isPresent() != best.route().isPresent()) {
                return false;
            }
            if (route.isEmpty()
                    || route.get().inShort().equals(best.route().get().inShort())) {
                return true;
            }
            List<Eluent> order = route.get().steps().stream().map(Step::eluent).toList();
            return planner.alternatives(best.judgement().get()).inOrder(order) instanceof AskedOrder.Sound sound
                    && !isWorthAStrip(planner.advantage(best.route().get(), sound.route()));
        }

        /** Any plan is better than none; a plan that is only cheaper has to be worth the strip. */
        private Optional<Prospect.Better> better(Route route) {
            if (plan.route().isEmpty()) {
                return Optional.of(new Prospect.Better(Optional.empty(), 0));
            }
            Route present = plan.route().get();
            Optional<Advantage> advantage = planner.advantage(route, present);
            return isWorthAStrip(advantage)
                    ? Optional.of(new Prospect.Better(
                            advantage, present.steps().size() - route.steps().size()))
                    : Optional.empty();
        }

        private boolean isWorthAStrip(Optional<Advantage> advantage) {
            double leastSaving = plan.judgement().limit("saving worth a strip");
            return advantage.filter(found -> found.isBetterBy(leastSaving)).isPresent();
        }

        private static List<Strip> joined(List<Strip> others, Strip last) {
            return Stream.concat(others.stream(), Stream.of(last)).toList();
        }
    }
}
