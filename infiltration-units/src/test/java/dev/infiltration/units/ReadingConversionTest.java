// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.List;
import javax.measure.Quantity;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.function.RationalNumber;

/** Conversions against exact fractions, which the RationalNumber of Indriya computes; the factors: LegalDefinitionsTest. */
class ReadingConversionTest {

    /** Values as the field book takes them: at most 34 digits, magnitude 10⁻¹⁵ to 10¹⁵, or zero. */
    @Provide
    Arbitrary<BigDecimal> values() {
        BigInteger most = BigInteger.TEN.pow(34).subtract(BigInteger.ONE);
        Arbitrary<BigInteger> digits = Arbitraries.oneOf(
                Arbitraries.integers().between(-9999, 9999).map(BigInteger::valueOf),
                Arbitraries.bigIntegers().between(most.negate(), most));
        return Combinators.combine(digits, Arbitraries.integers().between(-14, 15))
                .as((whole, magnitude) -> new BigDecimal(whole, new BigDecimal(whole).precision() - magnitude));
    }

    @Provide
    Arbitrary<FieldUnit<?>> units() {
        return Arbitraries.of(FieldUnit.all());
    }

    @Property
    <Q extends Quantity<Q>> void amountIsRoundedOnceToADouble(
            @ForAll("values") BigDecimal value, @ForAll("units") FieldUnit<Q> unit) {
        for (FieldUnit<Q> target : FieldUnit.allOf(unit.kind())) {
            RationalNumber exact = exact(value, unit, target);
            double rounded = Reading.of(value, unit).in(target);
            RationalNumber error = apart(exact, rounded);
            assertTrue(error.compareTo(apart(exact, Math.nextUp(rounded))) <= 0, target::code);
            assertTrue(error.compareTo(apart(exact, Math.nextDown(rounded))) <= 0, target::code);
        }
    }

    /** Values of every length and exponent, and one digit beside half of a double's last bit. */
    @Provide
    Arbitrary<BigDecimal> anyValues() {
        Arbitrary<BigDecimal> extreme = Combinators.combine(Arbitraries.bigIntegers(), Arbitraries.integers())
                .as(BigDecimal::new);
        Arbitrary<BigDecimal> written = Combinators.combine(
                        Arbitraries.longs().between(-999_999_999_999_999_999L, 999_999_999_999_999_999L),
                        Arbitraries.integers().between(-3, 25))
                .as(BigDecimal::valueOf);
        Arbitrary<BigDecimal> halfway = Arbitraries.longs()
                .between(1L << 53, 1L << 56)
                .map(whole -> BigDecimal.valueOf(whole).scaleByPowerOfTen(-2));
        return Arbitraries.oneOf(values(), written, extreme, halfway);
    }

    /** The oracle is the exact decimal of Java's BigDecimal, which decimalIsExactOrHasSeventyDigits checks. */
    @Property
    <Q extends Quantity<Q>> void amountIsTheExactDecimalRoundedOnce(
            @ForAll("anyValues") BigDecimal value, @ForAll("units") FieldUnit<Q> unit) {
        for (FieldUnit<Q> target : FieldUnit.allOf(unit.kind())) {
            assertEquals(
                    unit.exact(value, target).doubleValue(),
                    Reading.of(value, unit).in(target),
                    target::code);
        }
    }

    @Property
    <Q extends Quantity<Q>> void convertedDoubleIsTheExactDecimalRoundedOnce(
            @ForAll double value, @ForAll("units") FieldUnit<Q> unit) {
        for (FieldUnit<Q> target : FieldUnit.allOf(unit.kind())) {
            double exact = target == unit
                    ? value
                    : unit.exact(new BigDecimal(value), target).doubleValue();
            assertEquals(exact + 0.0, unit.convert(value, target) + 0.0, target::code);
        }
    }

    /** Amounts as close as the last digit on both sides of a limit, and anywhere. */
    @Property
    <Q extends Quantity<Q>> void comparisonIsTheExactOne(
            @ForAll("anyValues") BigDecimal value,
            @ForAll("anyValues") BigDecimal other,
            @ForAll("units") FieldUnit<Q> unit) {
        for (FieldUnit<Q> target : FieldUnit.allOf(unit.kind())) {
            BigDecimal near = unit.exact(value, target).round(new MathContext(15));
            for (BigDecimal limit : List.of(other, near, near.subtract(near.ulp()), near.add(near.ulp()))) {
                assertEquals(
                        unit.compare(value, limit, target),
                        Reading.of(value, unit).compareAmount(Reading.of(limit, target)),
                        () -> value + " " + unit + " and " + limit + " " + target);
            }
        }
    }

    @Property
    <Q extends Quantity<Q>> void decimalIsExactOrHasSeventyDigits(
            @ForAll("values") BigDecimal value, @ForAll("units") FieldUnit<Q> unit) {
        for (FieldUnit<Q> target : FieldUnit.allOf(unit.kind())) {
            RationalNumber exact = exact(value, unit, target);
            RationalNumber error = exact.subtract(
                            RationalNumber.of(Reading.of(value, unit).exactIn(target)))
                    .abs();
            RationalNumber fromZero =
                    exact.add(RationalNumber.of(target.factor().offset()));
            RationalNumber allowed = ends(exact)
                    ? RationalNumber.ZERO
                    : fromZero.abs().multiply(RationalNumber.of(new BigDecimal("0.5E-69")));
            assertTrue(error.compareTo(allowed) <= 0, target::code);
        }
    }

    @Property
    <Q extends Quantity<Q>> void amountsAreComparedAsFractions(
            @ForAll("values") BigDecimal value,
            @ForAll("values") BigDecimal other,
            @ForAll("units") FieldUnit<Q> unit) {
        for (FieldUnit<Q> otherUnit : FieldUnit.allOf(unit.kind())) {
            Reading<Q> left = Reading.of(value, unit);
            Reading<Q> right = Reading.of(other, otherUnit);
            int expected = exact(value, unit, otherUnit).compareTo(RationalNumber.of(other));
            assertEquals(expected, Integer.signum(left.compareAmount(right)));
            assertEquals(-expected, Integer.signum(right.compareAmount(left)));
            assertEquals(expected == 0, left.sameAmountAs(right));
        }
    }

    @Property
    <Q extends Quantity<Q>> void sameAmountInAnotherUnitIsTheSameAmount(
            @ForAll("values") BigDecimal value, @ForAll("units") FieldUnit<Q> unit) {
        Reading<Q> reading = Reading.of(value, unit);
        for (FieldUnit<Q> target : FieldUnit.allOf(unit.kind())) {
            boolean ends = ends(exact(value, unit, target));
            assertEquals(ends, reading.sameAmountAs(Reading.of(reading.exactIn(target), target)), target::code);
        }
    }

    /** Sources: units-exact.csv (seen); temperatures: NIST SP 811, B.9, as quoted elsewhere (secondary). Exact. */
    @ParameterizedTest
    @CsvSource({
        "40.00, [lb_av], kg, 18.1436948",
        "8.1, [lb_av], kg, 3.674098197",
        "11.95, [in_i], mm, 303.53",
        "0.1, [in_i], mm, 2.54",
        "25000, [sft_i], m2, 2322.576",
        "5, [gal_us], L, 18.92705892",
        "88, [degF], Cel, 31.11111111111111",
        "100, [degF], Cel, 37.77777777777778",
        "38, Cel, [degF], 100.4",
        "141.7, s, min, 2.361666666666667"
    })
    void amountIsGivenInAnotherUnit(String value, String unit, String target, double expected) {
        assertEquals(expected, in(value, FieldUnit.parse(unit).orElseThrow(), target));
    }

    @Test
    void doublesAreConvertedByTheirExactValue() {
        assertEquals(0.254, FieldUnit.INCH.convert(0.1, FieldUnit.CENTIMETRE));
        assertEquals(0.1, FieldUnit.INCH.convert(0.1, FieldUnit.INCH));
        assertEquals(Double.NaN, FieldUnit.INCH.convert(Double.NaN, FieldUnit.METRE));
        assertEquals(Double.NEGATIVE_INFINITY, FieldUnit.INCH.convert(Double.NEGATIVE_INFINITY, FieldUnit.METRE));
    }

    private static <Q extends Quantity<Q>> double in(String value, FieldUnit<Q> unit, String target) {
        return Reading.of(value, unit).in(FieldUnit.parse(target, unit.kind()).orElseThrow());
    }

    private static RationalNumber exact(BigDecimal value, FieldUnit<?> unit, FieldUnit<?> target) {
        Factor from = unit.factor();
        Factor to = target.factor();
        return RationalNumber.of(value)
                .add(RationalNumber.of(from.offset()))
                .multiply(size(from))
                .divide(size(to))
                .subtract(RationalNumber.of(to.offset()));
    }

    private static RationalNumber size(Factor factor) {
        return RationalNumber.of(factor.numerator()).divide(RationalNumber.of(factor.denominator()));
    }

    private static RationalNumber apart(RationalNumber exact, double rounded) {
        return exact.subtract(RationalNumber.of(new BigDecimal(rounded))).abs();
    }

    /** Whether the decimal fraction comes to an end: no prime but 2 and 5 is left in the divisor. */
    private static boolean ends(RationalNumber number) {
        BigInteger divisor = number.getDivisor();
        return BigInteger.TEN.pow(divisor.bitLength()).mod(divisor).signum() == 0;
    }
}
