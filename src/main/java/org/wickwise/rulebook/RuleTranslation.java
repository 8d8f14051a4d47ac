package org.wickwise.rulebook;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts rules into the engine's language. Only the meanings of the vocabulary and checked slots get in: a letter
 * becomes a variable, a word of a closed list a quoted constant, a limit a fact that is looked up.
 */
final class RuleTranslation {

    private static final Pattern HOLE = Pattern.compile("\\{([A-Za-z]+)}");
    private static final String HEAD =
            """
            import org.wickwise.bench.Setting;
            import org.wickwise.column.Column;
            import org.wickwise.strip.*;
            import org.wickwise.strip.Apart.*;
            import org.wickwise.strip.Movement.*;
            import org.wickwise.substance.*;
            import org.wickwise.rulebook.Conclusion;
            import org.wickwise.rulebook.Limit;
            import org.wickwise.rulebook.Conclusion.*;
            import org.wickwise.rulebook.Fact.*;
            global org.wickwise.rulebook.Firings firings;
            """;

    private RuleTranslation() {}

    /**
     * The rules without a package; {@link CompiledRules} gives each content its own.
     *
     * @param rules in the order in which they are to be asked first
     */
    static String of(List<Rule> rules) {
        StringBuilder text = new StringBuilder(HEAD);
        for (int i = 0; i < rules.size(); i++) {
            text.append(rule(rules.get(i), rules.size() - i));
        }
        return text.toString();
    }

    private static String rule(Rule rule, int salience) {
        StringBuilder text = new StringBuilder("rule \"" + rule.id() + "\" salience " + salience + "\nwhen\n");
        Map<String, SlotKind> introduced = new LinkedHashMap<>();
        Map<String, String> limits = new HashMap<>();
        for (Said said : rule.when()) {
            introduceLetters(said, introduced, text);
            introduceLimits(said, limits, text);
            text.append("  ")
                    .append(fill(said.sentence().means().orElseThrow(), rule, said, limits))
                    .append("\n");
        }
        text.append("then\n");
        for (int i = 0; i < rule.then().size(); i++) {
            Said said = rule.then().get(i);
            String conclusion = fill(said.sentence().concludes().orElseThrow(), rule, said, limits);
            text.append("  Conclusion c")
                    .append(i)
                    .append(" = ")
                    .append(conclusion)
                    .append(";\n");
            text.append("  insertLogical(c").append(i).append(");\n");
            text.append("  firings.record(c").append(i).append(", ").append(i).append(");\n");
        }
        return text.append("end\n").toString();
    }

    /** Two letters of one kind always stand for two different things. */
    private static void introduceLetters(Said said, Map<String, SlotKind> introduced, StringBuilder text) {
        for (int i = 0; i < said.slots().size(); i++) {
            SlotKind kind = said.sentence().slots().get(i).kind();
            String letter = said.slots().get(i);
            if (!kind.isVariable() || introduced.containsKey(letter)) {
                continue;
            }
            List<String> others = introduced.entrySet().stream()
                    .filter(entry -> entry.getValue().name().equals(kind.name()))
                    .map(entry -> "this != $" + entry.getKey())
                    .toList();
            text.append("  $")
                    .append(letter)
                    .append(" : ")
                    .append(kind.type())
                    .append("(")
                    .append(String.join(", ", others))
                    .append(")\n");
            introduced.put(letter, kind);
        }
    }

    private static void introduceLimits(Said said, Map<String, String> limits, StringBuilder text) {
        for (int i = 0; i < said.slots().size(); i++) {
            Matcher limit = SlotKind.LIMIT.matcher(said.slots().get(i));
            if (said.sentence().slots().get(i).kind().isNumber()
                    && limit.matches()
                    && !limits.containsKey(limit.group(1))) {
                String variable = "$limit" + limits.size();
                limits.put(limit.group(1), variable);
                text.append("  Limit(name == \"")
                        .append(limit.group(1))
                        .append("\", ")
                        .append(variable)
                        .append(" : value)\n");
            }
        }
    }

    private static String fill(String template, Rule rule, Said said, Map<String, String> limits) {
        Map<String, String> values = new HashMap<>();
        values.put("rule", "\"" + rule.id() + "\"");
        for (int i = 0; i < said.slots().size(); i++) {
            Sentence.Slot slot = said.sentence().slots().get(i);
            values.put(slot.name(), value(slot.kind(), said.slots().get(i), limits));
        }
        return HOLE.matcher(template)
                .replaceAll(hole -> Matcher.quoteReplacement(values.getOrDefault(hole.group(1), hole.group())));
    }

    private static String value(SlotKind kind, String text, Map<String, String> limits) {
        if (kind.isVariable()) {
            return "$" + text;
        }
        if (kind.isNumber()) {
            Matcher limit = SlotKind.LIMIT.matcher(text);
            if (limit.matches()) {
                return limits.get(limit.group(1));
            }
            Matcher number = SlotKind.NUMBER.matcher(text);
            if (!number.matches()) {
                throw new IllegalStateException("an unchecked number reached the translation: " + text);
            }
            return number.group(1).contains(".") ? number.group(1) : number.group(1) + ".0";
        }
        return "\"" + text + "\"";
    }
}
