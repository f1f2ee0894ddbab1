// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Ring;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.rate.Uncertainty;
import dev.infiltration.rate.UncertaintyBudget;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.summary.Specification;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.quantity.Speed;

/**
 * Rates in the words of people: the unit of the visit's own system first, the other in brackets.
 *
 * @param own    the unit of the visit's system
 * @param other  the other system's unit
 * @param limits the limits that the visit is compared with: no rate is rounded to the other side of one
 */
record RateWords(FieldUnit<Speed> own, FieldUnit<Speed> other, List<InfiltrationRate> limits) {

    /** What a ± beside a location's rate is. */
    static final String PLUS_MINUS = "± is the expanded uncertainty (95 %) of instruments, end point and"
            + " the difference of the runs; seal not included";

    /** What a ± in the appendix is. */
    static final String INSTRUMENTS = "± is the expanded uncertainty (95 %), " + UncertaintyBudget.INSTRUMENTS_ONLY;

    private static final double LEVEL = 0.95;

    private static final RateWords SI =
            new RateWords(FieldUnit.MILLIMETRE_PER_HOUR, FieldUnit.INCH_PER_HOUR, List.of());
    private static final RateWords INCH_POUND =
            new RateWords(FieldUnit.INCH_PER_HOUR, FieldUnit.MILLIMETRE_PER_HOUR, List.of());

    /** Copies the limits. */
    RateWords {
        limits = List.copyOf(limits);
    }

    /** {@return the words for a visit}: inch-pound where all its rings and waters were written so */
    static RateWords of(VisitAt visit) {
        List<UnitSystem> systems =
                visit.tests().stream().flatMap(RateWords::systems).distinct().toList();
        return systems.equals(List.of(UnitSystem.INCH_POUND)) ? INCH_POUND : SI;
    }

    /** {@return the words for a visit, its rates beside the limits that it is compared with} */
    static RateWords of(VisitAt visit, Specification specification) {
        RateWords words = of(visit);
        List<InfiltrationRate> limits = criteria(visit, specification)
                .flatMap(criterion -> criterion.limitRate().stream())
                .distinct()
                .toList();
        return new RateWords(words.own(), words.other(), limits);
    }

    /** {@return the criteria that a visit is compared with}: those of its method, and those that the user allows for any */
    static Stream<Criterion> criteria(VisitAt visit, Specification specification) {
        return specification.criteria().stream()
                .filter(criterion -> criterion.otherMethodJustification() != null || isNamed(visit, criterion));
    }

    private static boolean isNamed(VisitAt visit, Criterion criterion) {
        return visit.method()
                .filter(method -> method.isNamed(criterion.method()))
                .isPresent();
    }

    private static Stream<UnitSystem> systems(TestAt test) {
        Stream<UnitSystem> waters = Stream.concat(test.preWet().stream(), test.runs().stream())
                .flatMap(pouring -> pouring.pouring().pouredWater().stream())
                .map(water -> water.system());
        Stream<UnitSystem> rings = test.ring().map(Ring::diametersInUse).orElse(List.of()).stream()
                .map(diameter -> diameter.unit().system());
        return Stream.concat(rings, waters);
    }

    /** {@return a rate: {@code 100 in/h (2540 mm/h)}} */
    String text(InfiltrationRate rate) {
        return rate.text(own, limits) + " (" + rate.text(other, limits) + ")";
    }

    /**
     * {@return the result of a location; where the error of the end point is stated, with the expanded uncertainty}:
     * {@code 100 ± 4.5 in/h (2540 ± 110 mm/h)}
     */
    String text(LocationRate location) {
        return location.uncertainty()
                .filter(uncertainty -> location.hasEndPoint() && uncertainty.standardUncertainty() > 0)
                .map(uncertainty -> text(uncertainty, own) + " (" + text(uncertainty, other) + ")")
                .orElseGet(() -> text(location.outcome()));
    }

    private String text(Uncertainty rate, FieldUnit<Speed> unit) {
        return rateWithUncertainty(
                new InfiltrationRate(rate.value()), new InfiltrationRate(rate.expanded(LEVEL)), unit, limits);
    }

    /** {@return a rate to three digits or as many as its limits require, ± its expanded uncertainty to two} */
    static String rateWithUncertainty(
            InfiltrationRate rate, InfiltrationRate expanded, FieldUnit<Speed> unit, List<InfiltrationRate> limits) {
        String value = rate.text(unit, limits).replace(" " + unit.symbol(), "");
        return value + " ± " + Uncertainty.rounded(expanded.in(unit)) + " " + unit.symbol();
    }

    /** {@return the result of a location with the uncertainty of the instruments, for the appendix; empty where none is known} */
    Optional<String> instrumentsOnly(LocationRate location) {
        return location.uncertainty()
                .filter(uncertainty -> !location.hasEndPoint() && uncertainty.standardUncertainty() > 0)
                .map(uncertainty -> exactly(uncertainty, own) + " (" + exactly(uncertainty, other) + ")");
    }

    private static String exactly(Uncertainty rate, FieldUnit<Speed> unit) {
        double scale = new InfiltrationRate(1).in(unit);
        return rate.times(scale).plusMinus(LEVEL) + " " + unit.symbol();
    }

    /** {@return an outcome: a rate, {@code at most} or {@code at least} so much, or why there is none} */
    String text(RateOutcome outcome) {
        return said(outcome, this::text);
    }

    /** {@return an outcome, its rate in both units as {@code one} writes it in a unit} */
    String text(RateOutcome outcome, BiFunction<InfiltrationRate, FieldUnit<Speed>, String> one) {
        return said(outcome, rate -> one.apply(rate, own) + " (" + one.apply(rate, other) + ")");
    }

    private static String said(RateOutcome outcome, Function<InfiltrationRate, String> words) {
        return outcome.match(
                measured -> words.apply(measured.value()),
                upper -> "at most " + words.apply(upper.bound()),
                lower -> "at least " + words.apply(lower.bound()),
                withheld -> withheld.reasons().isEmpty()
                        ? "no rate: no run was made"
                        : "no rate: " + String.join(", ", withheld.reasons()));
    }
}
