// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PValueAdjustmentTest {

    /** Exact fractions; second way p.adjust of R 4.2.2 (recomputed). */
    static Stream<String> cases() {
        return Panel.values("adjust.csv").map(Panel.Value::name).distinct();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void agreesWithReferenceValues(String name) {
        assertAdjusted(name, "holm[");
        assertAdjusted(name, "BH[");
    }

    private static void assertAdjusted(String name, String method) {
        List<Panel.Value> values = Panel.values("adjust.csv")
                .filter(value -> value.name().equals(name) && value.quantity().startsWith(method))
                .toList();
        double[] given = values.stream()
                .mapToDouble(value ->
                        number(value.quantity().substring(value.quantity().indexOf("p=") + 2)))
                .toArray();
        double[] adjusted =
                method.startsWith("holm") ? PValueAdjustment.holm(given) : PValueAdjustment.benjaminiHochberg(given);
        for (int i = 0; i < adjusted.length; i++) {
            double expected = number(values.get(i).expected());
            assertEquals(
                    expected,
                    adjusted[i],
                    Double.isNaN(expected) ? 0 : 1e-14 * Math.abs(expected),
                    values.get(i).toString());
        }
    }

    private static double number(String text) {
        return text.equals("NA") ? Double.NaN : Double.parseDouble(text);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01})
    void refusesWhatIsNoProbability(double p) {
        assertThrows(IllegalArgumentException.class, () -> PValueAdjustment.holm(0.5, p));
        assertThrows(IllegalArgumentException.class, () -> PValueAdjustment.benjaminiHochberg(p));
    }

    @Test
    void adjustsNothing() {
        assertArrayEquals(new double[0], PValueAdjustment.holm());
    }
}
