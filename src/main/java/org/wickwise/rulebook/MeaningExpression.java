package org.wickwise.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** An expression within the meaning of a sentence: it is about one fact and what stands in the slots. */
sealed interface MeaningExpression {

    /** @param values what stands in the slots and what earlier facts gave a name, by name */
    Object value(Object fact, Map<String, Object> values);

    default boolean isTrue(Object fact, Map<String, Object> values) {
        return Boolean.TRUE.equals(value(fact, values));
    }

    /** What of it does not hold of the fact; nothing when it is true. */
    default List<Unmet> unmet(Object fact, Map<String, Object> values) {
        return isTrue(fact, values) ? List.of() : List.of(new Unmet(false, OptionalDouble.empty()));
    }

    /**
     * A comparison that does not hold.
     *
     * @param aboutSomethingElse whether the fact is about another dye, eluent, strip or property, and so beside the point
     * @param missing how far two numbers are from where they should be
     */
    record Unmet(boolean aboutSomethingElse, OptionalDouble missing) {}

    /** A number, a text or a truth. */
    record Constant(Object value) implements MeaningExpression {
        @Override
        public Object value(Object fact, Map<String, Object> values) {
            return value;
        }
    }

    /** What stands in a slot, or what an earlier fact gave a name. */
    record Named(String name) implements MeaningExpression {
        @Override
        public Object value(Object fact, Map<String, Object> values) {
            return values.get(name);
        }
    }

    /** The fact itself. */
    record Itself() implements MeaningExpression {
        @Override
        public Object value(Object fact, Map<String, Object> values) {
            return fact;
        }
    }

    /** A value of something, by the name of its accessor, with arguments where it takes any. */
    record Part(MeaningExpression of, String name, List<MeaningExpression> arguments) implements MeaningExpression {
        @Override
        public Object value(Object fact, Map<String, Object> values) {
            List<Object> given =
                    arguments.stream().map(one -> one.value(fact, values)).toList();
            return Accessors.value(of.value(fact, values), name, given);
        }
    }

    /** Two values compared. */
    record Compared(MeaningExpression left, String sign, MeaningExpression right) implements MeaningExpression {

        private static final double NEXT_TO_NOTHING = 1e-9;

        @Override
        public Object value(Object fact, Map<String, Object> values) {
            Object one = left.value(fact, values);
            Object other = right.value(fact, values);
            if (one instanceof Number a && other instanceof Number b) {
                return compare(Double.compare(a.doubleValue(), b.doubleValue()));
            }
            if (one instanceof String a && other instanceof String b && !sign.endsWith("=")) {
                return compare(a.compareTo(b));
            }
            boolean same = one != null && one.equals(other);
            return sign.equals("==") == same;
        }

        private boolean compare(int order) {
            return switch (sign) {
                case "==" -> order == 0;
                case "!=" -> order != 0;
                case "<" -> order < 0;
                case "<=" -> order <= 0;
                case ">" -> order > 0;
                default -> order >= 0;
            };
        }

        @Override
        public List<Unmet> unmet(Object fact, Map<String, Object> values) {
            if (isTrue(fact, values)) {
                return List.of();
            }
            Object one = left.value(fact, values);
            Object other = right.value(fact, values);
            if (one instanceof Number a && other instanceof Number b) {
                double missing = Math.max(NEXT_TO_NOTHING, Math.abs(a.doubleValue() - b.doubleValue()));
                return List.of(new Unmet(false, OptionalDouble.of(missing)));
            }
            return List.of(new Unmet(isIdentity(other), OptionalDouble.empty()));
        }

        /** Which dye, eluent, strip, solvent or property a fact is about; a verdict or a behaviour is what it says of it. */
        private boolean isIdentity(Object other) {
            boolean saysSomething = other instanceof Enum || other instanceof Boolean;
            boolean byWord = left instanceof Part part && part.name().equals("word");
            return !saysSomething && !byWord;
        }
    }

    /** All of several, or one of several. */
    record Joined(List<MeaningExpression> parts, boolean all) implements MeaningExpression {
        @Override
        public Object value(Object fact, Map<String, Object> values) {
            Stream<MeaningExpression> each = parts.stream();
            return all
                    ? each.allMatch(part -> part.isTrue(fact, values))
                    : each.anyMatch(part -> part.isTrue(fact, values));
        }

        @Override
        public List<Unmet> unmet(Object fact, Map<String, Object> values) {
            if (isTrue(fact, values)) {
                return List.of();
            }
            if (all) {
                return parts.stream()
                        .flatMap(part -> part.unmet(fact, values).stream())
                        .toList();
            }
            Optional<MeaningExpression> first = parts.stream().findFirst();
            return first.map(part -> part.unmet(fact, values)).orElse(List.of());
        }
    }
}
