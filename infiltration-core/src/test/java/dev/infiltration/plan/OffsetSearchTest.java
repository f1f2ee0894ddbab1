// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static dev.infiltration.plan.Laid.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.field.Laying;
import dev.infiltration.plan.OffsetSearch.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

class OffsetSearchTest {

    private static final Tiling SQUARE = Tiling.of(JointPattern.of(Laying.STACK, mm("90"), mm("90"), mm("10")));

    /** Two valleys in a cell of 100 mm, at x = 25 and 75, y = 33.3 (derived), the second the deeper. */
    @Test
    void everyValleyIsFoundLowestFirst() {
        OffsetSearch search = new OffsetSearch(
                SQUARE,
                (x, y) -> Math.cos(4 * Math.PI * x / 100)
                        + 0.1 * Math.sin(2 * Math.PI * x / 100)
                        - Math.cos(2 * Math.PI * (y - 100 / 3.0) / 100));
        List<Point> lows = search.lows();
        assertEquals(2, lows.size());
        assertEquals(-2.1, lows.get(0).value(), 1e-12);
        assertEquals(75, search.x(lows.get(0)), 1e-4);
        assertEquals(100 / 3.0, search.y(lows.get(0)), 1e-4);
        assertEquals(-1.9, lows.get(1).value(), 1e-12);
        assertEquals(25, search.x(lows.get(1)), 1e-4);
    }
}
