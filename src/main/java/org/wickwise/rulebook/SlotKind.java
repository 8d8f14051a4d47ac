package org.wickwise.rulebook;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Numbers;

/** What may stand in a slot of a sentence. Nothing else reaches the engine. */
sealed interface SlotKind {

    Pattern NUMBER = Pattern.compile("(-?\\d+(?:\\.\\d+)?)(?: ?([A-Za-z%][A-Za-z0-9%/. ]*))?");
    Pattern LIMIT = Pattern.compile("the (.+)");

    String name();

    /** The part of a sentence pattern that this slot takes. */
    String pattern();

    /**
     * Why a text cannot stand here; empty when it can.
     *
     * @param limits that may be named in the place of a number
     * @param property that the sentence speaks of, where it does
     */
    Optional<Misfit> misfit(String text, Map<String, Limit> limits, Optional<String> property);

    default boolean isVariable() {
        return this instanceof Letter;
    }

    default boolean isNumber() {
        return this instanceof Quantity;
    }

    /** The engine's type of a letter of this kind. */
    default String type() {
        return name().substring(0, 1).toUpperCase(Locale.ROOT) + name().substring(1);
    }

    /**
     * A text that does not belong into a slot.
     *
     * @param found what stands there, in words
     * @param wayOut looked for only when it is told: another sentence may fit
     */
    record Misfit(RuleTrouble trouble, String found, String expected, Supplier<String> wayOut) {}

    /** A capital letter that stands for a thing of the case. */
    record Letter(String name) implements SlotKind {

        private static final Pattern CAPITAL = Pattern.compile("[A-Z]");

        @Override
        public String pattern() {
            return "[A-Z]";
        }

        @Override
        public Optional<Misfit> misfit(String text, Map<String, Limit> limits, Optional<String> property) {
            return CAPITAL.matcher(text).matches()
                    ? Optional.empty()
                    : Optional.of(new Misfit(
                            RuleTrouble.UNKNOWN_WORD,
                            "`" + text + "`",
                            "a capital letter that stands for a " + name,
                            () -> "write one capital letter"));
        }
    }

    /** A word of a closed list. */
    record OneOf(String name, Collection<String> words) implements SlotKind {

        @Override
        public String pattern() {
            return "[A-Za-z0-9][A-Za-z0-9,. -]*?";
        }

        @Override
        public Optional<Misfit> misfit(String text, Map<String, Limit> limits, Optional<String> property) {
            return words.contains(text)
                    ? Optional.empty()
                    : Optional.of(new Misfit(
                            RuleTrouble.UNKNOWN_WORD,
                            "`" + text + "`",
                            "a " + name.toLowerCase(Locale.ROOT) + ": " + String.join(", ", words),
                            () -> NearMiss.suggestion(text, words, List.of())));
        }
    }

    /**
     * A number with its unit, or a limit by its name.
     *
     * @param unit as it is written behind the number; empty where the property of the sentence decides
     * @param needsUnit whether the unit has to be written
     * @param limitUnit the unit that a limit in this place has
     * @param unitOfProperty the unit of every property of the table, "none" for a plain number
     */
    record Quantity(
            String name,
            String unit,
            boolean needsUnit,
            String limitUnit,
            double lowest,
            double highest,
            Map<String, String> unitOfProperty)
            implements SlotKind {

        private static final double PER_CENT = 100;
        private static final int MOST_DECIMALS = 6;

        static Quantity of(String name, String unit, boolean needsUnit, String limitUnit, double highest) {
            return new Quantity(name, unit, needsUnit, limitUnit, 0, highest, Map.of());
        }

        /** A value of a property, in the unit of that property. */
        static Quantity ofProperty(Map<String, String> unitOfProperty) {
            return new Quantity("value", "", true, "", -1e6, 1e9, unitOfProperty);
        }

        @Override
        public String pattern() {
            return "(?:the [a-zA-Z][a-zA-Z -]*?|-?[0-9][0-9. a-zA-Z%/]*?)";
        }

        private Quantity in(Optional<String> property) {
            String unitOfIt = property.map(unitOfProperty::get)
                    .filter(found -> !found.equals("none"))
                    .orElse("");
            return unitOfProperty.isEmpty()
                    ? this
                    : new Quantity(
                            name,
                            unitOfIt,
                            !unitOfIt.isEmpty(),
                            unitOfIt.isEmpty() ? "none" : unitOfIt,
                            lowest,
                            highest,
                            Map.of());
        }

        @Override
        public Optional<Misfit> misfit(String text, Map<String, Limit> limits, Optional<String> property) {
            Quantity here = in(property);
            Matcher limit = LIMIT.matcher(text);
            return limit.matches() ? here.misfitOfLimit(limit.group(1), limits) : here.misfitOfNumber(text);
        }

        private Optional<Misfit> misfitOfLimit(String limitName, Map<String, Limit> limits) {
            Limit limit = limits.get(limitName);
            if (limit == null) {
                return Optional.of(new Misfit(
                        RuleTrouble.UNKNOWN_LIMIT,
                        "no limit is called `" + limitName + "`",
                        "a limit of rules/limits.yaml, or " + inWords(),
                        () -> NearMiss.suggestion(limitName, new TreeSet<>(limits.keySet()))));
            }
            return limit.unit().equals(limitUnit)
                    ? Optional.empty()
                    : Optional.of(new Misfit(
                            RuleTrouble.WRONG_UNIT,
                            "the " + limitName
                                    + (limit.unit().equals("none") ? " has no unit" : " is in " + limit.unit()),
                            inWords(),
                            () -> "name a limit of that unit, or write a number"));
        }

        private Optional<Misfit> misfitOfNumber(String text) {
            Matcher number = NUMBER.matcher(text);
            if (!number.matches()) {
                return Optional.of(new Misfit(
                        RuleTrouble.UNKNOWN_WORD,
                        "`" + text + "`",
                        inWords(),
                        () -> "write a plain number such as 12.5"));
            }
            Optional<String> written = Optional.ofNullable(number.group(2));
            if (written.isEmpty() ? needsUnit : !written.get().equals(unit)) {
                return Optional.of(new Misfit(
                        RuleTrouble.WRONG_UNIT,
                        written.map(found -> "`" + text + "` is in " + found).orElse("`" + text + "` has no unit"),
                        inWords(),
                        () -> "write `" + meant(number.group(1), written) + "` if that is meant"));
            }
            double value = Double.parseDouble(number.group(1));
            return value >= lowest && value <= highest
                    ? Optional.empty()
                    : Optional.of(new Misfit(
                            RuleTrouble.OUT_OF_RANGE,
                            "`" + text + "`",
                            inWords() + " from " + Numbers.plain(lowest, 0) + " to " + Numbers.plain(highest, 0),
                            () -> "write a number of that range"));
        }

        /** Numbers such as an Rf are written without a unit. */
        private boolean isPlain() {
            return unit.isEmpty() || unit.startsWith("of ");
        }

        /** The number as it is to be written; a share in per cent becomes a plain number. */
        private String meant(String number, Optional<String> writtenUnit) {
            if (!isPlain()) {
                return number + " " + unit;
            }
            return writtenUnit.filter("%"::equals).isPresent()
                    ? Numbers.plain(Double.parseDouble(number) / PER_CENT, MOST_DECIMALS)
                    : number;
        }

        /** What is to be written, where the sentence alone says it. */
        String inWords() {
            return !unitOfProperty.isEmpty()
                    ? "a number in the unit of the property"
                    : unit.isEmpty()
                            ? "a plain number"
                            : isPlain() ? "a plain number (" + name + ")" : "a number in " + unit;
        }
    }
}
