// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import dev.infiltration.units.Reading;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A range of amounts; both bounds are included.
 *
 * @param lowest  lowest amount; null: no lower bound
 * @param highest highest amount; null: no upper bound
 * @param <Q>     the kind of quantity
 */
public record Range<Q extends Quantity<Q>>(
        @Nullable Reading<Q> lowest, @Nullable Reading<Q> highest) {

    /**
     * {@return the range from an amount upwards}
     *
     * @param lowest lowest amount
     * @param <Q>    the kind of quantity
     */
    public static <Q extends Quantity<Q>> Range<Q> atLeast(Reading<Q> lowest) {
        return new Range<>(lowest, null);
    }

    /**
     * {@return the range up to an amount}
     *
     * @param highest highest amount
     * @param <Q>     the kind of quantity
     */
    public static <Q extends Quantity<Q>> Range<Q> atMost(Reading<Q> highest) {
        return new Range<>(null, highest);
    }

    /**
     * {@return the range of a nominal amount and its tolerance, both in the nominal's unit}
     *
     * @param nominal   the nominal amount
     * @param tolerance tolerance, either way
     * @param <Q>       the kind of quantity
     */
    public static <Q extends Quantity<Q>> Range<Q> around(Reading<Q> nominal, String tolerance) {
        java.math.BigDecimal off = new java.math.BigDecimal(tolerance);
        return new Range<>(
                Reading.of(nominal.value().subtract(off), nominal.unit()),
                Reading.of(nominal.value().add(off), nominal.unit()));
    }

    /**
     * {@return whether an amount is in the range}; decimals are compared exactly
     *
     * @param amount the amount
     */
    public boolean contains(Reading<Q> amount) {
        return (lowest == null || amount.compareAmount(lowest) >= 0)
                && (highest == null || amount.compareAmount(highest) <= 0);
    }

    /** {@return whether every amount is in the range} */
    public boolean isUnlimited() {
        return lowest == null && highest == null;
    }

    /** {@return whether the range is empty} */
    public boolean isEmpty() {
        return lowest != null && highest != null && lowest.compareAmount(highest) > 0;
    }

    /** {@return the range for people: {@code 7.9 to 8.1 lb}} */
    @Override
    public String toString() {
        if (lowest != null && highest != null) {
            String from = lowest.toString();
            return lowest.unit() == highest.unit() ? number(from) + " to " + highest : from + " to " + highest;
        }
        if (lowest != null) {
            return "at least " + lowest;
        }
        return highest == null ? "any" : "at most " + highest;
    }

    private static String number(String amount) {
        int space = amount.indexOf(' ');
        return space < 0 ? amount : amount.substring(0, space);
    }
}
