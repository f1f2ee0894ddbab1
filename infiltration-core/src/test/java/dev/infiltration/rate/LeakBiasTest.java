// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.units.InfiltrationRate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LeakBiasTest {

    private static final InfiltrationRate RATE = new InfiltrationRate(15_278.886667);

    /** What leaks in 60 s of 18 kg (derived); never more than all of it. */
    @ParameterizedTest(name = "{0} kg/s")
    @CsvSource({"0, 1", "0.003, 0.99", "0.3, 0", "99, 0"})
    void leakTakesItsShareOfTheWater(double kilogramsPerSecond, double left) {
        double least = LeakBias.ofFlow(kilogramsPerSecond, 18, 60).least(RATE).millimetresPerHour();
        assertEquals(left * RATE.millimetresPerHour(), least, 1e-9);
    }

    /** The rate is as M: without the leaked share, the equation at less water (derived). */
    @Property
    void leastRateIsThatOfTheWaterThatDidNotLeak(@ForAll @DoubleRange(max = 1) double share) {
        double rate = RateEquation.millimetresPerHour(18, 300, 60);
        double least = new LeakBias(share).least(new InfiltrationRate(rate)).millimetresPerHour();
        assertEquals(RateEquation.millimetresPerHour(18 * (1 - share), 300, 60), least, 1e-9);
        assertTrue(least <= rate, "never higher");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
    void shareOutsideItsRangeIsRefused(double share) {
        Throwable refusal = assertThrows(IllegalArgumentException.class, () -> new LeakBias(share));
        assertEquals("share: allowed 0 to 1, found " + share, refusal.getMessage());
    }

    @ParameterizedTest(name = "{0} kg/s of {1} kg in {2} s")
    @CsvSource({
        "-0.001, 18, 60, 'kilogramsPerSecond: allowed 0 or more and finite, found -0.001'",
        "NaN, 18, 60, 'kilogramsPerSecond: allowed 0 or more and finite, found NaN'",
        "0.001, 0, 60, 'kilograms: allowed above 0 and finite, found 0.0'",
        "-0.001, -18, 60, 'kilogramsPerSecond: allowed 0 or more and finite, found -0.001'",
        "0.001, 18, Infinity, 'seconds: allowed above 0 and finite, found Infinity'"
    })
    void leakThatIsNoneIsRefused(double kilogramsPerSecond, double kilograms, double seconds, String message) {
        Throwable refusal = assertThrows(
                IllegalArgumentException.class, () -> LeakBias.ofFlow(kilogramsPerSecond, kilograms, seconds));
        assertEquals(message, refusal.getMessage());
    }

    @Test
    void biasSaysItsShare() {
        assertEquals("the seal may leak up to 2.5 % of the water", new LeakBias(0.025).toString());
    }
}
