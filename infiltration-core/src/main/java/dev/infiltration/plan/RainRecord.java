// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Rain over a stretch of time: a gauge's record, an hourly forecast, or one after the other.
 *
 * <p>Between {@code from} and {@code to} whatever is not listed was dry; beyond them nothing is known. A fall may have begun
 * and ended at any moment of its span, so the whole span counts as wet. A forecast is a guess: on the day the last rain is
 * written down from a gauge.
 *
 * <pre>{@code
 * RainRecord gauge = new RainRecord(yesterday, now, List.of(new RainRecord.Fall(from, to, Reading.of("7", FieldUnit.MILLIMETRE))));
 * RainRecord all = gauge.then(RainRecord.hourly(now, forecastDepths));
 * }</pre>
 *
 * @param from  from when on all rain is listed
 * @param to    up to when it is
 * @param falls the falls of rain, in order of their beginning
 */
public record RainRecord(Instant from, Instant to, List<Fall> falls) {

    /**
     * A fall of rain, or a stretch of which nothing is known.
     *
     * @param from  it began no earlier
     * @param to    it ended no later
     * @param depth how much fell; null where that is not known
     */
    public record Fall(Instant from, Instant to, @Nullable Reading<Length> depth) {

        /**
         * Checks the span.
         *
         * @throws IllegalArgumentException if it ends before it begins
         */
        public Fall {
            if (to.isBefore(from)) {
                throw new IllegalArgumentException("to: expected no earlier than " + from + ", got " + to);
            }
        }

        private boolean isWet(Reading<Length> trace) {
            return depth == null || depth.compareAmount(trace) > 0;
        }
    }

    /**
     * Sorts the falls.
     *
     * @throws IllegalArgumentException if the stretch ends before it begins
     */
    public RainRecord {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("to: expected no earlier than " + from + ", got " + to);
        }
        falls = falls.stream().sorted(Comparator.comparing(Fall::from)).toList();
    }

    /**
     * {@return a record of depths hour by hour}, of a forecast or a gauge
     *
     * @param from   when the first hour begins
     * @param depths the depth of each hour; 0 where it is dry
     */
    public static RainRecord hourly(Instant from, List<Reading<Length>> depths) {
        List<Fall> falls = new ArrayList<>();
        for (Reading<Length> depth : depths) {
            Instant begin = from.plus(Duration.ofHours(falls.size()));
            falls.add(new Fall(begin, begin.plus(Duration.ofHours(1)), depth));
        }
        return new RainRecord(from, from.plus(Duration.ofHours(depths.size())), falls)
                .without(Reading.of("0", FieldUnit.MILLIMETRE));
    }

    /**
     * {@return this record and a later one}; of a gap between them nothing is known
     *
     * @param later a record that ends no earlier than this one
     */
    public RainRecord then(RainRecord later) {
        List<Fall> all = new ArrayList<>(falls);
        all.addAll(later.falls);
        if (later.from.isAfter(to)) {
            all.add(new Fall(to, later.from, null));
        }
        return new RainRecord(from.isBefore(later.from) ? from : later.from, later.to.isAfter(to) ? later.to : to, all);
    }

    /**
     * {@return this record without falls that are taken as dry}: the methods name no least depth, so it is the user's choice
     *
     * @param trace the largest depth that is taken as dry
     */
    public RainRecord without(Reading<Length> trace) {
        Objects.requireNonNull(trace, "trace");
        return new RainRecord(
                from, to, falls.stream().filter(fall -> fall.isWet(trace)).toList());
    }

    /** {@return the stretches without rain, in order, those of no length too} */
    Stream<Fall> dryStretches() {
        Stream.Builder<Fall> dry = Stream.builder();
        Instant since = from;
        for (Fall fall : falls) {
            if (!fall.from.isBefore(since)) {
                dry.add(new Fall(since, fall.from, null));
            }
            since = fall.to.isAfter(since) ? fall.to : since;
        }
        if (!to.isBefore(since)) {
            dry.add(new Fall(since, to, null));
        }
        return dry.build();
    }
}
