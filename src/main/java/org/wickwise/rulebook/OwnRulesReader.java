package org.wickwise.rulebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.wickwise.rulebook.OwnRules.SwitchedOff;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Fields;
import org.wickwise.text.Letters;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Listing;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;
import org.wickwise.text.YamlFile;

/**
 * Reads an instructor's folder: rule files, {@code limits.yaml}, {@code preferences.yaml} and {@code switched-off.yaml}.
 * Nothing outside of the folder is read, and nothing in it but YAML files.
 */
final class OwnRulesReader {

    static final String LIMITS = "limits.yaml";
    static final String PREFERENCES = "preferences.yaml";
    static final String SWITCHED_OFF = "switched-off.yaml";
    private static final Set<String> NO_RULE_FILES = Set.of(LIMITS, PREFERENCES, SWITCHED_OFF);
    private static final int MOST_FILES = 200;
    private static final long MOST_BYTES = 2_000_000;
    private static final int LONGEST_TEXT = 2_000;
    private static final int LONGEST_FILE_NAME = 100;
    private static final int MOST_HIDDEN = 20;
    private static final Pattern FILE_NAME = Pattern.compile("[\\p{L}\\p{M}\\p{N} ._()-]+");
    private static final Pattern LIMIT_NAME = Pattern.compile("[A-Za-z][A-Za-z -]*");
    private static final Pattern LETTER_OF_A_RULE = Pattern.compile("(?<![A-Za-z])[A-Z](?![A-Za-z])");

    private final String shownAs;
    private final List<String> names;
    private final Function<String, Mapping> content;
    private final Rulebook shipped;
    private final Problems problems;

    private OwnRulesReader(
            String shownAs,
            List<String> names,
            Function<String, Mapping> content,
            Rulebook shipped,
            Problems problems) {
        this.shownAs = shownAs;
        this.names = names;
        this.content = content;
        this.shipped = shipped;
        this.problems = problems;
    }

    /**
     * @param shipped the book that the folder adds to
     * @throws ProblemsFound when the folder cannot be read, or holds what is no file of its own
     */
    static OwnRulesReader ofFolder(Path folder, Rulebook shipped, Problems problems) {
        String shownAs = folder.toString().replace('\\', '/');
        return new OwnRulesReader(
                shownAs,
                names(folder, shownAs),
                name -> YamlFile.read(folder.resolve(name), shownAs + "/" + name),
                shipped,
                problems);
    }

    /** @param texts of a folder that stands nowhere: the content of its files by their names */
    static OwnRulesReader ofTexts(Map<String, String> texts, Rulebook shipped, Problems problems) {
        String shownAs = "own";
        return new OwnRulesReader(
                shownAs,
                texts.keySet().stream().sorted().toList(),
                name -> YamlFile.parse(shownAs + "/" + name, texts.get(name)),
                shipped,
                problems);
    }

    /**
     * @param vocabulary that the rules use
     * @throws ProblemsFound when the folder or a file of it cannot be read at all
     */
    OwnRules read(Vocabulary vocabulary, SolventData data) {
        List<Limit> limits = names.contains(LIMITS) ? limits(file(LIMITS)) : List.of();
        Map<String, Limit> all = new TreeMap<>(shipped.limits());
        limits.forEach(limit -> all.put(limit.name(), limit));
        List<SwitchedOff> off = names.contains(SWITCHED_OFF) ? switchedOff(file(SWITCHED_OFF)) : List.of();
        RuleReader reader = RuleReader.ofOwnRules(vocabulary, all, shipped.rules(), problems);
        List<Rule> rules = new ArrayList<>();
        for (String name : names) {
            if (!NO_RULE_FILES.contains(name)) {
                rules.addAll(reader.rules(file(name)));
            }
        }
        Optional<Wishes> wishes = names.contains(PREFERENCES)
                ? Optional.of(new WishesReader(data, problems).wishes(file(PREFERENCES)))
                : Optional.empty();
        Set<String> newLimits = limits.stream()
                .map(Limit::name)
                .filter(name -> !shipped.limits().containsKey(name))
                .collect(Collectors.toSet());
        return new OwnRules(shownAs, rules, reader.instead(), off, limits, newLimits, wishes);
    }

    /** @throws ProblemsFound when the file cannot be read, or holds letters that do not show */
    private Mapping file(String name) {
        Mapping file = content.apply(name);
        Problems hidden = new Problems();
        allShow(file, hidden);
        hidden.throwIfAny();
        return file;
    }

    /** Whatever stands in the folder may be printed: on a terminal, hidden letters could command or mislead. */
    private static void allShow(Node node, Problems hidden) {
        if (hidden.size() >= MOST_HIDDEN) {
            return;
        }
        if (node instanceof Mapping mapping) {
            for (Entry entry : mapping.entries()) {
                allShow(entry.key(), hidden);
                allShow(entry.value(), hidden);
            }
        } else if (node instanceof Listing listing) {
            listing.items().forEach(item -> allShow(item, hidden));
        } else if (node instanceof Scalar scalar) {
            shows(scalar, hidden);
        }
    }

    private static void shows(Scalar scalar, Problems hidden) {
        if (scalar.text().length() > LONGEST_TEXT) {
            hidden.add(new Problem(
                    scalar.place(),
                    "a text of " + scalar.text().length() + " characters",
                    "at most " + LONGEST_TEXT,
                    "shorten it",
                    RuleTrouble.TOO_LONG.code(),
                    ""));
            return;
        }
        Letters.hidden(scalar.text().stripTrailing())
                .ifPresent(letter -> hidden.add(new Problem(
                        scalar.place(),
                        "a letter that does not show stands in " + scalar.kind() + ": " + Letters.nameOf(letter),
                        "letters that show, on one line",
                        "write the text again on the keyboard, without copying; join lines with `>`",
                        RuleTrouble.FOREIGN_LETTER.code(),
                        "")));
    }

    /** The YAML files of the folder, none of them a link to somewhere else. */
    private static List<String> names(Path folder, String shownAs) {
        if (!Files.isDirectory(folder)) {
            throw problem(
                    Place.wholeFile(shownAs),
                    "there is no such folder",
                    "a folder with rules of your own",
                    "check the spelling, or make it and put a rule file into it",
                    RuleTrouble.FORM);
        }
        List<String> names = YamlFile.namesIn(folder);
        if (names.size() > MOST_FILES) {
            throw problem(
                    Place.wholeFile(shownAs),
                    names.size() + " files",
                    "at most " + MOST_FILES,
                    "keep the rules of one room in one folder",
                    RuleTrouble.TOO_MANY);
        }
        long bytes = 0;
        for (String name : names) {
            Place place = Place.wholeFile(shownAs + "/" + name);
            if (name.length() > LONGEST_FILE_NAME || !FILE_NAME.matcher(name).matches()) {
                throw problem(
                        place,
                        "the file has a name that could be taken for something else",
                        "letters, digits, blanks and hyphens, such as `our-room.yaml`",
                        "rename the file",
                        RuleTrouble.FORM);
            }
            if (leadsOutOfTheFolder(folder, folder.resolve(name))) {
                throw problem(
                        place,
                        "this is a link to a file somewhere else",
                        "a file of this folder",
                        "copy the file itself into the folder",
                        RuleTrouble.FORM);
            }
            bytes += folder.resolve(name).toFile().length();
        }
        if (bytes > MOST_BYTES) {
            throw problem(
                    Place.wholeFile(shownAs),
                    bytes + " bytes of rules",
                    "at most " + MOST_BYTES,
                    "keep the rules of one room in one folder",
                    RuleTrouble.TOO_MANY);
        }
        return names;
    }

    private static boolean leadsOutOfTheFolder(Path folder, Path file) {
        try {
            return Files.isSymbolicLink(file) || !file.toRealPath().getParent().equals(folder.toRealPath());
        } catch (IOException gone) {
            return true;
        }
    }

    private static ProblemsFound problem(
            Place place, String found, String expected, String wayOut, RuleTrouble trouble) {
        return new ProblemsFound(List.of(new Problem(place, found, expected, wayOut, trouble.code(), "")));
    }

    private List<Limit> limits(Mapping file) {
        List<Limit> limits = new ArrayList<>();
        Fields root = Fields.of(file, "limits of your own", Set.of("limits"), problems);
        for (Entry entry : root.entries("limits")) {
            limit(entry).ifPresent(limits::add);
        }
        return limits;
    }

    /** A shipped limit takes a value and a source; a new one all that a shipped one has. */
    private Optional<Limit> limit(Entry entry) {
        Limit known = shipped.limits().get(entry.key().text());
        if (known == null) {
            return isNameOfALimit(entry.key())
                    ? LimitReader.limit(entry.key().text(), entry.value(), problems)
                    : Optional.empty();
        }
        Fields fields = Fields.ofNode(entry.value(), "a limit of your own", Set.of("value", "source"), problems);
        OptionalDouble value = fields.number("value");
        if (value.isEmpty()) {
            if (!fields.has("value")) {
                fields.missing("value");
            }
            return Optional.empty();
        }
        if (value.getAsDouble() < known.lowest() || value.getAsDouble() > known.highest()) {
            problems.add(new Problem(
                    fields.placeOf("value"),
                    "the " + known.name() + " is " + Numbers.plain(value.getAsDouble(), 4),
                    "a value from " + Numbers.plain(known.lowest(), 4) + " to " + Numbers.plain(known.highest(), 4)
                            + " (" + known.unit() + ")",
                    "choose a value in that range; outside it the rules lose their meaning",
                    RuleTrouble.OUT_OF_RANGE.code(),
                    Numbers.plain(value.getAsDouble(), 6)));
        }
        return Optional.of(new Limit(
                known.name(),
                value.getAsDouble(),
                known.unit(),
                known.lowest(),
                known.highest(),
                known.meaning(),
                fields.requiredText("source"),
                entry.key().place()));
    }

    /** Words that can stand in a sentence behind "the" and leave the rest of it as it is. */
    private boolean isNameOfALimit(Scalar name) {
        boolean sound = name.text().length() <= RuleReader.LONGEST_NAME
                && LIMIT_NAME.matcher(name.text()).matches()
                && name.text().equals(name.text().strip())
                && !LETTER_OF_A_RULE.matcher(name.text()).find();
        if (!sound) {
            problems.add(new Problem(
                    name.place(),
                    name.kind() + " cannot name a limit",
                    "plain words without single capital letters, such as `comfortable distance`, at most "
                            + RuleReader.LONGEST_NAME + " letters",
                    "rename it",
                    RuleTrouble.RULE_NAME.code(),
                    name.text()));
        }
        return sound;
    }

    private List<SwitchedOff> switchedOff(Mapping file) {
        List<SwitchedOff> off = new ArrayList<>();
        Fields root = Fields.of(file, "the rules switched off", Set.of("switched off"), problems);
        for (Node node : root.list("switched off")) {
            Fields fields = Fields.ofNode(
                    node, "a rule switched off", Set.of("rule", "because", "its caution may vanish"), problems);
            String rule = fields.requiredText("rule");
            boolean mayVanish = fields.yesOrNo("its caution may vanish", "write yes, or leave the line out")
                    .orElse(false);
            SwitchedOff one = new SwitchedOff(rule, fields.requiredText("because"), mayVanish, fields.placeOf("rule"));
            if (isShipped(one) && isAccepted(one)) {
                off.add(one);
            }
        }
        return off;
    }

    private boolean isShipped(SwitchedOff off) {
        List<String> known = shipped.rules().stream().map(Rule::id).toList();
        if (known.contains(off.rule())) {
            return true;
        }
        if (!off.rule().isEmpty()) {
            problems.add(new Problem(
                    off.place(),
                    "no shipped rule is called `" + off.rule() + "`",
                    "the name of a shipped rule",
                    NearMiss.suggestion(off.rule(), known, List.of()),
                    RuleTrouble.UNKNOWN_RULE.code(),
                    off.rule()));
        }
        return false;
    }

    /** A rule that gives a caution goes only with a word that says so. */
    private boolean isAccepted(SwitchedOff off) {
        if (off.cautionMayVanish() || !shipped.cautionRules().contains(off.rule())) {
            return true;
        }
        problems.add(new Problem(
                off.place(),
                "the rule `" + off.rule() + "` gives a caution, which vanishes with it",
                "a line that says you mean it",
                "write `its caution may vanish: yes` under it, if the plan shall not give this caution",
                RuleTrouble.VANISHING_CAUTION.code(),
                off.rule()));
        return false;
    }
}
