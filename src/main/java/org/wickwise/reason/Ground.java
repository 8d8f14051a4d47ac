package org.wickwise.reason;

/** Anything that can say why it holds. */
public interface Ground {

    Reason reason();
}
