// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.method.Limit;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.math.BigDecimal;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/** How far two locations lie apart, and whether that is far enough. */
enum Distance {
    /** Far enough apart. */
    APART,
    /** Too near. */
    NEAR,
    /** Not known, or not accurately enough. */
    UNKNOWN;

    /** Room for the rounding of coordinates, in metres. */
    private static final double ROOM = 1e-6;

    /** {@return what is known of two tests at different locations, judged by the later one's method}: a tape before x and y, those before positions */
    static Distance between(LocatedTest earlier, LocatedTest later) {
        if (earlier.tape() == LocatedTest.Tape.FAR || later.tape() == LocatedTest.Tape.FAR) {
            return APART;
        }
        if (earlier.tape() == LocatedTest.Tape.NEAR || later.tape() == LocatedTest.Tape.NEAR) {
            return NEAR;
        }
        if (earlier.hasLocalPosition() && later.hasLocalPosition()) {
            return local(earlier, later);
        }
        return earlier.hasPosition() && later.hasPosition() ? geodesic(earlier, later) : UNKNOWN;
    }

    /** The clear distance from centre to centre less both radii; its square is exact where it may matter. */
    private static Distance local(LocatedTest earlier, LocatedTest later) {
        if (earlier.onSurface().to(later.onSurface()) > later.reach(earlier) + ROOM) {
            return APART;
        }
        UnitSystem system = system(earlier, later);
        FieldUnit<Length> unit = later.x().unit();
        BigDecimal needed = needed(earlier, later, system, unit);
        BigDecimal x = later.x().exactIn(unit).subtract(earlier.x().exactIn(unit));
        BigDecimal y = later.y().exactIn(unit).subtract(earlier.y().exactIn(unit));
        BigDecimal square = x.multiply(x).add(y.multiply(y));
        return needed.signum() <= 0 || square.compareTo(needed.multiply(needed)) >= 0 ? APART : NEAR;
    }

    private static UnitSystem system(LocatedTest earlier, LocatedTest later) {
        boolean isInchPound = Stream.of(earlier.x(), earlier.y(), later.x(), later.y())
                .allMatch(reading -> reading.unit().system() == UnitSystem.INCH_POUND);
        return isInchPound ? UnitSystem.INCH_POUND : UnitSystem.SI;
    }

    /** The distance from centre to centre that is needed, in a unit. */
    private static BigDecimal needed(
            LocatedTest earlier, LocatedTest later, UnitSystem system, FieldUnit<Length> unit) {
        TestMethod method = later.method();
        BigDecimal diameters = in(earlier.diameter(system, method), unit).add(in(later.diameter(system, method), unit));
        BigDecimal clear = in(method.limit(Limit.CLEAR_SPACING).in(system).lowest(), unit);
        return clear.add(diameters.divide(BigDecimal.valueOf(2)));
    }

    private static BigDecimal in(@Nullable Reading<Length> length, FieldUnit<Length> unit) {
        return length == null ? BigDecimal.ZERO : length.exactIn(unit);
    }

    /** On WGS 84; what the stated accuracies leave open is not known. A geodesic is never shorter than its chord. */
    private static Distance geodesic(LocatedTest earlier, LocatedTest later) {
        double doubt = earlier.accuracy() + later.accuracy();
        if (earlier.onEllipsoid().to(later.onEllipsoid()) > later.reach(earlier) + doubt + ROOM) {
            return APART;
        }
        double needed = needed(earlier, later, UnitSystem.SI, FieldUnit.METRE).doubleValue();
        double between = earlier.metresTo(later);
        if (between + doubt < needed) {
            return NEAR;
        }
        return between - doubt >= needed ? APART : UNKNOWN;
    }
}
