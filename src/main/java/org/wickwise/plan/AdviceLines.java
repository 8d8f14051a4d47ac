package org.wickwise.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Numbers;

/** Which strip to run next, and the cautions about what is poured. */
final class AdviceLines {

    private final Judgement judgement;
    private final Set<Eluent> poured;
    private final List<String> topics;
    private final List<PlanLine> lines = new ArrayList<>();

    AdviceLines(Judgement judgement, Set<Eluent> poured, List<String> topics) {
        this.judgement = judgement;
        this.poured = poured;
        this.topics = topics;
    }

    List<PlanLine> lines() {
        nextStrips();
        cautions();
        return lines;
    }

    /** Advice about an eluent is given when the plan pours it, or when there is no plan. */
    private void nextStrips() {
        Map<String, Reason> advice = new TreeMap<>();
        judgement.all(Conclusion.RunNext.class).forEach(next -> take(advice, next));
        judgement.all(Conclusion.RunNextDye.class).forEach(next -> take(advice, next));
        judgement.all(Conclusion.RunAgain.class).forEach(next -> take(advice, next));
        judgement.all(Conclusion.RunNextEluent.class).stream()
                .filter(next -> poured.contains(next.eluent())
                        || poured.isEmpty() && judgement.tried(next.eluent()))
                .forEach(next -> take(advice, next));
        int number = 0;
        for (Map.Entry<String, Reason> entry : advice.entrySet()) {
            number++;
            lines.add(new PlanLine("next-" + number, Section.NEXT, entry.getKey(), entry.getValue()));
        }
        if (advice.isEmpty()) {
            String text = "None is needed: every eluent of the plan was tried, and no reading is in doubt.";
            lines.add(new PlanLine("next-none", Section.NEXT, text, new Reason.Chosen(text, List.of(), List.of())));
        }
    }

    private void take(Map<String, Reason> advice, Conclusion next) {
        Reason.Concluded reason = judgement.reason(next);
        reason.arguments().forEach(argument -> advice.putIfAbsent(argument.because(), reason));
    }

    private void cautions() {
        record Heard(String topic, String rule, List<Eluent> eluents, List<Reason> reasons) {}
        Map<String, Heard> byRule = new LinkedHashMap<>();
        for (Conclusion.Caution caution : judgement.all(Conclusion.Caution.class)) {
            Reason.Concluded reason = judgement.reason(caution);
            byRule.computeIfAbsent(
                            caution.rule(),
                            rule -> new Heard(caution.topic(), rule, new ArrayList<>(), new ArrayList<>()))
                    .reasons()
                    .add(reason);
        }
        for (Conclusion.EluentCaution caution : judgement.all(Conclusion.EluentCaution.class)) {
            boolean concerned = poured.contains(caution.eluent())
                    || poured.isEmpty() && judgement.tried(caution.eluent());
            if (concerned) {
                Heard heard = byRule.computeIfAbsent(
                        caution.rule(),
                        rule -> new Heard(caution.topic(), rule, new ArrayList<>(), new ArrayList<>()));
                heard.eluents().add(caution.eluent());
                heard.reasons().add(judgement.reason(caution));
            }
        }
        byRule.values().stream()
                .sorted(Comparator.comparingInt((Heard heard) -> topics.indexOf(heard.topic()))
                        .thenComparing(Heard::rule))
                .forEach(heard -> {
                    String subject = heard.eluents().isEmpty()
                            ? ""
                            : Numbers.joined(heard.eluents().stream().map(Eluent::name).sorted().toList()) + ": ";
                    String text = heard.reasons().stream()
                            .map(Reason.Concluded.class::cast)
                            .map(concluded -> concluded.arguments().get(0).because())
                            .findFirst()
                            .orElseThrow();
                    lines.add(new PlanLine(
                            heard.rule(),
                            Section.SAFETY,
                            subject + text,
                            heard.reasons().size() == 1
                                    ? heard.reasons().get(0)
                                    : new Reason.Chosen(subject + text, List.of(), heard.reasons())));
                });
    }
}
