// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Location;
import dev.infiltration.field.Location.Selection;
import dev.infiltration.field.SurfaceZone;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What the locations of a surface came to, and how they were chosen: what a summary is made of.
 *
 * @param spots      what the locations tested came to
 * @param selection  how they were chosen, all alike; null where that is not known or they were chosen in several ways
 * @param zoneShares area of each zone, in any unit: only the shares count; empty where they are not known
 * @param notTested  locations that were planned and not tested
 */
public record Sample(List<Spot> spots, @Nullable Selection selection, Map<String, Double> zoneShares, int notTested) {

    /**
     * A location tested.
     *
     * @param outcome its rate, a bound, or none
     * @param zone    the part of the surface it stands for, or null
     */
    public record Spot(RateOutcome outcome, @Nullable String zone) {

        static Spot measured(double rate, @Nullable String zone) {
            return new Spot(new RateOutcome.Measured(new InfiltrationRate(rate)), zone);
        }

        /** The figure in mm/h, whether rate or bound. */
        Optional<Double> figure() {
            return outcome.figure().map(InfiltrationRate::millimetresPerHour);
        }

        private Spot withSmallestSeen(InfiltrationRate smallest) {
            boolean isZero = outcome.rate()
                    .filter(rate -> rate.millimetresPerHour() == 0)
                    .isPresent();
            return isZero ? new Spot(new RateOutcome.UpperBound(smallest, List.of()), zone) : this;
        }
    }

    /**
     * Copies the collections.
     *
     * @throws IllegalArgumentException if an area is not above zero or the number not tested is negative
     */
    public Sample {
        spots = List.copyOf(spots);
        zoneShares = Map.copyOf(zoneShares);
        if (notTested < 0) {
            throw new IllegalArgumentException("notTested: expected a count, got " + notTested);
        }
        if (!zoneShares.values().stream().allMatch(area -> area > 0 && Double.isFinite(area))) {
            throw new IllegalArgumentException("zoneShares: expected areas above zero, got " + zoneShares);
        }
    }

    /**
     * {@return measured rates of locations chosen at random over the surface}
     *
     * @param rates rates in mm/h, at least 0
     */
    public static Sample random(double... rates) {
        return of(Selection.RANDOM, rates);
    }

    /**
     * {@return measured rates of locations chosen in one way}
     *
     * @param selection how they were chosen
     * @param rates     rates in mm/h, at least 0
     */
    public static Sample of(Selection selection, double... rates) {
        return new Sample(
                Arrays.stream(rates).mapToObj(rate -> Spot.measured(rate, null)).toList(), selection, Map.of(), 0);
    }

    /**
     * {@return measured rates of locations chosen in one way}
     *
     * @param selection how they were chosen
     * @param rates     the rates
     */
    public static Sample ofRates(Selection selection, List<InfiltrationRate> rates) {
        return of(
                selection,
                rates.stream().mapToDouble(InfiltrationRate::millimetresPerHour).toArray());
    }

    /**
     * {@return outcomes of locations chosen in one way, bounds among them}
     *
     * @param selection how they were chosen
     * @param outcomes  what they came to
     */
    public static Sample of(Selection selection, List<RateOutcome> outcomes) {
        return new Sample(
                outcomes.stream().map(outcome -> new Spot(outcome, null)).toList(), selection, Map.of(), 0);
    }

    /**
     * {@return measured rates of locations drawn at random within zones}
     *
     * @param rates      rates in mm/h of each zone
     * @param zoneShares area of each zone, in any unit
     */
    public static Sample stratified(Map<String, double[]> rates, Map<String, Double> zoneShares) {
        return new Sample(
                rates.entrySet().stream()
                        .flatMap(zone ->
                                Arrays.stream(zone.getValue()).mapToObj(rate -> Spot.measured(rate, zone.getKey())))
                        .toList(),
                Selection.STRATIFIED,
                zoneShares,
                0);
    }

    /**
     * {@return the locations of a visit, with zone and selection as the book has them}
     *
     * <p>The areas of the zones are those of the surface's {@code zones}, if each has an id of its own and an area above zero;
     * else they are not known. {@link #withZoneShares} replaces them.
     *
     * @param visit the visit
     * @param rates its location rows
     */
    public static Sample of(VisitAt visit, List<LocationRate> rates) {
        Map<String, Location> locations = new LinkedHashMap<>();
        visit.surface().stream()
                .flatMap(surface -> surface.surface().locations().stream())
                .forEach(location -> locations.putIfAbsent(String.valueOf(location.id()), location));
        List<Location> tested = rates.stream()
                .map(rate -> locations.getOrDefault(rate.location(), Location.of(rate.location())))
                .toList();
        List<Spot> spots = Stream.iterate(0, i -> i < tested.size(), i -> i + 1)
                .map(i -> new Spot(rates.get(i).outcome(), tested.get(i).zone()))
                .toList();
        return new Sample(
                spots,
                common(tested),
                zoneAreas(visit),
                SurfaceRate.of(visit, rates).notTested());
    }

    /** Areas in m² by zone; empty where one of them is missing, not above zero, or given twice. */
    private static Map<String, Double> zoneAreas(VisitAt visit) {
        List<SurfaceZone> zones =
                visit.surface().map(surface -> surface.surface().zones()).orElse(List.of());
        Map<String, Double> areas = new LinkedHashMap<>();
        for (SurfaceZone zone : zones) {
            double area = zone.area() == null ? 0 : zone.area().in(FieldUnit.SQUARE_METRE);
            boolean isUsable = zone.id() != null && area > 0 && Double.isFinite(area);
            if (!isUsable || areas.put(zone.id(), area) != null) {
                return Map.of();
            }
        }
        return areas;
    }

    private static @Nullable Selection common(List<Location> locations) {
        Selection first = locations.isEmpty() ? null : locations.get(0).selection();
        return locations.stream().allMatch(location -> location.selection() == first) ? first : null;
    }

    /**
     * {@return this sample with the areas of its zones}
     *
     * @param zoneShares area of each zone, in any unit
     */
    public Sample withZoneShares(Map<String, Double> zoneShares) {
        return new Sample(spots, selection, zoneShares, notTested);
    }

    /**
     * {@return this sample with a number of locations planned and not tested}
     *
     * @param notTested how many
     */
    public Sample withNotTested(int notTested) {
        return new Sample(spots, selection, zoneShares, notTested);
    }

    /**
     * {@return this sample with its zeros read as "at most" the smallest rate that could have been seen}
     *
     * <p>A rate of zero says that no water was seen to go in within the time waited; it has no logarithm.
     *
     * @param smallest the smallest rate that could have been told from zero
     */
    public Sample withSmallestSeen(InfiltrationRate smallest) {
        return new Sample(
                spots.stream().map(spot -> spot.withSmallestSeen(smallest)).toList(), selection, zoneShares, notTested);
    }

    /** {@return whether the locations are representative of the surface: random, or stratified with area and a figure of every zone} */
    public boolean isRepresentative() {
        return selection == Selection.RANDOM || (selection == Selection.STRATIFIED && new Zones(this).areKnown());
    }
}
