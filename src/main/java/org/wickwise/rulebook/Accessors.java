package org.wickwise.rulebook;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.wickwise.text.Words;

/** Reads the values of facts by the names that the vocabulary's meanings call them. Only the vocabulary names them. */
final class Accessors {

    /** The public methods of each kind of fact; looking for one takes longer than calling it. */
    private static final ClassValue<Map<Called, Method>> METHODS = new ClassValue<>() {
        @Override
        protected Map<Called, Method> computeValue(Class<?> kind) {
            Map<Called, Method> methods = new HashMap<>();
            for (Method method : kind.getMethods()) {
                methods.putIfAbsent(new Called(method.getName(), method.getParameterCount()), method);
            }
            return Map.copyOf(methods);
        }
    };

    private record Called(String name, int arguments) {}

    private Accessors() {}

    /** @throws IllegalStateException when the vocabulary names a value that the fact has not */
    static Object value(Object of, String name, List<Object> arguments) {
        Method method = method(of.getClass(), name, arguments.size())
                .orElseThrow(() -> new IllegalStateException(
                        "the vocabulary asks a " + of.getClass().getSimpleName() + " for its `" + name + "`"));
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

    private static Optional<Method> method(Class<?> kind, String name, int arguments) {
        String capital = Words.capital(name);
        Map<Called, Method> known = METHODS.get(kind);
        Optional<Method> found = Stream.of(name, "get" + capital, "is" + capital)
                .map(called -> known.get(new Called(called, arguments)))
                .filter(Objects::nonNull)
                .findFirst();
        found.ifPresent(method -> method.setAccessible(true));
        return found;
    }
}
