package org.wickwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wickwise.Shipped;
import org.wickwise.reason.Reason;
import org.wickwise.rulebook.Conclusion.Basis;
import org.wickwise.rulebook.Conclusion.Fit;
import org.wickwise.rulebook.Conclusion.Separation;
import org.wickwise.strip.Behaviour;
import org.wickwise.substance.Dye;
import org.wickwise.substance.Eluent;

/** Why-not against the engine: a conclusion stands exactly when some rule has all its sentences met. */
class ObjectionsTest {

    private static final Judgement DEMO = Shipped.bench().judge().judge(Shipped.caseIn(Shipped.DEMO));

    static Stream<Path> cases() throws IOException {
        List<Path> published;
        try (Stream<Path> files = Files.list(Shipped.PUBLISHED)) {
            published = files.sorted().toList();
        }
        return Stream.concat(Stream.of(Shipped.DEMO, Path.of("docs/examples/tag-dye.yaml")), published.stream());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void what_stands_is_met_and_what_does_not_stand_has_an_objection_from_every_rule(Path file) {
        Judgement judgement = Shipped.bench().judge().judge(Shipped.caseIn(file));
        Objections objections = Shipped.bench().judge().objections(judgement);
        List<String> different = new ArrayList<>();
        for (Conclusion conclusion : possible(judgement)) {
            if (judgement.holds(conclusion) != objections.isMet(conclusion)) {
                different.add(conclusion + (judgement.holds(conclusion) ? " stands" : " does not stand"));
            }
        }
        assertThat(different).isEmpty();
    }

    private static List<Conclusion> possible(Judgement judgement) {
        List<Conclusion> possible = new ArrayList<>(judgement.reasons().keySet());
        List<Eluent> eluents = judgement.eluents();
        List<Dye> dyes = judgement.judged().dyes();
        for (Eluent eluent : eluents) {
            possible.add(new Conclusion.Holds(eluent));
            possible.add(new Conclusion.Sweeps(eluent));
            for (Fit fit : Fit.values()) {
                possible.add(new Conclusion.Fitness(eluent, fit));
            }
            for (Dye dye : dyes) {
                possible.add(new Conclusion.Releases(eluent, dye));
                possible.add(new Conclusion.Borderline(dye, eluent));
                for (Behaviour behaviour : Behaviour.values()) {
                    for (Basis basis : Basis.values()) {
                        possible.add(new Conclusion.Behaves(dye, eluent, behaviour, basis));
                    }
                }
                for (Dye other : dyes) {
                    if (!other.equals(dye)) {
                        possible.add(new Conclusion.LeavesBefore(eluent, dye, other));
                        for (Separation separation : Separation.values()) {
                            possible.add(new Conclusion.Between(eluent, dye, other, separation));
                        }
                    }
                }
            }
        }
        return possible;
    }

    @Test
    void a_solvent_that_lets_dyes_travel_does_not_hold_and_the_readings_say_so() {
        List<Objection> objections =
                Shipped.bench().judge().objections(DEMO).to(new Conclusion.Holds(eluent("ethanol")));
        assertThat(objections).hasSize(1);
        assertThat(objections.get(0).unmet()).isEqualTo("every dye stays in ethanol");
        assertThat(objections.get(0).inTheWay())
                .extracting(Reason::statement)
                .contains("rust runs ahead in ethanol", "harbour blue travels in ethanol");
    }

    @Test
    void a_pair_that_is_not_parted_is_traced_to_its_gap() {
        Dye straw = DEMO.judged().dyes().get(2);
        Dye rust = DEMO.judged().dyes().get(1);
        List<Objection> objections = Shipped.bench()
                .judge()
                .objections(DEMO)
                .to(new Conclusion.LeavesBefore(eluent("ethanol"), straw, rust));
        assertThat(objections.get(0).unmet()).isEqualTo("in ethanol straw is ahead of rust, parted");
        assertThat(objections.get(0).inTheWay())
                .extracting(Reason::statement)
                .containsExactly("in ethanol straw is ahead of rust, touching");
    }

    private static Eluent eluent(String name) {
        return DEMO.eluents().stream()
                .filter(eluent -> eluent.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
