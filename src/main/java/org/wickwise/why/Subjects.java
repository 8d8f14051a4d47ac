package org.wickwise.why;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wickwise.rulebook.Judgement;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Bottle;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.EluentReader;
import org.wickwise.substance.Solvent;
import org.wickwise.substance.SolventData;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;
import org.wickwise.why.Subject.OfDye;
import org.wickwise.why.Subject.OfEluent;
import org.wickwise.why.Subject.OfPair;
import org.wickwise.why.Subject.OfStrip;
import org.wickwise.why.Subject.OfTable;

/** Finds what somebody means by the words of a question: a solvent or blend, a dye, two dyes, a strip. */
public final class Subjects {

    private static final String THEN = "\\s*,?\\s+then\\s+";
    private static final Pattern BETWEEN_TWO = Pattern.compile("\\s+and\\s+|\\s*[/,+&]\\s*");
    private static final Pattern STRIP =
            Pattern.compile("(?:the\\s+)?strips?(?:\\s+(\\d{1,4}))?\\s+in\\s+(.+?)", Pattern.CASE_INSENSITIVE);
    private static final Pattern ON_A_PHASE = Pattern.compile("(.+?)\\s+on\\s+(.+)", Pattern.CASE_INSENSITIVE);

    private final Judgement judgement;
    private final SolventData data;

    public Subjects(Judgement judgement, SolventData data) {
        this.judgement = judgement;
        this.data = data;
    }

    /** Everything these words may mean, in a stable order; nothing when they name nothing here. */
    public List<Subject> named(String words) {
        List<Subject> found = new ArrayList<>();
        dye(words).ifPresent(dye -> found.add(new OfDye(dye)));
        found.addAll(pairs(words));
        found.addAll(strips(words));
        found.addAll(eluents(words));
        return List.copyOf(found);
    }

    /** Eluents in the order of pouring, as in "A, then B"; nothing when the words name no such order of this case. */
    List<Eluent> order(String words) {
        String[] names = words.split(THEN);
        List<Eluent> order = Stream.of(names)
                .map(this::read)
                .flatMap(Optional::stream)
                .filter(judgement.eluents()::contains)
                .toList();
        return names.length > 1 && order.size() == names.length ? order : List.of();
    }

    /** An eluent by any way of writing it, whether the case knows it or not. */
    Optional<Eluent> eluent(String words) {
        return read(words);
    }

    /** A question without what does not matter: spaces and question marks. */
    static String plain(String question) {
        return question.strip().replaceAll("\\s+", " ").replaceAll("\\s*\\?$", "");
    }

    /**
     * Nothing here is called so.
     *
     * @param expected what can be asked beside the subjects of this case, in words
     * @param further the same by name
     */
    ProblemsFound unknown(String asked, String file, String expected, List<String> further) {
        Place place = Place.wholeFile(file);
        Problems blend = unreadBlend(asked, place);
        if (!blend.isEmpty()) {
            return blend.found();
        }
        List<String> known = new ArrayList<>(names());
        known.addAll(further);
        known.addAll(otherNames());
        return new ProblemsFound(List.of(new Problem(
                place,
                "nothing here is called `" + asked + "`",
                "a solvent or blend, a dye, two dyes such as `A and B`, a strip such as `the strip in A`, " + expected,
                NearMiss.suggestion(asked, known, names()))));
    }

    /** The names by which something can be asked here, dyes first. */
    public List<String> names() {
        List<String> names = new ArrayList<>();
        List<Dye> dyes = judgement.judged().dyes();
        dyes.forEach(dye -> names.add(dye.name()));
        written().forEach(eluent -> names.add(eluent.name()));
        judgement.judged().strips().forEach(strip -> names.add(labelOf(strip)));
        for (Dye one : dyes) {
            dyes.stream().filter(other -> one.compareTo(other) < 0).forEach(other -> names.add(one + " and " + other));
        }
        return names.stream().distinct().toList();
    }

    /** What else is understood: solvents of the shelf and the table by all their names, two dyes the other way round. */
    private List<String> otherNames() {
        List<Dye> dyes = judgement.judged().dyes();
        Stream<String> pairs = dyes.stream()
                .flatMap(one ->
                        dyes.stream().filter(other -> one.compareTo(other) > 0).map(other -> one + " and " + other));
        return Stream.of(judgement.eluents().stream().map(Eluent::name), data.solventNames().stream(), pairs)
                .flatMap(names -> names)
                .distinct()
                .toList();
    }

    /** What is wrong with a blend that cannot be read; nothing where no blend was meant. */
    private Problems unreadBlend(String words, Place place) {
        Problems problems = new Problems();
        if (words.matches(".*[+%].*")) {
            new EluentReader(data, ownNames(), problems).read(new Scalar(words, place));
        }
        return problems;
    }

    /** How a strip is asked about: as sentences call it, and by its number where there are more in its eluent. */
    String labelOf(Strip strip) {
        List<Strip> alike = judgement.judged().strips().stream()
                .filter(other -> other.eluent().equals(strip.eluent()))
                .toList();
        if (alike.size() == 1) {
            return strip.toString();
        }
        String label = "strip " + strip.replicate() + " in " + strip.eluent();
        boolean sameNumber = alike.stream()
                        .filter(other -> other.replicate() == strip.replicate())
                        .count()
                > 1;
        return sameNumber ? label + " on " + strip.phase() : label;
    }

    private Optional<Dye> dye(String name) {
        return judgement.judged().dyes().stream()
                .filter(dye -> small(dye.name()).equals(small(name)))
                .findFirst();
    }

    private List<Subject> pairs(String words) {
        Set<Subject> found = new LinkedHashSet<>();
        Matcher between = BETWEEN_TWO.matcher(words);
        while (between.find()) {
            Optional<Dye> left = dye(words.substring(0, between.start()));
            Optional<Dye> right = dye(words.substring(between.end()));
            if (left.isPresent() && right.isPresent() && !left.equals(right)) {
                boolean inOrder = left.get().compareTo(right.get()) < 0;
                found.add(inOrder ? new OfPair(left.get(), right.get()) : new OfPair(right.get(), left.get()));
            }
        }
        return List.copyOf(found);
    }

    private List<Subject> strips(String words) {
        Matcher asked = STRIP.matcher(words);
        if (!asked.matches()) {
            return List.of();
        }
        Optional<Integer> number = Optional.ofNullable(asked.group(1)).map(Integer::valueOf);
        List<Subject> found = stripsIn(asked.group(2), number, Optional.empty());
        Matcher phase = ON_A_PHASE.matcher(asked.group(2));
        return !found.isEmpty() || !phase.matches()
                ? found
                : stripsIn(phase.group(1), number, Optional.of(phase.group(2)));
    }

    private List<Subject> stripsIn(String eluent, Optional<Integer> number, Optional<String> phase) {
        Set<Eluent> meant = new HashSet<>(read(eluent).map(List::of).orElseGet(() -> blendsOf(eluent)));
        Optional<String> phaseMeant = phase.flatMap(data::stationaryPhase).map(Object::toString);
        return judgement.judged().strips().stream()
                .filter(strip -> meant.contains(strip.eluent()))
                .filter(strip -> number.isEmpty() || number.get() == strip.replicate())
                .filter(strip -> phase.isEmpty()
                        || phaseMeant.equals(Optional.of(strip.phase().name())))
                .<Subject>map(strip -> new OfStrip(strip, labelOf(strip)))
                .toList();
    }

    private List<Subject> eluents(String words) {
        Optional<Eluent> read = read(words);
        if (read.isEmpty()) {
            return blendsOf(words).stream().<Subject>map(OfEluent::new).toList();
        }
        if (judgement.eluents().contains(read.get())) {
            return List.of(new OfEluent(read.get()));
        }
        List<Subject> blends = read.get().isNeat()
                ? judgement.eluents().stream()
                        .filter(eluent ->
                                eluent.contains(read.get().parts().get(0).solvent()))
                        .<Subject>map(OfEluent::new)
                        .toList()
                : List.of();
        return blends.isEmpty() ? List.of(new OfTable(read.get())) : blends;
    }

    /** Eluents of the case made of just the solvents named, in whatever ratio. */
    private List<Eluent> blendsOf(String words) {
        String[] names = words.split("\\s*[+/]\\s*|\\s+and\\s+");
        List<Optional<Solvent>> parts = Stream.of(names).map(data::solvent).toList();
        if (parts.size() < 2 || parts.stream().anyMatch(Optional::isEmpty)) {
            return List.of();
        }
        Set<Solvent> meant = parts.stream().map(Optional::get).collect(Collectors.toSet());
        return judgement.eluents().stream()
                .filter(eluent -> eluent.parts().stream()
                        .map(Eluent.Part::solvent)
                        .collect(Collectors.toSet())
                        .equals(meant))
                .toList();
    }

    private Optional<Eluent> read(String words) {
        return new EluentReader(data, ownNames(), new Problems()).read(new Scalar(words, Place.wholeFile("")));
    }

    private Map<String, Eluent> ownNames() {
        Map<String, Eluent> names = new TreeMap<>();
        judgement.judged().shelf().bottles().stream()
                .filter(Bottle::isHouseholdBlend)
                .forEach(bottle -> names.putIfAbsent(small(bottle.name()), bottle.contents()));
        return names;
    }

    private List<Eluent> written() {
        return judgement.judged().strips().stream()
                .map(Strip::eluent)
                .distinct()
                .sorted()
                .toList();
    }

    private static String small(String words) {
        return words.strip().toLowerCase(Locale.ROOT);
    }
}
