package org.wickwise.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.wickwise.bench.Case;
import org.wickwise.reason.Reason;
import org.wickwise.strip.Apart;
import org.wickwise.strip.BlendProposal;
import org.wickwise.strip.Movement;
import org.wickwise.strip.RetardationFactor;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.Miscibility;

/**
 * A case judged: what holds, and why. Immutable; the same case gives the same judgement whatever the order of its
 * strips and rules.
 *
 * @param eluents every eluent that was considered, in the order of their names
 * @param blends worth a strip, the most promising first
 * @param facts everything that was laid before the rules
 * @param reasons every conclusion with its reason, in the order of printing; of a judgement without reasons in any order
 */
public record Judgement(
        Case judged,
        List<Eluent> eluents,
        List<Movement> movements,
        List<Apart> gaps,
        List<BlendProposal> blends,
        List<Object> facts,
        Map<Conclusion, Reason.Concluded> reasons,
        Map<String, Limit> limits,
        Miscibility miscibility) {

    /** The conclusions of one kind, in the order of printing; in any order where the judgement came without reasons. */
    public <T extends Conclusion> List<T> all(Class<T> kind) {
        return reasons.keySet().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    public <T extends Conclusion> Optional<T> first(Class<T> kind, Predicate<T> wanted) {
        return all(kind).stream().filter(wanted).findFirst();
    }

    public boolean holds(Conclusion conclusion) {
        return reasons.containsKey(conclusion);
    }

    /** @throws IllegalArgumentException if the conclusion does not hold */
    public Reason.Concluded reason(Conclusion conclusion) {
        Reason.Concluded reason = reasons.get(conclusion);
        if (reason == null) {
            throw new IllegalArgumentException("nothing concluded this: " + conclusion);
        }
        return reason;
    }

    /** Everything that one rule concluded, alone or with others, in the order of printing. */
    public List<Reason.Concluded> concludedBy(String ruleId) {
        return reasons.keySet().stream()
                .map(reasons::get)
                .filter(reason -> reason.arguments().stream()
                        .anyMatch(argument -> argument.ruleId().equals(ruleId)))
                .toList();
    }

    /** The rules that concluded something. */
    public Set<String> rulesThatConcluded() {
        return reasons.keySet().stream()
                .flatMap(conclusion -> reasons.get(conclusion).arguments().stream())
                .map(Reason.Argument::ruleId)
                .collect(Collectors.toSet());
    }

    /** What a dye does in an eluent, seen before reckoned; empty where nobody knows or the rules contradict each other. */
    public Optional<Conclusion.Behaves> behaviour(Dye dye, Eluent eluent) {
        List<Conclusion.Behaves> best = Contradiction.best(all(Conclusion.Behaves.class).stream()
                .filter(behaves -> behaves.dye().equals(dye) && behaves.eluent().equals(eluent))
                .toList());
        return best.size() == 1 ? Optional.of(best.get(0)) : Optional.empty();
    }

    /** Where the rules say of the same thing what cannot both be so, in a stable order. */
    public List<Contradiction> contradictions() {
        return Contradiction.among(reasons.keySet());
    }

    public Optional<Movement> movement(Dye dye, Eluent eluent) {
        return movements.stream()
                .filter(movement ->
                        movement.dye().equals(dye) && movement.eluent().equals(eluent))
                .findFirst();
    }

    /** The measured Rf of a dye in an eluent, where there is one. */
    public Optional<Movement.Measured> measured(Dye dye, Eluent eluent) {
        return movement(dye, eluent).filter(Movement.Measured.class::isInstance).map(Movement.Measured.class::cast);
    }

    /** Rf with its uncertainty, measured or reckoned; empty where nobody measured and nothing could be reckoned. */
    public Optional<RetardationFactor> retardation(Dye dye, Eluent eluent) {
        return movement(dye, eluent).flatMap(Movement::retardation);
    }

    /** Rf with its uncertainty as this one strip says it; empty where the dye was only watched, or not seen on it. */
    public Optional<RetardationFactor> retardationFactor(Strip strip, Dye dye) {
        return strip.spotOf(dye).flatMap(spot -> new RulerReadings(limits).retardationFactor(strip, dye));
    }

    /** Whether any strip that can be read was run in this eluent. */
    public boolean tried(Eluent eluent) {
        return movements.stream()
                .anyMatch(
                        movement -> !movement.isReckoned() && movement.eluent().equals(eluent));
    }

    /** Whether strips were run in this eluent, and none of them on the stationary phase of the column. */
    public boolean triedElsewhereOnly(Eluent eluent) {
        return tried(eluent)
                && judged.strips().stream()
                        .filter(strip -> strip.eluent().equals(eluent))
                        .noneMatch(strip -> strip.phase().equals(judged.column().phase()));
    }

    /** Whether nothing but earlier strips of other runs tells of this eluent. */
    public boolean isRemembered(Eluent eluent) {
        List<Strip> strips = judged.strips().stream()
                .filter(strip -> strip.eluent().equals(eluent))
                .toList();
        return !strips.isEmpty() && strips.stream().allMatch(Strip::isRemembered);
    }

    public double limit(String name) {
        return limits.get(name).value();
    }
}
