package org.wickwise.plan;

import java.util.List;
import java.util.Optional;
import org.wickwise.substance.Eluent;

/** What else could be poured in a judged case; laid out once for many questions. */
public final class Alternatives {

    private final Choices choices;
    private final Preferences preferences;

    Alternatives(Choices choices, Preferences preferences) {
        this.choices = choices;
        this.preferences = preferences;
    }

    /** The best route that pours this eluent; empty when no sound one does. */
    public Optional<Route> pouring(Eluent eluent) {
        return RouteSearch.pouring(eluent, choices, preferences).stream().findFirst();
    }

    /**
     * What becomes of an order of eluents that somebody thought of.
     *
     * @param order at least one eluent
     */
    public AskedOrder inOrder(List<Eluent> order) {
        return AskedOrder.of(order, choices, preferences);
    }
}
