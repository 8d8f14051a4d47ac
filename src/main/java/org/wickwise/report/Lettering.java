package org.wickwise.report;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.text.WordUtils;

/**
 * How much room words take in a picture. A reader's machine chooses the font, so widths are those of a wide one: what fits
 * here fits anywhere, and no font of this machine changes a picture.
 */
final class Lettering {

    private static final String NARROW = "iljtfrI.,:;'|!()[] \u00a0-";
    private static final String WIDE = "mwMWQOGCD@%+\u00b1";
    private static final double NARROW_EMS = 0.42;
    private static final double USUAL_EMS = 0.65;
    private static final double WIDE_EMS = 0.95;
    private static final double IDEOGRAPH_EMS = 1;
    private static final int FIRST_IDEOGRAPHS = 0x2e80;

    private Lettering() {}

    /** The room that words take, in the unit of the font size. */
    static double width(String words, double fontSize) {
        return fontSize * words.codePoints().mapToDouble(Lettering::ems).sum();
    }

    /** Lines no wider than asked; broken between words, and within a word that is wider than a line. */
    static List<String> wrapped(String words, double width, double fontSize) {
        if (width(words, fontSize) <= width) {
            return List.of(words);
        }
        int letters = words.codePointCount(0, words.length());
        int fitting = (int) Math.max(1, Math.floor(width * letters / width(words, fontSize)));
        for (int most = fitting; most > 1; most--) {
            List<String> lines = lines(words, most);
            if (lines.stream().allMatch(line -> width(line, fontSize) <= width)) {
                return lines;
            }
        }
        return lines(words, 1);
    }

    private static List<String> lines(String words, int most) {
        return Arrays.asList(WordUtils.wrap(words, most, "\n", true).split("\n"));
    }

    private static double ems(int letter) {
        if (letter >= FIRST_IDEOGRAPHS) {
            return IDEOGRAPH_EMS;
        }
        if (NARROW.indexOf(letter) >= 0) {
            return NARROW_EMS;
        }
        return WIDE.indexOf(letter) >= 0 ? WIDE_EMS : USUAL_EMS;
    }
}
