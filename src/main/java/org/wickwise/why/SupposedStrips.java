package org.wickwise.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.wickwise.bench.Case;
import org.wickwise.strip.Behaviour;
import org.wickwise.strip.Spot;
import org.wickwise.strip.Strip;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;
import org.wickwise.substance.EluentReader;
import org.wickwise.text.NearMiss;
import org.wickwise.text.Node.Scalar;

/** What is supposed of strips: another reading, one strip less, one more. */
final class SupposedStrips {

    private static final Pattern ON_STRIP =
            Pattern.compile("(.+?) (?:at Rf (\\d+(?:\\.\\d+)?)|(" + String.join("|", Behaviour.words()) + "))");

    private final Supposing supposing;

    SupposedStrips(Supposing supposing) {
        this.supposing = supposing;
    }

    private Case supposed() {
        return supposing.supposed();
    }

    Optional<Spot.Position> position(Strip strip, boolean asRf, double number) {
        OptionalDouble front = strip.frontMillimetres();
        boolean possible = asRf ? number <= 1 : front.isPresent() && number <= front.getAsDouble();
        if (!possible) {
            supposing.cannot(
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

    interface Placing {
        Optional<Spot.Position> on(Strip strip);
    }

    void spot(String dyeName, String eluentName, int replicate, Placing placing) {
        Optional<Dye> dye = dye(dyeName);
        Optional<Strip> strip = strip(replicate, eluentName);
        if (dye.isEmpty() || strip.isEmpty() || !supposing.once("the reading of " + dye.get() + " on " + strip.get())) {
            return;
        }
        if (strip.get().spotOf(dye.get()).isEmpty()) {
            supposing.cannot(
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
        supposing.suppose(supposed().with(before, after));
    }

    void removeStrip(int replicate, String eluentName) {
        strip(replicate, eluentName)
                .filter(strip -> supposing.once(strip.toString()))
                .ifPresent(strip -> replace(strip, Optional.empty()));
    }

    void addStrip(String eluentName, String readings) {
        Optional<Eluent> eluent = eluent(eluentName);
        if (eluent.isEmpty() || !supposing.once("a strip in " + eluent.get())) {
            return;
        }
        List<Spot> spots = new ArrayList<>();
        for (String reading : readings.split(", *")) {
            Matcher on = ON_STRIP.matcher(reading);
            Optional<Dye> dye = on.matches() ? dye(on.group(1)) : Optional.empty();
            if (!on.matches()) {
                supposing.cannot(
                        "`" + reading + "` is no reading",
                        "a dye at an Rf, or what it does",
                        "write it like `DYE at Rf 0.4` or `DYE stays`");
            }
            if (dye.isEmpty()
                    || !isAnRf(on.group(2), reading)
                    || !supposing.once(dye.get() + " on the strip in " + eluent.get())) {
                continue;
            }
            spots.add(new Spot(
                    List.of(dye.get()),
                    on.group(2) != null
                            ? new Spot.Quoted(Double.parseDouble(on.group(2)))
                            : new Spot.Seen(Behaviour.named(on.group(3)).orElseThrow()),
                    Supposing.SAID));
        }
        Set<Dye> seen = spots.stream().flatMap(spot -> spot.dyes().stream()).collect(Collectors.toSet());
        Set<Dye> notSeen =
                supposed().dyes().stream().filter(dye -> !seen.contains(dye)).collect(Collectors.toSet());
        int replicate = 1
                + (int) supposed().strips().stream()
                        .filter(strip -> strip.eluent().equals(eluent.get()))
                        .count();
        List<Strip> strips = new ArrayList<>(supposed().strips());
        strips.add(new Strip(
                eluent.get(),
                supposed().column().phase(),
                replicate,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                spots,
                List.of(),
                Set.of(),
                Set.of(),
                Set.of(),
                notSeen,
                Supposing.SAID));
        supposing.suppose(supposed().with(strips));
    }

    private boolean isAnRf(String number, String reading) {
        boolean isOne = number == null || Double.parseDouble(number) <= 1;
        if (!isOne) {
            supposing.cannot("`" + reading + "`", "an Rf from 0 to 1", "suppose another reading");
        }
        return isOne;
    }

    private Optional<Dye> dye(String name) {
        List<String> names = supposed().dyes().stream().map(Dye::name).toList();
        Optional<Dye> dye = supposed().dyes().stream()
                .filter(known -> known.name().equalsIgnoreCase(name))
                .findFirst();
        if (dye.isEmpty()) {
            supposing.cannot(
                    "the mixture has no dye `" + name + "`",
                    "one of " + String.join(", ", names),
                    NearMiss.suggestion(name, names));
        }
        return dye;
    }

    private Optional<Strip> strip(int replicate, String eluentName) {
        Optional<Eluent> eluent = eluent(eluentName);
        Optional<Strip> strip = eluent.flatMap(found -> supposed().strips().stream()
                .filter(one -> one.eluent().equals(found) && one.replicate() == replicate)
                .findFirst());
        if (eluent.isPresent() && strip.isEmpty()) {
            List<String> there =
                    supposed().strips().stream().map(Strip::toString).toList();
            supposing.cannot(
                    "there is no strip " + replicate + " in " + eluent.get(),
                    "one of " + String.join("; ", there),
                    "suppose one with `a strip in " + eluent.get() + ": ...`");
        }
        return strip;
    }

    private Optional<Eluent> eluent(String written) {
        return new EluentReader(supposing.data(), supposed().shelf().ownNames(), supposing.problems())
                .read(new Scalar(written, Supposing.SAID));
    }
}
