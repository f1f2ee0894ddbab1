// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.infiltration.statistics.Conclusion;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.SignTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

public class RatioTest {

    @ParameterizedTest(name = "{0}: {1} to {2}, {4}")
    @CsvSource(delimiter = '|', textBlock = """
        # cleaning                       | before | after | ratio | source and mark
        vacuum vehicle                   | 16     | 26    | 1.625 | Simpson, Winston & Tirpak 2021, medians in mm/min (published)
        restorative unit                 | 5      | 106   | 21.2  | Simpson, Winston & Tirpak 2021 (published)
        pressure wash, then that unit    | 11     | 37    | 3.364 | Simpson, Winston & Tirpak 2021 (published)
        pressure wash alone              | 8      | 20    | 2.5   | Simpson, Winston & Tirpak 2021 (published)
        regenerative air, wet weather    | 19     | 4     | 0.2105| Simpson, Winston & Tirpak 2021 (published)
        grid pavers, top removed, cm/h   | 4.9    | 8.6   | 1.755 | Bean, Hunt & Bidelspach 2007 (published)
        """)
    void readsPublishedMediansAsRatios(String cleaning, double before, double after, double ratio, String source) {
        assertEquals(ratio, Ratio.between(before, after).value(), 5e-4 * ratio, source);
        PairedComparison one = PairedComparison.of(new double[] {before}, new double[] {after});
        assertEquals(ratio, one.ratio(0.95).orElseThrow().value(), 5e-4 * ratio);
        assertEquals(ratio > 1 ? new SignTest(1, 0) : new SignTest(0, 1), one.signTest());
        assertEquals(Conclusion.INSUFFICIENT_DATA, one.conclusion());
    }

    @Test
    void printsWithItsInterval() {
        assertEquals("2", Ratio.between(2, 4).toString());
        assertEquals("1, 0.5 to 2 (90 %)", new Ratio(0, Interval.around(0, StrictMath.log(2), 0.9)).toString());
    }

    @Test
    void refusesWhatIsNoRate() {
        assertThrows(IllegalArgumentException.class, () -> Ratio.between(-1, 3));
    }
}
