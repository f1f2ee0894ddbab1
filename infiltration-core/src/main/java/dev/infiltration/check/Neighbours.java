// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

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

    private static final Set<Kind> UNTAPED = EnumSet.range(Kind.LOCAL, Kind.NOTHING);
    private static final Set<Kind> NOT_LOCAL = EnumSet.of(Kind.POSITION, Kind.NOTHING);
    private static final Set<Kind> NOT_POSITION = EnumSet.of(Kind.LOCAL, Kind.NOTHING);
    private static final Set<Kind> NOWHERE = EnumSet.of(Kind.NOTHING);

    /** By kind, how many tests there are at each location. */
    private final Map<Kind, Map<String, Integer>> counts = new EnumMap<>(Kind.class);

    private final double reach;
    private final Grid local;
    private final Map<Tier, Grid> positions = new HashMap<>();

    /** Positions of about the same accuracy, with local coordinates too or without. */
    private record Tier(int accuracy, boolean isLocal) {}

    /**
     * @param reach the largest distance from centre to centre that may matter to any pair, in metres
     */
    Neighbours(double reach) {
        this.reach = reach;
        this.local = new Grid(reach);
    }

    /** The power of two that the accuracy stays below; one for all that may be near. */
    private int accuracy(LocatedTest test) {
        return Math.getExponent(Math.max(reach, test.accuracy())) + 1;
    }

    private static double most(Tier tier) {
        return Math.scalb(1.0, tier.accuracy);
    }

    private static Kind kind(LocatedTest test) {
        return switch (test.tape()) {
            case FAR -> Kind.TAPED_FAR;
            case NEAR -> Kind.TAPED_NEAR;
            case NONE -> untaped(test);
        };
    }

    private static Kind untaped(LocatedTest test) {
        if (test.hasLocalPosition()) {
            return test.hasPosition() ? Kind.LOCAL_AND_POSITION : Kind.LOCAL;
        }
        return test.hasPosition() ? Kind.POSITION : Kind.NOTHING;
    }

    void add(LocatedTest test) {
        counts.computeIfAbsent(kind(test), key -> new HashMap<>()).merge(test.locationId(), 1, Integer::sum);
        if (test.tape() != LocatedTest.Tape.NONE) {
            return;
        }
        if (test.hasLocalPosition()) {
            local.add(test.onSurface(), test.localLikeness(), test);
        }
        if (test.hasPosition()) {
            positions
                    .computeIfAbsent(tier(test), tier -> new Grid(reach + 2 * most(tier)))
                    .add(test.onEllipsoid(), test.likeness(), test);
        }
    }

    private Tier tier(LocatedTest test) {
        return new Tier(accuracy(test), test.hasLocalPosition());
    }

    void remove(LocatedTest test) {
        counts.getOrDefault(kind(test), Map.of())
                .computeIfPresent(test.locationId(), (location, count) -> count == 1 ? null : count - 1);
        if (test.tape() != LocatedTest.Tape.NONE) {
            return;
        }
        if (test.hasLocalPosition()) {
            local.remove(test.onSurface(), test.localLikeness(), test);
        }
        Grid grid = test.hasPosition() ? positions.get(tier(test)) : null;
        if (grid != null) {
            grid.remove(test.onEllipsoid(), test.likeness(), test);
        }
    }

    /** {@return whether another location among these is too near} */
    boolean isNear(LocatedTest later) {
        return switch (later.tape()) {
            case FAR -> false;
            case NEAR -> Stream.of(Kind.values()).anyMatch(kind -> kind != Kind.TAPED_FAR && hasOther(kind, later));
            case NONE -> hasOther(Kind.TAPED_NEAR, later) || isNearLocally(later) || isNearByPosition(later);
        };
    }

    /** {@return whether the distance to another location among these is not known} */
    boolean isUnknown(LocatedTest later) {
        if (later.tape() != LocatedTest.Tape.NONE) {
            return false;
        }
        for (Kind kind : incomparable(untaped(later))) {
            if (hasOther(kind, later)) {
                return true;
            }
        }
        return isUnknownByPosition(later);
    }

    /** What shares neither kind of coordinates with a test that was not taped. */
    private static Set<Kind> incomparable(Kind kind) {
        return switch (kind) {
            case LOCAL -> NOT_LOCAL;
            case POSITION -> NOT_POSITION;
            case LOCAL_AND_POSITION -> NOWHERE;
            default -> UNTAPED;
        };
    }

    private boolean hasOther(Kind kind, LocatedTest test) {
        Map<String, Integer> locations = counts.getOrDefault(kind, Map.of());
        return locations.size() > (locations.containsKey(test.locationId()) ? 1 : 0);
    }

    private boolean isNearLocally(LocatedTest later) {
        return later.hasLocalPosition()
                && local.anyAround(later.onSurface(), reach, other -> is(Distance.NEAR, other, later));
    }

    /** Of positions, only those can be near whose accuracy is finer than the distance that is needed. */
    private boolean isNearByPosition(LocatedTest later) {
        return later.hasPosition()
                && anyPosition(later, tier -> accuracy(later) == tier.accuracy, tier -> reach, Distance.NEAR);
    }

    private boolean isUnknownByPosition(LocatedTest later) {
        return later.hasPosition()
                && anyPosition(later, tier -> true, tier -> reach + later.accuracy() + most(tier), Distance.UNKNOWN);
    }

    /** Where both have local coordinates, those decide. */
    private boolean anyPosition(
            LocatedTest later, Predicate<Tier> asked, ToDoubleFunction<Tier> radius, Distance distance) {
        return positions.entrySet().stream()
                .filter(entry -> asked.test(entry.getKey()))
                .filter(entry -> !entry.getKey().isLocal || !later.hasLocalPosition())
                .anyMatch(entry -> entry.getValue()
                        .anyAround(
                                later.onEllipsoid(),
                                radius.applyAsDouble(entry.getKey()),
                                other -> is(distance, other, later)));
    }

    private static boolean is(Distance distance, SameLocationTests other, LocatedTest later) {
        return other.isElsewhere(later) && Distance.between(other.one(), later) == distance;
    }
}
