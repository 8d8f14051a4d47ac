package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;

/** An answer in the making: sentences, each with what it rests on. Confined to one answer. */
final class Told {

    private final List<String> sentences = new ArrayList<>();
    private final List<Reason> grounds = new ArrayList<>();

    /** A sentence that says by itself what there is to say, such as that nobody looked. */
    void say(String sentence) {
        sentences.add(sentence);
    }

    /** @param rests nothing where the sentence tells of something that is missing */
    void say(String sentence, List<? extends Reason> rests) {
        sentences.add(sentence);
        if (!rests.isEmpty()) {
            grounds.add(new Reason.Chosen(sentence, List.of(), List.copyOf(rests)));
        }
    }

    /** Cautions and next strips, where there are any. */
    void advice(String sentence, List<Reason.Concluded> advice) {
        if (!advice.isEmpty()) {
            say(sentence, advice);
        }
    }

    /** A sentence with a reason that says the same. */
    void because(String sentence, Reason reason) {
        sentences.add(sentence);
        grounds.add(reason);
    }

    PlanLine line(String label, Section section) {
        String text = String.join(" ", sentences);
        return new PlanLine(label, section, text, new Reason.Chosen(label, List.of(), grounds));
    }

    /** What the rules say of a conclusion, each once. */
    static String becauses(Reason.Concluded reason) {
        return reason.arguments().stream()
                .map(Reason.Argument::because)
                .distinct()
                .collect(Collectors.joining(" "));
    }
}
