package org.wickwise.substance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
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

    /** The same solvent with some values in use replaced. */
    Solvent with(List<TableValue> ownValues) {
        if (ownValues.isEmpty()) {
            return this;
        }
        Map<String, List<TableValue>> changed = new LinkedHashMap<>(values);
        for (TableValue own : ownValues) {
            List<TableValue> all = new ArrayList<>(List.of(own));
            values.getOrDefault(own.property(), List.of()).forEach(printed -> all.add(printed.unused()));
            changed.put(own.property(), all);
        }
        return new Solvent(name, also, family, aqueous, changed);
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
