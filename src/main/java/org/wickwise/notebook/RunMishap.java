package org.wickwise.notebook;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What may go wrong with a column while it runs, in the words a person writes down. */
public enum RunMishap {
    BED_CRACKED("bed cracked"),
    RAN_DRY("ran dry"),
    BUBBLES("bubbles in the bed"),
    BAND_BENT("band bent"),
    CHANNELS("channels in the bed"),
    FLOW_STOPPED("flow stopped"),
    LOAD_TOO_WIDE("load too wide"),
    LOAD_NOT_DISSOLVED("load not dissolved"),
    FRACTION_SPILT("fraction spilt"),
    FRACTIONS_MIXED_UP("fractions mixed up");

    private final String word;

    RunMishap(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    public static Optional<RunMishap> named(String word) {
        return Arrays.stream(values()).filter(known -> known.word.equals(word)).findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(RunMishap::word).toList();
    }
}
