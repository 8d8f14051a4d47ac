package org.wickwise.substance;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A solvent with every value known of it. Two solvents are the same when they have the same name.
 *
 * @param also other names people write
 * @param aqueous whether its family counts as aqueous
 * @param values by property, in the order of the file; a property that is not there is unknown, never zero
 */
public record Solvent(
        String name, List<String> also, String family, boolean aqueous, Map<String, List<TableValue>> values) {

    /** The value the program uses; empty when the property is unknown or no printed value can be trusted. */
    public Optional<TableValue> value(String property) {
        return values.getOrDefault(property, List.of()).stream()
                .filter(TableValue::used)
                .findFirst();
    }

    public OptionalDouble number(String property) {
        return value(property).map(TableValue::number).orElse(OptionalDouble.empty());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Solvent solvent && name.equals(solvent.name);
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}
