// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import java.util.HashMap;
import java.util.Map;

/** Tests that lie as far from any other: made at one point with one ring, be it at locations of several names. */
final class SameLocationTests {

    private final Grid.Point point;
    private final LocatedTest one;
    private final Map<String, Integer> locations = new HashMap<>(2);

    SameLocationTests(Grid.Point point, LocatedTest one) {
        this.point = point;
        this.one = one;
    }

    /** {@return where they were made} */
    Grid.Point point() {
        return point;
    }

    /** {@return one of them} */
    LocatedTest one() {
        return one;
    }

    void add(LocatedTest test) {
        locations.merge(test.locationId(), 1, Integer::sum);
    }

    /** {@return whether none is left} */
    boolean remove(LocatedTest test) {
        locations.computeIfPresent(test.locationId(), (location, count) -> count == 1 ? null : count - 1);
        return locations.isEmpty();
    }

    /** {@return whether one of them was made at another location than a test} */
    boolean isElsewhere(LocatedTest test) {
        return locations.size() > (locations.containsKey(test.locationId()) ? 1 : 0);
    }
}
