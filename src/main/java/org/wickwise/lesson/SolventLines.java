package org.wickwise.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.wickwise.lesson.Supplies.Drawn;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Reason;
import org.wickwise.substance.Bottle;
import org.wickwise.substance.Eluent;
import org.wickwise.text.Figures;
import org.wickwise.text.Numbers;
import org.wickwise.text.Words;

/** How much of each bottle a lesson takes, whether the shelf has it, what to mix of it and what it costs. */
final class SolventLines {

    private static final String RESERVE = "reserve of solvent";
    private static final double PER_CENT = 100;
    private static final double MILLILITRES_PER_LITRE = 1000;

    private final LaidOutLesson laidOut;
    private final List<LiquidUse> uses;
    private final Supplies supplies;
    private final ReasonedLines lines = new ReasonedLines();
    private final List<String> wanting = new ArrayList<>();
    private final List<String> untold = new ArrayList<>();

    SolventLines(LaidOutLesson laidOut) {
        this.laidOut = laidOut;
        this.uses = LiquidUses.of(laidOut);
        this.supplies = Supplies.of(uses, laidOut);
        supplies.parts().keySet().forEach(this::bottle);
        blends();
        price();
    }

    List<PlanLine> lines() {
        return lines.all();
    }

    /** "430 mL of SOLVENT": what the shelf lacks, in the order of the names. */
    List<String> wanting() {
        return List.copyOf(wanting);
    }

    /** The bottles that are on the shelf, of which it does not say how much they hold. */
    List<String> untold() {
        return List.copyOf(untold);
    }

    /** What the class needs of a bottle with its reserve, in millilitres, before rounding. */
    private double needed(Eluent bottle) {
        return supplies.millilitresOfAGroup(bottle) * laidOut.groups() * laidOut.timesWith(RESERVE);
    }

    private void bottle(Eluent contents) {
        double needed = needed(contents);
        Optional<Bottle> bottle = laidOut.shelf().bottleOf(contents);
        String name = bottle.map(Bottle::name).orElse(contents.name());
        Stock stock = stock(name, needed, bottle);
        stock.wanting().ifPresent(wanting::add);
        stock.untold().ifPresent(untold::add);
        String text = Words.capital(name) + ": have " + ReadyAmount.shown(stock.ready()) + " ready ("
                + Words.joined(purposes(contents)) + "; "
                + laidOut.limit(RESERVE).shown() + " in reserve)"
                + stock.words() + ".";
        List<Reason> grounds = new ArrayList<>(
                List.of(laidOut.groupsStated(), laidOut.limit(RESERVE).reason()));
        supplies.parts().get(contents).forEach(drawn -> grounds.add(drawn.use().reason()));
        bottle.filter(held -> held.millilitres().isPresent())
                .ifPresent(held -> grounds.add(new Reason.Stated(
                        held.name() + " holds "
                                + Numbers.plain(held.millilitres().getAsDouble(), 0) + " mL",
                        held.place())));
        String formula = "groups x what a group takes x (1 + reserve), rounded up: " + laidOut.groups() + " x "
                + Numbers.fixed(supplies.millilitresOfAGroup(contents), 1) + " x "
                + Numbers.plain(laidOut.timesWith(RESERVE), 3) + " = " + Numbers.fixed(needed, 1) + " mL";
        lines.reckoned(
                stock.wanting().isPresent() ? Section.DOUBTS : Section.PACKING,
                "solvent-" + Words.slug(name),
                text,
                formula,
                grounds);
    }

    /** What each purpose takes of a bottle for the whole class, before reserve, purposes of one name added up. */
    private List<String> purposes(Eluent contents) {
        Map<String, Double> purposes = new LinkedHashMap<>();
        for (Drawn drawn : supplies.parts().get(contents)) {
            purposes.merge(drawn.use().purpose(), drawn.millilitresOfAGroup() * laidOut.groups(), Double::sum);
        }
        return purposes.entrySet().stream()
                .map(entry -> entry.getKey() + " " + ReadyAmount.shown(entry.getValue()))
                .toList();
    }

    /**
     * How a need stands against the shelf.
     *
     * @param ready how much to have ready, in millilitres: the need rounded up, or all that is there where that is enough
     * @param words what the line says of it
     * @param wanting what is short; empty where there is enough or nobody knows
     * @param untold the bottle, where nobody wrote how much it holds
     */
    private record Stock(double ready, String words, Optional<String> wanting, Optional<String> untold) {

        static Stock lacks(double ready, String words, String wanting) {
            return new Stock(ready, words, Optional.of(wanting), Optional.empty());
        }

        static Stock suffices(double ready, String words) {
            return new Stock(ready, words, Optional.empty(), Optional.empty());
        }
    }

    private Stock stock(String name, double needed, Optional<Bottle> bottle) {
        double ready = ReadyAmount.roundedUp(needed);
        if (!laidOut.hasShelf()) {
            return Stock.suffices(ready, "");
        }
        String all = ReadyAmount.shown(ready) + " of " + name;
        if (bottle.isEmpty()) {
            return Stock.lacks(ready, "; the shelf has none", all);
        }
        if (bottle.get().banned().isPresent()) {
            return Stock.lacks(
                    ready, "; the shelf bans it: " + bottle.get().banned().get(), all);
        }
        if (bottle.get().millilitres().isEmpty()) {
            return new Stock(ready, "; the shelf does not say how much it has", Optional.empty(), Optional.of(name));
        }
        double held = bottle.get().millilitres().getAsDouble();
        String has = "; the shelf has " + ReadyAmount.shown(held);
        if (held >= needed) {
            return held >= ready
                    ? Stock.suffices(ready, has + ", which is enough")
                    : Stock.suffices(held, has + ", which is just enough");
        }
        String lacking = ReadyAmount.shown(ready - held);
        return Stock.lacks(ready, has + ", " + lacking + " too little", lacking + " of " + name);
    }

    private void blends() {
        Map<Eluent, Double> ofAGroup = new TreeMap<>();
        uses.stream()
                .filter(use -> !use.eluent().isNeat() && !Supplies.isOwnBottle(use.eluent(), laidOut))
                .forEach(use -> ofAGroup.merge(use.eluent(), use.millilitresOfAGroup(), Double::sum));
        ofAGroup.forEach(this::blend);
    }

    private void blend(Eluent blend, double ofAGroup) {
        double ready = ReadyAmount.roundedUp(ofAGroup * laidOut.groups() * laidOut.timesWith(RESERVE));
        List<String> parts = new ArrayList<>();
        blend.parts()
                .forEach(part ->
                        parts.add(ReadyAmount.shown(ready * part.percent() / PER_CENT) + " of " + part.solvent()));
        blend.additions()
                .forEach(addition -> parts.add((addition.percent().isPresent()
                                ? Figures.three(ready * addition.percent().getAsDouble() / PER_CENT) + " g or mL of "
                                : "some ")
                        + addition.additive().name()));
        String text = "Mix " + ReadyAmount.shown(ready) + " of " + blend + ": " + Words.joined(parts)
                + ". Measure each part before you mix; together they may fill a little less. Mix it on the day, in the"
                + " hood, and label it.";
        List<Reason> grounds = new ArrayList<>(
                List.of(laidOut.groupsStated(), laidOut.limit(RESERVE).reason()));
        uses.stream().filter(use -> use.eluent().equals(blend)).forEach(use -> grounds.add(use.reason()));
        lines.reckoned(
                Section.PACKING,
                "mix-" + Words.slug(blend.name()),
                text,
                "groups x what a group takes x (1 + reserve), rounded up; each part by its share of the volume: "
                        + laidOut.groups() + " x " + Numbers.fixed(ofAGroup, 1) + " x "
                        + Numbers.plain(laidOut.timesWith(RESERVE), 3),
                grounds);
    }

    /** What the solvents cost, where the shelf has prices; it says for which it has none. */
    private void price() {
        List<String> terms = new ArrayList<>();
        double sum = 0;
        List<Reason> grounds = new ArrayList<>();
        List<String> unpriced = new ArrayList<>();
        for (Eluent contents : supplies.parts().keySet()) {
            Optional<Bottle> bottle = laidOut.shelf().bottleOf(contents);
            OptionalDouble perLitre = bottle.map(Bottle::pricePerLitre).orElse(OptionalDouble.empty());
            if (perLitre.isEmpty()) {
                unpriced.add(bottle.map(Bottle::name).orElse(contents.name()));
                continue;
            }
            double litres = ReadyAmount.roundedUp(needed(contents)) / MILLILITRES_PER_LITRE;
            terms.add(Numbers.plain(litres, 3) + " L x " + Numbers.fixed(perLitre.getAsDouble(), 2));
            sum += litres * perLitre.getAsDouble();
            grounds.add(new Reason.Stated(
                    "a litre of " + bottle.get().name() + " costs " + Numbers.fixed(perLitre.getAsDouble(), 2),
                    bottle.get().place()));
        }
        if (terms.isEmpty()) {
            return;
        }
        String without = unpriced.isEmpty() ? "" : "; of " + Words.joined(unpriced) + " no price is known";
        String text =
                "The solvents cost about " + Numbers.fixed(sum, 2) + " at the prices of the shelf" + without + ".";
        lines.reckoned(Section.BASIS, "price", text, "sum of litres x price: " + String.join(" + ", terms), grounds);
    }
}
