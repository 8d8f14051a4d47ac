package org.wickwise.substance;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wickwise.substance.Eluent.Addition;
import org.wickwise.substance.Eluent.Part;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Problems;

/**
 * Reads an eluent the way it stands on a jar's label: a name, {@code A + B 9:1}, {@code A 60 % + B 40 %},
 * {@code 30 % A in B}, each with or without {@code with ADDITIVE 1 %}. Shares are by volume.
 */
public final class EluentReader {

    private static final Pattern NUMBER_PERCENT = Pattern.compile("(.+?)\\s+(\\d+(?:\\.\\d+)?)\\s*%");
    private static final Pattern SHARE_IN = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*%\\s+(.+?)\\s+in\\s+(.+)");
    private static final Pattern WITH_RATIO =
            Pattern.compile("(.+?)\\s+(\\d+(?:\\.\\d+)?(?:\\s*:\\s*\\d+(?:\\.\\d+)?)+)");
    private static final Pattern LONE_SHARE = Pattern.compile("\\d+(?:\\.\\d+)?\\s*%\\s+.+|.+\\s\\d+(?:\\.\\d+)?\\s*%");
    private static final Pattern PERCENT_NUMBER = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*%\\s+(.+)");
    private static final double MOST_ADDITIVE_PERCENT = 50;
    private static final double ADDS_UP_WITHIN_PERCENT = 0.5;

    private final SolventData data;
    private final Map<String, Eluent> ownNames;
    private final Problems problems;

    /** @param ownNames what a shelf's household bottles are called, in small letters, and what they hold */
    public EluentReader(SolventData data, Map<String, Eluent> ownNames, Problems problems) {
        this.data = data;
        this.ownNames = Map.copyOf(ownNames);
        this.problems = problems;
    }

    /** The eluent, or nothing after the problem was reported. */
    public Optional<Eluent> read(Scalar written) {
        Eluent own = ownNames.get(written.text().strip().toLowerCase(Locale.ROOT));
        if (own != null) {
            return Optional.of(own);
        }
        String[] halves = written.text().strip().split("\\s+with\\s+", 2);
        Optional<List<Part>> parts = parts(written, halves[0].strip());
        Optional<List<Addition>> additions =
                halves.length == 1 ? Optional.of(List.of()) : additions(written, halves[1]);
        return parts.flatMap(found -> additions.map(added -> Eluent.of(found, added)));
    }

    private Optional<List<Part>> parts(Scalar written, String text) {
        Matcher in = SHARE_IN.matcher(text);
        if (in.matches() && data.solvent(text).isEmpty()) {
            double share = Double.parseDouble(in.group(1));
            return blend(written, List.of(in.group(2), in.group(3)), List.of(share, 100 - share));
        }
        List<String> pieces = List.of(text.split("\\s*[+/]\\s*"));
        Matcher lone = LONE_SHARE.matcher(text);
        if (pieces.size() == 1 && lone.matches() && data.solvent(text).isEmpty()) {
            problems.add(
                    written.place(),
                    "`" + written.text() + "` says how much of one solvent is in it, and not what the rest is",
                    "every part of the blend",
                    "name the rest: `" + text + " in ...`");
            return Optional.empty();
        }
        if (pieces.size() == 1) {
            return solvent(written, text).map(solvent -> List.of(new Part(solvent, 100)));
        }
        Matcher ratio = WITH_RATIO.matcher(pieces.get(pieces.size() - 1));
        if (ratio.matches()) {
            return byRatio(written, pieces, ratio);
        }
        return byPercent(written, pieces);
    }

    private Optional<List<Part>> byRatio(Scalar written, List<String> pieces, Matcher ratio) {
        List<String> names = new ArrayList<>(pieces.subList(0, pieces.size() - 1));
        names.add(ratio.group(1));
        List<Double> shares = new ArrayList<>();
        for (String share : ratio.group(2).split(":")) {
            shares.add(Double.parseDouble(share.strip()));
        }
        double total = shares.stream().mapToDouble(Double::doubleValue).sum();
        if (total <= 0) {
            return badShare(written);
        }
        if (shares.size() != names.size()) {
            problems.add(
                    written.place(),
                    "`" + written.text() + "` names " + names.size() + " solvents and " + shares.size() + " shares",
                    "one share for each solvent",
                    "write it like `A + B 9:1`, shares by volume in the order of the names");
            return Optional.empty();
        }
        return blend(
                written,
                names,
                shares.stream().map(share -> 100 * share / total).toList());
    }

    private Optional<List<Part>> byPercent(Scalar written, List<String> pieces) {
        List<String> names = new ArrayList<>();
        List<Double> shares = new ArrayList<>();
        for (String piece : pieces) {
            Matcher percent = NUMBER_PERCENT.matcher(piece);
            if (!percent.matches()) {
                problems.add(
                        written.place(),
                        "`" + written.text() + "` does not say how much of each solvent is in it",
                        "a ratio or percentages by volume",
                        "write it like `A + B 9:1` or `A 90 % + B 10 %`");
                return Optional.empty();
            }
            names.add(percent.group(1));
            shares.add(Double.parseDouble(percent.group(2)));
        }
        return blend(written, names, shares);
    }

    private Optional<List<Part>> blend(Scalar written, List<String> names, List<Double> percents) {
        double total = percents.stream().mapToDouble(Double::doubleValue).sum();
        if (percents.stream().anyMatch(share -> share <= 0 || share >= 100)) {
            return badShare(written);
        }
        if (Math.abs(total - 100) > ADDS_UP_WITHIN_PERCENT) {
            problems.add(
                    written.place(),
                    "the parts of `" + written.text() + "` add up to " + Numbers.plain(total, 2) + " %",
                    "parts that add up to 100 %",
                    "correct the percentages, or give a ratio such as 9:1");
            return Optional.empty();
        }
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            Optional<Solvent> solvent = solvent(written, names.get(i).strip());
            if (solvent.isEmpty()) {
                return Optional.empty();
            }
            if (parts.stream().anyMatch(part -> part.solvent().equals(solvent.get()))) {
                problems.add(
                        written.place(),
                        "`" + written.text() + "` names " + solvent.get().name() + " twice",
                        "each solvent once",
                        "add the two shares up");
                return Optional.empty();
            }
            parts.add(new Part(solvent.get(), 100 * percents.get(i) / total));
        }
        return Optional.of(parts);
    }

    private Optional<List<Part>> badShare(Scalar written) {
        problems.add(
                written.place(),
                "a share in `" + written.text() + "` is not between 0 and 100 %",
                "a share above 0 and below 100 % for every part",
                "leave out a solvent of which there is nothing; a neat solvent needs no share");
        return Optional.empty();
    }

    private Optional<Solvent> solvent(Scalar written, String name) {
        return new NamesOfTheTable(data, problems).solventOr("or a blend such as `A + B 9:1`", name, written.place());
    }

    private Optional<List<Addition>> additions(Scalar written, String text) {
        List<Addition> additions = new ArrayList<>();
        for (String piece : text.split("\\s+and\\s+")) {
            Matcher after = NUMBER_PERCENT.matcher(piece.strip());
            Matcher before = PERCENT_NUMBER.matcher(piece.strip());
            String name = after.matches() ? after.group(1) : before.matches() ? before.group(2) : piece.strip();
            OptionalDouble amount = after.matches()
                    ? OptionalDouble.of(Double.parseDouble(after.group(2)))
                    : before.matches()
                            ? OptionalDouble.of(Double.parseDouble(before.group(1)))
                            : OptionalDouble.empty();
            Optional<Additive> additive = data.additive(name);
            if (additive.isEmpty()) {
                problems.add(
                        written.place(),
                        "the additive `" + name + "` is not known",
                        "one of " + String.join(", ", data.additiveNames()),
                        NearMiss.suggestion(name, data.additiveNames()));
                return Optional.empty();
            }
            if (amount.isPresent() && (amount.getAsDouble() <= 0 || amount.getAsDouble() >= MOST_ADDITIVE_PERCENT)) {
                problems.add(
                        written.place(),
                        "an additive of " + Numbers.plain(amount.getAsDouble(), 2) + " %",
                        "more than 0 and less than " + Numbers.plain(MOST_ADDITIVE_PERCENT, 0) + " %",
                        "name what there is more of as a part of the blend");
                return Optional.empty();
            }
            if (additions.stream().anyMatch(known -> known.additive().equals(additive.get()))) {
                problems.add(
                        written.place(),
                        "`" + name + "` is added twice",
                        "each additive once",
                        "add the two amounts up");
                return Optional.empty();
            }
            additions.add(new Addition(additive.get(), amount));
        }
        return Optional.of(additions);
    }
}
