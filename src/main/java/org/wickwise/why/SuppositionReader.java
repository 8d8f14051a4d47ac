package org.wickwise.why;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.wickwise.bench.Case;
import org.wickwise.bench.Setting;
import org.wickwise.column.Column;
import org.wickwise.rulebook.Limit;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Bottle;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.EluentReader;
import org.wickwise.substance.Shelf;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.SolventData;
import org.wickwise.substance.StationaryPhase;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;

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
    private static final Pattern ON_STRIP =
            Pattern.compile("(.+?) (?:at Rf (\\d+(?:\\.\\d+)?)|(" + String.join("|", Behaviour.words()) + "))");
    private static final Pattern BOTTLE = Pattern.compile("(with|without) the bottle (.+)");
    private static final Pattern COLUMN = Pattern.compile("the column is (.+)");
    private static final Pattern SETTING = Pattern.compile("the setting is (.+)");
    private static final Pattern LIMIT = Pattern.compile("the (.+) is (-?\\d+(?:\\.\\d+)?)");
    private static final Place SAID = Place.wholeFile("suppose");

    private final SolventData data;
    private final Map<String, Limit> limits;
    private final Problems problems = new Problems();
    private final Set<String> changed = new HashSet<>();
    private Case supposed;

    private SuppositionReader(Case written, Map<String, Limit> limits, SolventData data) {
        this.supposed = written;
        this.limits = new LinkedHashMap<>(limits);
        this.data = data;
    }

    /** @throws org.wickwise.text.ProblemsFound with every change that cannot be made, and what can be supposed */
    public static Supposition read(List<String> changes, Case written, Map<String, Limit> limits, SolventData data) {
        SuppositionReader reader = new SuppositionReader(written, limits, data);
        changes.forEach(reader::change);
        reader.problems.throwIfAny();
        return new Supposition(reader.supposed, reader.limits, changes);
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
            addStrip(strip.group(1), strip.group(2));
        } else if (without.matches()) {
            removeStrip(numbered(without.group(1)), without.group(2));
        } else if (bottle.matches()) {
            bottle(bottle.group(1).equals("with"), bottle.group(2));
        } else if (column.matches()) {
            column(column.group(1));
        } else if (setting.matches()) {
            setting(setting.group(1));
        } else if (limit.matches()) {
            limit(limit.group(1), Double.parseDouble(limit.group(2)));
        } else if (at.matches() && (at.group(4) != null) != (at.group(6) != null)) {
            boolean asRf = at.group(4) != null;
            double number = Double.parseDouble(at.group(5));
            spot(at.group(1), at.group(2), numbered(at.group(3)), on -> position(on, asRf, number));
        } else if (does.matches()) {
            spot(
                    does.group(1),
                    does.group(3),
                    numbered(does.group(4)),
                    any -> Optional.of(
                            new Spot.Seen(Behaviour.named(does.group(2)).orElseThrow())));
        } else {
            problems.add(
                    SAID,
                    "`" + words + "` is nothing that can be supposed",
                    "a change like one of: " + String.join("; ", EXAMPLES),
                    "write it in these words");
        }
    }

    /** The first strip in an eluent, unless another is named. */
    private static int numbered(String number) {
        return Optional.ofNullable(number).map(Integer::valueOf).orElse(1);
    }

    private Optional<Spot.Position> position(Strip strip, boolean asRf, double number) {
        OptionalDouble front = strip.frontMillimetres();
        boolean possible = asRf ? number <= 1 : front.isPresent() && number <= front.getAsDouble();
        if (!possible) {
            problems.add(
                    SAID,
                    (asRf ? "an Rf of " + number : "a spot at " + number + " mm") + " on " + strip,
                    asRf
                            ? "an Rf from 0 to 1"
                            : front.isPresent()
                                    ? "at most its front, " + front.getAsDouble() + " mm"
                                    : "an Rf, since the front of this strip is not known",
                    "suppose another reading");
            return Optional.empty();
        }
        return Optional.of(asRf ? strip.positionAt(number) : new Spot.Travelled(number));
    }

    private interface Placing {
        Optional<Spot.Position> on(Strip strip);
    }

    private void spot(String dyeName, String eluentName, int replicate, Placing placing) {
        Optional<Dye> dye = dye(dyeName);
        Optional<Strip> strip = strip(replicate, eluentName);
        if (dye.isEmpty() || strip.isEmpty() || !once("the reading of " + dye.get() + " on " + strip.get())) {
            return;
        }
        if (strip.get().spotOf(dye.get()).isEmpty()) {
            problems.add(
                    SAID,
                    "nobody saw " + dyeName + " on " + strip.get(),
                    "a dye that has a spot on it",
                    "suppose the whole strip: `without the strip in ...` and `a strip in ...: ...`");
            return;
        }
        placing.on(strip.get())
                .ifPresent(
                        position -> replace(strip.get(), Optional.of(strip.get().moved(dye.get(), position))));
    }

    private void replace(Strip before, Optional<Strip> after) {
        supposed = supposed.with(before, after);
    }

    private void removeStrip(int replicate, String eluentName) {
        strip(replicate, eluentName)
                .filter(strip -> once(strip.toString()))
                .ifPresent(strip -> replace(strip, Optional.empty()));
    }

    private void addStrip(String eluentName, String readings) {
        Optional<Eluent> eluent = eluent(eluentName);
        if (eluent.isEmpty() || !once("a strip in " + eluent.get())) {
            return;
        }
        List<Spot> spots = new ArrayList<>();
        for (String reading : readings.split(", *")) {
            Matcher on = ON_STRIP.matcher(reading);
            Optional<Dye> dye = on.matches() ? dye(on.group(1)) : Optional.empty();
            if (!on.matches()) {
                problems.add(
                        SAID,
                        "`" + reading + "` is no reading",
                        "a dye at an Rf, or what it does",
                        "write it like `DYE at Rf 0.4` or `DYE stays`");
            }
            if (dye.isEmpty()
                    || !isAnRf(on.group(2), reading)
                    || !once(dye.get() + " on the strip in " + eluent.get())) {
                continue;
            }
            spots.add(new Spot(
                    List.of(dye.get()),
                    on.group(2) != null
                            ? new Spot.Quoted(Double.parseDouble(on.group(2)))
                            : new Spot.Seen(Behaviour.named(on.group(3)).orElseThrow()),
                    SAID));
        }
        Set<Dye> seen = spots.stream().flatMap(spot -> spot.dyes().stream()).collect(Collectors.toSet());
        Set<Dye> notSeen =
                supposed.dyes().stream().filter(dye -> !seen.contains(dye)).collect(Collectors.toSet());
        int replicate = 1
                + (int) supposed.strips().stream()
                        .filter(strip -> strip.eluent().equals(eluent.get()))
                        .count();
        List<Strip> strips = new ArrayList<>(supposed.strips());
        strips.add(new Strip(
                eluent.get(),
                supposed.column().phase(),
                replicate,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                spots,
                List.of(),
                Set.of(),
                Set.of(),
                Set.of(),
                notSeen,
                SAID));
        supposed = supposed.with(strips);
    }

    private boolean isAnRf(String number, String reading) {
        boolean isOne = number == null || Double.parseDouble(number) <= 1;
        if (!isOne) {
            problems.add(SAID, "`" + reading + "`", "an Rf from 0 to 1", "suppose another reading");
        }
        return isOne;
    }

    private void bottle(boolean with, String name) {
        Shelf shelf = supposed.shelf();
        Optional<Bottle> there = shelf.bottles().stream()
                .filter(bottle -> bottle.name().equalsIgnoreCase(name)
                        || data.solvent(name)
                                .filter(solvent -> bottle.contents().equals(Eluent.neat(solvent)))
                                .isPresent())
                .findFirst();
        Optional<Solvent> solvent = data.solvent(name);
        if (with == there.isPresent()) {
            problems.add(
                    SAID,
                    with ? "the bottle " + name + " is on the shelf already" : "there is no bottle " + name,
                    with ? "a bottle that is not there" : "a bottle of the shelf",
                    NearMiss.suggestion(
                            name, shelf.bottles().stream().map(Bottle::name).toList(), List.of()));
        } else if (with && solvent.isEmpty()) {
            problems.add(
                    SAID,
                    "the table has no `" + name + "`",
                    "a solvent of the table",
                    NearMiss.suggestion(name, data.solventNames(), List.of()));
        } else if (once("the bottle " + name)) {
            List<Bottle> bottles = new ArrayList<>(shelf.bottles());
            there.ifPresent(bottles::remove);
            if (with) {
                bottles.add(Bottle.of(solvent.orElseThrow(), SAID));
            }
            supposed = supposed.with(new Shelf(shelf.title(), bottles, shelf.ownValues(), shelf.place()));
        }
    }

    private void column(String name) {
        Optional<StationaryPhase> phase = data.stationaryPhase(name);
        if (phase.isEmpty()) {
            problems.add(
                    SAID,
                    "`" + name + "` is not a known stationary phase",
                    "one of " + String.join(", ", data.stationaryPhaseNames()),
                    NearMiss.suggestion(name, data.stationaryPhaseNames(), List.of()));
        } else if (once("the column")) {
            Column column = supposed.column();
            supposed = supposed.with(
                    new Column(phase.get(), column.boreMillimetres(), column.bedMillimetres(), column.setup(), SAID));
        }
    }

    private void setting(String word) {
        Optional<Setting> setting = Setting.named(word);
        if (setting.isEmpty()) {
            problems.add(
                    SAID,
                    "`" + word + "` is not a known setting",
                    "one of " + String.join(", ", Setting.words()),
                    NearMiss.suggestion(word, Setting.words(), List.of()));
        } else if (once("the setting")) {
            supposed = supposed.with(setting.get(), SAID);
        }
    }

    private void limit(String name, double value) {
        Limit limit = limits.get(name);
        if (limit == null) {
            problems.add(
                    SAID,
                    "`" + name + "` is not a known limit",
                    "a limit of rules/limits.yaml",
                    NearMiss.suggestion(name, limits.keySet(), List.of()));
        } else if (value < limit.lowest() || value > limit.highest()) {
            problems.add(
                    SAID,
                    "the " + name + " is " + Numbers.plain(value, 4),
                    "a value from " + Numbers.plain(limit.lowest(), 4) + " to " + Numbers.plain(limit.highest(), 4),
                    "suppose a value in that range; outside it the rules lose their meaning");
        } else if (once("the " + name)) {
            limits.put(name, limit.supposed(value, SAID));
        }
    }

    private Optional<Dye> dye(String name) {
        List<String> names = supposed.dyes().stream().map(Dye::name).toList();
        Optional<Dye> dye = supposed.dyes().stream()
                .filter(known -> known.name().equalsIgnoreCase(name))
                .findFirst();
        if (dye.isEmpty()) {
            problems.add(
                    SAID,
                    "the mixture has no dye `" + name + "`",
                    "one of " + String.join(", ", names),
                    NearMiss.suggestion(name, names));
        }
        return dye;
    }

    private Optional<Strip> strip(int replicate, String eluentName) {
        Optional<Eluent> eluent = eluent(eluentName);
        Optional<Strip> strip = eluent.flatMap(found -> supposed.strips().stream()
                .filter(one -> one.eluent().equals(found) && one.replicate() == replicate)
                .findFirst());
        if (eluent.isPresent() && strip.isEmpty()) {
            List<String> there = supposed.strips().stream().map(Strip::toString).toList();
            problems.add(
                    SAID,
                    "there is no strip " + replicate + " in " + eluent.get(),
                    "one of " + String.join("; ", there),
                    "suppose one with `a strip in " + eluent.get() + ": ...`");
        }
        return strip;
    }

    private Optional<Eluent> eluent(String written) {
        Map<String, Eluent> own = supposed.shelf().bottles().stream()
                .filter(Bottle::isHouseholdBlend)
                .collect(Collectors.toMap(
                        bottle -> bottle.name().toLowerCase(Locale.ROOT), Bottle::contents, (one, other) -> one));
        return new EluentReader(data, own, problems).read(new Scalar(written, SAID));
    }

    /** A thing can be supposed one way only. */
    private boolean once(String what) {
        if (changed.add(what)) {
            return true;
        }
        problems.add(SAID, what + " is supposed twice", "each thing once", "leave one of the two out");
        return false;
    }
}
