// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.compare;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.statistics.Conclusion;
import dev.infiltration.statistics.PValueAdjustment;
import dev.infiltration.statistics.Published;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

public class SeveralGroupsTest {

    @Test
    void holmAgreesWithFiftyPublishedValues() {
        // example of R's help page p.adjust, values of R 4.2.2 (seen)
        assertArrayEquals(
                Published.column("p-adjust.csv", 1), PValueAdjustment.holm(Published.column("p-adjust.csv", 0)), 1e-14);
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(delimiter = '|', textBlock = """
        # p | adjusted | source and mark
        .0001 .0004 .0019 .0095 .0201 .0278 .0298 .0344 .0459 .3240 .4262 .5719 .6528 .7590 1.000 | .0015 .0056 .0247 .1140 .2211 .2780 .2780 .2780 .3213 1 1 1 1 1 1 | Benjamini & Hochberg 1995 list (seen, scipy); Holm (derived)
        .01 .04 .03 .005 | .03 .06 .06 .02 | textbook list (memory)
        """)
    void holmAgreesWithPublishedLists(String p, String adjusted, String source) {
        assertArrayEquals(numbers(adjusted), PValueAdjustment.holm(numbers(p)), 1e-12, source);
    }

    public static double[] numbers(String text) {
        return Arrays.stream(text.split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static Map<String, double[]> groups(double[] a, double[] b, double[] c) {
        Map<String, double[]> groups = new LinkedHashMap<>();
        groups.put("run-on edge", a);
        groups.put("wheel path", b);
        groups.put("interior", c);
        return groups;
    }

    @Test
    void tellsWhichPairsDiffer() {
        SeveralGroups several = SeveralGroups.of(
                groups(new double[] {10, 12, 14, 16, 18}, new double[] {11, 13, 15, 17, 19}, new double[] {
                    110, 120, 140, 160, 180
                }));
        assertEquals(Conclusion.DIFFERENT, several.together().conclusion());
        List<SeveralGroups.Pair> pairs = several.pairs();
        assertEquals(
                List.of(Conclusion.NOT_SIGNIFICANT, Conclusion.HIGHER, Conclusion.HIGHER),
                pairs.stream().map(SeveralGroups.Pair::conclusion).toList());
        // 5 against 5 all apart: 2/252, times 3 (derived)
        assertEquals(6 / 252.0, pairs.get(1).adjustedPValue(), 1e-15);
        assertTrue(several.toString().contains("interior / wheel path     higher (adjusted p = 0.02381)"));
    }

    @Test
    void pairsTooSmallToTellSaySo() {
        SeveralGroups several =
                SeveralGroups.of(groups(new double[] {1, 2, 3}, new double[] {4, 5, 6}, new double[] {70, 80, 90}));
        assertTrue(several.pValue().isPresent());
        assertTrue(several.pairs().stream().allMatch(pair -> pair.conclusion() == Conclusion.INSUFFICIENT_DATA));
        assertTrue(several.toString().contains("insufficient data"));
    }

    @Test
    void aPairShownAloneMayNotBeShownAmongSeveral() {
        SeveralGroups several = SeveralGroups.of(groups(
                new double[] {1, 2, 3, 4, 5}, new double[] {3.5, 6, 7, 8, 9}, new double[] {2.5, 4.2, 6.5, 7.5, 3.3}));
        SeveralGroups.Pair clearest = several.pairs().get(0);
        assertEquals(Conclusion.HIGHER, clearest.comparison().conclusion());
        assertEquals(Conclusion.NOT_SIGNIFICANT, clearest.conclusion());
    }

    /** Six pairs of 4 against 4: 6·2/70 = 0.171 is the least that Holm's steps can leave (derived). */
    @Test
    void pairsThatCouldNotShowAnythingAmongSeveralSaySo() {
        Map<String, double[]> apart =
                groups(new double[] {1, 2, 3, 4}, new double[] {11, 12, 13, 14}, new double[] {21, 22, 23, 24});
        apart.put("low spot", new double[] {31, 32, 33, 34});
        SeveralGroups four = SeveralGroups.of(apart);
        assertTrue(four.pairs().stream().allMatch(pair -> pair.conclusion() == Conclusion.INSUFFICIENT_DATA));
        assertEquals(12.0 / 70, four.pairs().get(0).smallestPValue(), 1e-12);
    }

    @Test
    void refusesEmptyGroups() {
        assertThrows(IllegalArgumentException.class, () -> SeveralGroups.of(Map.of("a", new double[] {1})));
        assertThrows(
                IllegalArgumentException.class,
                () -> SeveralGroups.of(Map.of("a", new double[] {1}, "b", new double[0])));
    }

    @Test
    void groupsKeepTheOrderGiven() {
        double[] rates = {1, 2, 3};
        SeveralGroups groups = SeveralGroups.inOrder(
                Map.entry("west", rates),
                Map.entry("north", rates),
                Map.entry("east", rates),
                Map.entry("south", rates));
        assertTrue(groups.toString().startsWith("west, north, east, south\n"), groups.toString());
        assertEquals("west", groups.pairs().get(0).first());
        assertEquals("south", groups.pairs().get(5).second());
        assertThrows(
                IllegalArgumentException.class,
                () -> SeveralGroups.inOrder(Map.entry("west", rates), Map.entry("west", rates)));
    }
}
