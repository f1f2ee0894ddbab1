// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Centres of rings already placed, in cells as wide as the least distance: only the nearest cells are searched. */
final class PlacedRings {

    private final double least;
    private final Map<Cell, List<double[]>> cells = new HashMap<>();

    private record Cell(double column, double row) {}

    /**
     * @param least the least distance from centre to centre, 0 or more
     */
    PlacedRings(double least) {
        this.least = least;
    }

    private double cell(double coordinate) {
        return least == 0 ? 0 : Math.floor(coordinate / least);
    }

    void add(double x, double y) {
        cells.computeIfAbsent(new Cell(cell(x), cell(y)), key -> new ArrayList<>())
                .add(new double[] {x, y});
    }

    /** {@return whether a centre is at the least distance or farther from all others} */
    boolean isFree(double x, double y) {
        for (int column = -1; least > 0 && column <= 1; column++) {
            for (int row = -1; row <= 1; row++) {
                if (isNear(cells.get(new Cell(cell(x) + column, cell(y) + row)), x, y)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean isNear(@Nullable List<double[]> placed, double x, double y) {
        return placed != null
                && placed.stream().anyMatch(other -> StrictMath.hypot(other[0] - x, other[1] - y) < least);
    }
}
