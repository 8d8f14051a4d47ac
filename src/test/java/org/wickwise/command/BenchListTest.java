package org.wickwise.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wickwise.Shipped;

/** What to have ready, the air of the room and the clock, asked as a user would; figures against published rows. */
class BenchListTest {

    private static final String LESSON = "docs/examples/harbour-lesson.yaml";
    private static final String ONE_GROUP = Shipped.DEMO.toString();

    @TempDir
    private Path folder;

    private static String answer(String... arguments) {
        CommandLineRun run = CommandLineRun.of(arguments);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isEqualTo(ExitCodes.PLANNED);
        return run.out().replaceAll("\\s+", " ");
    }

    /** The demo as a lesson in this room, with this after it. */
    private String lessonIn(String room, String rest) throws IOException {
        Path file = folder.resolve("lesson.yaml");
        Files.writeString(
                file, Files.readString(Shipped.DEMO) + (room.isEmpty() ? "" : "\nroom: " + room) + "\n" + rest + "\n");
        return file.toString();
    }

    private static double number(String answer, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(answer);
        assertThat(found.find()).as(pattern + " in " + answer).isTrue();
        return Double.parseDouble(found.group(1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"prepare", "air", "timetable"})
    void every_line_of_an_answer_has_a_label_that_shows_its_reason(String command) throws IOException {
        JsonNode lines = new ObjectMapper()
                .readTree(CommandLineRun.of(command, LESSON, "--as", "json").out())
                .findValue("lines");
        assertThat(lines).hasSizeGreaterThan(8);
        List<String> labels = lines.findValuesAsText("label");
        assertThat(labels).hasSameSizeAs(lines).doesNotHaveDuplicates();
        for (String label : labels) {
            CommandLineRun shown = CommandLineRun.of(command, LESSON, label);
            assertThat(shown.err()).isEmpty();
            assertThat(shown.out()).startsWith("[" + label + "]").contains("\n- ");
        }
    }

    @Test
    void the_list_says_what_the_shelf_lacks_and_by_how_much() {
        String list = answer("prepare", LESSON);
        assertThat(list)
                .contains("[solvent-acetone]", "the shelf has 1 L, 900 mL too little")
                .contains("not enough on the shelf: 900 mL of acetone");
        assertThat(list).contains("Heptane: have 2.5 L ready", "the shelf has 2.5 L, which is enough");
        assertThat(answer("prepare", LESSON, "solvent-acetone"))
                .contains("rules/limits.yaml:", "docs/examples/department-shelf.yaml:7", "12 x ");
    }

    /** What is ready and what is there are two numbers that a person sets against each other. */
    @Test
    void where_the_shelf_has_just_enough_all_of_it_is_to_be_ready() throws IOException {
        String bottles = Files.readString(Path.of("docs/examples/department-shelf.yaml"));
        String acetone = "solvent: acetone, amount mL: ";
        assertThat(bottles).contains(acetone + "1000");
        Files.writeString(folder.resolve("shelf.yaml"), bottles.replace(acetone + "1000", acetone + "1880"));
        Path lesson = folder.resolve("lesson.yaml");
        Files.writeString(
                lesson, Files.readString(Path.of(LESSON)).replace("shelf: department-shelf.yaml", "shelf: shelf.yaml"));
        assertThat(answer("prepare", lesson.toString()))
                .contains("Acetone: have 1.88 L ready", "the shelf has 1.88 L, which is just enough");
    }

    @Test
    void a_list_of_solvents_is_a_shelf_that_does_not_say_how_much_it_has() throws IOException {
        String said = "the shelf does not say how much it has";
        String listed = lessonIn("", "shelf: [heptane, ethyl acetate, ethanol]");
        assertThat(answer("prepare", listed))
                .contains("water; the shelf does not say how much it has of ethanol, ethyl acetate and heptane.")
                .contains("% in reserve); " + said + ".", "the shelf has none")
                .doesNotContain("no shelf is named");
        assertThat(answer("prepare", ONE_GROUP)).contains("no shelf is named").doesNotContain(said);
    }

    @Test
    void the_class_weighs_out_as_much_as_it_lays_out() {
        String grams = "([0-9.]+) g";
        double laidOut = number(answer("prepare", LESSON), "stand: " + grams);
        assertThat(number(answer("air", LESSON), "weighs out " + grams)).isEqualTo(laidOut);
        double bed = number(answer("prepare", LESSON), grams + " each");
        assertThat(number(answer("prepare", LESSON), "Used beds: about " + grams))
                .isCloseTo(12 * bed, within(1.0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"prepare", "air"})
    void a_refusal_points_to_the_plan_where_nothing_stands_below_it(String command) throws IOException {
        Path lesson = folder.resolve("lesson.yaml");
        Files.writeString(
                lesson,
                Files.readString(Path.of(LESSON))
                        .replaceAll(
                                "(?s)\nshelf: .*",
                                """
                \nstrips:
                  - solvent: heptane
                    front mm: 74
                    travel mm: {straw: 1, rust: 0, harbour blue: 0}
                """));
        assertThat(answer(command, lesson.toString()))
                .contains("there is no sound plan yet. No plan is sound", "`plan` tells what to try next.")
                .doesNotContain("stands below", "weighs out");
    }

    @Test
    void the_parts_of_a_blend_add_up_to_it() {
        String list = answer("prepare", LESSON);
        double whole = 1000 * number(list, "Mix ([0-9.]+) L of heptane \\+ ethyl acetate 9:1");
        double heptane = 1000 * number(list, "9:1: ([0-9.]+) L of heptane");
        double ester = number(list, "9:1: [0-9.]+ L of heptane and (\\d+) mL of ethyl acetate");
        // 10 mL is what two decimals of a litre do not show.
        assertThat(heptane + ester).isCloseTo(whole, within(10.0));
        assertThat(heptane / whole).isCloseTo(0.9, within(0.005));
    }

    @Test
    void waste_is_sorted_by_the_rules_on_waste() {
        String list = answer("prepare", ONE_GROUP);
        assertThat(list)
                .contains("[waste-watery] Watery waste: up to 12 mL (water)")
                .contains("[waste-organic]");
        assertThat(answer("prepare", ONE_GROUP, "waste-organic")).contains("rule organic-waste (rules/layers");
    }

    @Test
    void limits_of_ones_own_change_the_list() throws IOException {
        Files.writeString(folder.resolve("limits.yaml"), "limits:\n  reserve of solvent: {value: 0, source: enough}\n");
        CommandLineRun run = CommandLineRun.of("prepare", LESSON, "--rules", folder.toString());
        assertThat(run.out()).as(run.err()).contains("0 % in reserve");
    }

    /** CV-604 and CV-605 of the check values: 100 mL of acetone at 25 degC in 200 m3, and in a box of 0.2 m3. */
    @Test
    void a_spill_of_acetone_gives_the_figures_of_the_check_values() throws IOException {
        String lesson = lessonIn("{cubic metres: 200, temperature C: 25}", "");
        String air = answer("air", lesson, "--evaporates", "acetone=100");
        assertThat(air)
                .contains(
                        "Acetone: 33 L of vapour; in 200 m3 that is 165 ppm, 0.661 % of the lower explosive limit (2.5"
                                + " vol%), 16.5 % of the OSHA PEL (1000 ppm)");
        String box = answer(
                "air",
                lessonIn("{cubic metres: 1, smallest space cubic metres: 0.2, temperature C: 25}", ""),
                "--evaporates",
                "acetone=100");
        assertThat(box).contains("[smallest-space]").contains("661 % of the lower explosive limit", "can explode");
    }

    /** A lesson with a room but no temperature: the limit decides, and what is reckoned with it says so. */
    @Test
    void a_room_whose_temperature_nobody_wrote_down_is_as_warm_as_the_limit_says() throws IOException {
        Path own = Files.createDirectory(folder.resolve("own"));
        Files.writeString(
                own.resolve("limits.yaml"), "limits:\n  temperature of a classroom: {value: 30, source: measured}\n");
        String room = lessonIn("{cubic metres: 200}", "");
        assertThat(answer("air", room)).contains("evenly mixed at 20 degC");
        assertThat(answer("air", room, "--rules", own.toString())).contains("evenly mixed at 30 degC");
        assertThat(answer("air", room, "vapour-acetone", "--evaporates", "acetone=100"))
                .contains("temperature of a classroom");
        String measured = lessonIn("{cubic metres: 200, temperature C: 25}", "");
        assertThat(answer("air", measured, "--rules", own.toString())).contains("evenly mixed at 25 degC");
        assertThat(answer("air", measured, "vapour-acetone", "--evaporates", "acetone=100"))
                .doesNotContain("temperature of a classroom");
    }

    /** Two solvents that stand in jars only: as much of each, at one price. */
    @Test
    void two_bottles_of_which_as_much_is_taken_at_one_price_are_both_paid() throws IOException {
        StringBuilder shelf = new StringBuilder("shelf: priced\nbottles:\n");
        for (String solvent :
                List.of("heptane", "ethyl acetate", "acetone", "ethanol", "hexane", "cyclohexane", "pentane")) {
            shelf.append("  - {solvent: " + solvent + ", price per litre: 10}\n");
        }
        Files.writeString(folder.resolve("priced.yaml"), shelf);
        String strip = "  - {solvent: %s, front mm: 74, travel mm: {straw: 1, rust: 0, harbour blue: 0}}\n";
        Path lesson = Files.writeString(
                folder.resolve("lesson.yaml"),
                Files.readString(Path.of(LESSON)).replace("department-shelf.yaml", "priced.yaml")
                        + strip.formatted("hexane")
                        + strip.formatted("cyclohexane")
                        + strip.formatted("pentane"));
        String reason = answer("prepare", lesson.toString(), "price");
        List<Double> litres = Pattern.compile("([0-9.]+) L x 10\\.00")
                .matcher(reason)
                .results()
                .map(term -> Double.parseDouble(term.group(1)))
                .toList();
        assertThat(new HashSet<>(litres)).as("two terms are alike").hasSizeLessThan(litres.size());
        double sum = litres.stream().mapToDouble(Double::doubleValue).sum();
        assertThat(number(reason, "cost about ([0-9]+\\.[0-9]{2})")).isCloseTo(10 * sum, within(0.01));
    }

    /** CV-614: 800 ppm thin out to 100 ppm in 1.04 h in 200 m3 with 1200 m3 of fresh air an hour and K 3. */
    @Test
    void a_vapour_clears_in_the_time_of_the_check_value() throws IOException {
        Files.writeString(
                Files.createDirectory(folder.resolve("own")).resolve("limits.yaml"),
                "limits:\n  mixing factor of a room: {value: 3, source: as in the row}\n");
        String lesson = lessonIn("{cubic metres: 200, air changes per hour: 6, temperature C: 25}", "");
        String air = answer("air", lesson, "--rules", folder.resolve("own").toString(), "--evaporates", "xylene=807.1");
        assertThat(number(air, "in 200 m3 that is (\\d+) ppm")).isBetween(799.0, 801.0);
        assertThat(number(air, "([0-9.]+) h to the limits of the OSHA PEL")).isBetween(1.035, 1.045);
    }

    /** Acetone saturates air of 20 degC at about 24 % by volume (24.7 kPa of 101.325), however much is poured out. */
    @Test
    void no_vapour_is_more_than_stands_over_its_liquid() throws IOException {
        String lesson = lessonIn("{cubic metres: 1}", "");
        String much = answer("air", lesson, "--evaporates", "acetone=5000");
        assertThat(number(much, "that is (\\d+) ppm")).isBetween(240_000.0, 248_000.0);
        assertThat(much).contains("saturated");
    }

    @ParameterizedTest
    @ValueSource(strings = {LESSON, "docs/examples/ferry-ink.yaml", "docs/examples/ferry-ink-evening.yaml"})
    void the_air_ends_by_deferring_to_those_who_decide(String file) {
        assertThat(CommandLineRun.of("air", file).out().lines().filter(line -> line.startsWith("  [")))
                .last()
                .asString()
                .startsWith("  [who-decides] This is a caution and never a permission.");
    }

    @Test
    void without_a_room_the_air_says_what_is_missing_and_takes_two_usual_rooms() {
        assertThat(answer("air", ONE_GROUP))
                .contains("[no-room]", "cubic metres", "[small-room]", "[large-room]")
                .contains("[not-covered]", "water (no lower explosive limit");
    }

    /** The table has no molar mass of petroleum ether; what it has not reckoned must not look harmless. */
    @Test
    void a_liquid_that_is_not_reckoned_is_named_wherever_sums_are_told() throws IOException {
        String lesson = lessonIn("{cubic metres: 200, air changes per hour: 3}", "lesson minutes: 60");
        String air = answer("air", lesson, "--evaporates", "petroleum ether=500", "--evaporates", "ethanol=10");
        assertThat(air).contains("[not-covered]", "so it is not reckoned at all");
        for (String label : List.of("room", "clearing", "build-up")) {
            assertThat(air)
                    .containsPattern(
                            "\\[" + label + "] [^\\[]*What the table does not know of petroleum ether comes on top");
        }
    }

    @Test
    void a_timetable_with_something_unknown_does_not_say_that_it_fits() throws IOException {
        String written = Files.readString(Shipped.DEMO).replace("  run by: gravity\n", "") + "\nlesson minutes: 600\n";
        Path file = Files.writeString(folder.resolve("ink.yaml"), written);
        assertThat(answer("timetable", file.toString()))
                .contains("at least", "so much fits in the lesson of 600 minutes", "[no-flow]")
                .doesNotContain("[load]");
    }

    @Test
    void an_amount_of_something_unknown_is_refused() {
        CommandLineRun run = CommandLineRun.of("air", LESSON, "--evaporates", "acetoen=100");
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains("acetoen", "acetone");
        CommandLineRun negative = CommandLineRun.of("air", LESSON, "--evaporates", "acetone=-1");
        assertThat(negative.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(negative.err()).contains("expected a number above 0");
    }

    /** CV-504 and CV-506: 20 mm at 2 min, 40 mm at 10 min, end 90 mm. */
    @Test
    void two_looks_at_a_front_give_the_figures_of_the_check_values() {
        assertThat(answer("timetable", ONE_GROUP, "--seen", "2:20", "--seen", "10:40", "--end", "90"))
                .contains("reaches 90 mm at 53.3 minutes, 43.3 minutes after the second look")
                .contains("150 mm2/min, to about 3.73 %");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2:20 2:20", "10:40 2:20", "2-20 10:40", "2:20 10:400", "2:20:99 10:40", "2 10:40"})
    void looks_out_of_order_are_refused(String looks) {
        String[] seen = looks.split(" ");
        CommandLineRun run =
                CommandLineRun.of("timetable", ONE_GROUP, "--seen", seen[0], "--seen", seen[1], "--end", "90");
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains("--seen 2:20 --seen 10:40 --end 90");
    }

    /** A run of one's own: 71 mm and 10 mm more in 20 minutes, 81^2/20 = 328.05 mm2/min. */
    @Test
    void a_run_of_ones_own_goes_before_what_is_reckoned() throws IOException {
        String written = Files.readString(Shipped.DEMO).replace("front mm: 71", "minutes: 20\n    front mm: 71");
        Path file = Files.writeString(folder.resolve("ink.yaml"), written);
        String timetable = answer("timetable", file.toString());
        assertThat(timetable).contains("Ethanol: about 20 minutes to a front of 71 mm (17 to 24), by your own run.");
        assertThat(answer("timetable", file.toString(), "front-ethanol")).contains("328 mm2/min", "81^2 / 20");
    }

    @Test
    void what_does_not_fit_is_moved_to_another_day_and_goes_on_side_by_side() {
        String timetable = answer("timetable", LESSON);
        assertThat(timetable).contains("it does not fit in the lesson of 90 minutes. Spread it over 2 days");
        assertThat(timetable)
                .contains("while you let the strips run", "[day-2-load]")
                .doesNotContain("[day-3");
        assertThat(answer("timetable", ONE_GROUP)).contains("nobody says", "[no-minutes]");
    }

    @Test
    void a_front_ends_on_a_strip_that_there_can_be() {
        assertThat(CommandLineRun.of("timetable", LESSON, "--seen", "2:20", "--seen", "10:40", "--end", "501")
                        .err())
                .contains("--end is 501, and no strip is longer than 500 mm");
        assertThat(answer("timetable", LESSON, "--seen", "2:20", "--seen", "10:40", "--end", "500"))
                .contains("The front reaches 500 mm");
    }

    @Test
    void a_lesson_that_is_long_enough_fits() throws IOException {
        assertThat(answer("timetable", lessonIn("", "lesson minutes: 600")))
                .contains("it fits in the lesson of 600 minutes");
        assertThat(answer("timetable", lessonIn("", "lesson minutes: 20")))
                .contains("Even so", "take longer than a lesson", "(ends after the bell)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"prepare", "air", "timetable"})
    void a_lesson_without_strips_names_the_way_to_a_plan(String command) throws IOException {
        String written = Files.readString(Shipped.DEMO);
        Path file = Files.writeString(folder.resolve("early.yaml"), written.substring(0, written.indexOf("strips:")));
        CommandLineRun run = CommandLineRun.of(command, file.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains("no strips", "forecast", "--notebook");
        CommandLineRun remembered = CommandLineRun.of(command, file.toString(), "--notebook", "docs/examples/notebook");
        assertThat(remembered.code()).as(remembered.err()).isEqualTo(ExitCodes.PLANNED);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"minutes: 0", "climbed: [{minutes: 2, mm: 20}, {minutes: 1, mm: 30}]", "climbed: [{minutes: 2}]"
            })
    void a_climb_that_cannot_be_is_refused_with_its_line(String told) throws IOException {
        String written = Files.readString(Shipped.DEMO).replace("front mm: 71", told + "\n    front mm: 71");
        Path file = Files.writeString(folder.resolve("ink.yaml"), written);
        CommandLineRun run = CommandLineRun.of("plan", file.toString());
        assertThat(run.code()).isEqualTo(ExitCodes.BAD_INPUT);
        assertThat(run.err()).contains("ink.yaml:34");
    }
}
