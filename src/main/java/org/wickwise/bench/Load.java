package org.wickwise.bench;

import java.util.OptionalDouble;
import org.wickwise.text.Place;

/**
 * How much of the mixture goes onto the column.
 *
 * @param milligrams of dry mixture, where it was weighed
 * @param millilitres of the liquid it is loaded in, where that is known
 */
public record Load(OptionalDouble milligrams, OptionalDouble millilitres, Place place) {}
