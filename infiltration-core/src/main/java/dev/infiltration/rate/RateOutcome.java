// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.units.InfiltrationRate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a run, a location or a surface comes to: a rate, a bound of it, or none.
 *
 * <p>A rate that cannot be had is absent by type. The reasons are ids of the rules that explain them.
 */
public sealed interface RateOutcome {

    /** {@return the ids of the rules that say why there is no plain rate} */
    List<String> reasons();

    /** {@return the word for this outcome in documents} */
    String word();

    /** {@return the measured rate, for {@link Measured} alone} */
    default Optional<InfiltrationRate> rate() {
        return Optional.empty();
    }

    /** {@return the rate or the bound of it; empty for {@link Withheld}} */
    Optional<InfiltrationRate> figure();

    /**
     * {@return what one of four functions makes of this outcome}
     *
     * @param measured for a rate
     * @param upper    for a rate that is at most so much
     * @param lower    for a rate that is at least so much
     * @param withheld for no rate
     * @param <T>      what the functions make
     */
    <T> T match(
            Function<? super Measured, ? extends T> measured,
            Function<? super UpperBound, ? extends T> upper,
            Function<? super LowerBound, ? extends T> lower,
            Function<? super Withheld, ? extends T> withheld);

    /**
     * The water drained and nothing moved the rate.
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
     * The rate is at most so much: water was left standing, or something made it look faster.
     *
     * @param bound   the bound
     * @param reasons ids of the rules that say why
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
     * The rate is at least so much: the head could not be reached or was lost.
     *
     * @param bound   the bound
     * @param reasons ids of the rules that say why
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
     * No rate can or may be given.
     *
     * @param reasons ids of the rules that say why
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
