package org.wickwise.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.wickwise.bench.Case;
import org.wickwise.plan.Planner;
import org.wickwise.plan.Route;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judge;
import org.wickwise.rulebook.Judgement;
import org.wickwise.rulebook.Margin;
import org.wickwise.rulebook.WarmJudging;
import org.wickwise.strip.Redraw;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.text.ProblemsFound;

/**
 * How often the plan stays the same when every reading is read again within its uncertainty. A plan counts as the same
 * when the same eluents are poured in the same order and the same dyes leave alone.
 *
 * @param judgement of the readings as written
 * @param margins how far the readings behind the plan lie from the limits they were judged by, the nearest first
 * @param usual what comes of the readings as written
 * @param same in how many redraws the same comes out
 * @param others what else came out and how often, the most frequent first
 * @param links every reading that was redrawn, the one that matters most first
 */
public record Firmness(
        Judgement judgement,
        List<Margin> margins,
        String usual,
        int redraws,
        long seed,
        int same,
        Map<String, Integer> others,
        List<Link> links) {

    private static final String REFUSED = "no plan";
    private static final String CONTRADICTED = "strips that contradict each other";

    /** Few enough to keep every processor busy, and enough to be worth laying the case out again. */
    private static final int REDRAWS_TOGETHER = 200;

    /**
     * One reading, and how it lay when something else came out.
     *
     * @param leaning by how many standard uncertainties it lay higher, on average, in the redraws that brought something
     *     else than in those that brought the same; negative for lower
     */
    public record Link(Strip strip, Spot spot, double leaning) {}

    /**
     * Takes as many processors as there are; how many changes nothing of what comes out.
     *
     * @param redraws at least 1
     * @param done is told now and then how many redraws are done, from any thread
     */
    public static Firmness of(Judge judge, Planner planner, Case written, int redraws, long seed, IntConsumer done) {
        Judgement first = judge.judge(written);
        String usual = outcome(planner.route(first));
        AtomicInteger counted = new AtomicInteger();
        Tally tally = IntStream.rangeClosed(0, (redraws - 1) / REDRAWS_TOGETHER)
                .parallel()
                .mapToObj(part -> {
                    int from = part * REDRAWS_TOGETHER;
                    int to = Math.min(redraws, from + REDRAWS_TOGETHER);
                    try (WarmJudging judging = judge.keepWarm(written)) {
                        Tally ofPart = new Tally();
                        for (int drawing = from; drawing < to; drawing++) {
                            ofPart.add(judging, planner, usual, judging.redraw(seed, drawing));
                            done.accept(counted.incrementAndGet());
                        }
                        return ofPart;
                    }
                })
                .toList()
                .stream()
                .reduce(new Tally(), Tally::plus);
        List<Conclusion> grounds =
                planner.route(first).map(route -> PlanGrounds.of(route, first)).orElse(List.of());
        return new Firmness(
                first,
                judge.margins(first).of(grounds),
                usual,
                redraws,
                seed,
                tally.same,
                tally.others,
                tally.links(first.judged().strips()));
    }

    private static String outcome(Optional<Route> route) {
        return route.map(Route::inShort).orElse(REFUSED);
    }

    /** The other outcomes, the most frequent first. */
    public List<Map.Entry<String, Integer>> othersByFrequency() {
        return others.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .toList();
    }

    /** The share of redraws with the same outcome, 0 to 1. */
    public double share() {
        return (double) same / redraws;
    }

    /** Standard uncertainty of the share, from the number of redraws: sqrt(p (1 - p)/n). */
    public double shareUncertainty() {
        return Math.sqrt(share() * (1 - share()) / redraws);
    }

    /** What came of some redraws. Confined to one thread. */
    private static final class Tally {

        private final Map<String, Integer> others = new TreeMap<>();
        private final Map<String, double[]> sums = new TreeMap<>();
        private int same;
        private int different;

        void add(WarmJudging judging, Planner planner, String usual, List<Redraw> drawn) {
            String outcome;
            try {
                outcome = outcome(planner.route(
                        judging.with(drawn.stream().map(Redraw::strip).toList())));
            } catch (ProblemsFound contradiction) {
                outcome = CONTRADICTED;
            }
            boolean isSame = outcome.equals(usual);
            same += isSame ? 1 : 0;
            if (!isSame) {
                different++;
                others.merge(outcome, 1, Integer::sum);
            }
            for (int strip = 0; strip < drawn.size(); strip++) {
                for (int spot = 0; spot < drawn.get(strip).errors().size(); spot++) {
                    sums.computeIfAbsent(key(strip, spot), any -> new double[2])[isSame ? 0 : 1] +=
                            drawn.get(strip).errors().get(spot);
                }
            }
        }

        Tally plus(Tally next) {
            same += next.same;
            different += next.different;
            next.others.forEach((outcome, count) -> others.merge(outcome, count, Integer::sum));
            next.sums.forEach((key, sum) ->
                    sums.merge(key, sum, (one, other) -> new double[] {one[0] + other[0], one[1] + other[1]}));
            return this;
        }

        List<Link> links(List<Strip> strips) {
            List<Link> links = new ArrayList<>();
            for (int strip = 0; strip < strips.size(); strip++) {
                for (int spot = 0; spot < strips.get(strip).spots().size(); spot++) {
                    double[] sum = sums.get(key(strip, spot));
                    if (different > 0 && same > 0 && sum[0] != 0) {
                        links.add(new Link(
                                strips.get(strip),
                                strips.get(strip).spots().get(spot),
                                sum[1] / different - sum[0] / same));
                    }
                }
            }
            links.sort(Comparator.comparingDouble((Link link) -> -Math.abs(link.leaning()))
                    .thenComparing(link -> link.strip().toString())
                    .thenComparing(link -> link.strip().place())
                    .thenComparing(link -> link.spot().dyes().toString()));
            return List.copyOf(links);
        }

        private static String key(int strip, int spot) {
            return strip + " " + spot;
        }
    }
}
