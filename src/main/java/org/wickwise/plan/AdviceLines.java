package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Words;

/** Which strip to run next, and the cautions about what is poured. */
final class AdviceLines {

    /** The topic of cautions that concern only what the column is packed and loaded with. */
    private static final String LOADING = "loading";

    private final Judgement judgement;
    private final Optional<Route> route;
    private final Optional<Eluent> packing;
    private final Set<Eluent> poured;
    private final List<Dye> overlapping;
    private final List<String> topics;
    private final List<PlanLine> lines = new ArrayList<>();

    AdviceLines(Judgement judgement, Optional<Route> route, List<Dye> overlapping, List<String> topics) {
        this.judgement = judgement;
        this.route = route;
        this.packing = route.map(found -> found.packing().packing());
        this.poured = route.map(Route::poured).orElse(Set.of());
        this.overlapping = overlapping;
        this.topics = topics;
    }

    List<PlanLine> lines() {
        nextStrips();
        cautions();
        return lines;
    }

    /** Whether the rules ask for a strip; needs no reasons. */
    boolean asksForStrips() {
        return !judgement.all(Conclusion.RunNext.class).isEmpty()
                || !judgement.all(Conclusion.RunNextDye.class).isEmpty()
                || !judgement.all(Conclusion.RunAgain.class).isEmpty()
                || judgement.all(Conclusion.RunNextEluent.class).stream().anyMatch(next -> concerns("", next.eluent()));
    }

    /** Advice about an eluent is given when the plan pours it, or when there is no plan. */
    private void nextStrips() {
        Map<String, Reason> advice = new TreeMap<>();
        judgement.all(Conclusion.RunNext.class).forEach(next -> take(advice, next));
        judgement.all(Conclusion.RunNextDye.class).forEach(next -> take(advice, next));
        judgement.all(Conclusion.RunAgain.class).forEach(next -> take(advice, next));
        judgement.all(Conclusion.RunNextEluent.class).stream()
                .filter(next -> concerns("", next.eluent()))
                .forEach(next -> take(advice, next));
        int number = 0;
        for (Map.Entry<String, Reason> entry : advice.entrySet()) {
            number++;
            lines.add(new PlanLine("next-" + number, Section.NEXT, entry.getKey(), entry.getValue()));
        }
        if (advice.isEmpty() && overlapping.isEmpty()) {
            String text = route.isPresent()
                    ? "None is needed for this plan: every eluent it pours was tried and read without doubt."
                    : "No rule names one. Another bed may do what these eluents cannot: ask `suppose CASE \"the column is"
                            + " ...\"`, or `next CASE` for eluents of the whole table.";
            lines.add(new PlanLine(
                    PlanLine.NO_STRIP_WANTED, Section.NEXT, text, new Reason.Chosen(text, List.of(), pouredStrips())));
        }
    }

    /** Why each strip in something poured is usable. */
    private List<Reason> pouredStrips() {
        return judgement.all(Conclusion.StripVerdict.class).stream()
                .filter(verdict -> poured.contains(verdict.strip().eluent()))
                .<Reason>map(judgement::reason)
                .toList();
    }

    private void take(Map<String, Reason> advice, Conclusion next) {
        Reason.Concluded reason = judgement.reason(next);
        reason.arguments().forEach(argument -> advice.putIfAbsent(argument.because(), reason));
    }

    /** Cautions of one rule are told once, with everything they are about in front. */
    private void cautions() {
        Map<String, Heard> byRule = new TreeMap<>();
        judgement
                .all(Conclusion.Caution.class)
                .forEach(caution -> hear(byRule, caution.rule(), caution.topic(), "", caution));
        judgement.all(Conclusion.EluentCaution.class).stream()
                .filter(caution -> concerns(caution.topic(), caution.eluent()))
                .forEach(caution -> hear(
                        byRule,
                        caution.rule(),
                        caution.topic(),
                        caution.eluent().name(),
                        caution));
        judgement.all(Conclusion.DyeCaution.class).stream()
                .filter(this::concerns)
                .forEach(caution -> hear(
                        byRule, caution.rule(), caution.topic(), caution.dye() + " in " + caution.eluent(), caution));
        byRule.values().stream()
                .sorted(Comparator.comparingInt((Heard heard) -> topics.indexOf(heard.topic()))
                        .thenComparing(Heard::rule))
                .map(Heard::line)
                .forEach(lines::add);
    }

    /** One rule's caution, what it is about and why. */
    private record Heard(String topic, String rule, Set<String> subjects, List<Reason.Concluded> reasons) {

        PlanLine line() {
            String subject = subjects.isEmpty() ? "" : String.join("; ", subjects) + ": ";
            String text = subject + texts();
            Reason reason = reasons.size() == 1
                    ? reasons.get(0)
                    : new Reason.Chosen(text, List.of(), List.<Reason>copyOf(reasons));
            return new PlanLine(rule, Section.SAFETY, text, reason);
        }

        private String texts() {
            return Words.endingOnce(reasons.stream()
                    .flatMap(reason -> reason.arguments().stream())
                    .map(Reason.Argument::because)
                    .distinct()
                    .sorted()
                    .toList());
        }
    }

    private void hear(Map<String, Heard> byRule, String rule, String topic, String subject, Conclusion caution) {
        Heard heard = byRule.computeIfAbsent(rule, any -> new Heard(topic, rule, new TreeSet<>(), new ArrayList<>()));
        if (!subject.isEmpty()) {
            heard.subjects().add(subject);
        }
        heard.reasons().add(judgement.reason(caution));
    }

    private boolean concerns(String topic, Eluent eluent) {
        if (route.isEmpty()) {
            return judgement.tried(eluent);
        }
        return topic.equals(LOADING) ? packing.filter(eluent::equals).isPresent() : poured.contains(eluent);
    }

    private boolean concerns(Conclusion.DyeCaution caution) {
        return route.isEmpty()
                || route.get().steps().stream()
                        .anyMatch(step -> step.eluent().equals(caution.eluent())
                                && step.leaving().contains(caution.dye()));
    }
}
