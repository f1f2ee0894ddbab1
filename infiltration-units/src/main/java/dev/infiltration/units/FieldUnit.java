// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;

/**
 * A unit of field records: one of a closed set of constants.
 *
 * <p>Each has a UCUM code, which is stored, a printed symbol, its {@link UnitSystem} and an exact factor.
 * Sources of the factors: the international yard and pound (1959: inch 0.0254 m, pound 0.45359237 kg), the US gallon of
 * 231 cubic inches, the US survey foot of 1200/3937 m for the acre (UCUM has no international acre). Text is read
 * only by this table, independent of the locale.
 *
 * @param <Q> the kind of quantity, from javax.measure
 */
public final class FieldUnit<Q extends Quantity<Q>> {

    /** Gives the constants below their indexes, so it comes before them. */
    private static final AtomicInteger COUNT = new AtomicInteger();

    /** Metre. */
    public static final FieldUnit<Length> METRE = si(Length.class, "m", "m", "1");
    /** Centimetre. */
    public static final FieldUnit<Length> CENTIMETRE = si(Length.class, "cm", "cm", "0.01");
    /** Millimetre. */
    public static final FieldUnit<Length> MILLIMETRE = si(Length.class, "mm", "mm", "0.001");
    /** International foot, 0.3048 m. */
    public static final FieldUnit<Length> FOOT = inchPound(Length.class, "[ft_i]", "ft", Factor.of("0.3048"));
    /** International inch, 25.4 mm. */
    public static final FieldUnit<Length> INCH = inchPound(Length.class, "[in_i]", "in", Factor.of("0.0254"));

    /** Kilogram. */
    public static final FieldUnit<Mass> KILOGRAM = si(Mass.class, "kg", "kg", "1");
    /** Gram. */
    public static final FieldUnit<Mass> GRAM = si(Mass.class, "g", "g", "0.001");
    /** Avoirdupois pound, 0.45359237 kg. */
    public static final FieldUnit<Mass> POUND = inchPound(Mass.class, "[lb_av]", "lb", Factor.of("0.45359237"));
    /** Avoirdupois ounce, a sixteenth of a pound. */
    public static final FieldUnit<Mass> OUNCE = inchPound(Mass.class, "[oz_av]", "oz", Factor.of("0.028349523125"));

    /** Second. */
    public static final FieldUnit<Time> SECOND = either(Time.class, "s", "s", "1");
    /** Minute, 60 s. */
    public static final FieldUnit<Time> MINUTE = either(Time.class, "min", "min", "60");
    /** Hour, 3600 s. */
    public static final FieldUnit<Time> HOUR = either(Time.class, "h", "h", "3600");
    /** Day of 24 hours. */
    public static final FieldUnit<Time> DAY = either(Time.class, "d", "d", "86400");

    /** Degree Celsius, 0 °C being 273.15 K. */
    public static final FieldUnit<Temperature> CELSIUS = new FieldUnit<>(
            Temperature.class, "Cel", "°C", UnitSystem.SI, Factor.of("1").shifted("273.15"));
    /** Degree Fahrenheit, 32 °F being 0 °C exactly. */
    public static final FieldUnit<Temperature> FAHRENHEIT =
            inchPound(Temperature.class, "[degF]", "°F", Factor.ratio("5", "9").shifted("459.67"));
    /** Kelvin. */
    public static final FieldUnit<Temperature> KELVIN = si(Temperature.class, "K", "K", "1");

    /** Square metre. */
    public static final FieldUnit<Area> SQUARE_METRE = si(Area.class, "m2", "m²", "1");
    /** Hectare, 10 000 m². */
    public static final FieldUnit<Area> HECTARE = si(Area.class, "har", "ha", "10000");
    /** Square foot (international), 0.09290304 m². */
    public static final FieldUnit<Area> SQUARE_FOOT = inchPound(Area.class, "[sft_i]", "ft²", Factor.of("0.09290304"));
    /** US survey acre, 43 560 square survey feet, 4046.8726 m². */
    public static final FieldUnit<Area> ACRE =
            inchPound(Area.class, "[acr_us]", "acre", Factor.ratio("62726400000", "15499969"));

    /** Litre. */
    public static final FieldUnit<Volume> LITRE = si(Volume.class, "L", "L", "1");
    /** Millilitre. */
    public static final FieldUnit<Volume> MILLILITRE = si(Volume.class, "mL", "mL", "0.001");
    /** US gallon, 231 cubic inches, 3.785411784 L. */
    public static final FieldUnit<Volume> US_GALLON =
            inchPound(Volume.class, "[gal_us]", "gal", Factor.of("3.785411784"));

    /** Millimetre per hour, the unit in which rates are computed. */
    public static final FieldUnit<Speed> MILLIMETRE_PER_HOUR = si(Speed.class, "mm/h", "mm/h", "1");
    /** Inch per hour, 25.4 mm/h. */
    public static final FieldUnit<Speed> INCH_PER_HOUR = inchPound(Speed.class, "[in_i]/h", "in/h", Factor.of("25.4"));
    /** Centimetre per hour. */
    public static final FieldUnit<Speed> CENTIMETRE_PER_HOUR = si(Speed.class, "cm/h", "cm/h", "10");
    /** Millimetre per minute. */
    public static final FieldUnit<Speed> MILLIMETRE_PER_MINUTE = si(Speed.class, "mm/min", "mm/min", "60");
    /** Centimetre per second, 36 000 mm/h. */
    public static final FieldUnit<Speed> CENTIMETRE_PER_SECOND = si(Speed.class, "cm/s", "cm/s", "36000");
    /** Metre per second. */
    public static final FieldUnit<Speed> METRE_PER_SECOND = si(Speed.class, "m/s", "m/s", "3600000");
    /** Metre per day, 125/3 mm/h. */
    public static final FieldUnit<Speed> METRE_PER_DAY =
            new FieldUnit<>(Speed.class, "m/d", "m/d", UnitSystem.SI, Factor.ratio("125", "3"));
    /** Litre per second and hectare, 0.36 mm/h. */
    public static final FieldUnit<Speed> LITRE_PER_SECOND_HECTARE = si(Speed.class, "L/(s.har)", "L/(s·ha)", "0.36");

    /** One: a plain ratio. */
    public static final FieldUnit<Dimensionless> ONE = either(Dimensionless.class, "1", "", "1");
    /** Per cent. */
    public static final FieldUnit<Dimensionless> PERCENT = either(Dimensionless.class, "%", "%", "0.01");

    private final Class<Q> kind;
    private final String code;
    private final String symbol;
    private final UnitSystem system;
    private final Factor factor;
    private final int index;

    private FieldUnit(Class<Q> kind, String code, String symbol, UnitSystem system, Factor factor) {
        this.kind = kind;
        this.code = code;
        this.symbol = symbol;
        this.system = system;
        this.factor = factor;
        this.index = COUNT.getAndIncrement();
    }

    private static <Q extends Quantity<Q>> FieldUnit<Q> si(Class<Q> kind, String code, String symbol, String factor) {
        return new FieldUnit<>(kind, code, symbol, UnitSystem.SI, Factor.of(factor));
    }

    private static <Q extends Quantity<Q>> FieldUnit<Q> inchPound(
            Class<Q> kind, String code, String symbol, Factor factor) {
        return new FieldUnit<>(kind, code, symbol, UnitSystem.INCH_POUND, factor);
    }

    private static <Q extends Quantity<Q>> FieldUnit<Q> either(
            Class<Q> kind, String code, String symbol, String factor) {
        return new FieldUnit<>(kind, code, symbol, UnitSystem.NEITHER, Factor.of(factor));
    }

    /** {@return every unit of the table, by kind} */
    public static List<FieldUnit<?>> all() {
        return Spellings.UNITS;
    }

    /**
     * Reads a unit of one kind: its UCUM code or a spelling of the trade ({@code lb}, {@code in}, {@code sq ft}), exactly.
     *
     * @param text what was written
     * @param kind the kind of quantity that is expected
     * @param <Q>  the kind of quantity
     * @return the unit, or empty when {@code text} is no unit of that kind
     */
    public static <Q extends Quantity<Q>> Optional<FieldUnit<Q>> parse(String text, Class<Q> kind) {
        Objects.requireNonNull(kind, "kind");
        return parse(text).flatMap(unit -> unit.as(kind));
    }

    /**
     * Reads a unit of any kind, exactly as {@link #parse(String, Class)} does; no spelling belongs to two kinds.
     *
     * @param text what was written
     * @return the unit, or empty when {@code text} is none of the table
     */
    public static Optional<FieldUnit<?>> parse(String text) {
        return Spellings.of(Objects.requireNonNull(text, "text"));
    }

    /**
     * {@return the units that a kind may be written in}
     *
     * @param kind the kind of quantity
     * @param <Q>  the kind of quantity
     */
    public static <Q extends Quantity<Q>> List<FieldUnit<Q>> allOf(Class<Q> kind) {
        return all().stream().flatMap(unit -> unit.as(kind).stream()).toList();
    }

    /** {@return the kind of quantity that this unit measures} */
    public Class<Q> kind() {
        return kind;
    }

    /** {@return the UCUM code, case-sensitive: {@code [in_i]}} */
    public String code() {
        return code;
    }

    /** {@return every text that is read as this unit, its code first} */
    public List<String> spellings() {
        return Spellings.of(this);
    }

    /** {@return the symbol printed for people: {@code in}} */
    public String symbol() {
        return symbol;
    }

    /** {@return the system that the unit belongs to} */
    public UnitSystem system() {
        return system;
    }

    /** {@return the javax.measure unit, an Indriya unit with the same exact factor} */
    public Unit<Q> unit() {
        return MeasureUnits.of(this);
    }

    /** {@return the exact scale to the reference unit of the kind} */
    Factor factor() {
        return factor;
    }

    /** {@return the place of the unit among all units, from 0} */
    int index() {
        return index;
    }

    /** {@return {@code value} of this unit in {@code target}, rounded once; ±∞ or 0 outside the range of a double} */
    double convert(BigDecimal value, FieldUnit<Q> target) {
        return target == this ? value.doubleValue() : exact(value, target).doubleValue();
    }

    /** {@return {@code value} of this unit in {@code target}, exact or to 70 digits} */
    BigDecimal exact(BigDecimal value, FieldUnit<Q> target) {
        return target == this ? Factor.tamed(value) : factor.convert(value, target.factor);
    }

    /** {@return how {@code value} of this unit compares with {@code other} of {@code otherUnit}, exactly} */
    int compare(BigDecimal value, BigDecimal other, FieldUnit<Q> otherUnit) {
        return factor.compare(value, other, otherUnit.factor);
    }

    /** {@return a double of this unit in {@code target}} */
    double convert(double value, FieldUnit<Q> target) {
        if (target == this || !Double.isFinite(value)) {
            return value;
        }
        double converted = Scale.of(this, target).convert(value);
        return Double.isNaN(converted) ? convert(new BigDecimal(value), target) : converted;
    }

    /** {@return this unit as one of {@code kind}, or empty when it measures something else} */
    @SuppressWarnings("unchecked") // the kind is the type argument
    public <R extends Quantity<R>> Optional<FieldUnit<R>> as(Class<R> kind) {
        return Objects.requireNonNull(kind, "kind") == this.kind ? Optional.of((FieldUnit<R>) this) : Optional.empty();
    }

    /** {@return the UCUM code} */
    @Override
    public String toString() {
        return code;
    }
}
