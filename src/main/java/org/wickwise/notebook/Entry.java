package org.wickwise.notebook;

import java.time.LocalDate;
import java.util.Optional;
import org.wickwise.bench.Case;
import org.wickwise.bench.StripSet;
import org.wickwise.text.Place;

/**
 * One file of a notebook: what one group ran on one day.
 *
 * @param group which group of a class it was; a number or a word of the writer's own
 * @param place where it was run, where the writer says so
 * @param who who ran it; empty unless the writer wants it kept
 * @param strips the strips that were run, none where only a column was
 * @param column the whole case, where the file says which column was to be run and in which setting
 * @param run the finished column, where it was run
 */
public record Entry(
        LocalDate date,
        Optional<String> group,
        Optional<String> where,
        Optional<String> who,
        String title,
        StripSet strips,
        Optional<Case> column,
        Optional<ColumnRun> run,
        Place place) {}
