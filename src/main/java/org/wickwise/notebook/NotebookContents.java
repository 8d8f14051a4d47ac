package org.wickwise.notebook;

import java.util.List;

/**
 * What a notebook holds.
 *
 * @param entries by date, then by file name
 * @param setAside files that cannot be read, by name; nothing of them is among the entries
 */
public record NotebookContents(List<Entry> entries, List<SetAside> setAside) {

    public NotebookContents {
        entries = List.copyOf(entries);
        setAside = List.copyOf(setAside);
    }
}
