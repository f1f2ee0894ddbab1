// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.LocationTest;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.rate.Water;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.util.List;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * Which equation rates a test: one for all, or for each test the one of its recorded water temperature.
 *
 * @param fixed the equation for all; null where the recorded temperature counts
 */
record EquationChoice(@Nullable RateEquation fixed) {

    static final EquationChoice AS_PUBLISHED = new EquationChoice(RateEquation.asPublished());
    static final EquationChoice RECORDED_WATER = new EquationChoice(null);

    /** {@return the equation of a test}: the published one where {@link #judge} finds no temperature to go by */
    RateEquation equation(LocationTest test) {
        return fixed == null ? RateEquation.forWaterOf(test).orElse(RateEquation.asPublished()) : fixed;
    }

    /** {@code rate.water-temperature-unrecorded} and {@code rate.water-temperature-range}, of a test that was made. */
    void judge(TestAt test, Findings findings) {
        if (fixed != null || !test.test().isMade()) {
            return;
        }
        Reading<Temperature> recorded = test.test().waterTemperature();
        if (recorded == null) {
            findings.add(
                    BuiltInRule.RATE_WATER_TEMPERATURE_UNRECORDED,
                    test.place(),
                    test.subject(),
                    "",
                    "",
                    RuleBases.WATER);
        } else if (Water.within(recorded.in(FieldUnit.CELSIUS)).isEmpty()) {
            findings.add(
                    BuiltInRule.RATE_WATER_TEMPERATURE_RANGE,
                    test.place(),
                    test.subject(),
                    "water " + recorded,
                    "0 to 60 °C",
                    RuleBases.WATER);
        }
    }

    /** {@return what is otherwise than published, in a line; empty where nothing is} */
    List<String> changes() {
        if (fixed == null) {
            return List.of("rate: K = 3600·4/(π·ρ), water at the temperature recorded with each test");
        }
        return fixed == RateEquation.asPublished() ? List.of() : List.of("rate: " + fixed);
    }
}
