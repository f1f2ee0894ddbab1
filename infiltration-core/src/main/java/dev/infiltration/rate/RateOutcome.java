// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.units.InfiltrationRate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Outcome of a run, a location or a surface: a rate, a bound, or the reasons why no rate is given.
 *
 * <p>A run without a rate is a {@link Withheld} that gives the reasons: ids of rules.
 */
public sealed interface RateOutcome {

    /** {@return the ids of the rules that give the reasons there is no plain rate} */
    List<String> reasons();

    /** {@return the name of this outcome in JSON documents} */
    String word();

    /** {@return the measured rate, for {@link Measured} alone} */
    default Optional<InfiltrationRate> rate() {
        return Optional.empty();
    }

    /** {@return the rate or the bound of it; empty for {@link Withheld}} */
    Optional<InfiltrationRate> figure();

    /**
     * {@return the result of the function for this outcome}
     *
     * @param measured for a rate
     * @param upper    for an upper bound
     * @param lower    for a lower bound
     * @param withheld for no rate
     * @param <T>      the type of the result
     */
    <T> T match(
            Function<? super Measured, ? extends T> measured,
            Function<? super UpperBound, ? extends T> upper,
            Function<? super LowerBound, ? extends T> lower,
            Function<? super Withheld, ? extends T> withheld);

    /**
     * The water drained and no event affected the rate.
     *
     * @param value the rate
     */
    record Measured(InfiltrationRate value) implements RateOutcome {

        @Override
        public List<String> reasons() {
            return List.of();
        }

        @Override
        public String word() {
            return "measured";
        }

        @Override
        public Optional<InfiltrationRate> rate() {
            return Optional.of(value);
        }

        @Override
        public Optional<InfiltrationRate> figure() {
            return Optional.of(value);
        }

        @Override
        public <T> T match(
                Function<? super Measured, ? extends T> measured,
                Function<? super UpperBound, ? extends T> upper,
                Function<? super LowerBound, ? extends T> lower,
                Function<? super Withheld, ? extends T> withheld) {
            return measured.apply(this);
        }
    }

    /**
     * Upper bound: the run was stopped with water standing, or an event biased the rate high.
     *
     * @param bound   the bound
     * @param reasons ids of the rules that give the reasons
     */
    record UpperBound(InfiltrationRate bound, List<String> reasons) implements RateOutcome {

        /** Copies the reasons. */
        public UpperBound {
            reasons = List.copyOf(reasons);
        }

        @Override
        public String word() {
            return "upper-bound";
        }

        @Override
        public Optional<InfiltrationRate> figure() {
            return Optional.of(bound);
        }

        @Override
        public <T> T match(
                Function<? super Measured, ? extends T> measured,
                Function<? super UpperBound, ? extends T> upper,
                Function<? super LowerBound, ? extends T> lower,
                Function<? super Withheld, ? extends T> withheld) {
            return upper.apply(this);
        }
    }

    /**
     * Lower bound: the head was not reached or was lost.
     *
     * @param bound   the bound
     * @param reasons ids of the rules that give the reasons
     */
    record LowerBound(InfiltrationRate bound, List<String> reasons) implements RateOutcome {

        /** Copies the reasons. */
        public LowerBound {
            reasons = List.copyOf(reasons);
        }

        @Override
        public String word() {
            return "lower-bound";
        }

        @Override
        public Optional<InfiltrationRate> figure() {
            return Optional.of(bound);
        }

        @Override
        public <T> T match(
                Function<? super Measured, ? extends T> measured,
                Function<? super UpperBound, ? extends T> upper,
                Function<? super LowerBound, ? extends T> lower,
                Function<? super Withheld, ? extends T> withheld) {
            return lower.apply(this);
        }
    }

    /**
     * No rate is given.
     *
     * @param reasons ids of the rules that give the reasons
     */
    record Withheld(List<String> reasons) implements RateOutcome {

        /** Copies the reasons. */
        public Withheld {
            reasons = List.copyOf(reasons);
        }

        @Override
        public String word() {
            return "withheld";
        }

        @Override
        public Optional<InfiltrationRate> figure() {
            return Optional.empty();
        }

        @Override
        public <T> T match(
                Function<? super Measured, ? extends T> measured,
                Function<? super UpperBound, ? extends T> upper,
                Function<? super LowerBound, ? extends T> lower,
                Function<? super Withheld, ? extends T> withheld) {
            return withheld.apply(this);
        }
    }
}
