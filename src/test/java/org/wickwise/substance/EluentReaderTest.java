package org.wickwise.substance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wickwise.Shipped;
import org.wickwise.text.Node.Scalar;
import org.wickwise.text.Place;
import org.wickwise.text.Problems;

/** However a jar is labelled, the same eluent gets the same name. */
class EluentReaderTest {

    @ParameterizedTest
    @CsvSource({
        "heptane, heptane",
        "EtOAc, ethyl acetate",
        "ethyl acetate + heptane 1:9, heptane + ethyl acetate 9:1",
        "heptane+ethyl acetate 90:10, heptane + ethyl acetate 9:1",
        "heptane/ethyl acetate 9:1, heptane + ethyl acetate 9:1",
        "heptane 90 % + ethyl acetate 10 %, heptane + ethyl acetate 9:1",
        "10 % ethyl acetate in heptane, heptane + ethyl acetate 9:1",
        "ethanol 80% + water 20%, ethanol + water 4:1",
        "hexane + acetone + methanol 1:1:1, acetone + hexane + methanol 1:1:1",
        "water with salt 0.1 %, water with salt 0.1 %",
        "ethanol with 1 % acetic acid, ethanol with acetic acid 1 %",
        "ethanol with NaOH, ethanol with sodium hydroxide",
        "'N,N-dimethylformamide', 'N,N-dimethylformamide'"
    })
    void theSameEluentHasOneName(String written, String name) {
        Problems problems = new Problems();
        EluentReader reader = new EluentReader(Shipped.data(), Map.of(), problems);
        assertThat(reader.read(new Scalar(written, new Place("jar", 1)))).get().hasToString(name);
        assertThat(problems.isEmpty()).isTrue();
    }
}
