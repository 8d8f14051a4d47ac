package org.wickwise.rulebook;

import java.util.Locale;

/** The kinds of trouble that a folder of rules can have; each has a section in docs/rule-findings.md. */
public enum RuleTrouble {
    /** A key or a value of the file that is not as it has to be. */
    FORM,
    /** A file of the folder that holds rules, and that nobody reads. */
    NOT_READ,
    RULE_NAME,
    SAME_NAME,
    NO_SOURCE,
    UNKNOWN_SENTENCE,
    PROGRAM_TEXT,
    FOREIGN_LETTER,
    UNKNOWN_WORD,
    UNKNOWN_LIMIT,
    WRONG_UNIT,
    OUT_OF_RANGE,
    UNNAMED_LETTER,
    TWO_KINDS,
    TOO_LONG,
    TOO_MANY,
    UNKNOWN_RULE,
    VANISHING_CAUTION,
    DENIES_ITSELF,
    NEVER_FIRES,
    SAYS_THE_SAME,
    CONTRADICTS,
    UNUSED_SENTENCE,
    UNUSED_LIMIT,
    NOT_JUDGED;

    /** "unknown-sentence": how the kind is called in messages and in the documentation. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
