package org.wickwise.rulebook;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.wickwise.text.Words;

/** Reads the values of facts by the names that the vocabulary's meanings call them. Only the vocabulary names them. */
final class Accessors {

    /** The methods of each kind of fact by what a meaning calls them; looking for one takes longer than calling it. */
    private static final ClassValue<Map<Called, Method>> METHODS = new ClassValue<>() {
        @Override
        protected Map<Called, Method> computeValue(Class<?> kind) {
            Map<Called, Method> methods = new HashMap<>();
            for (String prefix : List.of("", "get", "is")) {
                for (Method method : kind.getMethods()) {
                    called(method, prefix).ifPresent(called -> {
                        method.setAccessible(true);
                        methods.putIfAbsent(called, method);
                    });
                }
            }
            return Map.copyOf(methods);
        }
    };

    private record Called(String name, int arguments) {}

    private Accessors() {}

    /** @throws IllegalStateException when the vocabulary names a value that the fact has not */
    static Object value(Object of, String name, List<Object> arguments) {
        Method method = METHODS.get(of.getClass()).get(new Called(name, arguments.size()));
        if (method == null) {
            throw new IllegalStateException(
                    "the vocabulary asks a " + of.getClass().getSimpleName() + " for its `" + name + "`");
        }
        try {
            return method.invoke(of, arguments.toArray());
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(
                    "`" + name + "` of a " + of.getClass().getSimpleName(), e);
        }
    }

    /** A record of this kind. */
    static Object made(Class<?> kind, List<Object> arguments) {
        try {
            return kind.getConstructors()[0].newInstance(arguments.toArray());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a " + kind.getSimpleName() + " of " + arguments, e);
        }
    }

    /** `isMet` is called `met`, and `getName` `name`; empty where a method does not begin so. */
    private static Optional<Called> called(Method method, String prefix) {
        String name = method.getName();
        String rest = name.startsWith(prefix) ? name.substring(prefix.length()) : "";
        boolean begins = !rest.isEmpty() && (prefix.isEmpty() || rest.equals(Words.capital(rest)));
        String shown =
                prefix.isEmpty() || !begins ? rest : rest.substring(0, 1).toLowerCase(Locale.ROOT) + rest.substring(1);
        return begins ? Optional.of(new Called(shown, method.getParameterCount())) : Optional.empty();
    }
}
