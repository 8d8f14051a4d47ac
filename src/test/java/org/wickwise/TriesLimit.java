package org.wickwise;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Marks the test that tries a comparison of the program with a limit, a row of {@link LimitsTable}. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface TriesLimit {

    /** The name of the limit, without "the". */
    String limit();

    /** Where the program reads the limit, {@code plan/FlowLines}. */
    String in();
}
