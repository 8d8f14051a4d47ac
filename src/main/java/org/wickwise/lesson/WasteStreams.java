package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.EluentCaution;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Eluent;

/**
 * Which container each eluent goes into: that of the caution on waste which the rules give about it. Where several rules
 * speak of an eluent, the first by name counts.
 *
 * @param uses by the name of the stream, "organic waste"
 */
record WasteStreams(Map<String, List<LiquidUse>> uses, Map<String, Reason> reasons) {

    private static final String TOPIC = "waste";

    /** What a stream is called of whose eluents no rule says anything. */
    static final String UNSAID = "waste of which no rule says where it goes";

    static WasteStreams of(List<LiquidUse> uses, Judgement judgement) {
        Map<String, List<LiquidUse>> streams = new TreeMap<>();
        Map<String, Reason> reasons = new TreeMap<>();
        for (LiquidUse use : uses) {
            Optional<EluentCaution> caution = caution(use.eluent(), judgement);
            String stream = caution.map(said -> said.rule().replace('-', ' ')).orElse(UNSAID);
            streams.computeIfAbsent(stream, any -> new ArrayList<>()).add(use);
            caution.ifPresent(said -> reasons.putIfAbsent(stream, judgement.reason(said)));
        }
        return new WasteStreams(streams, reasons);
    }

    private static Optional<EluentCaution> caution(Eluent eluent, Judgement judgement) {
        return judgement.all(EluentCaution.class).stream()
                .filter(caution ->
                        caution.topic().equals(TOPIC) && caution.eluent().equals(eluent))
                .min(Comparator.comparing(EluentCaution::rule));
    }
}
