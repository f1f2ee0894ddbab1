// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.field.JsonName;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.statistics.Interval;
import dev.infiltration.statistics.TextTable;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import javax.measure.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * What a surface must come up to, as the user's specification or rule states it. None is shipped.
 *
 * <p>The relation is the one in which the surface passes: "maintain below 250" is {@link Relation#AT_LEAST} 250, "act at 10
 * or less" is {@link Relation#MORE_THAN} than 10.
 *
 * @param type      what is compared with the limit
 * @param relation  how it must stand to the limit
 * @param limit     the limit as it is stated, with its unit
 * @param purpose   what the decision is for
 * @param method    id of the test method that the limit belongs to
 * @param source    who states it, and where
 * @param share     for {@link Type#SHARE_OF_LOCATIONS} the share required, for {@link Type#CONFIDENCE_BOUND} how often the
 *                  bound is right; above 0, at most 1
 * @param roundingIncrement the compared rate is first rounded to a multiple of it, half to even, in the unit of the limit;
 *                  null: it is not rounded
 * @param how       how data of another method may be judged by it, in the user's words; null: they are refused
 */
public record Criterion(
        Type type,
        Relation relation,
        Reading<Speed> limit,
        Purpose purpose,
        String method,
        String source,
        double share,
        @Nullable Reading<Speed> roundingIncrement,
        @Nullable String how) {

    /** The share of locations or the level where none is named: all of them, 95 %. */
    private static final double ALL = 1;
    /** A bound that is right half the time is none. */
    private static final double EVEN = 0.5;

    /** Digits of a computed figure that mean something; the rest is rounding. */
    private static final MathContext DIGITS = new MathContext(12, RoundingMode.HALF_EVEN);

    /** Places that anybody rounds to; far more would cost time. */
    private static final int MOST_PLACES = 30;

    /** What is compared with the limit. */
    public enum Type implements JsonName {
        /** The arithmetic mean of the locations. */
        MEAN,
        /** The geometric mean of the locations. */
        GEOMETRIC_MEAN,
        /** The median of the locations. */
        MEDIAN,
        /** Each location by itself: all must pass. */
        EVERY_LOCATION,
        /** Each location by itself: a share of them must pass. */
        SHARE_OF_LOCATIONS,
        /** The one-sided confidence bound of the surface's geometric mean on the side of the limit. */
        CONFIDENCE_BOUND
    }

    /** How a figure must stand to a limit. */
    public enum Relation implements JsonName {
        /** Below it. */
        LESS_THAN("<"),
        /** At it or below. */
        AT_MOST("≤"),
        /** At it or above. */
        AT_LEAST("≥"),
        /** Above it. */
        MORE_THAN(">");

        private final String symbol;

        Relation(String symbol) {
            this.symbol = symbol;
        }

        /** {@return the sign of the relation} */
        public String symbol() {
            return symbol;
        }

        /** {@return whether the limit is one from below: high rates pass} */
        public boolean isFloor() {
            return this == AT_LEAST || this == MORE_THAN;
        }

        private boolean holds(int comparison) {
            return switch (this) {
                case LESS_THAN -> comparison < 0;
                case AT_MOST -> comparison <= 0;
                case AT_LEAST -> comparison >= 0;
                case MORE_THAN -> comparison > 0;
            };
        }
    }

    /** What a decision is for. */
    public enum Purpose implements JsonName {
        /** Whether a new surface is accepted. */
        ACCEPTANCE,
        /** Whether maintenance is due. */
        MAINTENANCE,
        /** Whether a cleaning did what it should. */
        AFTER_CLEANING
    }

    /**
     * Checks share and rounding.
     *
     * @throws IllegalArgumentException if the share is not above 0 and at most 1, the level of a bound not between a half and
     *     1, or the rounding increment not above 0 or in another unit than the limit
     */
    public Criterion {
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("share: expected above 0, at most 1, got " + share);
        }
        if (type == Type.CONFIDENCE_BOUND && !(share > EVEN && share < ALL)) {
            throw new IllegalArgumentException("share: expected a level above 0.5 and below 1, got " + share);
        }
        if (roundingIncrement != null) {
            requireIncrement(roundingIncrement, limit.unit());
        }
    }

    private static void requireIncrement(Reading<Speed> increment, FieldUnit<Speed> unit) {
        if (!increment.isPositive() || Math.abs(increment.value().scale()) > MOST_PLACES) {
            throw new IllegalArgumentException(
                    "roundingIncrement: expected above 0, of few places, got " + increment.value());
        }
        if (!increment.unit().equals(unit)) {
            throw new IllegalArgumentException(
                    "roundingIncrement: expected the unit of the limit, " + unit + ", got " + increment.unit());
        }
    }

    /**
     * {@return a criterion read literally, for acceptance, without rounding}
     *
     * @param type     what is compared with the limit
     * @param relation how it must stand to the limit
     * @param limit    the limit as it is stated
     * @param method   id of the test method that the limit belongs to
     * @param source   who states it, and where
     */
    public static Criterion of(Type type, Relation relation, Reading<Speed> limit, String method, String source) {
        double share = type == Type.CONFIDENCE_BOUND ? Interval.LEVEL : ALL;
        return new Criterion(type, relation, limit, Purpose.ACCEPTANCE, method, source, share, null, null);
    }

    /**
     * {@return this criterion for another purpose}
     *
     * @param purpose what the decision is for
     */
    public Criterion withPurpose(Purpose purpose) {
        return new Criterion(type, relation, limit, purpose, method, source, share, roundingIncrement, how);
    }

    /**
     * {@return this criterion with another share of locations, or level of the bound}
     *
     * @param share above 0, at most 1
     */
    public Criterion withShare(double share) {
        return new Criterion(type, relation, limit, purpose, method, source, share, roundingIncrement, how);
    }

    /**
     * {@return this criterion with rates that are rounded before they are compared}
     *
     * @param roundingIncrement the rate is rounded to a multiple of it; above 0, in the unit of the limit
     */
    public Criterion withRounding(Reading<Speed> roundingIncrement) {
        return new Criterion(type, relation, limit, purpose, method, source, share, roundingIncrement, how);
    }

    /**
     * {@return this criterion for data of any method}
     *
     * @param how why it may be used, in the user's words; every decision says it
     */
    public Criterion forOtherMethods(String how) {
        return new Criterion(type, relation, limit, purpose, method, source, share, roundingIncrement, how);
    }

    /**
     * {@return whether a figure passes, read literally: rounded as stated, compared as decimals, no guard band}
     *
     * @param figure the figure
     */
    public boolean passes(InfiltrationRate figure) {
        BigDecimal value = new BigDecimal(figure.in(limit.unit())).round(DIGITS);
        return relation.holds(rounded(value).compareTo(limit.value().round(DIGITS)));
    }

    /**
     * {@return whether an outcome settles if its rate passes}: a measured rate does; a bound does only where every rate that it
     * leaves open passes, or none
     *
     * @param outcome the outcome; one that is withheld settles nothing
     */
    public boolean isSettledBy(RateOutcome outcome) {
        return outcome.match(
                measured -> true,
                upper -> passes(upper.bound()) != relation.isFloor(),
                lower -> passes(lower.bound()) == relation.isFloor(),
                withheld -> false);
    }

    /**
     * {@return a rate for people beside this limit}: to three digits, or as many as show on which side of the limit it lies
     *
     * @param rate the rate
     * @param unit the unit
     */
    public String text(InfiltrationRate rate, FieldUnit<Speed> unit) {
        return rate.text(unit, limitRate().stream().toList());
    }

    /** {@return the limit as a rate; empty where it is negative or too large for one} */
    public Optional<InfiltrationRate> limitRate() {
        double value = limitInMillimetresPerHour();
        return value >= 0 && Double.isFinite(value) ? Optional.of(new InfiltrationRate(value)) : Optional.empty();
    }

    /**
     * {@return an interval for people in mm/h, its ends written as {@link #text(InfiltrationRate, FieldUnit)} writes a rate}:
     * as its lower limit where the upper one is more than a hundred times the estimate
     *
     * @param interval the interval, in mm/h
     * @param estimate the estimate that it belongs to, in mm/h
     */
    String text(Interval interval, double estimate) {
        return interval.text(
                estimate,
                value -> text(new InfiltrationRate(Math.max(0, value)), FieldUnit.MILLIMETRE_PER_HOUR),
                "locations");
    }

    private BigDecimal rounded(BigDecimal value) {
        if (roundingIncrement == null) {
            return value;
        }
        BigDecimal increment = roundingIncrement.value();
        return value.divide(increment, 0, RoundingMode.HALF_EVEN).multiply(increment);
    }

    /** {@return the limit in mm/h} */
    double limitInMillimetresPerHour() {
        return limit.in(FieldUnit.MILLIMETRE_PER_HOUR);
    }

    /** {@return the criterion in words, with its source} */
    @Override
    public String toString() {
        String part = type == Type.SHARE_OF_LOCATIONS || type == Type.CONFIDENCE_BOUND
                ? " (" + TextTable.number(100 * share) + " %)"
                : "";
        String rounding = roundingIncrement == null ? "" : " after rounding to " + roundingIncrement;
        return type.word().replace('-', ' ') + part + " " + relation.symbol() + " " + limit + rounding + ", " + method
                + " (" + source + ")";
    }
}
