package org.wickwise.rulebook;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What may stand in a slot of a sentence. Nothing else reaches the engine. */
final class SlotKind {

    static final Pattern NUMBER =
            Pattern.compile("(-?\\d+(?:\\.\\d+)?)(?: ?(?:%|mm|degC|mPa\\.s|times|months|of Rf))?");
    static final Pattern LIMIT = Pattern.compile("the (.+)");
    private static final Pattern VARIABLE = Pattern.compile("[A-Z]");
    private static final Map<String, String> TYPE_OF_VARIABLE =
            Map.of("strip", "Strip", "dye", "Dye", "eluent", "Eluent");

    private final String name;
    private final Optional<Collection<String>> words;

    private SlotKind(String name, Optional<Collection<String>> words) {
        this.name = name;
        this.words = words;
    }

    static SlotKind variable(String name) {
        return new SlotKind(name, Optional.empty());
    }

    static SlotKind number() {
        return new SlotKind("number", Optional.empty());
    }

    static SlotKind oneOf(String name, Collection<String> words) {
        return new SlotKind(name, Optional.of(words));
    }

    String name() {
        return name;
    }

    boolean isVariable() {
        return TYPE_OF_VARIABLE.containsKey(name);
    }

    boolean isNumber() {
        return name.equals("number");
    }

    /** The engine's type of a variable of this kind. */
    String type() {
        return TYPE_OF_VARIABLE.get(name);
    }

    Optional<Collection<String>> words() {
        return words;
    }

    /** The part of a sentence pattern that this slot takes. */
    String pattern() {
        if (isVariable()) {
            return "[A-Z]";
        }
        return isNumber() ? "(?:the [a-zA-Z][a-zA-Z -]*?|-?[0-9][0-9. a-zA-Z%]*?)" : "[A-Za-z0-9][A-Za-z0-9,. -]*?";
    }

    /** Whether this text may stand in the slot; limits are looked up by the caller. */
    boolean takes(String text, Collection<String> limitNames) {
        if (isVariable()) {
            return VARIABLE.matcher(text).matches();
        }
        if (isNumber()) {
            Matcher limit = LIMIT.matcher(text);
            return limit.matches()
                    ? limitNames.contains(limit.group(1))
                    : NUMBER.matcher(text).matches();
        }
        return words.orElseThrow().contains(text);
    }

    /** What this slot takes, in words. */
    String expected(Collection<String> limitNames) {
        if (isVariable()) {
            return "a capital letter that stands for a " + name;
        }
        if (isNumber()) {
            return "a number, or a limit: the "
                    + String.join(", the ", limitNames.stream().sorted().toList());
        }
        return "a " + name.toLowerCase(Locale.ROOT) + ": " + String.join(", ", words.orElseThrow());
    }
}
