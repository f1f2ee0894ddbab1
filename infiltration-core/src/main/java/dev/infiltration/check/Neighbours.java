// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Tests close to each other in time, by what tells their distance, so that a further one is compared with its neighbours alone.
 *
 * <p>Far pairs of known distance cost nothing; pairs without one are counted, not listed.
 */
final class Neighbours {

    /** What tells the distance of a test to others. */
    private enum Kind {
        TAPED_FAR,
        TAPED_NEAR,
        LOCAL,
        POSITION,
        LOCAL_AND_POSITION,
        NOTHING
    }

    /** By kind, how many tests there are at each location. */
    private final Map<Kind, Map<String, Integer>> counts = new HashMap<>();

    private final Grid local;
    private final Grid positions;

    /**
     * @param reach the largest distance from centre to centre that may matter to any pair, in metres
     * @param doubt the largest accuracy of any position, in metres
     */
    Neighbours(double reach, double doubt) {
        this.local = new Grid(reach);
        this.positions = new Grid(reach + 2 * doubt);
    }

    private static Kind kind(Spaced test) {
        return switch (test.tape()) {
            case FAR -> Kind.TAPED_FAR;
            case NEAR -> Kind.TAPED_NEAR;
            case NONE -> untaped(test);
        };
    }

    private static Kind untaped(Spaced test) {
        if (test.hasLocalPosition()) {
            return test.hasPosition() ? Kind.LOCAL_AND_POSITION : Kind.LOCAL;
        }
        return test.hasPosition() ? Kind.POSITION : Kind.NOTHING;
    }

    void add(Spaced test) {
        counts.computeIfAbsent(kind(test), key -> new HashMap<>()).merge(test.locationId(), 1, Integer::sum);
        if (test.tape() == Spaced.Tape.NONE && test.hasLocalPosition()) {
            local.add(Grid.local(test), test);
        }
        if (test.tape() == Spaced.Tape.NONE && test.hasPosition()) {
            positions.add(Grid.onEllipsoid(test), test);
        }
    }

    void remove(Spaced test) {
        counts.getOrDefault(kind(test), Map.of())
                .computeIfPresent(test.locationId(), (location, count) -> count == 1 ? null : count - 1);
        if (test.tape() == Spaced.Tape.NONE && test.hasLocalPosition()) {
            local.remove(Grid.local(test), test);
        }
        if (test.tape() == Spaced.Tape.NONE && test.hasPosition()) {
            positions.remove(Grid.onEllipsoid(test), test);
        }
    }

    /** {@return whether another location among these is too near} */
    boolean isNear(Spaced later) {
        return switch (later.tape()) {
            case FAR -> false;
            case NEAR ->
                Set.of(Kind.values()).stream().anyMatch(kind -> kind != Kind.TAPED_FAR && hasOther(kind, later));
            case NONE -> hasOther(Kind.TAPED_NEAR, later) || anyClose(later, Distance.NEAR);
        };
    }

    /** {@return whether the distance to another location among these is not known} */
    boolean isUnknown(Spaced later) {
        if (later.tape() != Spaced.Tape.NONE) {
            return false;
        }
        List<Kind> incomparable = switch (untaped(later)) {
            case LOCAL -> List.of(Kind.POSITION, Kind.NOTHING);
            case POSITION -> List.of(Kind.LOCAL, Kind.NOTHING);
            case LOCAL_AND_POSITION -> List.of(Kind.NOTHING);
            default -> List.of(Kind.LOCAL, Kind.POSITION, Kind.LOCAL_AND_POSITION, Kind.NOTHING);
        };
        return incomparable.stream().anyMatch(kind -> hasOther(kind, later)) || anyClose(later, Distance.UNKNOWN);
    }

    private boolean hasOther(Kind kind, Spaced test) {
        Map<String, Integer> locations = counts.getOrDefault(kind, Map.of());
        return locations.size() > (locations.containsKey(test.locationId()) ? 1 : 0);
    }

    private boolean anyClose(Spaced later, Distance distance) {
        Predicate<Spaced> matches =
                other -> !other.locationId().equals(later.locationId()) && Distance.between(other, later) == distance;
        List<Spaced> close = new ArrayList<>();
        if (later.hasLocalPosition()) {
            close.addAll(local.around(Grid.local(later)));
        }
        if (later.hasPosition()) {
            close.addAll(positions.around(Grid.onEllipsoid(later)));
        }
        return close.stream().anyMatch(matches);
    }
}
