// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.field.Ring;
import dev.infiltration.field.TestRun;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiFunction;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;

/**
 * Cases that any implementation of the infiltration rate can be checked against: this library, a spreadsheet, a host's code.
 *
 * <p>{@code ReferenceJson.shipped()} gives those that the library ships.
 *
 * <pre>{@code
 * List<ReferenceCheck> checks = cases.checkMetric((kg, mm, s) -> 4583666000.0 * kg / (mm * mm * s));
 * checks.stream().filter(check -> !check.isPassed()).forEach(System.out::println);
 * }</pre>
 *
 * @param cases the cases, no two of one id
 */
public record ReferenceCases(List<ReferenceCase> cases) {

    /** A rate from three numbers: mass, inside diameter and seconds, in the units of one system. */
    @FunctionalInterface
    public interface BareRate {

        /**
         * {@return the rate}
         *
         * @param mass     the water: kg or lb
         * @param diameter inside diameter of the ring: mm or in
         * @param seconds  time to infiltrate
         */
        double rate(double mass, double diameter, double seconds);
    }

    /** The units that a bare rate is asked in. */
    private record Units(FieldUnit<Mass> mass, FieldUnit<Length> length, double millimetres) {}

    private static final Units METRIC = new Units(FieldUnit.KILOGRAM, FieldUnit.MILLIMETRE, 1);
    private static final Units INCH_POUND = new Units(FieldUnit.POUND, FieldUnit.INCH, 25.4);

    /**
     * Copies the cases.
     *
     * @throws IllegalArgumentException if two have one id
     */
    public ReferenceCases {
        cases = List.copyOf(cases);
        Set<String> ids = new HashSet<>();
        for (ReferenceCase each : cases) {
            if (!ids.add(each.id())) {
                throw new IllegalArgumentException("cases: expected each id once, got " + each.id() + " again");
            }
        }
    }

    /**
     * {@return what an implementation on field records answers to every case}
     *
     * @param implementation the rate of a run with a ring
     */
    public List<ReferenceCheck> check(BiFunction<? super Ring, ? super TestRun, ? extends RateOutcome> implementation) {
        return cases.stream()
                .map(each -> new ReferenceCheck(each, implementation.apply(each.ring(), each.run())))
                .toList();
    }

    /**
     * {@return what a function of kg, mm and s to mm/h answers}: to the cases of a plain rate, those written wholly in
     * inch-pound units excluded
     *
     * @param implementation the function; an answer that is no rate (negative, not finite) counts as withheld
     */
    public List<ReferenceCheck> checkMetric(BareRate implementation) {
        return cases.stream()
                .filter(each -> each.isBare() && !each.isInchPound())
                .map(each -> check(each, implementation, METRIC))
                .toList();
    }

    /**
     * {@return what a function of lb, in and s to in/h answers}: to the cases of a plain rate that are written wholly in
     * inch-pound units
     *
     * @param implementation the function; an answer that is no rate (negative, not finite) counts as withheld
     */
    public List<ReferenceCheck> checkInchPound(BareRate implementation) {
        return cases.stream()
                .filter(each -> each.isBare() && each.isInchPound())
                .map(each -> check(each, implementation, INCH_POUND))
                .toList();
    }

    private static ReferenceCheck check(ReferenceCase each, BareRate implementation, Units units) {
        Reading<Mass> mass = each.run().pouredWater().orElseThrow().mass();
        double diameter = RateEquation.meanDiameter(each.ring(), units.length());
        double seconds = Objects.requireNonNull(each.run().elapsed()).in(FieldUnit.SECOND);
        double rate = implementation.rate(mass.in(units.mass()), diameter, seconds);
        return new ReferenceCheck(each, outcome(rate * units.millimetres()));
    }

    private static RateOutcome outcome(double millimetresPerHour) {
        return millimetresPerHour >= 0 && Double.isFinite(millimetresPerHour)
                ? new RateOutcome.Measured(new InfiltrationRate(millimetresPerHour))
                : new RateOutcome.Withheld(List.of());
    }
}
