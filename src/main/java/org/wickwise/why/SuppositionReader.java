package org.wickwise.why;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.Spot;
import org.wickwise.substance.SolventData;

/** Reads what somebody supposes, each change a short sentence, and makes it of the case; every mistake is told at once. */
public final class SuppositionReader {

    /** What can be supposed; words in capitals stand for names. */
    public static final List<String> EXAMPLES = List.of(
            "DYE in SOLVENT at 30 mm",
            "DYE in SOLVENT at Rf 0.4",
            "DYE stays in SOLVENT",
            "DYE in SOLVENT on strip 1 at Rf 0.4",
            "without the strip in SOLVENT",
            "a strip in SOLVENT: DYE at Rf 0.4, DYE stays",
            "without the bottle SOLVENT",
            "with the bottle SOLVENT",
            "the column is PHASE",
            "the setting is secondary school",
            "the parting gap is 0.15");

    private static final Pattern AT =
            Pattern.compile("(.+) in (.+?)(?: on strip (\\d{1,4}))? at (?:(Rf) )?(\\d+(?:\\.\\d+)?)( mm)?");
    private static final Pattern DOES =
            Pattern.compile("(.+) (" + String.join("|", Behaviour.words()) + ") in (.+?)(?: on strip (\\d{1,4}))?");
    private static final Pattern WITHOUT_STRIP = Pattern.compile("without (?:the )?strip(?: (\\d{1,4}))? in (.+)");
    private static final Pattern STRIP = Pattern.compile(
            "a strip in ([^:]+?): (.+(?:\\bat Rf\\b|\\b(?:" + String.join("|", Behaviour.words()) + ")\\b).*)");
    private static final Pattern BOTTLE = Pattern.compile("(with|without) the bottle (.+)");
    private static final Pattern COLUMN = Pattern.compile("the column is (.+)");
    private static final Pattern SETTING = Pattern.compile("the setting is (.+)");
    private static final Pattern LIMIT = Pattern.compile("the (.+) is (-?\\d+(?:\\.\\d+)?)");

    private final Supposing supposing;
    private final SupposedStrips strips;
    private final SupposedBench bench;

    private SuppositionReader(Supposing supposing) {
        this.supposing = supposing;
        this.strips = new SupposedStrips(supposing);
        this.bench = new SupposedBench(supposing);
    }

    /** @throws org.wickwise.text.ProblemsFound with every change that cannot be made, and what can be supposed */
    public static Supposition read(List<String> changes, Case written, Map<String, Limit> limits, SolventData data) {
        Supposing supposing = new Supposing(written, limits, data);
        changes.forEach(new SuppositionReader(supposing)::change);
        supposing.problems().throwIfAny();
        return new Supposition(supposing.supposed(), supposing.limits(), changes);
    }

    private void change(String words) {
        Matcher strip = STRIP.matcher(words);
        Matcher without = WITHOUT_STRIP.matcher(words);
        Matcher bottle = BOTTLE.matcher(words);
        Matcher column = COLUMN.matcher(words);
        Matcher setting = SETTING.matcher(words);
        Matcher limit = LIMIT.matcher(words);
        Matcher at = AT.matcher(words);
        Matcher does = DOES.matcher(words);
        if (strip.matches()) {
            strips.addStrip(strip.group(1), strip.group(2));
        } else if (without.matches()) {
            strips.removeStrip(numbered(without.group(1)), without.group(2));
        } else if (bottle.matches()) {
            bench.bottle(bottle.group(1).equals("with"), bottle.group(2));
        } else if (column.matches()) {
            bench.column(column.group(1));
        } else if (setting.matches()) {
            bench.setting(setting.group(1));
        } else if (limit.matches()) {
            bench.limit(limit.group(1), Double.parseDouble(limit.group(2)));
        } else if (at.matches() && (at.group(4) != null) != (at.group(6) != null)) {
            boolean asRf = at.group(4) != null;
            double number = Double.parseDouble(at.group(5));
            strips.spot(at.group(1), at.group(2), numbered(at.group(3)), on -> strips.position(on, asRf, number));
        } else if (does.matches()) {
            strips.spot(
                    does.group(1),
                    does.group(3),
                    numbered(does.group(4)),
                    any -> Optional.of(
                            new Spot.Seen(Behaviour.named(does.group(2)).orElseThrow())));
        } else {
            supposing.cannot(
                    "`" + words + "` is nothing that can be supposed",
                    "a change like one of: " + String.join("; ", EXAMPLES),
                    "write it in these words");
        }
    }

    /** The first strip in an eluent, unless another is named. */
    private static int numbered(String number) {
        return Optional.ofNullable(number).map(Integer::valueOf).orElse(1);
    }
}
