package org.wickwise.bench;

import java.util.List;
import java.util.Optional;
import org.wickwise.substance.Dye;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;

/** The dyes of the mixture, looked up by the names that strips use. */
public record MixtureDyes(List<Dye> dyes, Problems problems) {

    /** The dye of this name, or nothing after the problem was reported; of a mixture that cannot be read, nothing. */
    public Optional<Dye> named(String written, Place place) {
        String name = written.strip();
        Optional<Dye> dye =
                dyes.stream().filter(known -> known.name().equals(name)).findFirst();
        if (dye.isEmpty() && !dyes.isEmpty() && !name.isEmpty()) {
            List<String> names = dyes.stream().map(Dye::name).toList();
            boolean near = !NearMiss.of(name, names).isEmpty();
            problems.add(
                    place,
                    "the mixture has no dye `" + name + "`",
                    "one of " + String.join(", ", names),
                    near
                            ? NearMiss.suggestion(name, names)
                            : "correct the name, or add the dye to the mixture's `dyes` if it is a new one");
        }
        return dye;
    }
}
