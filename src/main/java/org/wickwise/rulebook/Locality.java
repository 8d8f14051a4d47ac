package org.wickwise.rulebook;

import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.strip.Apart;
import org.wickwise.strip.Movement;

/**
 * Reads from the rules whether a conclusion about an eluent hangs only on the strips in this eluent and on its values of the
 * table. When in doubt it says no, which costs time and nothing else.
 */
final class Locality {

    private static final Pattern ASKED = Pattern.compile("\\b([A-Z]\\w*)\\(");
    private static final Pattern BOUND = Pattern.compile("\\beluent == \\{(\\w+)}");
    private static final Pattern CONCLUDED = Pattern.compile("new (\\w+)\\(");
    private static final Pattern UNTRIED = Pattern.compile("not Movement\\(eluent == \\{(\\w+)}, reckoned == false\\)");
    private static final Set<String> READINGS = Stream.of(Movement.class, Apart.class)
            .flatMap(kind -> Stream.concat(Stream.of(kind), Arrays.stream(kind.getPermittedSubclasses())))
            .map(Class::getSimpleName)
            .collect(Collectors.toUnmodifiableSet());
    private static final Set<String> GAPS = Stream.concat(
                    Stream.of(Apart.class), Arrays.stream(Apart.class.getPermittedSubclasses()))
            .map(Class::getSimpleName)
            .collect(Collectors.toUnmodifiableSet());
    private static final Set<String> CONCLUSIONS = Arrays.stream(Conclusion.class.getPermittedSubclasses())
            .map(Class::getSimpleName)
            .collect(Collectors.toUnmodifiableSet());
    /** What is told of readings and strips by numbers, for which the rules alone can speak. */
    private static final Set<String> OF_STRIPS = Stream.of(
                    Fact.OutOfLine.class, Fact.SuspectReading.class, Fact.FrontOf.class)
            .map(Class::getSimpleName)
            .collect(Collectors.toUnmodifiableSet());

    private final List<Rule> rules;
    private final boolean isTried;
    private final Set<String> seen = new HashSet<>();
    private final Set<Rule> speaking = new LinkedHashSet<>();
    private boolean hangsOnReadings;
    private boolean hangsOnGaps;

    /** @param isTried whether some strip in the eluent can be read */
    Locality(List<Rule> rules, boolean isTried) {
        this.rules = rules;
        this.isTried = isTried;
    }

    boolean isAlone(Conclusion wanted) {
        return isAlone(wanted.getClass().getSimpleName()) && (isTried || !hangsOnReadings);
    }

    /** The rules that the conclusion asked about may hang on. */
    List<Rule> speaking() {
        return List.copyOf(speaking);
    }

    /** Whether the conclusion asked about may hang on what lies between two dyes. */
    boolean hangsOnGaps() {
        return hangsOnGaps;
    }

    private boolean isAlone(String kind) {
        return !seen.add(kind) || rules.stream().allMatch(rule -> isAlone(kind, rule));
    }

    private boolean isAlone(String kind, Rule rule) {
        return rule.then().stream().filter(then -> concludes(kind, then)).allMatch(then -> {
            Set<String> letters = eluents(then);
            return letters.size() == 1
                    && letters.stream().allMatch(letter -> isForUntried(rule, letter) || isAlone(rule, letter));
        });
    }

    private boolean isAlone(Rule rule, String letter) {
        speaking.add(rule);
        return rule.when().stream().allMatch(said -> isAlone(said, letter));
    }

    private static boolean concludes(String kind, Said then) {
        Matcher concluded = CONCLUDED.matcher(then.sentence().concludes().orElse(""));
        return concluded.lookingAt() && concluded.group(1).equals(kind);
    }

    /** The letters that stand for eluents in a sentence. */
    private static Set<String> eluents(Said said) {
        Set<String> letters = new HashSet<>();
        for (int i = 0; i < said.slots().size(); i++) {
            if (said.sentence().slots().get(i).kind().name().equals("eluent")) {
                letters.add(said.slots().get(i));
            }
        }
        return letters;
    }

    /** A rule for eluents that nobody ran does not speak of one that somebody did. */
    private boolean isForUntried(Rule rule, String letter) {
        return isTried
                && rule.when().stream().anyMatch(said -> {
                    Matcher untried = UNTRIED.matcher(said.sentence().means().orElse(""));
                    return untried.matches() && letterIn(untried.group(1), said).equals(Optional.of(letter));
                });
    }

    private boolean isAlone(Said said, String letter) {
        String means = said.sentence().means().orElse("");
        Matcher asked = ASKED.matcher(means);
        while (asked.find()) {
            String kind = asked.group(1);
            boolean isBound = isBound(means.substring(asked.end()), said, letter);
            boolean isConclusion = CONCLUSIONS.contains(kind);
            boolean isReading = READINGS.contains(kind);
            hangsOnReadings |= isReading;
            hangsOnGaps |= GAPS.contains(kind);
            boolean needsBinding = isConclusion || isReading || comparesWithLimit(said);
            if (OF_STRIPS.contains(kind) || needsBinding && !isBound || isConclusion && !isAlone(kind)) {
                return false;
            }
        }
        return true;
    }

    /** Whether what is asked, up to its closing bracket, speaks of the eluent of this letter. */
    private static boolean isBound(String asked, Said said, String letter) {
        int depth = 1;
        int end = 0;
        while (end < asked.length() && depth > 0) {
            depth += asked.charAt(end) == '(' ? 1 : asked.charAt(end) == ')' ? -1 : 0;
            end++;
        }
        Matcher bound = BOUND.matcher(asked.substring(0, end));
        return bound.find() && letterIn(bound.group(1), said).equals(Optional.of(letter));
    }

    private static boolean comparesWithLimit(Said said) {
        for (int i = 0; i < said.slots().size(); i++) {
            if (said.sentence().slots().get(i).kind().isNumber()
                    && SlotKind.LIMIT.matcher(said.slots().get(i)).matches()) {
                return true;
            }
        }
        return false;
    }

    private static Optional<String> letterIn(String slot, Said said) {
        for (int i = 0; i < said.slots().size(); i++) {
            if (said.sentence().slots().get(i).name().equals(slot)) {
                return Optional.of(said.slots().get(i));
            }
        }
        return Optional.empty();
    }
}
