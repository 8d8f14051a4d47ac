package org.wickwise.notebook;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wickwise.substance.Dye;

/**
 * One column of a class table.
 *
 * @param at how many columns stand left of it
 * @param written how it is headed
 * @param dyes what a column of readings is about, as a strip names them; empty for any other
 * @param unit what its numbers are in, where the table says so
 */
record SheetColumn(int at, String written, Kind kind, String dyes, Optional<Unit> unit) {

    /** What a column may hold. */
    enum Kind {
        GROUP("group", "group no", "group no.", "group number"),
        SOLVENT("solvent", "eluent", "mobile phase"),
        REPLICATE("replicate", "repeat"),
        FRONT("front", "solvent front"),
        READING(),
        UNIT("unit", "units"),
        RULER("ruler"),
        PHASE("stationary phase"),
        WENT_WRONG("went wrong"),
        STREAKED("streaked"),
        TOUCHED_THE_EDGE("touched the edge"),
        NOT_SEEN("not seen"),
        NOTE("note", "notes", "remark", "remarks"),
        OTHER();

        private final List<String> names;

        Kind(String... names) {
            this.names = List.of(names);
        }

        /** How a table of this program heads it. */
        String heading() {
            return names.get(0);
        }

        static List<String> headings() {
            return Arrays.stream(values())
                    .flatMap(kind -> kind.names.stream().limit(1))
                    .toList();
        }
    }

    /** What a reading is in. */
    enum Unit {
        MILLIMETRES("mm"),
        CENTIMETRES("cm"),
        RETARDATION_FACTOR("Rf");

        private final String word;

        Unit(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }

        static Optional<Unit> named(String text) {
            String word = text.replaceAll("[()\\[\\]\\s]", "");
            return Arrays.stream(values())
                    .filter(unit -> unit.word.equalsIgnoreCase(word))
                    .findFirst();
        }
    }

    private static final Pattern WITH_UNIT =
            Pattern.compile("(.*?)(?:\\s+in|\\s*,)?\\s*[(\\[\\s/]\\s*(mm|cm|rf)\\s*[)\\]]?", Pattern.CASE_INSENSITIVE);

    static SheetColumn of(int at, String heading, List<Dye> mixture) {
        String written = heading.replaceAll("\\s+", " ").strip();
        Matcher withUnit = WITH_UNIT.matcher(written);
        String name = withUnit.matches() ? withUnit.group(1).strip() : written;
        Optional<Unit> unit = withUnit.matches() ? Unit.named(withUnit.group(2)) : Optional.empty();
        Optional<String> dyes = dyes(name, mixture);
        if (dyes.isPresent()) {
            return new SheetColumn(at, written, Kind.READING, dyes.get(), unit);
        }
        Kind kind = Arrays.stream(Kind.values())
                .filter(known -> known.names.contains(name.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElse(Kind.OTHER);
        return new SheetColumn(at, written, kind, "", unit);
    }

    /** "dye", or "dye + other" for a spot that several share; empty where a name is none of the mixture. */
    private static Optional<String> dyes(String name, List<Dye> mixture) {
        List<Optional<String>> named = Arrays.stream(name.split("\\s*\\+\\s*"))
                .map(part -> mixture.stream()
                        .map(Dye::name)
                        .filter(dye -> dye.equalsIgnoreCase(part))
                        .findFirst())
                .toList();
        return named.stream().allMatch(Optional::isPresent)
                ? Optional.of(String.join(
                        " + ", named.stream().flatMap(Optional::stream).toList()))
                : Optional.empty();
    }

    SheetColumn in(Unit other) {
        return new SheetColumn(at, written, kind, dyes, Optional.of(other));
    }

    boolean saysItsUnit() {
        return WITH_UNIT.matcher(written).matches();
    }

    boolean is(Kind other) {
        return kind == other;
    }
}
