package org.wickwise.why;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.wickwise.bench.Case;
import org.wickwise.rulebook.Judgement;
import org.wickwise.substance.Bottle;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.EluentReader;
import org.wickwise.substance.SolventData;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Place;
import org.wickwise.text.Problem;
import org.wickwise.text.Problems;
import org.wickwise.text.ProblemsFound;

/** Finds what somebody names in a question among what a case knows. */
public final class Named {

    private static final int MOST_NAMED = 12;

    private Named() {}

    /**
     * An eluent of the case, by any way of writing it.
     *
     * @throws ProblemsFound with what can be asked about, the nearest first, when the case knows no such eluent
     */
    public static Eluent eluent(String written, Judgement judgement, SolventData data, String file) {
        Problems unread = new Problems();
        Optional<Eluent> read = new EluentReader(data, ownNames(judgement.judged()), unread)
                .read(new Scalar(written, Place.wholeFile(file)));
        return read.filter(judgement.eluents()::contains).orElseThrow(() -> unknown(written, judgement, file));
    }

    private static Map<String, Eluent> ownNames(Case written) {
        return written.shelf().bottles().stream()
                .filter(Bottle::isHouseholdBlend)
                .collect(Collectors.toMap(
                        bottle -> bottle.name().toLowerCase(Locale.ROOT), Bottle::contents, (one, other) -> one));
    }

    private static ProblemsFound unknown(String written, Judgement judgement, String file) {
        Map<String, Eluent> byName =
                judgement.eluents().stream().collect(Collectors.toMap(Eluent::name, Function.identity()));
        List<String> names = byName.keySet().stream().sorted().toList();
        String few = names.size() > MOST_NAMED
                ? "a solvent of its shelf or the eluent of one of its strips"
                : "one of " + String.join("; ", names);
        return new ProblemsFound(List.of(new Problem(
                Place.wholeFile(file),
                "this case knows no `" + written + "`",
                few,
                NearMiss.suggestion(written, names, names.size() > MOST_NAMED ? List.of() : names))));
    }
}
