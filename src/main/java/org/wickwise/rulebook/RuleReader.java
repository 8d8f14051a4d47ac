package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.Problems;
import org.wickwise.text.Words;

/** Reads rules, each with its name, its sentences, its reason and its source; every mistake is told with line and way out. */
final class RuleReader {

    static final int MOST_RULES = 10_000;
    static final int MOST_OWN_RULES = 500;
    static final int MOST_SENTENCES = 40;
    static final int LONGEST_NAME = 60;
    private static final Set<String> KEYS = Set.of("rule", "when", "then", "because", "source");
    private static final Set<String> OWN_KEYS =
            Set.of("rule", "in place of", "its caution may vanish", "when", "then", "because", "source");
    private static final String ID_SHAPE = "[a-z][a-z0-9]*(-[a-z0-9]+)*";

    private static final Pattern ENDS_IN_A_NUMBER = Pattern.compile("(?<![A-Za-z0-9.])\\d{1,9}$");
    private static final Pattern BEGINS_WITH_A_NUMBER = Pattern.compile("^\\d{1,9}(?![A-Za-z0-9])");

    private final SentenceReader sentences;
    private final Problems problems;
    private final Map<String, Rule> shipped;
    private final boolean own;
    private final Map<String, Place> places = new HashMap<>();
    private final Map<String, String> instead = new HashMap<>();
    private int count;

    private RuleReader(
            Vocabulary vocabulary, Map<String, Limit> limits, List<Rule> shipped, boolean own, Problems problems) {
        this.sentences = new SentenceReader(vocabulary, limits, problems);
        this.shipped = shipped.stream().collect(Collectors.toUnmodifiableMap(Rule::id, rule -> rule));
        this.own = own;
        this.problems = problems;
    }

    /** @param limits that rules may name */
    static RuleReader ofShippedRules(Vocabulary vocabulary, Map<String, Limit> limits, Problems problems) {
        return new RuleReader(vocabulary, limits, List.of(), false, problems);
    }

    /**
     * @param limits that rules may name
     * @param shipped the shipped rules, in whose place an own rule may stand
     */
    static RuleReader ofOwnRules(
            Vocabulary vocabulary, Map<String, Limit> limits, List<Rule> shipped, Problems problems) {
        return new RuleReader(vocabulary, limits, shipped, true, problems);
    }

    /** By the name of a shipped rule, the name of the own rule in its place. */
    Map<String, String> instead() {
        return Map.copyOf(instead);
    }

    /** The rules of a file that are sound; the others are reported. */
    List<Rule> rules(Mapping file) {
        Fields root = Fields.of(file, "a rule file", Set.of("layer", "about", "rules"), problems);
        String layer = root.requiredText("layer");
        String about = root.requiredText("about");
        List<Rule> rules = new ArrayList<>();
        int most = own ? MOST_OWN_RULES : MOST_RULES;
        for (Node node : root.list("rules")) {
            count++;
            if (count > most) {
                trouble(
                        RuleTrouble.TOO_MANY,
                        node.place(),
                        "",
                        "more than " + most + " rules",
                        "a rule book that can be read aloud",
                        "split it, or merge rules");
                throw problems.found();
            }
            rule(node, layer, about).ifPresent(rules::add);
        }
        return rules;
    }

    private void trouble(RuleTrouble trouble, Place place, String words, String found, String expected, String way) {
        problems.add(new Problem(place, found, expected, way, trouble.code(), words));
    }

    private Optional<Rule> rule(Node node, String layer, String about) {
        Fields fields = Fields.ofNode(node, "a rule", own ? OWN_KEYS : KEYS, problems);
        String id = fields.requiredText("rule");
        if (!id.isEmpty() && (id.length() > LONGEST_NAME || !id.matches(ID_SHAPE))) {
            trouble(
                    RuleTrouble.RULE_NAME,
                    fields.placeOf("rule"),
                    id,
                    "`" + id + "` cannot name a rule",
                    "small letters, digits and hyphens, such as `no-bare-flame`, at most " + LONGEST_NAME,
                    soundName(id).map(name -> "call it `" + name + "`").orElse("rename it"));
        } else if (!id.isEmpty()) {
            nameOfItsOwn(id, fields);
        }
        Map<String, SlotKind> letters = new HashMap<>();
        Optional<List<Said>> when = sentences(fields, "when", letters);
        Optional<List<Said>> then = sentences(fields, "then", letters);
        String because = fields.requiredText("because");
        String source = source(fields);
        if (when.isEmpty() || then.isEmpty() || id.isEmpty()) {
            return Optional.empty();
        }
        Rule rule = new Rule(id, layer, about, when.get(), then.get(), because, source, fields.place());
        inPlaceOf(rule, fields);
        new RuleLetters(problems).check(rule, letters.keySet(), own, fields);
        return Optional.of(rule);
    }

    private void nameOfItsOwn(String id, Fields fields) {
        Place earlier = places.putIfAbsent(id, fields.placeOf("rule"));
        boolean isShipped = shipped.containsKey(id) && !isInPlaceOf(id, fields);
        if (earlier != null || isShipped) {
            trouble(
                    RuleTrouble.SAME_NAME,
                    fields.placeOf("rule"),
                    id,
                    "a second rule is called `" + id + "`; the first stands in "
                            + (earlier == null ? shipped.get(id).place() : earlier),
                    "each rule its own name",
                    isShipped
                            ? "rename it; to put it in the place of the shipped rule, write `in place of: " + id + "`"
                            : "rename one of the two");
        }
    }

    /** The same name in small letters with hyphens, where that makes one. */
    private static Optional<String> soundName(String id) {
        return Optional.of(Words.slug(id)).filter(name -> name.length() <= LONGEST_NAME && name.matches(ID_SHAPE));
    }

    private static boolean isInPlaceOf(String id, Fields fields) {
        return fields.text("in place of").filter(id::equals).isPresent();
    }

    private void inPlaceOf(Rule rule, Fields fields) {
        boolean mayVanish = own
                && fields.yesOrNo("its caution may vanish", "write yes, or leave the line out")
                        .orElse(false);
        fields.text("in place of").ifPresent(replaced -> {
            if (shipped.containsKey(replaced)) {
                instead.put(replaced, rule.id());
                if (!mayVanish) {
                    keepsTheCaution(rule, shipped.get(replaced), fields);
                }
            } else {
                trouble(
                        RuleTrouble.UNKNOWN_RULE,
                        fields.placeOf("in place of"),
                        replaced,
                        "no shipped rule is called `" + replaced + "`",
                        "the name of a shipped rule",
                        NearMiss.suggestion(replaced, shipped.keySet(), List.of()));
            }
        });
    }

    /** A caution goes only with a word that says so. */
    private void keepsTheCaution(Rule rule, Rule replaced, Fields fields) {
        List<String> lost = replaced.cautionTopics().stream()
                .filter(topic -> !rule.cautionTopics().contains(topic))
                .toList();
        if (!lost.isEmpty()) {
            trouble(
                    RuleTrouble.VANISHING_CAUTION,
                    fields.placeOf("in place of"),
                    replaced.id(),
                    "the rule `" + replaced.id() + "` gives a caution on " + Words.joined(lost)
                            + ", which vanishes with it, and `" + rule.id() + "` gives none",
                    "a conclusion that keeps the caution, or a line that says you mean it",
                    "write `its caution may vanish: yes` into the rule, if the plan shall not give this caution");
        }
    }

    private String source(Fields fields) {
        Optional<String> source = fields.text("source").filter(text -> !text.isBlank());
        if (source.isEmpty()) {
            trouble(
                    RuleTrouble.NO_SOURCE,
                    fields.placeOf("rule"),
                    "",
                    "the rule has no `source`",
                    "what it rests on",
                    "write `source: ...`; an honest `common practice, no source` will do");
        }
        return source.orElse("");
    }

    private Optional<List<Said>> sentences(Fields fields, String key, Map<String, SlotKind> letters) {
        List<Scalar> written = fields.texts(key);
        if (written.isEmpty()) {
            fields.missing(key);
            return Optional.empty();
        }
        if (written.size() > MOST_SENTENCES) {
            trouble(
                    RuleTrouble.TOO_MANY,
                    fields.placeOf(key),
                    "",
                    written.size() + " sentences",
                    "at most " + MOST_SENTENCES,
                    "split the rule");
            return Optional.empty();
        }
        List<Said> said = new ArrayList<>();
        for (int i = 0; i < written.size(); i++) {
            if (i + 1 < written.size() && isCutAtAComma(written.get(i), written.get(i + 1))) {
                decimalComma(written.get(i), written.get(i + 1));
                i++;
            } else {
                sentences.said(written.get(i), key.equals("then"), letters).ifPresent(said::add);
            }
        }
        return said.size() == written.size() ? Optional.of(List.copyOf(said)) : Optional.empty();
    }

    /** Inside brackets a comma ends a sentence, so "0,5" leaves one that ends in 0 and one that begins with 5. */
    private static boolean isCutAtAComma(Scalar before, Scalar after) {
        return before.place().equals(after.place())
                && ENDS_IN_A_NUMBER.matcher(before.text()).find()
                && BEGINS_WITH_A_NUMBER.matcher(after.text()).find();
    }

    private void decimalComma(Scalar before, Scalar after) {
        Matcher whole = ENDS_IN_A_NUMBER.matcher(before.text());
        Matcher decimals = BEGINS_WITH_A_NUMBER.matcher(after.text());
        String left = whole.find() ? whole.group() : "";
        String right = decimals.find() ? decimals.group() : "";
        trouble(
                RuleTrouble.FORM,
                before.place(),
                left + "," + right,
                "the comma in `" + left + "," + right + "` ends the sentence",
                "a point in a number",
                "write `" + left + "." + right + "`");
    }
}
