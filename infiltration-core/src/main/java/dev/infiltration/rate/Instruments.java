// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.field.Instrument;
import dev.infiltration.field.Instrument.Kind;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.Ring;
import dev.infiltration.method.Basis;
import dev.infiltration.method.Limit;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * The instruments of a test, as far as they are named, and their contributions to the uncertainty.
 *
 * <table>
 * <caption>Source of each term</caption>
 * <tr><th>term</th><th>source</th></tr>
 * <tr><td>a reading of mass, diameter, time or water temperature</td><td>the resolution stated with it; else the coarser of
 * the resolution of the instrument named and the last digit written</td></tr>
 * <tr><td>the balance's own error</td><td>its tolerance; else the accuracy that the method requires of a balance, the wider of
 * its two unit systems</td></tr>
 * <tr><td>the error of tape, watch and thermometer</td><td>their tolerance; else none</td></tr>
 * </table>
 *
 * <p>Of several instruments of a kind the coarsest is used, because the record does not state which one was used. A balance that is
 * not named is taken to be the same one everywhere, so its error does not average out. Reaction, end point and seal have no
 * default, because no published value was found.
 *
 * <pre>{@code
 * Instruments instruments = Instruments.of(book.instruments()).withMethod(Methods.unitPavement());
 * instruments.budget("V1, A1, run 1", RateEquation.asPublished(), ring, run)
 *         .ifPresent(budget -> System.out.println(budget.table()));
 * }</pre>
 *
 * @param named  the instruments; those of other kinds, or without resolution and tolerance, are ignored
 * @param method the method, for the accuracy of the balance; null if it is not known
 */
public record Instruments(List<Instrument> named, @Nullable TestMethod method) {

    /** An amount that an instrument or a method states, with its owner. */
    record Stated<Q extends Quantity<Q>>(Reading<Q> amount, String whose, Basis basis) {}

    /** Copies the list. */
    public Instruments {
        named = List.copyOf(named);
    }

    /**
     * {@return instruments without a method}
     *
     * @param named the instruments
     */
    public static Instruments of(List<Instrument> named) {
        return new Instruments(named, null);
    }

    /**
     * {@return these instruments, used by a method}
     *
     * @param method the method
     */
    public Instruments withMethod(TestMethod method) {
        return new Instruments(named, Objects.requireNonNull(method, "method"));
    }

    /**
     * {@return the budget of a measured rate}; empty where there is none, or a value is not finite
     *
     * @param name     names the prewetting or run: its terms are independent of those of others
     * @param equation the equation of the rate
     * @param ring     the ring; its terms are named by its id
     * @param pouring  the prewetting or run
     */
    public Optional<UncertaintyBudget> budget(String name, RateEquation equation, Ring ring, Pouring pouring) {
        return equation.rate(ring, pouring).rate().flatMap(rate -> budget(name, equation, rate, ring, pouring));
    }

    private Optional<UncertaintyBudget> budget(
            String name, RateEquation equation, InfiltrationRate rate, Ring ring, Pouring pouring) {
        Reading<Time> elapsed = Objects.requireNonNull(pouring.elapsed());
        double kilograms = equation.infiltrated(ring, pouring);
        double millimetres = RateEquation.meanDiameter(ring);
        double seconds = elapsed.in(FieldUnit.SECOND);
        if (!RunAmounts.areUsable(kilograms, millimetres, seconds)) {
            return Optional.empty();
        }
        InstrumentTerms terms = new InstrumentTerms(this);
        terms.addWater(name, pouring);
        terms.addDiameters(ring);
        terms.addElapsed(name, elapsed);
        return terms.lines()
                .map(UncertaintyBudget.of(rate, kilograms, millimetres, seconds)::with)
                .filter(budget -> budget.uncertainty().isWithinMeasure());
    }

    /**
     * {@return a budget with the density of water at a temperature that was read}: the contribution of resolution and tolerance of
     * the thermometer, for 0 to 60 °C
     *
     * @param budget      the budget
     * @param name        names the reading
     * @param temperature the temperature as it was read
     */
    public UncertaintyBudget withWater(UncertaintyBudget budget, String name, Reading<Temperature> temperature) {
        Thermometer thermometer = new Thermometer(this, temperature);
        return budget.withWater(name, thermometer.coldest(), thermometer.warmest());
    }

    /** The coarsest resolution of the instruments of a kind; null when none states one. */
    <Q extends Quantity<Q>> @Nullable Stated<Q> resolution(Kind kind, Class<Q> quantity) {
        return widest(kind, quantity, Instrument::resolution, "resolution of ");
    }

    /** The widest tolerance of the instruments of a kind; null when none states one. */
    <Q extends Quantity<Q>> @Nullable Stated<Q> tolerance(Kind kind, Class<Q> quantity) {
        return widest(kind, quantity, Instrument::tolerance, "tolerance of ");
    }

    /**
     * The widest error that the balances may have: the tolerance of each, or the accuracy that the method asks of one without.
     * The amount is independent of the unit in which the water was weighed.
     */
    @Nullable
    Stated<Mass> balanceError() {
        @Nullable Stated<Mass> stated = tolerance(Kind.BALANCE, Mass.class);
        @Nullable Stated<Mass> asked = accuracyAskedFor();
        return asked == null || (stated != null && stated.amount().compareAmount(asked.amount()) > 0) ? stated : asked;
    }

    private @Nullable Stated<Mass> accuracyAskedFor() {
        List<Instrument> balances = named.stream()
                .filter(instrument -> instrument.kind() == Kind.BALANCE)
                .toList();
        Optional<Instrument> untold = balances.stream()
                .filter(balance -> positive(balance.tolerance(), Mass.class).isEmpty())
                .findFirst();
        if (method == null || (untold.isEmpty() && !balances.isEmpty())) {
            return null;
        }
        String whose = untold.map(balance -> "balance " + balance.id()).orElse("balance not named");
        return Stream.of(UnitSystem.SI, UnitSystem.INCH_POUND)
                .flatMap(system -> Stream.ofNullable(
                        method.limit(Limit.MASS_RESOLUTION).in(system).highest()))
                .filter(Reading::isPositive)
                .max(Reading::compareAmount)
                .map(amount -> new Stated<>(
                        amount, whose, method.limit(Limit.MASS_RESOLUTION).basis()))
                .orElse(null);
    }

    private static <Q extends Quantity<Q>> Optional<Reading<Q>> positive(
            @Nullable Reading<?> stated, Class<Q> quantity) {
        return Optional.ofNullable(stated)
                .flatMap(reading -> reading.as(quantity))
                .filter(Reading::isPositive);
    }

    private <Q extends Quantity<Q>> @Nullable Stated<Q> widest(
            Kind kind, Class<Q> quantity, Function<Instrument, @Nullable Reading<?>> stated, String what) {
        Stated<Q> widest = null;
        for (Instrument instrument : named) {
            Reading<?> any = instrument.kind() == kind ? stated.apply(instrument) : null;
            Reading<Q> amount = positive(any, quantity).orElse(null);
            if (amount != null && (widest == null || amount.compareAmount(widest.amount()) > 0)) {
                String whose = what + kind.word() + " " + instrument.id();
                widest = new Stated<>(amount, whose, new Basis(whose, "", Basis.Trust.USER));
            }
        }
        return widest;
    }
}
