package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wickwise.text.Fields;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.Problems;

/** Checks the letters of a rule: few enough, and each of them named by a condition before anything is said of it. */
final class RuleLetters {

    /** As many as any shipped rule needs; each more multiplies what the engine has to put together. */
    static final int MOST_OWN_LETTERS = 4;

    private static final Pattern WORD_IN_BRACES = Pattern.compile("(?<![$#@%{])\\{[A-Za-z]{1,30}}(?<!\\{[A-Z]})");

    private final Problems problems;

    RuleLetters(Problems problems) {
        this.problems = problems;
    }

    /**
     * @param letters all that its sentences name
     * @param own whether it is a rule of one's own, which may have fewer
     */
    void check(Rule rule, Set<String> letters, boolean own, Fields fields) {
        few(letters, own, fields);
        bound(rule, fields);
        noWordsInBraces(rule, fields);
    }

    private void few(Set<String> letters, boolean own, Fields fields) {
        if (own && letters.size() > MOST_OWN_LETTERS) {
            trouble(
                    RuleTrouble.TOO_MANY,
                    fields.placeOf("when"),
                    "",
                    letters.size() + " letters",
                    "at most " + MOST_OWN_LETTERS + " in a rule",
                    "split the rule");
        }
    }

    private void bound(Rule rule, Fields fields) {
        Set<String> bound = new HashSet<>();
        rule.when().forEach(said -> bound.addAll(of(said)));
        for (Said said : rule.then()) {
            for (String letter : of(said)) {
                if (!bound.contains(letter)) {
                    trouble(
                            RuleTrouble.UNNAMED_LETTER,
                            said.place(),
                            said.written(),
                            "`" + letter + "` is not named under `when`",
                            "letters that a condition has named",
                            "add a condition about `" + letter + "`");
                }
            }
        }
        for (String letter : rule.lettersInBecause()) {
            if (!bound.contains(letter)) {
                trouble(
                        RuleTrouble.UNNAMED_LETTER,
                        fields.placeOf("because"),
                        "{" + letter + "}",
                        "`{" + letter + "}` is not named under `when`",
                        "letters that a condition has named",
                        "use a letter of the conditions, or write the word out");
            }
        }
    }

    /** "{solvent}" stands for nothing; a letter does. */
    private void noWordsInBraces(Rule rule, Fields fields) {
        for (Matcher word = WORD_IN_BRACES.matcher(rule.because()); word.find(); ) {
            trouble(
                    RuleTrouble.UNNAMED_LETTER,
                    fields.placeOf("because"),
                    word.group(),
                    "`" + word.group() + "` stands for nothing",
                    "a letter of the conditions between { and }, such as `{E}`",
                    "write the letter that stands for it, or leave the braces out");
        }
    }

    static List<String> of(Said said) {
        List<String> letters = new ArrayList<>();
        for (int i = 0; i < said.slots().size(); i++) {
            if (said.sentence().slots().get(i).kind().isVariable()) {
                letters.add(said.slots().get(i));
            }
        }
        return letters;
    }

    private void trouble(RuleTrouble trouble, Place place, String words, String found, String expected, String way) {
        problems.add(new Problem(place, found, expected, way, trouble.code(), words));
    }
}
