// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Place;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.Ring;
import dev.infiltration.field.UnreadableValue;
import dev.infiltration.rate.RateEquation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A test in its surroundings: its visit, location, ring, prewetting and runs. */
public final class TestAt {

    private final VisitAt visit;
    private final int index;
    private final Place place;
    private final LocationTest test;
    private final @Nullable PouringAt preWet;
    private final List<PouringAt> runs;
    private @Nullable RateEquation equation;
    private @Nullable List<PouringAt> runsInOrder;

    TestAt(VisitAt visit, int index, LocationTest test) {
        this.visit = visit;
        this.index = index;
        this.place = visit.place().member("tests").entry(index);
        this.test = test;
        PreWet wetting = test.preWet();
        this.preWet = wetting == null ? null : new PouringAt(this, PouringAt.PREWETTING, wetting);
        this.runs = new ArrayList<>(test.runs().size());
        for (int i = 0; i < test.runs().size(); i++) {
            runs.add(new PouringAt(this, i, test.runs().get(i)));
        }
    }

    /** {@return the visit it belongs to} */
    public VisitAt visit() {
        return visit;
    }

    /** {@return its position among the tests of the visit, from 0} */
    public int index() {
        return index;
    }

    /** {@return the test} */
    public LocationTest test() {
        return test;
    }

    /** {@return its place in the book} */
    public Place place() {
        return place;
    }

    /** {@return the ring it names, the first of that id; empty when there is none} */
    public Optional<Ring> ring() {
        return Optional.ofNullable(ringOrNull());
    }

    /** {@return the location it names on the visit's surface; empty when there is none} */
    public Optional<Location> location() {
        return Optional.ofNullable(locationOrNull());
    }

    /** {@return its prewetting, void or not} */
    public Optional<PouringAt> preWet() {
        return Optional.ofNullable(preWet);
    }

    /** {@return its runs, in the order written} */
    public List<PouringAt> runs() {
        return runs;
    }

    /** {@return the values that could not be read inside this test, or in its place} */
    public List<UnreadableValue> unreadable() {
        return List.copyOf(visit.book().register().unreadable().within(place));
    }

    /** {@return whether the test could not be read at all}: it was attempted, at an unknown location */
    public boolean isLost() {
        return visit.book().register().unreadable().isLost(place);
    }

    /** {@return the test in words: visit and location} */
    public String subject() {
        return visit.subject() + ", " + SubjectText.orPosition(test.location(), "test", index);
    }

    /** The equation that rates it. */
    RateEquation equation() {
        RateEquation known = equation;
        if (known == null) {
            known = visit.book().register().equation(test);
            equation = known;
        }
        return known;
    }

    @Nullable
    Ring ringOrNull() {
        return visit.book().register().ring(test.ring());
    }

    @Nullable
    Location locationOrNull() {
        SurfaceAt surface = visit.surfaceOrNull();
        return surface == null ? null : surface.location(test.location());
    }

    @Nullable
    PouringAt preWetOrNull() {
        return preWet;
    }

    /** The prewetting, unless it is void: then the test is judged as one without. */
    @Nullable
    PouringAt countingPreWet() {
        return preWet == null || preWet.pouring().isVoid() ? null : preWet;
    }

    /** Prewetting and runs, void or not. */
    List<PouringAt> pourings() {
        List<PouringAt> all = new ArrayList<>(runs.size() + 1);
        if (preWet != null) {
            all.add(preWet);
        }
        all.addAll(runs);
        return all;
    }

    /** Its runs in order of start. */
    List<PouringAt> runsInOrder() {
        List<PouringAt> ordered = runsInOrder;
        if (ordered == null) {
            ordered = Series.inOrder(runs);
            runsInOrder = ordered;
        }
        return ordered;
    }

    /** The earliest start of its prewetting and runs, void or not; null when none has one. */
    @Nullable
    TimeRange firstStart() {
        List<TimeRange> starts = new ArrayList<>();
        for (PouringAt pouring : pourings()) {
            TimeRange start = pouring.start();
            if (start != null) {
                starts.add(start);
            }
        }
        return starts.stream().min(TimeRange.order(starts)).orElse(null);
    }

    /** The rules that withhold the rates of the visit or of this test. */
    Set<BuiltInRule> obstacles() {
        Set<BuiltInRule> obstacles = visit.obstacles();
        addLocationObstacles(obstacles);
        addRingObstacles(obstacles);
        return obstacles;
    }

    private void addLocationObstacles(Set<BuiltInRule> obstacles) {
        SurfaceAt surface = visit.surfaceOrNull();
        if (SubjectText.given(test.location()) == null) {
            obstacles.add(BuiltInRule.DATA_REQUIRED);
        } else if (surface != null && surface.location(test.location()) == null) {
            obstacles.add(BuiltInRule.DATA_REFERENCE);
        } else if (surface != null && surface.isDoubled(test.location())) {
            obstacles.add(BuiltInRule.DATA_DUPLICATE);
        }
    }

    private void addRingObstacles(Set<BuiltInRule> obstacles) {
        Ring ring = ringOrNull();
        if (SubjectText.given(test.ring()) == null) {
            obstacles.add(BuiltInRule.DATA_REQUIRED);
        } else if (ring == null) {
            obstacles.add(BuiltInRule.DATA_REFERENCE);
        } else if (!ring.isUsable()) {
            obstacles.add(BuiltInRule.RING_UNUSABLE);
        }
        if (visit.book().register().isDoubledRing(test.ring())) {
            obstacles.add(BuiltInRule.DATA_DUPLICATE);
        }
    }
}
