// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Ring;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.rate.Uncertainty;
import dev.infiltration.rate.UncertaintyBudget;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.UnitSystem;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.quantity.Speed;

/**
 * Rates in the words of people: the unit of the visit's own system first, the other in brackets.
 *
 * @param own   the unit of the visit's system
 * @param other the other system's unit
 */
record RateWords(FieldUnit<Speed> own, FieldUnit<Speed> other) {

    /** What a ± beside a location's rate is. */
    static final String PLUS_MINUS = "± is the expanded uncertainty (95 %): " + UncertaintyBudget.INSTRUMENTS_ONLY;

    private static final double LEVEL = 0.95;

    private static final RateWords SI = new RateWords(FieldUnit.MILLIMETRE_PER_HOUR, FieldUnit.INCH_PER_HOUR);
    private static final RateWords INCH_POUND = new RateWords(FieldUnit.INCH_PER_HOUR, FieldUnit.MILLIMETRE_PER_HOUR);

    /** {@return the words for a visit}: inch-pound where all its rings and waters were written so */
    static RateWords of(VisitAt visit) {
        List<UnitSystem> systems =
                visit.tests().stream().flatMap(RateWords::systems).distinct().toList();
        return systems.equals(List.of(UnitSystem.INCH_POUND)) ? INCH_POUND : SI;
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
        return rate.text(own) + " (" + rate.text(other) + ")";
    }

    /** {@return what a location comes to, a measured rate with its uncertainty: {@code 100.0 ± 1.2 in/h (2540 ± 31 mm/h)}} */
    String text(LocationRate location) {
        return location.uncertainty()
                .filter(uncertainty -> uncertainty.standardUncertainty() > 0)
                .map(uncertainty -> text(uncertainty, own) + " (" + text(uncertainty, other) + ")")
                .orElseGet(() -> text(location.outcome()));
    }

    private static String text(Uncertainty rate, FieldUnit<Speed> unit) {
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
