package org.wickwise.substance;

import java.util.List;

/** Something added to an eluent in small amounts: an acid, a base or a salt. */
public record Additive(String name, List<String> also, String kind) {}
