// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.method.Band;
import dev.infiltration.method.Limit;
import dev.infiltration.method.MassStep;
import dev.infiltration.method.Range;
import dev.infiltration.method.TestMethod;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;

/**
 * What one location takes at a rate, by the equation of the method turned round: {@code t = K·M / (D²·I)} (derived).
 *
 * @param rate               the rate
 * @param preWetWater        water for the prewetting
 * @param preWetTime         how long the prewetting takes
 * @param runWater           water for one run, chosen by the time of the prewetting
 * @param runTime            how long one run takes
 * @param pourLitresPerMinute how fast water must be poured to hold the head, in L/min: the rate times the ring's area
 */
public record LocationPlan(
        InfiltrationRate rate,
        Reading<Mass> preWetWater,
        Duration preWetTime,
        Reading<Mass> runWater,
        Duration runTime,
        double pourLitresPerMinute) {

    /** Longer times are not told apart. */
    private static final double LONGEST_SECONDS = 1e9;

    private static final double MINUTES_PER_HOUR = 60;

    static LocationPlan of(TestMethod method, UnitSystem system, Reading<Length> diameter, InfiltrationRate rate) {
        Range<Mass> asked = method.limit(Limit.PREWET_MASS).in(system);
        Reading<Mass> preWet = asked.isUnlimited() ? Reading.of("0", FieldUnit.KILOGRAM) : middle(asked);
        Duration preWetTime = time(preWet, diameter, rate);
        Reading<Mass> run = middle(massFor(method, preWetTime).in(system));
        double metres = diameter.in(FieldUnit.METRE);
        double area = StrictMath.PI / 4 * metres * metres;
        double pour = rate.millimetresPerHour() * area / MINUTES_PER_HOUR;
        return new LocationPlan(rate, preWet, preWetTime, run, time(run, diameter, rate), pour);
    }

    /** {@return the water for the prewetting and a number of runs} */
    Reading<Mass> water(int runs) {
        BigDecimal each = runWater.exactIn(preWetWater.unit());
        return Reading.of(preWetWater.value().add(each.multiply(BigDecimal.valueOf(runs))), preWetWater.unit());
    }

    private static Band<Mass> massFor(TestMethod method, Duration preWetTime) {
        Reading<Time> time = Reading.of(BigDecimal.valueOf(preWetTime.toMillis(), 3), FieldUnit.SECOND);
        return method.massSteps().stream()
                .filter(step -> step.isFor(time))
                .findFirst()
                .map(MassStep::mass)
                .orElseThrow();
    }

    /** {@return the amount in the middle of a range}, its only bound where it has one */
    static <Q extends Quantity<Q>> Reading<Q> middle(Range<Q> range) {
        Reading<Q> low = range.lowest() == null ? range.highest() : range.lowest();
        Reading<Q> high = range.highest() == null ? low : range.highest();
        Objects.requireNonNull(low, "range: expected a bound");
        BigDecimal sum = low.value().add(Objects.requireNonNull(high).exactIn(low.unit()));
        return Reading.of(sum.divide(BigDecimal.valueOf(2)), low.unit());
    }

    private static Duration time(Reading<Mass> water, Reading<Length> diameter, InfiltrationRate rate) {
        double millimetres = diameter.in(FieldUnit.MILLIMETRE);
        double seconds = RateEquation.millimetresPerHour(water.in(FieldUnit.KILOGRAM), millimetres, 1)
                / rate.millimetresPerHour();
        return Duration.ofMillis(Math.round(1000 * Math.min(seconds, LONGEST_SECONDS)));
    }
}
