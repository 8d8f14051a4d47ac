package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Matches a conclusion against the sentence of a rule that could conclude it. */
final class ConclusionShape {

    private static final Pattern NEW = Pattern.compile("new ([A-Za-z]+)\\((.*)\\)");
    private static final Pattern SLOT = Pattern.compile("\\{([A-Za-z]+)}");
    private static final Pattern WORD = Pattern.compile("[A-Za-z]+\\.named\\(\\{([A-Za-z]+)}\\).*");
    private static final Pattern CONSTANT = Pattern.compile("[A-Za-z]+\\.([A-Z_]+)");

    private ConclusionShape() {}

    /** What the letters of the rule would have to stand for; empty when the sentence cannot conclude this. */
    static Optional<Map<String, Object>> bound(Said then, String ruleId, Conclusion wanted) {
        Matcher shape = NEW.matcher(then.sentence().concludes().orElse(""));
        if (!shape.matches() || !shape.group(1).equals(wanted.getClass().getSimpleName())) {
            return Optional.empty();
        }
        List<String> arguments = split(shape.group(2));
        var components = wanted.getClass().getRecordComponents();
        Map<String, Object> letters = new HashMap<>();
        for (int i = 0; i < components.length; i++) {
            Object value = Accessors.value(wanted, components[i].getName(), List.of());
            if (!fits(arguments.get(i), value, then, ruleId, letters)) {
                return Optional.empty();
            }
        }
        return Optional.of(letters);
    }

    private static boolean fits(String argument, Object value, Said then, String ruleId, Map<String, Object> letters) {
        Matcher slot = SLOT.matcher(argument);
        if (slot.matches()) {
            if (slot.group(1).equals("rule")) {
                return value.equals(ruleId);
            }
            int index = indexOf(slot.group(1), then);
            String written = then.slots().get(index);
            if (!then.sentence().slots().get(index).kind().isVariable()) {
                return value.equals(written);
            }
            Object before = letters.putIfAbsent(written, value);
            return before == null || before.equals(value);
        }
        Matcher word = WORD.matcher(argument);
        if (word.matches()) {
            String written = then.slots().get(indexOf(word.group(1), then));
            return Accessors.value(value, "word", List.of()).equals(written);
        }
        Matcher constant = CONSTANT.matcher(argument);
        return constant.matches()
                && value instanceof Enum<?> known
                && known.name().equals(constant.group(1));
    }

    /**
     * The conclusion that a sentence asks for, where a rule can draw it by the same words.
     *
     * @param values what stands in the slots, by the names of the slots
     */
    static Optional<Conclusion> made(Said asked, Map<String, Object> values) {
        Matcher shape = NEW.matcher(asked.sentence().concludes().orElse(""));
        if (!shape.matches()) {
            return Optional.empty();
        }
        List<Object> arguments = new ArrayList<>();
        for (String argument : split(shape.group(2))) {
            Matcher slot = SLOT.matcher(argument);
            if (!slot.matches() || !values.containsKey(slot.group(1))) {
                return Optional.empty();
            }
            arguments.add(values.get(slot.group(1)));
        }
        return Arrays.stream(Conclusion.class.getPermittedSubclasses())
                .filter(kind -> kind.getSimpleName().equals(shape.group(1)))
                .findFirst()
                .map(kind -> (Conclusion) Accessors.made(kind, arguments));
    }

    private static int indexOf(String slotName, Said then) {
        List<Sentence.Slot> slots = then.sentence().slots();
        for (int i = 0; i < slots.size(); i++) {
            if (slots.get(i).name().equals(slotName)) {
                return i;
            }
        }
        throw new IllegalStateException("`" + then.sentence().words() + "` has no slot " + slotName);
    }

    /** At commas outside of brackets. */
    private static List<String> split(String arguments) {
        List<String> parts = new ArrayList<>();
        int depth = 0;
        int start = 0;
        for (int i = 0; i < arguments.length(); i++) {
            char c = arguments.charAt(i);
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (c == ',' && depth == 0) {
                parts.add(arguments.substring(start, i).strip());
                start = i + 1;
            }
        }
        parts.add(arguments.substring(start).strip());
        return parts;
    }
}
