package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether two sentences can hold together. Decided by their meanings; where nothing is sure, they can. */
final class Exclusion {

    private static final Pattern COMPARISON = Pattern.compile("(value|gap|number|percent) (<=|>=|<|>) \\{n}");
    private static final Set<String> ONE_VALUE_EACH = Set.of(
            "Column(phaseName == {p})",
            "Column(phaseKind == {k})",
            "SettingIs(setting.word() == {s})",
            "ClassOf(dye == {D}, dyeClass.word() == {c})");

    private Exclusion() {}

    static boolean between(Said one, Said other, Map<String, Limit> limits) {
        return isDenial(one, other)
                || isDenial(other, one)
                || isAnotherValue(one, other)
                || isApart(one, other, limits);
    }

    /** The one says "not" and then what the other says, of the same things. */
    private static boolean isDenial(Said one, Said other) {
        String denied = meaning(one);
        return denied.startsWith("not ") && denied.substring(4).equals(meaning(other))
                || denied.contains(" != ") && denied.replace(" != ", " == ").equals(meaning(other));
    }

    /** Something that has one value only has two. */
    private static boolean isAnotherValue(Said one, Said other) {
        return one.sentence().equals(other.sentence())
                && ONE_VALUE_EACH.contains(one.sentence().means().orElse(""))
                && letters(one).equals(letters(other))
                && !one.slots().equals(other.slots());
    }

    /** Two comparisons of the same number that leave nothing between them. */
    private static boolean isApart(Said one, Said other, Map<String, Limit> limits) {
        Matcher here = COMPARISON.matcher(one.sentence().means().orElse(""));
        Matcher there = COMPARISON.matcher(other.sentence().means().orElse(""));
        if (!here.find() || !there.find() || !without(here, one).equals(without(there, other))) {
            return false;
        }
        OptionalDouble hereLimit = number(one, limits);
        OptionalDouble thereLimit = number(other, limits);
        boolean hereIsUpper = here.group(2).startsWith("<");
        boolean thereIsUpper = there.group(2).startsWith("<");
        if (hereIsUpper == thereIsUpper || hereLimit.isEmpty() || thereLimit.isEmpty()) {
            return false;
        }
        double upper = hereIsUpper ? hereLimit.getAsDouble() : thereLimit.getAsDouble();
        double lower = hereIsUpper ? thereLimit.getAsDouble() : hereLimit.getAsDouble();
        boolean bothTouch = here.group(2).endsWith("=") && there.group(2).endsWith("=");
        return bothTouch ? upper < lower : upper <= lower;
    }

    /** The meaning without the comparison, with everything else filled in. */
    private static String without(Matcher comparison, Said said) {
        return filled(comparison.replaceFirst("$1"), said);
    }

    private static OptionalDouble number(Said said, Map<String, Limit> limits) {
        for (int i = 0; i < said.slots().size(); i++) {
            if (said.sentence().slots().get(i).name().equals("n")) {
                Matcher limit = SlotKind.LIMIT.matcher(said.slots().get(i));
                Matcher number = SlotKind.NUMBER.matcher(said.slots().get(i));
                return limit.matches()
                        ? OptionalDouble.of(limits.get(limit.group(1)).value())
                        : number.matches()
                                ? OptionalDouble.of(Double.parseDouble(number.group(1)))
                                : OptionalDouble.empty();
            }
        }
        return OptionalDouble.empty();
    }

    private static String meaning(Said said) {
        return filled(said.sentence().means().orElse(""), said);
    }

    private static String filled(String meaning, Said said) {
        String filled = meaning;
        for (int i = 0; i < said.slots().size(); i++) {
            filled = filled.replace(
                    "{" + said.sentence().slots().get(i).name() + "}",
                    said.slots().get(i));
        }
        return filled;
    }

    private static List<String> letters(Said said) {
        return new ArrayList<>(RuleLetters.of(said));
    }
}
