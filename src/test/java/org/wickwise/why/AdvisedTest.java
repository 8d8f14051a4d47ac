package org.wickwise.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wickwise.substance.Dye;
import org.wickwise.substance.DyeClass;
import org.wickwise.text.Place;

/** Which dyes a text of a rule speaks of, where one name stands within another. */
class AdvisedTest {

    private static final Dye RED = dye("red");
    private static final Dye RED_40 = dye("red 40");
    private static final List<Dye> DYES = List.of(RED, RED_40);

    private static Dye dye(String name) {
        return new Dye(name, DyeClass.NEUTRAL, "", Place.wholeFile("invented"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "red and blue run together | true | false",
                "red 40 and blue run together | false | true",
                "red 40 runs ahead of red | true | true",
                "blue turns reddish | false | false",
                "red, blue | true | false",
            })
    void a_dye_is_named_by_its_whole_name_only(String text, boolean red, boolean red40) {
        assertThat(Advised.names(text, RED, DYES)).isEqualTo(red);
        assertThat(Advised.names(text, RED_40, DYES)).isEqualTo(red40);
    }
}
