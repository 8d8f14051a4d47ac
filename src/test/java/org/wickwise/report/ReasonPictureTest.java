package org.wickwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.wickwise.Shipped;
import org.wickwise.plan.Plan;
import org.wickwise.plan.PlanLine;
import org.wickwise.plan.PlanLine.Section;
import org.wickwise.reason.Levels;
import org.wickwise.reason.Reason;
import org.wickwise.text.Place;
import org.wickwise.why.Answers;

/** The drawing of a reason, read back from the SVG. */
class ReasonPictureTest {

    private static final OptionalInt AS_FITS = OptionalInt.empty();
    private static final OptionalInt ALL = OptionalInt.of(100);

    static List<Path> cases() {
        return Shipped.cases();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyReasonStandsOnceWithAllItsWordsAndNoBoxCoversAnother(Path file) {
        for (PlanLine line : Shipped.planOf(file).lines()) {
            DrawnPicture picture = new DrawnPicture(ReasonPicture.of(line, ALL));
            Set<Reason> reasons = Levels.of(line.reason()).keySet();
            List<Element> boxes = DrawnPicture.ofClass(picture.root(), "reason");
            assertThat(boxes).as(line.label()).hasSameSizeAs(reasons);
            String words = picture.words().replaceAll("\\s+", "").toLowerCase(java.util.Locale.ROOT);
            for (Reason reason : reasons) {
                assertThat(words)
                        .as(line.label())
                        .contains(reason.statement().replaceAll("\\s+", "").toLowerCase(java.util.Locale.ROOT));
            }
            assertThat(picture.words()).doesNotContain("Left out");
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aLargeReasonIsCutAndSaysSo(Path file) {
        for (PlanLine line : Shipped.planOf(file).lines()) {
            String svg = ReasonPicture.of(line, AS_FITS);
            DrawnPicture picture = new DrawnPicture(svg);
            int all = Levels.of(line.reason()).size();
            int drawn = DrawnPicture.ofClass(picture.root(), "reason").size();
            assertThat(picture.words().contains("Left out: " + (all - drawn) + " statement"))
                    .as(line.label())
                    .isEqualTo(drawn < all);
            assertThat(svg).doesNotContain("NaN", "Infinity", "null", "Optional", "org.wickwise", ".java");
        }
    }

    @Test
    void boxesStandRightOfWhatNeedsThemAndApartFromEachOther() {
        Plan plan = Shipped.planOf(Shipped.DEMO);
        for (PlanLine line : plan.lines()) {
            ReasonLayout layout = new ReasonLayout(line.reason(), 100);
            for (Reason reason : layout.boxes().keySet()) {
                for (Reason ground : reason.grounds()) {
                    assertThat(layout.placeOf(ground).column())
                            .isGreaterThan(layout.placeOf(reason).column());
                }
            }
            layout.all().forEach(one -> layout.all().stream()
                    .filter(other -> other != one && other.column() == one.column() && other.top() > one.top())
                    .forEach(other -> assertThat(other.top()).isGreaterThan(2 * one.middle() - one.top())));
        }
    }

    @Test
    void eachKindHasAWordOfItsOwn() {
        Plan plan = Shipped.planOf(Shipped.DEMO);
        Set<String> words = new HashSet<>();
        plan.lines().stream()
                .map(line -> new DrawnPicture(ReasonPicture.of(line, ALL)))
                .flatMap(picture -> DrawnPicture.ofClass(picture.root(), "reason").stream())
                .map(DrawnPicture::title)
                .forEach(title -> words.add(title.substring(0, title.indexOf(':'))));
        assertThat(words)
                .containsExactlyInAnyOrder(
                        "observed", "case file", "table value", "limit", "reckoned", "rule", "chosen", "put together");
    }

    @Test
    void theGuideShowsTheFirstStepOfTheDemo() throws IOException {
        PlanLine line = Shipped.planOf(Shipped.DEMO).line("step-1").orElseThrow();
        assertThat(Files.readString(Path.of("docs/ferry-ink-step-1.svg"))).isEqualTo(ReasonPicture.of(line, AS_FITS));
    }

    @Test
    void thePictureIsTheSameEachTime() {
        PlanLine line = new Answers(
                        Shipped.planOf(Shipped.DEMO), Shipped.bench().judge(), Shipped.planner())
                .to("ethyl acetate", "")
                .get(0);
        PlanLine again = new Answers(
                        Shipped.planOf(Shipped.DEMO), Shipped.bench().judge(), Shipped.planner())
                .to("ethyl acetate", "")
                .get(0);
        assertThat(ReasonPicture.of(line, AS_FITS)).isEqualTo(ReasonPicture.of(again, AS_FITS));
    }

    @Test
    void signsOfMarkupInWordsAreOnlyWords() {
        Reason observed = new Reason.Observed("<b>rust & \"straw\"</b>", new Place("a<b>.yaml", 3));
        PlanLine line = new PlanLine("x", Section.STRIPS, "a < b & c", observed);
        assertThat(new DrawnPicture(ReasonPicture.of(line, AS_FITS)).words())
                .contains("a < b & c", "<b>rust & \"straw\"</b>", "a<b>.yaml:3");
    }
}
