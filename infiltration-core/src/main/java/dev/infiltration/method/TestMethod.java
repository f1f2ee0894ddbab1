// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import dev.infiltration.field.Surface;
import dev.infiltration.method.MethodFaults.Part;
import java.util.List;
import java.util.Locale;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * What a test method asks for: plain data, every number with its basis.
 *
 * <p>The built-in ones are in {@link Methods}. A national variant or a utility's own procedure is made from one of them
 * with {@code with…}. Whoever compared limits with a licensed edition did not compare those changed since: {@code with…} of
 * anything but names takes {@code verified} away, so it is stated last. Latest licensed edition and the engineer of record always govern.
 *
 * @param id                 the id by which visits name the method
 * @param aliases            other names it is known by, in any case of letters
 * @param designation        what a report calls it
 * @param verified           who compared these limits with a licensed edition; null: nobody did
 * @param surfaceTypes       the kinds of surface it covers
 * @param insideDiameter     inside diameter of the ring
 * @param ringHeight         height of the ring
 * @param diameterResolution the step the diameter is read to
 * @param head               the head between the two marks
 * @param preWetMass         mass of water for the prewetting
 * @param massSteps          mass of water for a run, by the time of the prewetting
 * @param pourTolerance      how far the pours may be from the water they sum to
 * @param massResolution     the step water is weighed to
 * @param timeResolution     the step the elapsed time is read to
 * @param startDelay         from the end of the prewetting to the start of the test's first run
 * @param repeatDelay        from the end of a run to the start of a run without prewetting
 * @param runsPerDay         runs at a location and day at most, whose mean is the location's rate
 * @param dryTime            time since the last rain
 * @param clearSpacing       clear distance between locations tested close in time
 * @param spacingTime        time between tests from which on the clear distance does not matter
 * @param surfaceTemperature surface temperature at which sealing compound still sticks
 * @param locationCount      number of locations of a surface
 * @param reportItems        what a report must state
 */
public record TestMethod(
        String id,
        List<String> aliases,
        String designation,
        @Nullable Verification verified,
        List<Surface.Type> surfaceTypes,
        Band<Length> insideDiameter,
        Band<Length> ringHeight,
        Band<Length> diameterResolution,
        Band<Length> head,
        Band<Mass> preWetMass,
        List<MassStep> massSteps,
        Band<Mass> pourTolerance,
        Band<Mass> massResolution,
        Band<Time> timeResolution,
        Band<Time> startDelay,
        Band<Time> repeatDelay,
        int runsPerDay,
        Band<Time> dryTime,
        Band<Length> clearSpacing,
        Band<Time> spacingTime,
        Band<Temperature> surfaceTemperature,
        LocationCount locationCount,
        List<ReportItem> reportItems) {

    /**
     * Copies the lists and checks that the method does not contradict itself.
     *
     * @throws IllegalArgumentException if it does, naming every fault
     */
    public TestMethod {
        aliases = List.copyOf(aliases);
        surfaceTypes = List.copyOf(surfaceTypes);
        massSteps = List.copyOf(massSteps);
        reportItems = List.copyOf(reportItems);
        MethodFaults.refuse(
                List.of(
                        new Part("id", id),
                        new Part("designation", designation),
                        new Part("insideDiameter", insideDiameter),
                        new Part("ringHeight", ringHeight),
                        new Part("diameterResolution", diameterResolution),
                        new Part("head", head),
                        new Part("preWetMass", preWetMass),
                        new Part("pourTolerance", pourTolerance),
                        new Part("massResolution", massResolution),
                        new Part("timeResolution", timeResolution),
                        new Part("startDelay", startDelay),
                        new Part("repeatDelay", repeatDelay),
                        new Part("dryTime", dryTime),
                        new Part("clearSpacing", clearSpacing),
                        new Part("spacingTime", spacingTime),
                        new Part("surfaceTemperature", surfaceTemperature),
                        new Part("locationCount", locationCount)),
                massSteps,
                runsPerDay);
    }

    /**
     * {@return this method with another {@code id}}
     *
     * @param id the id by which visits name the method
     */
    public TestMethod withId(String id) {
        return new TestMethod(
                id,
                aliases,
                designation,
                verified,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code aliases}}
     *
     * @param aliases other names it is known by, in any case of letters
     */
    public TestMethod withAliases(List<String> aliases) {
        return new TestMethod(
                id,
                aliases,
                designation,
                verified,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code designation}}
     *
     * @param designation what a report calls it
     */
    public TestMethod withDesignation(String designation) {
        return new TestMethod(
                id,
                aliases,
                designation,
                verified,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code verified}}
     *
     * @param verified who compared these limits with a licensed edition; null: nobody did
     */
    public TestMethod withVerified(@Nullable Verification verified) {
        return new TestMethod(
                id,
                aliases,
                designation,
                verified,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code surfaceTypes}, verified by nobody}
     *
     * @param surfaceTypes the kinds of surface it covers
     */
    public TestMethod withSurfaceTypes(List<Surface.Type> surfaceTypes) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code insideDiameter}, verified by nobody}
     *
     * @param insideDiameter inside diameter of the ring
     */
    public TestMethod withInsideDiameter(Band<Length> insideDiameter) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code ringHeight}, verified by nobody}
     *
     * @param ringHeight height of the ring
     */
    public TestMethod withRingHeight(Band<Length> ringHeight) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code diameterResolution}, verified by nobody}
     *
     * @param diameterResolution the step the diameter is read to
     */
    public TestMethod withDiameterResolution(Band<Length> diameterResolution) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code head}, verified by nobody}
     *
     * @param head the head between the two marks
     */
    public TestMethod withHead(Band<Length> head) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code preWetMass}, verified by nobody}
     *
     * @param preWetMass mass of water for the prewetting
     */
    public TestMethod withPreWetMass(Band<Mass> preWetMass) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code massSteps}, verified by nobody}
     *
     * @param massSteps mass of water for a run, by the time of the prewetting
     */
    public TestMethod withMassSteps(List<MassStep> massSteps) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code pourTolerance}, verified by nobody}
     *
     * @param pourTolerance how far the pours may be from the water they sum to
     */
    public TestMethod withPourTolerance(Band<Mass> pourTolerance) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code massResolution}, verified by nobody}
     *
     * @param massResolution the step water is weighed to
     */
    public TestMethod withMassResolution(Band<Mass> massResolution) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code timeResolution}, verified by nobody}
     *
     * @param timeResolution the step the elapsed time is read to
     */
    public TestMethod withTimeResolution(Band<Time> timeResolution) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code startDelay}, verified by nobody}
     *
     * @param startDelay from the end of the prewetting to the start of the test's first run
     */
    public TestMethod withStartDelay(Band<Time> startDelay) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code repeatDelay}, verified by nobody}
     *
     * @param repeatDelay from the end of a run to the start of a run without prewetting
     */
    public TestMethod withRepeatDelay(Band<Time> repeatDelay) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code runsPerDay}, verified by nobody}
     *
     * @param runsPerDay runs at a location and day at most, whose mean is the location's rate
     */
    public TestMethod withRunsPerDay(int runsPerDay) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code dryTime}, verified by nobody}
     *
     * @param dryTime time since the last rain
     */
    public TestMethod withDryTime(Band<Time> dryTime) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code clearSpacing}, verified by nobody}
     *
     * @param clearSpacing clear distance between locations tested close in time
     */
    public TestMethod withClearSpacing(Band<Length> clearSpacing) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code spacingTime}, verified by nobody}
     *
     * @param spacingTime time between tests from which on the clear distance does not matter
     */
    public TestMethod withSpacingTime(Band<Time> spacingTime) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code surfaceTemperature}, verified by nobody}
     *
     * @param surfaceTemperature surface temperature at which sealing compound still sticks
     */
    public TestMethod withSurfaceTemperature(Band<Temperature> surfaceTemperature) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code locationCount}, verified by nobody}
     *
     * @param locationCount number of locations of a surface
     */
    public TestMethod withLocationCount(LocationCount locationCount) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
    }

    /**
     * {@return this method with another {@code reportItems}, verified by nobody}
     *
     * @param reportItems what a report must state
     */
    public TestMethod withReportItems(List<ReportItem> reportItems) {
        return new TestMethod(
                id,
                aliases,
                designation,
                null,
                surfaceTypes,
                insideDiameter,
                ringHeight,
                diameterResolution,
                head,
                preWetMass,
                massSteps,
                pourTolerance,
                massResolution,
                timeResolution,
                startDelay,
                repeatDelay,
                runsPerDay,
                dryTime,
                clearSpacing,
                spacingTime,
                surfaceTemperature,
                locationCount,
                reportItems);
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
