// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Pouring;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.WaterReading;
import dev.infiltration.method.Band;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/** Likely entry errors: another unit for the same number, minutes and seconds written as a decimal. Nothing is changed. */
final class EntryErrors {

    private static final int MOST_DIGITS = 9;
    private static final int SECONDS_IN_A_MINUTE = 60;
    private static final int DIGITS_OF_SECONDS = 2;
    private static final int HUNDRED = 100;

    private EntryErrors() {}

    /** {@return the unit in which the same number would be within the band}: one of the same kind before another */
    static Optional<String> unit(Pouring pouring, Band<Mass> band) {
        return pouring.pouredWater()
                .filter(water -> isOneUnit(pouring, water))
                .flatMap(water -> others(water)
                        .filter(other -> band.in(other.system()).contains(other.mass()))
                        .findFirst()
                        .map(other -> water + " written for " + other));
    }

    /** Whether the number is one that somebody wrote, or the sum of numbers in one unit. */
    private static boolean isOneUnit(Pouring pouring, WaterReading water) {
        return pouring.water() != null
                || pouring.pours().stream()
                        .flatMap(pour -> Stream.of(pour.before(), pour.after()))
                        .allMatch(reading -> reading != null
                                && reading.reading()
                                        .unit()
                                        .equals(water.reading().unit()));
    }

    private static Stream<WaterReading> others(WaterReading water) {
        BigDecimal number = water.reading().value();
        Stream<WaterReading> masses =
                FieldUnit.allOf(Mass.class).stream().map(unit -> WaterReading.weighed(Reading.of(number, unit)));
        Stream<WaterReading> volumes =
                FieldUnit.allOf(Volume.class).stream().map(unit -> WaterReading.measured(Reading.of(number, unit)));
        return water.isVolume() ? Stream.concat(volumes, masses) : Stream.concat(masses, volumes);
    }

    /** {@return the elapsed time of a run, or of its prewetting, read as minutes and seconds}, where the rates then pass */
    static Optional<String> minutes(PouringAt at, Predicate<InfiltrationRate> isPassing) {
        Reading<Time> elapsed = at.pouring().elapsed();
        BigDecimal seconds = elapsed == null ? null : asMinutes(elapsed);
        if (seconds == null) {
            return Optional.empty();
        }
        RateOutcome outcome = at.test().equation().rate(at.test().ringOrNull(), with(at.pouring(), seconds));
        return outcome.figure()
                .filter(isPassing)
                .map(rate ->
                        (at.isRun() ? "" : "prewetting ") + "elapsed " + elapsed + " written for " + clock(seconds));
    }

    private static Pouring with(Pouring pouring, BigDecimal seconds) {
        Reading<Time> elapsed = Reading.of(seconds, FieldUnit.SECOND);
        return pouring instanceof TestRun run ? run.withElapsed(elapsed) : ((PreWet) pouring).withElapsed(elapsed);
    }

    /** The digits 2.21, 2.217 or 221 as two minutes and 21 seconds; null where they cannot be read so. */
    private static @Nullable BigDecimal asMinutes(Reading<Time> elapsed) {
        BigDecimal number = elapsed.value();
        boolean isPlain = number.signum() > 0 && number.precision() <= MOST_DIGITS && number.scale() <= MOST_DIGITS;
        boolean isInUnit =
                elapsed.unit().equals(FieldUnit.SECOND) || elapsed.unit().equals(FieldUnit.MINUTE);
        boolean hasSeconds = number.scale() >= DIGITS_OF_SECONDS
                || (number.scale() == 0 && number.compareTo(BigDecimal.valueOf(HUNDRED)) >= 0);
        if (!isPlain || !isInUnit || !hasSeconds) {
            return null;
        }
        BigDecimal digits = number.scale() == 0 ? number : number.movePointRight(DIGITS_OF_SECONDS);
        BigDecimal[] parts = digits.divideAndRemainder(BigDecimal.valueOf(HUNDRED));
        boolean isClock = parts[0].signum() > 0 && parts[1].compareTo(BigDecimal.valueOf(SECONDS_IN_A_MINUTE)) < 0;
        return isClock
                ? parts[0].multiply(BigDecimal.valueOf(SECONDS_IN_A_MINUTE)).add(parts[1])
                : null;
    }

    /** Seconds as {@code 2:21.7}. */
    private static String clock(BigDecimal seconds) {
        BigDecimal[] parts = seconds.divideAndRemainder(BigDecimal.valueOf(SECONDS_IN_A_MINUTE));
        boolean isShort = parts[1].compareTo(BigDecimal.TEN) < 0;
        return parts[0].toBigInteger() + (isShort ? ":0" : ":") + parts[1].toPlainString();
    }
}
