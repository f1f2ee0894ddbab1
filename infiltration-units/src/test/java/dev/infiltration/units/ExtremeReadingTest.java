// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers of a few characters that would fill the memory once their digits are written out. */
@Timeout(60)
class ExtremeReadingTest {

    /** Ascending. */
    private static final List<BigDecimal> EXTREMES = List.of(
            new BigDecimal(BigInteger.valueOf(-7), Integer.MIN_VALUE),
            new BigDecimal("-1E999999999"),
            new BigDecimal("-9E5000"),
            new BigDecimal("-1E-999999999"),
            new BigDecimal(BigInteger.ZERO, Integer.MIN_VALUE),
            new BigDecimal(BigInteger.ONE, Integer.MAX_VALUE),
            new BigDecimal("1E-999999999"),
            new BigDecimal("2E-999999"),
            new BigDecimal("4E5000"),
            new BigDecimal("1E6000"),
            new BigDecimal("1E9999999"),
            new BigDecimal("1.5E999999999"),
            new BigDecimal(BigInteger.valueOf(123_456_789), Integer.MIN_VALUE));

    /** Bytes: far above what a conversion takes, far below what the digits of an extreme number take. */
    private static final long LITTLE = 8L << 20;

    static List<FieldUnit<?>> units() {
        return FieldUnit.all();
    }

    @ParameterizedTest
    @MethodSource("units")
    <Q extends Quantity<Q>> void nothingIsPaidForAnExponent(FieldUnit<Q> unit) {
        Reading.of("1", unit).toQuantity();
        for (BigDecimal extreme : EXTREMES) {
            Reading<Q> reading = Reading.of(extreme, unit).withResolution(extreme);
            for (FieldUnit<Q> target : FieldUnit.allOf(unit.kind())) {
                Reading<Q> one = Reading.of("1.25", target);
                costsLittle(
                        reading + " in " + target,
                        () -> reading.in(target),
                        () -> reading.exactIn(target).add(one.value()),
                        () -> reading.compareAmount(one),
                        () -> one.sameAmountAs(reading));
            }
            costsLittle(
                    reading + " as written",
                    () -> reading.toQuantity().to(unit.unit()),
                    reading::lastDigit,
                    reading::statedResolution,
                    reading::toString,
                    reading::hashCode);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "1E999999999, Infinity",
        "-1E999999999, -Infinity",
        "1E-999999999, 0",
        "-1E-999999999, 0",
        "0E-999999999, 0",
        "0E999999999, 0",
        "1E2147483647, Infinity",
        "1E-2147483647, 0"
    })
    void extremeIsInfiniteOrNothingInAnyUnit(BigDecimal value, double expected) {
        assertEquals(expected, Reading.of(value, FieldUnit.POUND).in(FieldUnit.KILOGRAM) + 0.0);
        assertEquals(expected, Reading.of(value, FieldUnit.POUND).in(FieldUnit.POUND) + 0.0);
        assertEquals(expected, Reading.of(value, FieldUnit.METRE_PER_DAY).in(FieldUnit.METRE_PER_SECOND) + 0.0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1E-999999999", "-1E-999999999", "0E-999999999", "0E999999999"})
    void offsetRemainsOfAnAlmostZeroTemperature(BigDecimal value) {
        assertEquals(273.15, Reading.of(value, FieldUnit.CELSIUS).in(FieldUnit.KELVIN));
        assertEquals(32, Reading.of(value, FieldUnit.CELSIUS).in(FieldUnit.FAHRENHEIT));
    }

    @ParameterizedTest
    @MethodSource("units")
    <Q extends Quantity<Q>> void extremesKeepTheirOrder(FieldUnit<Q> unit) {
        for (FieldUnit<Q> otherUnit : FieldUnit.allOf(unit.kind())) {
            for (int place = 0; place < EXTREMES.size(); place++) {
                for (int other = 0; other < EXTREMES.size(); other++) {
                    if (isOrdered(place, unit, other, otherUnit)) {
                        Reading<Q> left = Reading.of(EXTREMES.get(place), unit);
                        Reading<Q> right = Reading.of(EXTREMES.get(other), otherUnit);
                        assertEquals(
                                Integer.compare(place, other),
                                Integer.signum(left.compareAmount(right)),
                                () -> left + " and " + right);
                    }
                }
            }
        }
    }

    /** Almost nothing on one scale of temperature is hundreds of degrees on another; what is huge is so on all. */
    private static boolean isOrdered(int place, FieldUnit<?> unit, int other, FieldUnit<?> otherUnit) {
        if (place == other) {
            return unit == otherUnit;
        }
        boolean sameZero = unit.factor().offset().compareTo(otherUnit.factor().offset()) == 0;
        return sameZero || isHuge(EXTREMES.get(place)) || isHuge(EXTREMES.get(other));
    }

    private static boolean isHuge(BigDecimal value) {
        return value.signum() != 0 && value.scale() < 0;
    }

    @Test
    void exactAmountIsCutToAnExponentThatSumsCanBear() {
        assertEquals(
                new BigDecimal("1E+1000"), Reading.of("3E5000", FieldUnit.METRE).exactIn(FieldUnit.METRE));
        assertEquals(
                new BigDecimal("-1E-1000"),
                Reading.of("-3E-5000", FieldUnit.METRE).exactIn(FieldUnit.METRE));
        assertEquals(
                0,
                new BigDecimal("3E+999")
                        .compareTo(Reading.of("3E999", FieldUnit.METRE).exactIn(FieldUnit.METRE)));
    }

    private static void costsLittle(String what, Supplier<?>... works) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        assertTrue(Stream.of(works).map(Supplier::get).allMatch(Objects::nonNull));
        long taken = threads.getCurrentThreadAllocatedBytes() - before;
        assertTrue(taken < LITTLE, () -> what + " took " + taken + " bytes");
    }
}
