// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** When a surface was maintained, so kept that whether any maintenance lies between two times is a look-up. */
final class MaintenanceTimes {

    private static final boolean[] EITHER = {true, false};

    /** Where and how the times are known, and whether they are compared as instants. */
    private record Kind(
            List<String> locations, boolean hasStart, boolean hasEnd, boolean isStartInstant, boolean isEndInstant) {}

    /** By the latest start, the earliest end; what begins earlier and ends no earlier is left out. */
    private final Map<Kind, NavigableMap<BigDecimal, BigDecimal>> ends = new HashMap<>();

    /** Keeps a maintenance of the whole surface or of some locations. */
    void add(List<String> locations, TimeRange start, TimeRange end) {
        if (locations.isEmpty()) {
            addAt(locations, start, end);
        }
        locations.forEach(location -> addAt(List.of(location), start, end));
    }

    private void addAt(List<String> locations, TimeRange start, TimeRange end) {
        for (boolean isStartInstant : EITHER) {
            for (boolean isEndInstant : EITHER) {
                if ((start.isInstant() || !isStartInstant) && (end.isInstant() || !isEndInstant)) {
                    Kind kind = new Kind(locations, start.isInstant(), end.isInstant(), isStartInstant, isEndInstant);
                    add(
                            ends.computeIfAbsent(kind, key -> new TreeMap<>()),
                            start.latest(isStartInstant),
                            end.first(isEndInstant));
                }
            }
        }
    }

    private static void add(NavigableMap<BigDecimal, BigDecimal> ends, BigDecimal start, BigDecimal end) {
        Map.@Nullable Entry<BigDecimal, BigDecimal> later = ends.ceilingEntry(start);
        if (later != null && later.getValue().compareTo(end) <= 0) {
            return;
        }
        Map.@Nullable Entry<BigDecimal, BigDecimal> earlier = ends.floorEntry(start);
        while (earlier != null && earlier.getValue().compareTo(end) >= 0) {
            ends.remove(earlier.getKey());
            earlier = ends.floorEntry(start);
        }
        ends.put(start, end);
    }

    /** {@return whether a maintenance of a location may have begun no earlier than the one and ended no later than the other} */
    boolean isAnyBetween(@Nullable String location, TimeRange before, TimeRange after) {
        return isAnyBetween(List.of(), before, after)
                || (location != null && isAnyBetween(List.of(location), before, after));
    }

    private boolean isAnyBetween(List<String> locations, TimeRange before, TimeRange after) {
        for (boolean hasStart : EITHER) {
            for (boolean hasEnd : EITHER) {
                boolean isStartInstant = hasStart && before.isInstant();
                boolean isEndInstant = hasEnd && after.isInstant();
                Kind kind = new Kind(locations, hasStart, hasEnd, isStartInstant, isEndInstant);
                Map.@Nullable Entry<BigDecimal, BigDecimal> earliest =
                        ends.getOrDefault(kind, new TreeMap<>()).ceilingEntry(before.first(isStartInstant));
                if (earliest != null && earliest.getValue().compareTo(after.latest(isEndInstant)) <= 0) {
                    return true;
                }
            }
        }
        return false;
    }
}
