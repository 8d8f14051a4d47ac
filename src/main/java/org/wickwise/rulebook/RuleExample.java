package org.wickwise.rulebook;

import java.util.Optional;
import org.wickwise.bench.Case;
import org.wickwise.text.Place;

/**
 * A small case in which a rule fires and one in which it stays silent.
 *
 * @param concludes the statement it then draws, with names
 * @param silent empty for a rule that holds in every case
 */
public record RuleExample(String rule, Case fires, String concludes, Optional<Case> silent, Place place) {}
