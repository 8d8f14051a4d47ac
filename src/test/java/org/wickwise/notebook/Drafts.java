package org.wickwise.notebook;

import java.time.LocalDate;
import java.util.Optional;

/** Entries to write, without a table of solvents, so that a child process starts fast. All invented. */
final class Drafts {

    private Drafts() {}

    /** @param mark what tells this entry from every other */
    static EntryDraft marked(String mark, String mixture, Optional<String> group) {
        String text = "date: 2025-11-04\n"
                + group.map(name -> "group: \"" + name + "\"\n").orElse("")
                + "note: \"" + mark + "\"\nmixture:\n  name: \"" + mixture
                + "\"\n  dyes: [straw, rust]\nstrips on: silica\nstrips:\n"
                + "  - solvent: heptane\n    front mm: 70\n    travel mm: {straw: 30, rust: 2}\n"
                + "  - solvent: ethanol\n    front mm: 71\n    travel mm: {straw: 66, rust: 40}\n";
        return new EntryDraft(LocalDate.of(2025, 11, 4), mixture, group, text);
    }

    static EntryDraft marked(String mark) {
        return marked(mark, "cancelling ink", Optional.empty());
    }
}
