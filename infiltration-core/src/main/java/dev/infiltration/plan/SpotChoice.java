// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.field.Location;
import dev.infiltration.field.Position;
import dev.infiltration.plan.VisitPlan.TooNear;
import dev.infiltration.units.FieldUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * Which of the locations listed are planned for: the first ones, less those too near to one before; the others are spares.
 *
 * @param planned those planned for, in the order listed
 * @param spares  those beyond, in the order listed
 * @param tooNear spares with the planned locations that they lie too near to
 */
record SpotChoice(List<Location> planned, List<Location> spares, List<TooNear> tooNear) {

    /** Room for the rounding of coordinates, in metres. */
    private static final double ROOM = 1e-9;

    /**
     * {@return the choice}
     *
     * @param listed   the locations listed
     * @param count    how many are planned for
     * @param diameter of the ring, in metres
     * @param clear    what the method asks for between rings, in metres
     */
    static SpotChoice of(List<Location> listed, long count, double diameter, double clear) {
        SpotChoice choice = new SpotChoice(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        for (Location location : listed) {
            boolean isApart = choice.name(location, diameter, clear);
            (isApart && choice.planned.size() < count ? choice.planned : choice.spares).add(location);
        }
        return choice;
    }

    /** Names the planned ones that a location lies too near to, and tells whether there is none. */
    private boolean name(Location location, double diameter, double clear) {
        boolean isApart = true;
        for (Location other : planned) {
            OptionalDouble between = metres(other, location);
            if (between.isPresent() && between.getAsDouble() - diameter < clear - ROOM) {
                tooNear.add(new TooNear(other, location, Math.max(0, between.getAsDouble() - diameter)));
                isApart = false;
            }
        }
        return isApart;
    }

    /** {@return the distance from middle to middle, by coordinates, else at most by positions; empty where neither tells} */
    private static OptionalDouble metres(Location one, Location other) {
        if (one.x() != null && one.y() != null && other.x() != null && other.y() != null) {
            double x = other.x().in(FieldUnit.METRE) - one.x().in(FieldUnit.METRE);
            double y = other.y().in(FieldUnit.METRE) - one.y().in(FieldUnit.METRE);
            return OptionalDouble.of(StrictMath.hypot(x, y));
        }
        return atMost(one.position(), other.position());
    }

    private static OptionalDouble atMost(@Nullable Position one, @Nullable Position other) {
        if (one == null || other == null || one.accuracy() == null || other.accuracy() == null) {
            return OptionalDouble.empty();
        }
        double doubt = one.accuracy().in(FieldUnit.METRE) + other.accuracy().in(FieldUnit.METRE);
        return one.metresTo(other).stream().map(between -> between + doubt).findFirst();
    }
}
