package org.wickwise.substance;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Everything the folder {@code solvent-data} says. Lists are in the order of their names.
 *
 * @param unitOfProperty the unit of every property, "none" for a plain number or a word; in the order of the file
 * @param exposureLimits properties that the air of a room is compared with, in ppm
 */
public record SolventData(
        List<Solvent> solvents,
        List<String> families,
        Map<String, String> unitOfProperty,
        List<OtherScale> otherScales,
        List<String> exposureLimits,
        List<Additive> additives,
        List<StationaryPhase> stationaryPhases,
        Miscibility miscibility,
        List<HazardStatement> hazardStatements,
        List<FlammabilityScheme> flammabilitySchemes) {

    public SolventData {
        unitOfProperty = Collections.unmodifiableMap(new LinkedHashMap<>(unitOfProperty));
    }

    /** In the order of the file. */
    public List<String> properties() {
        return List.copyOf(unitOfProperty.keySet());
    }

    /** A hazard code in words; empty for a code that nobody put into words. */
    public Optional<HazardStatement> hazard(String code) {
        return hazardStatements.stream()
                .filter(known -> known.code().equals(code))
                .findFirst();
    }

    /** How a standard sorts flammable liquids; empty for a standard that is not in the folder. */
    public Optional<FlammabilityScheme> flammability(String scheme) {
        return flammabilitySchemes.stream()
                .filter(known -> known.name().equals(scheme))
                .findFirst();
    }

    /** The same table with some values in use replaced; the printed ones stay beside them, unused. */
    public SolventData with(List<TableValue> ownValues) {
        List<Solvent> changed = solvents.stream()
                .map(solvent -> solvent.with(ownValues.stream()
                        .filter(value -> value.solvent().equals(solvent.name()))
                        .toList()))
                .toList();
        return new SolventData(
                changed,
                families,
                unitOfProperty,
                otherScales,
                exposureLimits,
                additives,
                stationaryPhases,
                miscibility,
                hazardStatements,
                flammabilitySchemes);
    }

    SolventData with(Miscibility other) {
        return new SolventData(
                solvents,
                families,
                unitOfProperty,
                otherScales,
                exposureLimits,
                additives,
                stationaryPhases,
                other,
                hazardStatements,
                flammabilitySchemes);
    }

    public Optional<Solvent> solvent(String name) {
        return find(solvents, name, Solvent::name, Solvent::also);
    }

    public Optional<Additive> additive(String name) {
        return find(additives, name, Additive::name, Additive::also);
    }

    public Optional<StationaryPhase> stationaryPhase(String name) {
        return find(stationaryPhases, name, StationaryPhase::name, StationaryPhase::also);
    }

    /** Names and other names. */
    public List<String> solventNames() {
        return solvents.stream()
                .flatMap(solvent -> Stream.concat(Stream.of(solvent.name()), solvent.also().stream()))
                .toList();
    }

    public List<String> additiveNames() {
        return additives.stream().map(Additive::name).toList();
    }

    public List<String> stationaryPhaseNames() {
        return stationaryPhases.stream().map(StationaryPhase::name).toList();
    }

    private static <T> Optional<T> find(
            List<T> known, String name, Function<T, String> itsName, Function<T, List<String>> otherNames) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return known.stream()
                .filter(one -> Stream.concat(Stream.of(itsName.apply(one)), otherNames.apply(one).stream())
                        .anyMatch(written -> written.toLowerCase(Locale.ROOT).equals(wanted)))
                .findFirst();
    }
}
