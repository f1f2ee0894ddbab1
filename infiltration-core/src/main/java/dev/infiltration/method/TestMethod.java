// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import dev.infiltration.field.Surface;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The requirements of a test method: plain data, every number with its basis.
 *
 * <p>The built-in methods are in {@link Methods}. A national variant or a utility's own procedure is made from one of them
 * with {@code with…}. A verification covers the limits that were compared with a licensed edition. So {@code with…} of
 * anything but names removes {@code verified}: state it last. The latest licensed edition and the engineer of record always
 * govern.
 *
 * @param id            the id by which visits name the method
 * @param aliases       other names of the method, in any case of letters
 * @param designation   the name that a report gives
 * @param verified      who compared these limits with a licensed edition; null: nobody did
 * @param surfaceTypes  the types of surface that the method covers
 * @param limits        the limits, one for each {@link Limit}; {@link #limit} reads one of them
 * @param massSteps     mass of water for a run, by the time of the prewetting
 * @param runsPerDay    the largest number of runs at a location on a day, 1 to 100; their mean is the rate of the location
 * @param locationCount number of locations of a surface
 * @param reportItems   items that a report must state
 */
public record TestMethod(
        String id,
        List<String> aliases,
        String designation,
        @Nullable Verification verified,
        List<Surface.Type> surfaceTypes,
        Map<Limit<?>, Band<?>> limits,
        List<MassStep> massSteps,
        int runsPerDay,
        LocationCount locationCount,
        List<ReportItem> reportItems) {

    /**
     * Copies the collections and checks that the method does not contradict itself.
     *
     * @throws IllegalArgumentException if it does, with every fault
     */
    public TestMethod {
        aliases = List.copyOf(aliases);
        surfaceTypes = List.copyOf(surfaceTypes);
        limits = Limits.inOrder(limits);
        massSteps = List.copyOf(massSteps);
        reportItems = List.copyOf(reportItems);
        MethodFaults.refuse(id, designation, limits, massSteps, runsPerDay, locationCount);
    }

    /**
     * {@return a limit of this method, in both unit systems}
     *
     * @param limit which limit
     * @param <Q>   the kind of quantity
     */
    @SuppressWarnings("unchecked") // with(…) and Limits hold each band to the kind of its limit
    public <Q extends Quantity<Q>> Band<Q> limit(Limit<Q> limit) {
        return (Band<Q>) Objects.requireNonNull(limits.get(Objects.requireNonNull(limit, "limit")));
    }

    /**
     * {@return this method with another limit, not verified}
     *
     * @param limit which limit
     * @param band  its range in both unit systems; {@link Band#unlimited()} where there is no limit
     * @param <Q>   the kind of quantity
     * @throws IllegalArgumentException if the method then contradicts itself
     */
    public <Q extends Quantity<Q>> TestMethod with(Limit<Q> limit, Band<Q> band) {
        Map<Limit<?>, Band<?>> others = new LinkedHashMap<>(limits);
        others.put(Objects.requireNonNull(limit, "limit"), Objects.requireNonNull(band, "band"));
        return requiring(surfaceTypes, others, massSteps, runsPerDay, locationCount, reportItems);
    }

    private TestMethod named(
            String otherId, List<String> otherAliases, String otherDesignation, @Nullable Verification otherVerified) {
        return new TestMethod(
                otherId,
                otherAliases,
                otherDesignation,
                otherVerified,
                surfaceTypes,
                limits,
                massSteps,
                runsPerDay,
                locationCount,
                reportItems);
    }

    /** A change of a requirement removes the verification. */
    private TestMethod requiring(
            List<Surface.Type> types,
            Map<Limit<?>, Band<?>> otherLimits,
            List<MassStep> steps,
            int runs,
            LocationCount count,
            List<ReportItem> items) {
        return new TestMethod(id, aliases, designation, null, types, otherLimits, steps, runs, count, items);
    }

    /**
     * {@return this method with another {@code id}}
     *
     * @param id the id by which visits name the method
     */
    public TestMethod withId(String id) {
        return named(id, aliases, designation, verified);
    }

    /**
     * {@return this method with other {@code aliases}}
     *
     * @param aliases other names of the method, in any case of letters
     */
    public TestMethod withAliases(List<String> aliases) {
        return named(id, aliases, designation, verified);
    }

    /**
     * {@return this method with another {@code designation}}
     *
     * @param designation the name that a report gives
     */
    public TestMethod withDesignation(String designation) {
        return named(id, aliases, designation, verified);
    }

    /**
     * {@return this method with another {@code verified}}
     *
     * @param verified who compared these limits with a licensed edition; null: nobody did
     */
    public TestMethod withVerified(@Nullable Verification verified) {
        return named(id, aliases, designation, verified);
    }

    /**
     * {@return this method with other {@code surfaceTypes}, not verified}
     *
     * @param surfaceTypes the types of surface that the method covers
     */
    public TestMethod withSurfaceTypes(List<Surface.Type> surfaceTypes) {
        return requiring(surfaceTypes, limits, massSteps, runsPerDay, locationCount, reportItems);
    }

    /**
     * {@return this method with other {@code massSteps}, not verified}
     *
     * @param massSteps mass of water for a run, by the time of the prewetting
     */
    public TestMethod withMassSteps(List<MassStep> massSteps) {
        return requiring(surfaceTypes, limits, massSteps, runsPerDay, locationCount, reportItems);
    }

    /**
     * {@return this method with another {@code runsPerDay}, not verified}
     *
     * @param runsPerDay the largest number of runs at a location on a day, 1 or more
     * @throws IllegalArgumentException if it is less than 1
     */
    public TestMethod withRunsPerDay(int runsPerDay) {
        return requiring(surfaceTypes, limits, massSteps, runsPerDay, locationCount, reportItems);
    }

    /**
     * {@return this method with another {@code locationCount}, not verified}
     *
     * @param locationCount number of locations of a surface
     */
    public TestMethod withLocationCount(LocationCount locationCount) {
        return requiring(surfaceTypes, limits, massSteps, runsPerDay, locationCount, reportItems);
    }

    /**
     * {@return this method with other {@code reportItems}, not verified}
     *
     * @param reportItems items that a report must state
     */
    public TestMethod withReportItems(List<ReportItem> reportItems) {
        return requiring(surfaceTypes, limits, massSteps, runsPerDay, locationCount, reportItems);
    }

    /**
     * {@return whether a visit that names its method so means this one}
     *
     * @param name id or alias, in any case of letters
     */
    public boolean isNamed(String name) {
        String plain = name.toLowerCase(Locale.ROOT);
        return id.toLowerCase(Locale.ROOT).equals(plain)
                || aliases.stream()
                        .anyMatch(alias -> alias.toLowerCase(Locale.ROOT).equals(plain));
    }

    /** {@return whether somebody compared the limits with a licensed edition, in words for every report} */
    public String verification() {
        return verified == null
                ? "limits not verified against the licensed edition"
                : "limits verified against " + verified.edition() + " by " + verified.by() + " on " + verified.on();
    }
}
