// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import dev.infiltration.units.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/** Contradictions within a method. */
final class MethodFaults {

    /** Largest ratio of the lowest limit of one system to the highest limit of the other. */
    private static final double MOST_APART = 1.25;

    /** Largest number of runs at a location on a day: one run takes some minutes. */
    private static final int MOST_RUNS = 100;

    private MethodFaults() {}

    static void refuse(
            @Nullable String id,
            @Nullable String designation,
            Map<Limit<?>, Band<?>> limits,
            List<MassStep> steps,
            int runsPerDay,
            @Nullable LocationCount count) {
        List<String> faults = new ArrayList<>();
        addNameFaults("id", id, faults);
        addNameFaults("designation", designation, faults);
        Limit.all().forEach(limit -> addLimitFaults(limit, limits.get(limit), faults));
        addCountFaults(count, faults);
        addStepFaults(steps, faults);
        if (runsPerDay < 1 || runsPerDay > MOST_RUNS) {
            faults.add("runsPerDay: expected 1 to " + MOST_RUNS + ", got " + runsPerDay);
        }
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException("the method contradicts itself: " + String.join("; ", faults));
        }
    }

    private static void addNameFaults(String name, @Nullable String value, List<String> faults) {
        if (value == null) {
            faults.add("no " + name);
        } else if (value.isEmpty()) {
            faults.add(name + ": expected a name, got none");
        }
    }

    private static void addLimitFaults(Limit<?> limit, @Nullable Band<?> band, List<String> faults) {
        if (band == null) {
            faults.add("no " + limit);
        } else {
            addKindFaults(limit, band, faults);
            addBandFaults(limit.key(), band, faults);
        }
    }

    /** The type of a map does not bind a band to the kind of its limit. */
    private static void addKindFaults(Limit<?> limit, Band<?> band, List<String> faults) {
        Stream.of(band.si(), band.inchPound())
                .flatMap(range -> Stream.of(Optional.ofNullable(range.lowest()), Optional.ofNullable(range.highest())))
                .flatMap(Optional::stream)
                .filter(amount -> amount.unit().kind() != limit.kind())
                .forEach(amount -> faults.add(limit + ": expected "
                        + limit.kind().getSimpleName().toLowerCase(Locale.ROOT) + ", got " + amount));
    }

    private static void addCountFaults(@Nullable LocationCount count, List<String> faults) {
        if (count == null) {
            faults.add("no locationCount");
        } else if (count.si().isEmpty() || count.inchPound().isEmpty()) {
            faults.add("locationCount: expected steps in both unit systems");
        }
    }

    private static <Q extends Quantity<Q>> void addBandFaults(String name, Band<Q> band, List<String> faults) {
        addEmptyRanges(name, band, faults);
        addNegative(name + ".si", band.si(), faults);
        addNegative(name + ".inchPound", band.inchPound(), faults);
        if (isFarBelow(band.si(), band.inchPound()) || isFarBelow(band.inchPound(), band.si())) {
            faults.add(
                    name + ": expected about the same in both systems, got " + band.si() + " and " + band.inchPound());
        }
    }

    /** Only a temperature may be negative. */
    private static <Q extends Quantity<Q>> void addNegative(String name, Range<Q> range, List<String> faults) {
        for (Reading<Q> limit : limits(range)) {
            if (limit.value().signum() < 0 && limit.unit().kind() != Temperature.class) {
                faults.add(name + ": expected no limit below zero, got " + limit);
            }
        }
    }

    private static <Q extends Quantity<Q>> List<Reading<Q>> limits(Range<Q> range) {
        List<Reading<Q>> limits = new ArrayList<>();
        if (range.lowest() != null) {
            limits.add(range.lowest());
        }
        if (range.highest() != null) {
            limits.add(range.highest());
        }
        return limits;
    }

    /** Standards state round amounts in each system, such as 18.00 kg and 40.00 lb; a typing error differs by more. */
    private static <Q extends Quantity<Q>> boolean isFarBelow(Range<Q> lower, Range<Q> upper) {
        Reading<Q> highest = lower.highest();
        Reading<Q> lowest = upper.lowest();
        return highest != null
                && lowest != null
                && lowest.unit().kind() != Temperature.class
                && highest.in(lowest.unit()) * MOST_APART < lowest.in(lowest.unit());
    }

    private static void addEmptyRanges(String name, Band<?> band, List<String> faults) {
        if (band.si().isEmpty()) {
            faults.add(name + ".si: the range is empty: " + band.si());
        }
        if (band.inchPound().isEmpty()) {
            faults.add(name + ".inchPound: the range is empty: " + band.inchPound());
        }
    }

    private static void addStepFaults(List<MassStep> steps, List<String> faults) {
        if (steps.isEmpty() || steps.get(steps.size() - 1).below() != null) {
            faults.add("massSteps: expected a last step without a time, for every longer prewetting");
        }
        for (int i = 0; i < steps.size(); i++) {
            addBandFaults("massSteps[" + i + "].mass", steps.get(i).mass(), faults);
            if (i + 1 < steps.size()
                    && !isBefore(steps.get(i).below(), steps.get(i + 1).below())) {
                faults.add("massSteps[" + i + "]: expected to end before the next step ends");
            }
        }
    }

    private static boolean isBefore(@Nullable Reading<Time> below, @Nullable Reading<Time> next) {
        return below != null && (next == null || below.compareAmount(next) < 0);
    }
}
