package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Problems;

/**
 * Reads rules and checks every sentence against the vocabulary before anything reaches the engine: an unknown
 * sentence, a word outside its closed list, a letter used for two kinds of things are told with line and way out.
 */
final class RuleReader {

    static final int MOST_RULES = 10_000;
    static final int MOST_SENTENCES = 40;
    static final int LONGEST_SENTENCE = 300;
    private static final String ID_SHAPE = "[a-z][a-z0-9]*(-[a-z0-9]+)*";

    private final Vocabulary vocabulary;
    private final Set<String> limitNames;
    private final Problems problems;
    private final Set<String> ids = new HashSet<>();

    RuleReader(Vocabulary vocabulary, Set<String> limitNames, Problems problems) {
        this.vocabulary = vocabulary;
        this.limitNames = limitNames;
        this.problems = problems;
    }

    /** The rules of a file that are sound; the others are reported. */
    List<Rule> rules(Mapping file) {
        Fields root = Fields.of(file, "a rule file", Set.of("layer", "about", "rules"), problems);
        String layer = root.requiredText("layer");
        root.requiredText("about");
        List<Rule> rules = new ArrayList<>();
        for (Node node : root.list("rules")) {
            rule(node, layer).ifPresent(rules::add);
            if (ids.size() > MOST_RULES) {
                problems.add(
                        node.place(),
                        "more than " + MOST_RULES + " rules",
                        "a rule book that can be read aloud",
                        "split it, or merge rules");
                break;
            }
        }
        return rules;
    }

    private Optional<Rule> rule(Node node, String layer) {
        Fields fields = Fields.ofNode(node, "a rule", Set.of("rule", "when", "then", "because", "source"), problems);
        String id = fields.requiredText("rule");
        if (!id.isEmpty() && !id.matches(ID_SHAPE)) {
            problems.add(
                    fields.placeOf("rule"),
                    "`" + id + "` cannot name a rule",
                    "small letters and hyphens, such as `no-bare-flame`",
                    "rename it");
        } else if (!ids.add(id) && !id.isEmpty()) {
            problems.add(
                    fields.placeOf("rule"),
                    "a second rule is called `" + id + "`",
                    "each rule its own name",
                    "rename one of the two");
        }
        Map<String, SlotKind> letters = new HashMap<>();
        Optional<List<Said>> when = sentences(fields, "when", letters);
        Optional<List<Said>> then = sentences(fields, "then", letters);
        String because = fields.requiredText("because");
        String source = fields.requiredText("source");
        if (when.isEmpty() || then.isEmpty() || id.isEmpty()) {
            return Optional.empty();
        }
        Rule rule = new Rule(id, layer, when.get(), then.get(), because, source, fields.place());
        boundLetters(rule, fields);
        return Optional.of(rule);
    }

    private void boundLetters(Rule rule, Fields fields) {
        Set<String> bound = new HashSet<>();
        rule.when().forEach(said -> bound.addAll(lettersOf(said)));
        for (Said said : rule.then()) {
            for (String letter : lettersOf(said)) {
                if (!bound.contains(letter)) {
                    problems.add(
                            said.place(),
                            "`" + letter + "` is not named under `when`",
                            "letters that a condition has named",
                            "add a condition about `" + letter + "`");
                }
            }
        }
        for (String letter : rule.lettersInBecause()) {
            if (!bound.contains(letter)) {
                problems.add(
                        fields.placeOf("because"),
                        "`{" + letter + "}` is not named under `when`",
                        "letters that a condition has named",
                        "use a letter of the conditions, or write the word out");
            }
        }
    }

    static List<String> lettersOf(Said said) {
        List<String> letters = new ArrayList<>();
        for (int i = 0; i < said.slots().size(); i++) {
            if (said.sentence().slots().get(i).kind().isVariable()) {
                letters.add(said.slots().get(i));
            }
        }
        return letters;
    }

    private Optional<List<Said>> sentences(Fields fields, String key, Map<String, SlotKind> letters) {
        List<Scalar> written = fields.texts(key);
        if (written.isEmpty()) {
            fields.missing(key);
            return Optional.empty();
        }
        if (written.size() > MOST_SENTENCES) {
            problems.add(
                    fields.placeOf(key), written.size() + " sentences", "at most " + MOST_SENTENCES, "split the rule");
            return Optional.empty();
        }
        List<Said> said = new ArrayList<>();
        for (Scalar text : written) {
            said(text, key.equals("then"), letters).ifPresent(said::add);
        }
        return said.size() == written.size() ? Optional.of(List.copyOf(said)) : Optional.empty();
    }

    private Optional<Said> said(Scalar text, boolean concluding, Map<String, SlotKind> letters) {
        if (text.text().length() > LONGEST_SENTENCE) {
            problems.add(
                    text.place(),
                    "a sentence of " + text.text().length() + " characters",
                    "at most " + LONGEST_SENTENCE,
                    "shorten it");
            return Optional.empty();
        }
        Optional<Said> nearly = Optional.empty();
        for (Sentence sentence : vocabulary.sentences()) {
            if ((concluding ? sentence.concludes() : sentence.means()).isEmpty()) {
                continue;
            }
            Optional<List<String>> slots = sentence.slotsIn(text.text());
            if (slots.isPresent()) {
                Said said = new Said(text.text(), sentence, slots.get(), text.place());
                if (misfit(said).isEmpty()) {
                    return lettersAgree(said, letters) ? Optional.of(said) : Optional.empty();
                }
                nearly = nearly.or(() -> Optional.of(said));
            }
        }
        nearly.ifPresentOrElse(this::reportMisfit, () -> reportUnknown(text, concluding));
        return Optional.empty();
    }

    /** The index of the first slot whose text does not belong there; empty when all fit. */
    private Optional<Integer> misfit(Said said) {
        for (int i = 0; i < said.slots().size(); i++) {
            if (!said.sentence().slots().get(i).kind().takes(said.slots().get(i), limitNames)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private void reportMisfit(Said said) {
        int index = misfit(said).orElseThrow();
        SlotKind kind = said.sentence().slots().get(index).kind();
        String text = said.slots().get(index);
        problems.add(
                said.place(),
                "`" + text + "` in the sentence `" + said.written() + "`",
                kind.expected(limitNames),
                kind.words().map(words -> NearMiss.suggestion(text, words)).orElse("write one of these"));
    }

    private void reportUnknown(Scalar text, boolean concluding) {
        List<String> known = vocabulary.sentences().stream()
                .filter(sentence -> (concluding ? sentence.concludes() : sentence.means()).isPresent())
                .map(Sentence::example)
                .toList();
        List<String> near = NearMiss.of(text.text(), known);
        problems.add(
                text.place(),
                "the sentence `" + text.text() + "` is not known "
                        + (concluding ? "as a conclusion" : "as a condition"),
                "a sentence of the vocabulary (rules/words)",
                near.isEmpty() ? "look up the sentence in rules/words" : "did you mean: `" + near.get(0) + "`?");
    }

    private boolean lettersAgree(Said said, Map<String, SlotKind> letters) {
        for (int i = 0; i < said.slots().size(); i++) {
            SlotKind kind = said.sentence().slots().get(i).kind();
            if (!kind.isVariable()) {
                continue;
            }
            SlotKind earlier = letters.putIfAbsent(said.slots().get(i), kind);
            if (earlier != null && !earlier.name().equals(kind.name())) {
                problems.add(
                        said.place(),
                        "`" + said.slots().get(i) + "` stands for a " + earlier.name() + " above and for a "
                                + kind.name() + " here",
                        "one letter for one thing",
                        "use another letter");
                return false;
            }
        }
        return true;
    }
}
