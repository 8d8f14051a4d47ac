package org.wickwise.rulebook;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.wickwise.text.Words;

/** Reads the values of facts by the names that the vocabulary's meanings call them. Only the vocabulary names them. */
final class Accessors {

    private static final Map<Key, Optional<Method>> KNOWN = new ConcurrentHashMap<>();

    private record Key(Class<?> type, String name, int arguments) {}

    private Accessors() {}

    /** @throws IllegalStateException when the vocabulary names a value that the fact has not */
    static Object value(Object of, String name, List<Object> arguments) {
        Method method = KNOWN.computeIfAbsent(new Key(of.getClass(), name, arguments.size()), Accessors::method)
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

    private static Optional<Method> method(Key key) {
        String capital = Words.capital(key.name());
        Set<String> names = Set.of(key.name(), "get" + capital, "is" + capital);
        Optional<Method> found = Arrays.stream(key.type().getMethods())
                .filter(method -> method.getParameterCount() == key.arguments())
                .filter(method -> names.contains(method.getName()))
                .findFirst();
        found.ifPresent(method -> method.setAccessible(true));
        return found;
    }
}
