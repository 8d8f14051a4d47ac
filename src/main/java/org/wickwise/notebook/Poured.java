package org.wickwise.notebook;

import org.wickwise.substance.Eluent;
import org.wickwise.text.Place;

/** One eluent that was poured through a column, and how much of it. */
public record Poured(Eluent eluent, double millilitres, Place place) {}
