package org.wickwise.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.wickwise.text.Place;

/**
 * What an instructor keeps in a folder of their own beside the shipped rule book.
 *
 * @param folder as it was named; empty where there is none
 * @param rules added, or in the place of shipped ones
 * @param instead by the name of a shipped rule, the name of the rule in its place
 * @param switchedOff shipped rules that are not used
 * @param limits that are set otherwise, or new
 * @param newLimits the names of those that are new
 * @param wishes their own preferences
 */
public record OwnRules(
        String folder,
        List<Rule> rules,
        Map<String, String> instead,
        List<SwitchedOff> switchedOff,
        List<Limit> limits,
        Set<String> newLimits,
        Optional<Wishes> wishes) {

    public OwnRules {
        rules = List.copyOf(rules);
        instead = new TreeMap<>(instead);
        switchedOff = List.copyOf(switchedOff);
        limits = List.copyOf(limits);
        newLimits = Set.copyOf(newLimits);
    }

    /** No folder of one's own. */
    public static OwnRules none() {
        return new OwnRules("", List.of(), Map.of(), List.of(), List.of(), Set.of(), Optional.empty());
    }

    /**
     * A shipped rule that is not used.
     *
     * @param because the reason, for people
     * @param cautionMayVanish whether the instructor wrote that a caution may vanish with it
     */
    public record SwitchedOff(String rule, String because, boolean cautionMayVanish, Place place) {}

    public boolean isEmpty() {
        return folder.isEmpty();
    }

    /** The names of the rules of this folder. */
    public List<String> ruleNames() {
        return rules.stream().map(Rule::id).toList();
    }

    /** The rules of this folder as they stand in the book. */
    public List<RulePage> pages() {
        return rules.stream().map(rule -> RulePage.of(rule, this)).toList();
    }

    /** Whether a shipped rule is used no more, because it is switched off or another stands in its place. */
    boolean takesAway(String shippedRule) {
        return instead.containsKey(shippedRule)
                || switchedOff.stream().anyMatch(off -> off.rule().equals(shippedRule));
    }
}
