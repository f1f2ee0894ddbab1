// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * A limit that a test method may set, as a typed key.
 *
 * <p>{@link TestMethod#limit} gives the limit of a method, {@link TestMethod#with(Limit, Band)} sets another one. Reports,
 * forms, method files and their checks list the limits in the order of {@link #all()}.
 *
 * <pre>{@code
 * method.limit(Limit.HEAD);                                     // 10 to 15 mm; 0.40 to 0.60 in
 * method.with(Limit.REPEAT_DELAY, Band.unlimited());            // no limit
 * }</pre>
 *
 * @param <Q> the kind of quantity
 */
public final class Limit<Q extends Quantity<Q>> {

    /** Inside diameter of the ring. */
    public static final Limit<Length> INSIDE_DIAMETER =
            new Limit<>("insideDiameter", "Ring inside diameter", Length.class);

    /** Height of the ring. */
    public static final Limit<Length> RING_HEIGHT = new Limit<>("ringHeight", "Ring height", Length.class);

    /** Largest step to which the diameter of the ring is read. */
    public static final Limit<Length> DIAMETER_RESOLUTION =
            new Limit<>("diameterResolution", "Diameter read to", Length.class);

    /** Head between the two marks while water is poured. */
    public static final Limit<Length> HEAD = new Limit<>("head", "Head", Length.class);

    /** Mass of water for the prewetting. */
    public static final Limit<Mass> PREWET_MASS = new Limit<>("preWetMass", "Prewetting water", Mass.class);

    /** Difference between the recorded water and the sum of its pours. */
    public static final Limit<Mass> POUR_TOLERANCE = new Limit<>("pourTolerance", "Pour off by", Mass.class);

    /** Largest step to which water is weighed. */
    public static final Limit<Mass> MASS_RESOLUTION = new Limit<>("massResolution", "Water read to", Mass.class);

    /** Largest step to which the elapsed time is read. */
    public static final Limit<Time> TIME_RESOLUTION = new Limit<>("timeResolution", "Time read to", Time.class);

    /** Time from the end of the prewetting to the start of the first run of a test. */
    public static final Limit<Time> START_DELAY = new Limit<>("startDelay", "Prewetting to run", Time.class);

    /** Time from the end of a run to the start of a run without prewetting. */
    public static final Limit<Time> REPEAT_DELAY = new Limit<>("repeatDelay", "Run to repeat", Time.class);

    /** Time since the end of the last rain. */
    public static final Limit<Time> DRY_TIME = new Limit<>("dryTime", "Dry before a test", Time.class);

    /** Clear distance between locations that are tested within {@link #SPACING_TIME}. */
    public static final Limit<Length> CLEAR_SPACING =
            new Limit<>("clearSpacing", "Clear distance between locations", Length.class);

    /** Time between two tests from which on {@link #CLEAR_SPACING} does not apply. */
    public static final Limit<Time> SPACING_TIME =
            new Limit<>("spacingTime", "unless this lies between tests", Time.class);

    /** Surface temperature at which the sealing compound adheres. */
    public static final Limit<Temperature> SURFACE_TEMPERATURE =
            new Limit<>("surfaceTemperature", "Surface temperature", Temperature.class);

    private static final List<Limit<?>> ALL = List.of(
            INSIDE_DIAMETER,
            RING_HEIGHT,
            DIAMETER_RESOLUTION,
            HEAD,
            PREWET_MASS,
            POUR_TOLERANCE,
            MASS_RESOLUTION,
            TIME_RESOLUTION,
            START_DELAY,
            REPEAT_DELAY,
            DRY_TIME,
            CLEAR_SPACING,
            SPACING_TIME,
            SURFACE_TEMPERATURE);

    private final String key;
    private final String label;
    private final Class<Q> kind;

    private Limit(String key, String label, Class<Q> kind) {
        this.key = key;
        this.label = label;
        this.kind = kind;
    }

    /** {@return every limit, in the order in which reports list them} */
    public static List<Limit<?>> all() {
        return ALL;
    }

    /** {@return the name of the limit in method files} */
    public String key() {
        return key;
    }

    /** {@return the name of the limit for people} */
    public String label() {
        return label;
    }

    /** {@return the kind of quantity} */
    public Class<Q> kind() {
        return kind;
    }

    /** {@return the name of the limit in method files} */
    @Override
    public String toString() {
        return key;
    }
}
