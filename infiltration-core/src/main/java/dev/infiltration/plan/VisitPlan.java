// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.field.Location;
import dev.infiltration.field.Surface;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Range;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * The plan of a visit: how many locations and where, how much water, how long, with what, when, and what to beware of.
 *
 * <p>Numbers are those of the method, in the unit system that the area is written in (SI where it is not given). Local codes,
 * the latest licensed edition of the standard and the engineer of record govern.
 *
 * <pre>{@code
 * VisitPlan plan = VisitPlan.of(Methods.unitPavement(), surface, ExpectedRate.of(new InfiltrationRate(2540)))
 *         .withSetUp(Duration.ofMinutes(15))
 *         .withLocations(draw.draw(3, 20260603));
 * plan.locationCount();      // OptionalLong[3]
 * System.out.print(plan.text());
 * }</pre>
 */
public final class VisitPlan {

    private static final Reading<Length> LONGEST = Reading.of("10", FieldUnit.METRE);

    /** Longer visits are not told apart. */
    private static final Duration LONGEST_VISIT = Duration.ofDays(3650);

    private final TestMethod method;
    private final Surface surface;
    private final ExpectedRate expected;
    private final PlanChoices choices;
    /** Made when first asked for. */
    private @Nullable LocationSelection choice;

    private VisitPlan(TestMethod method, Surface surface, ExpectedRate expected, PlanChoices choices) {
        this.method = Objects.requireNonNull(method, "method");
        this.surface = Objects.requireNonNull(surface, "surface");
        this.expected = Objects.requireNonNull(expected, "expected");
        this.choices = choices;
    }

    private VisitPlan with(PlanChoices other) {
        return new VisitPlan(method, surface, expected, other);
    }

    /**
     * {@return a plan by the method alone}: its number of locations, its runs a day, no time for setting up
     *
     * @param method   the method
     * @param surface  the surface
     * @param expected the rate to be ready for
     */
    public static VisitPlan of(TestMethod method, Surface surface, ExpectedRate expected) {
        return new VisitPlan(method, surface, expected, PlanChoices.of(method.runsPerDay()));
    }

    /**
     * {@return this plan for a ring}; without one, the method's nominal diameter counts
     *
     * @param insideDiameter inside diameter, above 0 and at most 10 m
     * @throws IllegalArgumentException if it is out of its range
     */
    public VisitPlan withRing(Reading<Length> insideDiameter) {
        boolean isRing = insideDiameter.isPositive() && insideDiameter.compareAmount(LONGEST) <= 0;
        require(isRing, "insideDiameter", insideDiameter);
        return with(choices.withRing(insideDiameter));
    }

    /**
     * {@return this plan for as many locations as the purchaser asked for}
     *
     * @param locations how many, at least 1
     * @throws IllegalArgumentException if it is less than 1
     */
    public VisitPlan withRequestedLocations(int locations) {
        require(locations >= 1, "locations", locations);
        return with(choices.withCount(locations));
    }

    /**
     * {@return this plan for fewer runs at a location than the method allows}
     *
     * @param runs how many, 1 to the method's runs a day
     * @throws IllegalArgumentException if it is out of its range
     */
    public VisitPlan withRuns(int runs) {
        require(runs >= 1 && runs <= method.runsPerDay(), "runs", runs);
        return with(choices.withRuns(runs));
    }

    /**
     * {@return this plan with the time that one location takes beside the pouring}: moving, brooming, sealing, cleaning up
     *
     * @param setUp how long, 0 or more
     * @throws IllegalArgumentException if it is negative
     */
    public VisitPlan withSetUp(Duration setUp) {
        require(!setUp.isNegative(), "setUp", setUp);
        return with(choices.withSetUp(setUp));
    }

    /**
     * {@return this plan with its locations}
     *
     * @param drawn locations as they were drawn
     */
    public VisitPlan withLocations(LocationSample.Drawn drawn) {
        return with(choices.withDrawn(drawn));
    }

    /**
     * {@return this plan with as many locations as it counts, selected at random}: as far apart as the method requires, clear of edges
     *
     * @param zones where to draw, at least one, all in the same unit
     * @param seed  the seed, told by the plan
     * @throws IllegalArgumentException if there is no zone, their units differ, or the plan has {@link #tooMany}
     */
    public VisitPlan withDraw(List<LocationSample.Zone> zones, long seed) {
        @Nullable Reading<Length> clear = clearSpacing();
        LocationSample draw = LocationSample.of(zones).withRing(ring());
        draw = clear == null ? draw : draw.withClearDistance(clear);
        tooMany().ifPresent(refusal -> {
            throw new IllegalArgumentException(refusal);
        });
        return withLocations(draw.draw((int) locationCount().orElse(0), seed));
    }

    /**
     * {@return this plan with locations on record}, fixed spots that were tested before or a planner's own choice
     *
     * <p>As many are planned for as {@link #locationCount} says, in the order given, less those nearer to one before than the
     * method allows; the others are {@link #spares}.
     *
     * @param locations the locations
     */
    public VisitPlan withLocations(List<Location> locations) {
        return with(choices.withLocations(locations));
    }

    /**
     * {@return this plan telling times by the clock of the site}; without it, by UTC
     *
     * @param zone the site's time zone
     */
    public VisitPlan withZone(ZoneId zone) {
        return with(choices.withZone(Objects.requireNonNull(zone, "zone")));
    }

    /**
     * {@return this plan with the time in which it may start}
     *
     * @param window the window that a record of rain shows
     */
    public VisitPlan withWindow(DryWindow window) {
        return with(choices.withWindow(Objects.requireNonNull(window, "window")));
    }

    /**
     * {@return this plan with the rain to look for a time in}: the first in which the whole visit, at the lowest rate expected,
     * starts dry enough and ends before the next rain
     *
     * @param rain      the rain, past and forecast
     * @param notBefore no start is wanted earlier
     */
    public VisitPlan withRain(RainRecord rain, Instant notBefore) {
        return with(choices.withRain(new PlanChoices.Rain(
                Objects.requireNonNull(rain, "rain"), Objects.requireNonNull(notBefore, "notBefore"))));
    }

    /** {@return the method} */
    public TestMethod method() {
        return method;
    }

    /** {@return the surface} */
    public Surface surface() {
        return surface;
    }

    /** {@return the rate to be ready for} */
    public ExpectedRate expected() {
        return expected;
    }

    /** {@return the system in which amounts are planned: that of the area, SI where it is not given} */
    public UnitSystem system() {
        boolean isInchPound = surface.area() != null && surface.area().unit().system() == UnitSystem.INCH_POUND;
        return isInchPound ? UnitSystem.INCH_POUND : UnitSystem.SI;
    }

    /** {@return how many locations: those asked for, else the method's; empty where that rests on an unknown area} */
    public OptionalLong locationCount() {
        return choices.count() == null ? method.locationCount().of(surface.area()) : OptionalLong.of(choices.count());
    }

    /**
     * {@return why the plan is refused, for people}: it requires more than {@link LocationSample#MOST_LOCATIONS}; empty for
     * others
     */
    public Optional<String> tooMany() {
        long count = locationCount().orElse(0);
        return count <= LocationSample.MOST_LOCATIONS
                ? Optional.empty()
                : Optional.of("locations: " + count + " for an area of " + surface.area() + "; a plan may have "
                        + LocationSample.MOST_LOCATIONS + ": correct the area or the number requested");
    }

    /** {@return where the number of locations comes from, for people} */
    public String countBasis() {
        return choices.count() == null ? method.locationCount().basis().toString() : "as asked for";
    }

    /** {@return where to test: locations drawn or on record, none where neither was handed in} */
    public List<Location> locations() {
        return choices.locations();
    }

    /** {@return those of the locations that water and time are counted for} */
    public List<Location> planned() {
        return choice().planned();
    }

    /** {@return locations beyond those planned for, to test in place of one that cannot be tested} */
    public List<Location> spares() {
        return choice().spares();
    }

    /** {@return spares nearer to a planned location than the method allows for tests close in time, by the places on record} */
    public List<TooNear> tooNear() {
        return choice().tooNear();
    }

    private LocationSelection choice() {
        LocationSelection known = choice;
        if (known == null) {
            @Nullable Reading<Length> clear = clearSpacing();
            double metres = clear == null ? 0 : clear.in(FieldUnit.METRE);
            long count = locationCount().orElse(Long.MAX_VALUE);
            known = LocationSelection.of(locations(), count, ring().in(FieldUnit.METRE), metres);
            choice = known;
        }
        return known;
    }

    @Nullable
    Reading<Length> clearSpacing() {
        return method.limit(Limit.CLEAR_SPACING).in(system()).lowest();
    }

    /** {@return how the locations were drawn; empty where they were not} */
    public Optional<LocationSample.Drawn> drawn() {
        return Optional.ofNullable(choices.drawn());
    }

    /** {@return how many locations are still to be chosen; 0 where that is not known} */
    public long missing() {
        long notDrawn = drawn().map(LocationSample.Drawn::missing).orElse(0);
        return Math.max(notDrawn, locationCount().orElse(0) - planned().size());
    }

    /** {@return the clock that times are told by} */
    public ZoneId zone() {
        return choices.zone();
    }

    /** {@return the time a location takes beside the pouring} */
    public Duration setUp() {
        return choices.setUp();
    }

    /** {@return the time in which the visit may start; empty where none was handed in and no record of rain shows one} */
    public Optional<DryWindow> window() {
        PlanChoices.@Nullable Rain rain = choices.rain();
        return choices.window() == null && rain != null
                ? DryWindow.first(rain.record(), method, longest(), rain.notBefore())
                : Optional.ofNullable(choices.window());
    }

    /** {@return the record of rain that was looked in; empty where none was given} */
    public Optional<RainRecord> rain() {
        return Optional.ofNullable(choices.rain()).map(PlanChoices.Rain::record);
    }

    /** {@return how long the visit takes at the lowest rate; where the number of locations is not known, one of them} */
    private Duration longest() {
        InfiltrationRate lowest = expected.lowest();
        Duration time = timeOnSite(lowest).orElseGet(() -> timePerLocation(lowest));
        return time.compareTo(LONGEST_VISIT) > 0 ? LONGEST_VISIT : time;
    }

    /** {@return how many runs are planned at a location} */
    public int runs() {
        return choices.runs();
    }

    /**
     * {@return the inside diameter that the plan uses}
     *
     * @throws IllegalArgumentException if neither the method nor {@link #withRing} gives one
     */
    public Reading<Length> ring() {
        Range<Length> nominal = method.limit(Limit.INSIDE_DIAMETER).in(system());
        if (choices.ring() == null && nominal.isUnlimited()) {
            throw new IllegalArgumentException("ring: the method sets no inside diameter; state the ring");
        }
        return choices.ring() == null ? LocationPlan.middle(nominal) : choices.ring();
    }

    /** {@return the joints in the ring; empty where the surface's joints are not recorded, or too many for a ring} */
    public Optional<JointsInRing> joints() {
        return JointPattern.of(surface.joints()).flatMap(pattern -> JointsInRing.of(pattern, ring()));
    }

    /**
     * {@return what one location takes at a rate}
     *
     * @param rate the rate, above 0
     * @throws IllegalArgumentException if it is 0
     */
    public LocationPlan spot(InfiltrationRate rate) {
        require(rate.millimetresPerHour() > 0, "rate", rate);
        return LocationPlan.of(method, system(), ring(), rate);
    }

    /** {@return the water of one run, at the expected rate that needs most} */
    Reading<Mass> heaviestRun() {
        return expected.all().stream()
                .map(rate -> spot(rate).runWater())
                .max(Reading::compareAmount)
                .orElseThrow();
    }

    /** {@return the water to carry for one location}: prewetting and all runs, at the expected rate that needs most */
    public Reading<Mass> waterPerLocation() {
        return expected.all().stream()
                .map(rate -> spot(rate).water(choices.runs()))
                .max(Reading::compareAmount)
                .orElseThrow();
    }

    /** {@return the water to carry in all; empty where the number of locations is not known} */
    public Optional<Reading<Mass>> waterInAll() {
        Reading<Mass> each = waterPerLocation();
        OptionalLong count = locationCount();
        return count.isEmpty()
                ? Optional.empty()
                : Optional.of(Reading.of(each.value().multiply(BigDecimal.valueOf(count.getAsLong())), each.unit()));
    }

    /**
     * {@return the time that one location takes at a rate}: setting up, the prewetting, the runs, and the longest wait that
     * the method allows before each
     *
     * @param rate the rate, above 0
     */
    public Duration timePerLocation(InfiltrationRate rate) {
        LocationPlan spot = spot(rate);
        Duration first = choices.setUp()
                .plus(spot.preWetTime())
                .plus(longest(method.limit(Limit.START_DELAY).si().highest()));
        Duration repeat = longest(method.limit(Limit.REPEAT_DELAY).si().highest());
        return first.plus(spot.runTime().multipliedBy(choices.runs())).plus(repeat.multipliedBy(choices.runs() - 1L));
    }

    /**
     * {@return the time on site at a rate, one location after the other; empty where their number is not known}
     *
     * @param rate the rate, above 0
     */
    public Optional<Duration> timeOnSite(InfiltrationRate rate) {
        OptionalLong count = locationCount();
        return count.isEmpty()
                ? Optional.empty()
                : Optional.of(timePerLocation(rate).multipliedBy(Math.min(count.getAsLong(), Integer.MAX_VALUE)));
    }

    /** {@return what to take along} */
    public List<String> equipment() {
        return PlanWords.equipment(this);
    }

    /** {@return what to beware of, before the steps; local codes and the engineer of record come last} */
    public List<String> cautions() {
        return PlanWords.cautions(this);
    }

    /** {@return the steps at each location} */
    public List<String> steps() {
        return PlanWords.steps(this);
    }

    /** {@return the plan for people, as plain text} */
    public String text() {
        return PlanText.of(this);
    }

    private static Duration longest(@Nullable Reading<Time> delay) {
        return delay == null ? Duration.ZERO : Duration.ofMillis(Math.round(1000 * delay.in(FieldUnit.SECOND)));
    }

    /**
     * A spare nearer to a planned location than the method allows for tests close in time.
     *
     * @param planned     the planned location
     * @param spare       the spare
     * @param clearMetres the clear distance between rings there, in m; by positions, what it is at most
     */
    public record TooNear(Location planned, Location spare, double clearMetres) {}

    private static void require(boolean holds, String name, Object found) {
        if (!holds) {
            throw new IllegalArgumentException(name + ": out of range, got " + found);
        }
    }
}
