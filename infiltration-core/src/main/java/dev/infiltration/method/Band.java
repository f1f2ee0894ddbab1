// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;

/**
 * A limit of a method in both unit systems, which are not conversions of each other.
 *
 * <p>A reading is checked by the range of the system in which it is written. Both bounds are included. Decimals are
 * compared exactly: 8.1 lb is within 8.0 ± 0.1 lb.
 *
 * @param si         the range for readings in SI units and in units of neither system
 * @param inchPound  the range for readings in inch-pound units
 * @param basis      source of the limit
 * @param <Q>        the kind of quantity
 */
public record Band<Q extends Quantity<Q>>(Range<Q> si, Range<Q> inchPound, Basis basis) {

    /** Checks that all parts are there. */
    public Band {
        String missing = Stream.of(
                        si == null ? "si" : "", inchPound == null ? "inchPound" : "", basis == null ? "basis" : "")
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", no "));
        if (!missing.isEmpty()) {
            throw new NullPointerException(missing);
        }
    }

    /**
     * {@return a limit that is the same in both systems}, such as a time
     *
     * @param range the range
     * @param basis its source
     * @param <Q>   the kind of quantity
     */
    public static <Q extends Quantity<Q>> Band<Q> inBoth(Range<Q> range, Basis basis) {
        return new Band<>(range, range, basis);
    }

    /**
     * {@return the band of a method that sets no limit}
     *
     * @param <Q> the kind of quantity
     */
    public static <Q extends Quantity<Q>> Band<Q> unlimited() {
        Range<Q> any = new Range<>(null, null);
        return new Band<>(any, any, new Basis("the method", "no limit", Basis.Trust.USER));
    }

    /** {@return whether the method sets no limit in either system} */
    public boolean isUnlimited() {
        return si.isUnlimited() && inchPound.isUnlimited();
    }

    /**
     * {@return the range for a system}
     *
     * @param system the system in which a reading is written
     */
    public Range<Q> in(UnitSystem system) {
        return system == UnitSystem.INCH_POUND ? inchPound : si;
    }

    /**
     * {@return whether a reading is within the limit of its own system}
     *
     * @param reading the reading
     */
    public boolean holds(Reading<Q> reading) {
        return in(reading.unit().system()).contains(reading);
    }

    /** {@return the limit for people, in both systems} */
    @Override
    public String toString() {
        return si.equals(inchPound) ? si.toString() : si + "; " + inchPound;
    }
}
