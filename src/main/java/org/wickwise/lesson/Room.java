package org.wickwise.lesson;

import java.util.OptionalDouble;

/**
 * The room a lesson is held in.
 *
 * @param cubicMetres above 0
 * @param airChangesPerHour of fresh air, 0 or more, where somebody knows them
 * @param smallestSpaceCubicMetres the smallest closed space solvents stand in (a cupboard, a drying box), where there is one
 * @param temperatureCelsius of the room, where somebody wrote it down
 */
public record Room(
        double cubicMetres,
        OptionalDouble airChangesPerHour,
        OptionalDouble smallestSpaceCubicMetres,
        OptionalDouble temperatureCelsius) {}
