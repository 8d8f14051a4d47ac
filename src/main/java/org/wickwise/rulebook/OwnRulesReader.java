package org.wickwise.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.wickwise.rulebook.OwnRules.SwitchedOff;
import org.wickwise.substance.SolventData;
import org.wickwise.text.Fields;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node;
import org.wickwise.text.Node.Entry;
import org.wickwise.text.Node.Mapping;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Numbers;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;

/** Reads an instructor's rules, {@code limits.yaml}, {@code preferences.yaml} and {@code switched-off.yaml}. */
final class OwnRulesReader {

    static final String LIMITS = "limits.yaml";
    static final String PREFERENCES = "preferences.yaml";
    static final String SWITCHED_OFF = "switched-off.yaml";
    private static final Set<String> NO_RULE_FILES = Set.of(LIMITS, PREFERENCES, SWITCHED_OFF);
    private static final Set<String> OWN_LIMIT_KEYS = Set.of("value", "source");
    private static final Map<String, String> FILE_OF_KEY =
            Map.of("limits", LIMITS, "switched off", SWITCHED_OFF, "choose by", PREFERENCES);
    private static final Pattern LIMIT_NAME = Pattern.compile("[A-Za-z][A-Za-z -]*");
    private static final Pattern LETTER_OF_A_RULE = Pattern.compile("(?<![A-Za-z])[A-Z](?![A-Za-z])");

    private final OwnFolder folder;
    private final Rulebook shipped;
    private final Problems problems;

    /** @param shipped the book that the folder adds to */
    OwnRulesReader(OwnFolder folder, Rulebook shipped, Problems problems) {
        this.folder = folder;
        this.shipped = shipped;
        this.problems = problems;
    }

    /**
     * @param vocabulary that the rules use
     * @throws ProblemsFound when the folder or a file of it cannot be read at all
     */
    OwnRules read(Vocabulary vocabulary, SolventData data) {
        folder.overlooked().forEach(problems::add);
        List<Limit> limits = folder.holds(LIMITS) ? limits(folder.file(LIMITS)) : List.of();
        Map<String, Limit> all = new TreeMap<>(shipped.limits());
        limits.forEach(limit -> all.put(limit.name(), limit));
        List<SwitchedOff> off = folder.holds(SWITCHED_OFF) ? switchedOff(folder.file(SWITCHED_OFF)) : List.of();
        RuleReader reader = RuleReader.ofOwnRules(vocabulary, all, shipped.rules(), problems);
        List<Rule> rules = new ArrayList<>();
        for (String name : folder.names()) {
            if (!NO_RULE_FILES.contains(name)) {
                Mapping file = folder.file(name);
                if (isCalledAsItIsRead(name, file)) {
                    rules.addAll(reader.rules(file));
                }
            }
        }
        Optional<Wishes> wishes = folder.holds(PREFERENCES)
                ? Optional.of(new WishesReader(data, problems).wishes(folder.file(PREFERENCES), shipped.wishes()))
                : Optional.empty();
        Set<String> newLimits = limits.stream()
                .map(Limit::name)
                .filter(name -> !shipped.limits().containsKey(name))
                .collect(Collectors.toSet());
        return new OwnRules(folder.shownAs(), rules, reader.instead(), off, limits, newLimits, wishes);
    }

    /** The name of the file in which a key is looked for; empty where any name will do. */
    static Optional<String> fileFor(String key) {
        return Optional.ofNullable(FILE_OF_KEY.get(key));
    }

    /** Limits in a file called otherwise would be taken for rules. */
    private boolean isCalledAsItIsRead(String name, Mapping file) {
        Optional<String> other = file.entries().stream()
                .flatMap(entry -> fileFor(entry.key().text()).stream())
                .findFirst();
        other.ifPresent(read -> problems.add(new Problem(
                Place.wholeFile(folder.shownAs() + "/" + name),
                "what stands here is read from `" + read + "` only",
                "rules",
                folder.holds(read) ? "move it into `" + read + "`" : "call the file `" + read + "`",
                RuleTrouble.NOT_READ.code(),
                "")));
        return other.isEmpty();
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
        if (isCutAtAComma(entry)) {
            return Optional.empty();
        }
        Limit known = shipped.limits().get(entry.key().text());
        if (known == null && setsAKnownOne(entry)) {
            problems.add(new Problem(
                    entry.key().place(),
                    "no shipped limit is called `" + entry.key().text() + "`",
                    "the name of a shipped limit; a new one has `unit`, `lowest`, `highest` and `means` besides",
                    nearestLimit(entry.key().text()),
                    RuleTrouble.UNKNOWN_LIMIT.code(),
                    entry.key().text()));
            return Optional.empty();
        }
        if (known == null) {
            return isNameOfALimit(entry.key())
                    ? LimitReader.limit(entry.key().text(), entry.value(), problems)
                    : Optional.empty();
        }
        Fields fields = Fields.ofNode(entry.value(), "a limit of your own", OWN_LIMIT_KEYS, problems);
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
                            + (known.unit().equals("none") ? "" : " " + known.unit()),
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

    private String nearestLimit(String name) {
        List<String> near = NearMiss.of(name, shipped.limits().keySet());
        return near.isEmpty()
                ? "look it up under Limits in `wickwise rules book`"
                : "did you mean `" + String.join("` or `", near) + "`?";
    }

    /** Inside braces a comma ends a value: of "0,15" it leaves 0, and 15 as a key of its own. */
    private boolean isCutAtAComma(Entry limit) {
        if (!(limit.value() instanceof Mapping mapping)) {
            return false;
        }
        Optional<String> decimals = mapping.entries().stream()
                .filter(entry ->
                        entry.value() instanceof Scalar value && value.text().isEmpty())
                .map(entry -> entry.key().text())
                .filter(key -> key.matches("\\d{1,9}"))
                .findFirst();
        decimals.ifPresent(digits -> problems.add(new Problem(
                limit.key().place(),
                "the comma before `" + digits + "` ends the value",
                "a point in a number",
                "write it with a point, such as `0." + digits + "`",
                RuleTrouble.FORM.code(),
                "," + digits)));
        return decimals.isPresent();
    }

    /** A value and a source, and nothing that makes a new limit. */
    private static boolean setsAKnownOne(Entry entry) {
        return entry.value() instanceof Mapping mapping
                && !mapping.entries().isEmpty()
                && mapping.entries().stream().map(inner -> inner.key().text()).allMatch(OWN_LIMIT_KEYS::contains);
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
