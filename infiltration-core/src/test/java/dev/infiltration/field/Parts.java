// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.field;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/** Amounts, dates, times and hosts' values for field books: as a document can hold them, or as they can be built. */
final class Parts {

    /** Amounts about which the methods decide. */
    private static final List<String> USUAL = List.of(
            "300", "310.0", "12.0", "12.5", "50", "4.0", "3.60", "8.0", "8.1", "18.00", "40.00", "40.1", "21.4", "29.9",
            "30", "141.7", "120", "5", "0.45", "12", "38", "100.0", "32", "1", "0", "0.00", "-1", "-0.0");

    private static final List<String> LARGEST_AND_SMALLEST = List.of(
            "1E15",
            "-1E15",
            "1E-15",
            "1e14",
            "999999999999999.9999999999999999999",
            "0E34",
            "0E-34",
            "1.000000000000000000000000000000000",
            "12345678901234.56789012345678901234");

    private static final List<String> BEYOND = List.of(
            "1e999999999",
            "-1e999999999",
            "1e-999999999",
            "-1e-999999999",
            "0e999999999",
            "0e-999999999",
            "1e2147483647",
            "1e-2147483647",
            "1e400",
            "-1e400",
            "1e-400",
            "1e16",
            "1e-16",
            "3.6000000000000000000000000000000000001");

    private static final LocalDate DAY = LocalDate.of(2026, 6, 3);

    private final Arbitrary<BigDecimal> numbers;
    private final Arbitrary<LocalDate> dates;
    private final Arbitrary<ZoneOffset> offsets;
    private final Arbitrary<Object> values;

    private Parts(
            Arbitrary<BigDecimal> numbers,
            Arbitrary<LocalDate> dates,
            Arbitrary<ZoneOffset> offsets,
            Arbitrary<Object> values) {
        this.numbers = numbers;
        this.dates = dates;
        this.offsets = offsets;
        this.values = values;
    }

    /** {@return parts that a document can hold} */
    static Parts readable() {
        return new Parts(
                readableNumbers(),
                Arbitraries.frequencyOf(
                        Tuple.of(9, season()), Tuple.of(1, days(LocalDate.of(0, 1, 1), LocalDate.of(9999, 12, 31)))),
                Arbitraries.integers()
                        .between(-18 * 60, 18 * 60)
                        .map(minutes -> ZoneOffset.ofTotalSeconds(60 * minutes)),
                Arbitraries.oneOf(readableNumbers().asGeneric(), Texts.any().asGeneric(), Arbitraries.of(true, false)));
    }

    /** {@return parts of any size} */
    static Parts any() {
        return new Parts(
                Arbitraries.frequencyOf(Tuple.of(9, readableNumbers()), Tuple.of(1, decimals(BEYOND))),
                Arbitraries.frequencyOf(
                        Tuple.of(9, season()),
                        Tuple.of(1, Arbitraries.of(LocalDate.MIN, LocalDate.MAX)),
                        Tuple.of(1, days(LocalDate.MIN, LocalDate.MAX))),
                Arbitraries.integers().between(-18 * 3600, 18 * 3600).map(ZoneOffset::ofTotalSeconds),
                Arbitraries.of(
                        1,
                        2L,
                        3.0,
                        Double.NaN,
                        Double.POSITIVE_INFINITY,
                        "text",
                        'c',
                        BigInteger.TEN,
                        new BigDecimal("1e999999999")));
    }

    private static Arbitrary<BigDecimal> readableNumbers() {
        return Arbitraries.frequencyOf(
                Tuple.of(6, decimals(USUAL)),
                Tuple.of(
                        2,
                        Arbitraries.bigDecimals()
                                .between(BigDecimal.valueOf(-10), BigDecimal.valueOf(500))
                                .ofScale(2)),
                Tuple.of(1, decimals(LARGEST_AND_SMALLEST)));
    }

    private static Arbitrary<BigDecimal> decimals(List<String> digits) {
        return Arbitraries.of(digits).map(BigDecimal::new);
    }

    private static Arbitrary<LocalDate> season() {
        return Arbitraries.integers().between(-2, 2).map(DAY::plusDays);
    }

    private static Arbitrary<LocalDate> days(LocalDate first, LocalDate last) {
        return Arbitraries.longs()
                .between(first.toEpochDay(), last.toEpochDay())
                .map(LocalDate::ofEpochDay);
    }

    Arbitrary<LocalDate> dates() {
        return dates;
    }

    Arbitrary<BigDecimal> degrees() {
        return Arbitraries.oneOf(
                Arbitraries.bigDecimals()
                        .between(BigDecimal.valueOf(44), BigDecimal.valueOf(45))
                        .ofScale(5),
                numbers);
    }

    Arbitrary<ZoneId> zones() {
        return Arbitraries.of("America/Chicago", "Australia/Lord_Howe", "Asia/Kathmandu", "UTC", "+05:45", "Z")
                .map(ZoneId::of);
    }

    /** {@return times of the morning of few days, most to the minute or the second, and others} */
    Arbitrary<ClockTime> clockTimes() {
        Arbitrary<LocalTime> morning = Arbitraries.integers()
                .between(0, 3 * 3600)
                .map(second -> LocalTime.of(8, 0).plusSeconds(second));
        Arbitrary<LocalTime> fine =
                Arbitraries.longs().between(0, LocalTime.MAX.toNanoOfDay()).map(LocalTime::ofNanoOfDay);
        return Combinators.combine(
                        dates,
                        Arbitraries.frequencyOf(Tuple.of(6, morning), Tuple.of(1, fine)),
                        Arbitraries.of(ClockTime.Precision.values()),
                        offsets.injectNull(0.9))
                .as(Parts::clockTime);
    }

    private static ClockTime clockTime(
            LocalDate date, LocalTime time, ClockTime.Precision precision, ZoneOffset offset) {
        LocalDateTime written =
                date.atTime(precision == ClockTime.Precision.MINUTE ? time.truncatedTo(ChronoUnit.MINUTES) : time);
        return new ClockTime(written, precision, offset);
    }

    Arbitrary<Reading<?>> readings(Class<?> kind) {
        return readings(FieldUnit.all().stream().filter(unit -> unit.kind() == kind));
    }

    Arbitrary<Reading<?>> readings() {
        return readings(FieldUnit.all().stream());
    }

    Arbitrary<WaterReading> water() {
        return readings(FieldUnit.all().stream()
                        .filter(unit -> unit.kind() == Mass.class || unit.kind() == Volume.class))
                .map(WaterReading::new);
    }

    private Arbitrary<Reading<?>> readings(Stream<FieldUnit<?>> units) {
        return Combinators.combine(numbers, Arbitraries.of(units.toList()), numbers.injectNull(0.9))
                .as(Parts::reading);
    }

    private static Reading<?> reading(BigDecimal value, FieldUnit<?> unit, BigDecimal resolution) {
        return typed(value, unit, resolution);
    }

    private static <Q extends Quantity<Q>> Reading<Q> typed(
            BigDecimal value, FieldUnit<Q> unit, BigDecimal resolution) {
        return new Reading<>(value, unit, resolution);
    }

    Arbitrary<Map<String, Object>> extras() {
        Arbitrary<Object> leaves = values.injectNull(0.1);
        Arbitrary<Object> nested = Arbitraries.oneOf(
                leaves, leaves.list().ofMaxSize(2).asGeneric(), maps(leaves).asGeneric());
        return Arbitraries.frequencyOf(Tuple.of(4, Arbitraries.just(Map.of())), Tuple.of(1, maps(nested)));
    }

    private static Arbitrary<Map<String, Object>> maps(Arbitrary<Object> values) {
        return Arbitraries.maps(Texts.any(), values).ofMaxSize(2);
    }
}
