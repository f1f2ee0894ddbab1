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
import java.util.OptionalDouble;
import javax.measure.quantity.Speed;
import org.jspecify.annotations.Nullable;

/**
 * Limit that a surface must meet, as the user's specification states it. The library contains none.
 *
 * <p>The relation is the one in which the surface passes: "maintain below 250" is {@link Relation#AT_LEAST} 250, "act at 10
 * or less" is {@link Relation#MORE_THAN} than 10.
 *
 * @param type      what is compared with the limit
 * @param relation  relation to the limit with which the surface passes
 * @param limit     the limit as it is stated, with its unit
 * @param purpose   the purpose of the decision
 * @param method    id of the test method that the limit applies to
 * @param source    who states it, and where
 * @param requiredShareOrLevel for {@link Type#SHARE_OF_LOCATIONS} the share of locations that must pass, for
 *     {@link Type#CONFIDENCE_BOUND} the one-sided confidence level; above 0, at most 1
 * @param roundingIncrement the compared rate is first rounded to a multiple of it, half to even, in the unit of the limit;
 *                  null: it is not rounded
 * @param otherMethodJustification why rates of another method may be evaluated, in the user's words; null: they are not
 *     evaluated
 */
public record Criterion(
        Type type,
        Relation relation,
        Reading<Speed> limit,
        Purpose purpose,
        String method,
        String source,
        double requiredShareOrLevel,
        @Nullable Reading<Speed> roundingIncrement,
        @Nullable String otherMethodJustification) {

    /** The share of locations if none is stated: all. */
    private static final double ALL = 1;
    /** Lower end of the confidence level of a one-sided bound: at 0.5 the bound is the estimate itself. */
    private static final double EVEN = 0.5;

    /** Significant digits of a computed rate; further digits are rounding errors. */
    private static final MathContext DIGITS = new MathContext(12, RoundingMode.HALF_EVEN);

    /** Most decimal places of an increment; many more would take too much time. */
    private static final int MOST_PLACES = 30;

    /** What is compared with the limit. */
    public enum Type implements JsonName {
        /** The arithmetic mean of the locations. */
        MEAN,
        /** The geometric mean of the locations. */
        GEOMETRIC_MEAN,
        /** The median of the locations. */
        MEDIAN,
        /** Each location: all must pass. */
        EVERY_LOCATION,
        /** Each location: a share of them must pass. */
        SHARE_OF_LOCATIONS,
        /** The one-sided confidence bound of the surface's geometric mean on the side of the limit. */
        CONFIDENCE_BOUND
    }

    /** Relation of a rate to a limit. */
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

        /** {@return whether the limit is a lower limit: high rates pass} */
        public boolean isFloor() {
            return this == AT_LEAST || this == MORE_THAN;
        }

        private boolean isTrue(int comparison) {
            return switch (this) {
                case LESS_THAN -> comparison < 0;
                case AT_MOST -> comparison <= 0;
                case AT_LEAST -> comparison >= 0;
                case MORE_THAN -> comparison > 0;
            };
        }
    }

    /** Purpose of a decision. */
    public enum Purpose implements JsonName {
        /** Whether a new surface is accepted. */
        ACCEPTANCE,
        /** Whether maintenance is due. */
        MAINTENANCE,
        /** Whether a cleaning was successful. */
        AFTER_CLEANING
    }

    /**
     * Checks the share or level, and the rounding increment.
     *
     * @throws IllegalArgumentException if the share is not above 0 and at most 1, the level of a bound is not between 0.5
     *     and 1, or the rounding increment is not above 0 or in another unit than the limit
     */
    public Criterion {
        if (!(requiredShareOrLevel > 0 && requiredShareOrLevel <= 1)) {
            throw new IllegalArgumentException(
                    "requiredShareOrLevel: expected above 0, at most 1, got " + requiredShareOrLevel);
        }
        if (type == Type.CONFIDENCE_BOUND && !(requiredShareOrLevel > EVEN && requiredShareOrLevel < ALL)) {
            throw new IllegalArgumentException(
                    "requiredShareOrLevel: expected a level above 0.5 and below 1, got " + requiredShareOrLevel);
        }
        if (roundingIncrement != null) {
            requireIncrement(roundingIncrement, limit.unit());
        }
    }

    private static void requireIncrement(Reading<Speed> increment, FieldUnit<Speed> unit) {
        if (!increment.isPositive() || Math.abs(increment.value().scale()) > MOST_PLACES) {
            throw new IllegalArgumentException(
                    "roundingIncrement: expected above 0, with few decimal places, got " + increment.value());
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
     * @param relation relation to the limit with which the surface passes
     * @param limit    the limit as it is stated
     * @param method   id of the test method that the limit applies to
     * @param source   who states it, and where
     */
    public static Criterion of(Type type, Relation relation, Reading<Speed> limit, String method, String source) {
        double share = type == Type.CONFIDENCE_BOUND ? Interval.LEVEL : ALL;
        return new Criterion(type, relation, limit, Purpose.ACCEPTANCE, method, source, share, null, null);
    }

    /**
     * {@return this criterion for another purpose}
     *
     * @param purpose the purpose of the decision
     */
    public Criterion withPurpose(Purpose purpose) {
        return new Criterion(
                type,
                relation,
                limit,
                purpose,
                method,
                source,
                requiredShareOrLevel,
                roundingIncrement,
                otherMethodJustification);
    }

    /**
     * {@return this criterion with another share of locations that must pass}
     *
     * @param requiredShare above 0, at most 1
     */
    public Criterion withRequiredShare(double requiredShare) {
        return withShareOrLevel(requiredShare);
    }

    /**
     * {@return this criterion with another confidence level of the one-sided bound}
     *
     * @param level above 0.5 and below 1
     */
    public Criterion withLevel(double level) {
        return withShareOrLevel(level);
    }

    private Criterion withShareOrLevel(double value) {
        return new Criterion(
                type, relation, limit, purpose, method, source, value, roundingIncrement, otherMethodJustification);
    }

    /** {@return the share of the locations that must pass; present for {@link Type#SHARE_OF_LOCATIONS} only} */
    public OptionalDouble requiredShare() {
        return type == Type.SHARE_OF_LOCATIONS ? OptionalDouble.of(requiredShareOrLevel) : OptionalDouble.empty();
    }

    /** {@return the confidence level of the one-sided bound; present for {@link Type#CONFIDENCE_BOUND} only} */
    public OptionalDouble level() {
        return type == Type.CONFIDENCE_BOUND ? OptionalDouble.of(requiredShareOrLevel) : OptionalDouble.empty();
    }

    /**
     * {@return this criterion with rates that are rounded before they are compared}
     *
     * @param roundingIncrement the rate is rounded to a multiple of it; above 0, in the unit of the limit
     */
    public Criterion withRounding(Reading<Speed> roundingIncrement) {
        return new Criterion(
                type,
                relation,
                limit,
                purpose,
                method,
                source,
                requiredShareOrLevel,
                roundingIncrement,
                otherMethodJustification);
    }

    /**
     * {@return this criterion for data of any method}
     *
     * @param otherMethodJustification why their rates may be evaluated, in the user's words; every decision states it in its notes
     */
    public Criterion forOtherMethods(String otherMethodJustification) {
        return new Criterion(
                type,
                relation,
                limit,
                purpose,
                method,
                source,
                requiredShareOrLevel,
                roundingIncrement,
                otherMethodJustification);
    }

    /**
     * {@return whether a rate passes if the criterion is applied literally: rounded as stated, compared as decimals, no guard
     *     band}
     *
     * @param rate the rate
     */
    public boolean passes(InfiltrationRate rate) {
        BigDecimal value = new BigDecimal(rate.in(limit.unit())).round(DIGITS);
        return relation.isTrue(rounded(value).compareTo(limit.value().round(DIGITS)));
    }

    /**
     * {@return whether an outcome decides if its rate passes}: a measured rate does; a bound does only if every rate within it
     * passes, or none
     *
     * @param outcome the outcome; a withheld rate decides nothing
     */
    public boolean isSettledBy(RateOutcome outcome) {
        return outcome.match(
                measured -> true,
                upper -> passes(upper.bound()) != relation.isFloor(),
                lower -> passes(lower.bound()) == relation.isFloor(),
                withheld -> false);
    }

    /**
     * {@return a rate for people}: with three digits, or as many as show if it is above or below the limit
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
                ? " (" + TextTable.number(100 * requiredShareOrLevel) + " %)"
                : "";
        String rounding = roundingIncrement == null ? "" : " after rounding to " + roundingIncrement;
        return type.word().replace('-', ' ') + part + " " + relation.symbol() + " " + limit + rounding + ", " + method
                + " (" + source + ")";
    }
}
