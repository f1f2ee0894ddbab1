// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rule;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The identity of a rule: its id, and the effect and bias of its findings unless the record or a policy states another.
 *
 * <p>Ids are stable: they are never renamed or reused. Two values are equal if their ids are equal.
 */
public final class RuleId {

    private static final Map<String, RuleId> BUILT_IN = new LinkedHashMap<>();

    /** Requires: identifying parts are there; a visit has surface and date, a test location and, if it was made, ring. */
    public static final RuleId DATA_REQUIRED = builtIn("data.required", Effect.OMISSION, Bias.NONE);

    /** Requires: the surface, location, ring and instrument named exist. */
    public static final RuleId DATA_REFERENCE = builtIn("data.reference", Effect.NO_RATE, Bias.NONE);

    /** Requires: ids are unique. */
    public static final RuleId DATA_DUPLICATE = builtIn("data.duplicate", Effect.CAUTION, Bias.NONE);

    /** Requires: times agree with each other, with the visit's date and with the day the surface was placed. */
    public static final RuleId DATA_CLOCK = builtIn("data.clock", Effect.DEVIATION, Bias.EITHER, true);

    /** Requires: every value of the document can be read. */
    public static final RuleId DATA_UNREADABLE = builtIn("data.unreadable", Effect.OMISSION, Bias.EITHER);

    /** Requires: no visit is dated after today. */
    public static final RuleId DATA_FUTURE = builtIn("data.future", Effect.CAUTION, Bias.NONE);

    /** Requires: the inside diameter is there and positive. */
    public static final RuleId RING_UNUSABLE = builtIn("ring.unusable", Effect.NO_RATE, Bias.NONE);

    /** Requires: the inside diameter lies in the method's band. */
    public static final RuleId RING_INSIDE_DIAMETER = builtIn("ring.inside-diameter", Effect.DEVIATION, Bias.NONE);

    /** Requires: the ring is as high as the method asks. */
    public static final RuleId RING_HEIGHT = builtIn("ring.height", Effect.DEVIATION, Bias.NONE);

    /** Requires: the diameters read lie within the user's limit of each other. */
    public static final RuleId RING_OUT_OF_ROUND = builtIn("ring.out-of-round", Effect.CAUTION, Bias.EITHER);

    /** Requires: the diameter was read as finely as the method asks. */
    public static final RuleId RING_RESOLUTION = builtIn("ring.resolution", Effect.DEVIATION, Bias.EITHER);

    /** Requires: the digits written show that the diameter was read as finely as the method asks. */
    public static final RuleId RING_RESOLUTION_UNSHOWN =
            builtIn("ring.resolution-unshown", Effect.CAUTION, Bias.EITHER);

    /** Requires: the visit names its method. */
    public static final RuleId VISIT_METHOD_UNRECORDED = builtIn("visit.method-unrecorded", Effect.CAUTION, Bias.NONE);

    /** Requires: the method named is known. */
    public static final RuleId VISIT_METHOD_UNKNOWN = builtIn("visit.method-unknown", Effect.OMISSION, Bias.NONE);

    /** Requires: the method covers this kind of surface. */
    public static final RuleId VISIT_SURFACE_TYPE = builtIn("visit.surface-type", Effect.CAUTION, Bias.NONE);

    /** Requires: loose material was broomed off. */
    public static final RuleId VISIT_UNSWEPT = builtIn("visit.unswept", Effect.DEVIATION, Bias.LOWERS);

    /** Requires: the water was potable. */
    public static final RuleId VISIT_WATER_NOT_POTABLE =
            builtIn("visit.water-not-potable", Effect.DEVIATION, Bias.LOWERS);

    /** Requires: no water stood on the surface. */
    public static final RuleId VISIT_STANDING_WATER = builtIn("visit.standing-water", Effect.DEVIATION, Bias.LOWERS);

    /** Requires: it is recorded whether water stood on the surface. */
    public static final RuleId VISIT_STANDING_WATER_UNRECORDED =
            builtIn("visit.standing-water-unrecorded", Effect.OMISSION, Bias.LOWERS);

    /** Requires: the last rain ended long enough before each test. */
    public static final RuleId VISIT_RAIN = builtIn("visit.rain", Effect.DEVIATION, Bias.LOWERS, true);

    /** Requires: what was written shows that the last rain ended long enough before each test. */
    public static final RuleId VISIT_RAIN_UNSHOWN = builtIn("visit.rain-unshown", Effect.CAUTION, Bias.LOWERS, true);

    /** Requires: no test starts or runs while it rains. */
    public static final RuleId VISIT_RAIN_DURING = builtIn("visit.rain-during", Effect.DEVIATION, Bias.LOWERS, true);

    /** Requires: the end of the last rain is recorded, or since when it has been dry. */
    public static final RuleId VISIT_RAIN_UNRECORDED = builtIn("visit.rain-unrecorded", Effect.OMISSION, Bias.LOWERS);

    /** Requires: the surface is cool enough for the sealing compound to stick. */
    public static final RuleId VISIT_HOT_SURFACE = builtIn("visit.hot-surface", Effect.CAUTION, Bias.RAISES);

    /** Requires: surface and air are above freezing. */
    public static final RuleId VISIT_FREEZING = builtIn("visit.freezing", Effect.CAUTION, Bias.LOWERS);

    /** Requires: as many locations were tested as the purchaser asked for, else as the method asks for the area. */
    public static final RuleId VISIT_LOCATION_COUNT = builtIn("visit.location-count", Effect.DEVIATION, Bias.NONE);

    /** Requires: the area is recorded where the number of locations rests on it. */
    public static final RuleId VISIT_AREA_UNRECORDED = builtIn("visit.area-unrecorded", Effect.OMISSION, Bias.NONE);

    /** Requires: locations tested close in time lie far enough apart. */
    public static final RuleId VISIT_SPACING = builtIn("visit.spacing", Effect.DEVIATION, Bias.LOWERS);

    /** Requires: the distance between locations tested close in time is known. */
    public static final RuleId VISIT_SPACING_UNKNOWN = builtIn("visit.spacing-unknown", Effect.CAUTION, Bias.LOWERS);

    /** Requires: ring diameters and run waters of the visit are written in one unit system. */
    public static final RuleId VISIT_MIXED_UNITS = builtIn("visit.mixed-units", Effect.CAUTION, Bias.NONE);

    /** Requires: water and elapsed time were read as finely as the method asks. */
    public static final RuleId VISIT_RESOLUTION = builtIn("visit.resolution", Effect.DEVIATION, Bias.EITHER);

    /** Requires: the digits written show that water and elapsed time were read as finely as the method asks. */
    public static final RuleId VISIT_RESOLUTION_UNSHOWN =
            builtIn("visit.resolution-unshown", Effect.CAUTION, Bias.EITHER);

    /** Requires: no instrument that the visit names was due for a check before the visit. */
    public static final RuleId INSTRUMENT_CHECK_OVERDUE =
            builtIn("instrument.check-overdue", Effect.CAUTION, Bias.EITHER);

    /** Requires: the location was tested. */
    public static final RuleId TEST_NOT_TESTED = builtIn("test.not-tested", Effect.CAUTION, Bias.NONE);

    /** Requires: a prewetting, a run or the reason for none is recorded. */
    public static final RuleId TEST_EMPTY = builtIn("test.empty", Effect.OMISSION, Bias.NONE);

    /** Requires: the first run of a series follows a prewetting. */
    public static final RuleId PREWET_ABSENT = builtIn("prewet.absent", Effect.DEVIATION, Bias.RAISES, true);

    /** Requires: the prewetting's water lies in the method's band. */
    public static final RuleId PREWET_MASS = builtIn("prewet.mass", Effect.DEVIATION, Bias.EITHER);

    /** Requires: the head of the prewetting stays between the marks. */
    public static final RuleId PREWET_HEAD = builtIn("prewet.head", Effect.DEVIATION, Bias.EITHER);

    /** Requires: the prewetting drained. */
    public static final RuleId PREWET_DISCONTINUED = builtIn("prewet.discontinued", Effect.CAUTION, Bias.NONE);

    /** Requires: a prewetting that no run follows has its end recorded. */
    public static final RuleId PREWET_END_UNRECORDED = builtIn("prewet.end-unrecorded", Effect.NO_RATE, Bias.NONE);

    /** Requires: no run starts on the water of a prewetting that did not drain. */
    public static final RuleId PREWET_STANDING = builtIn("prewet.standing", Effect.DEVIATION, Bias.LOWERS, true);

    /** Requires: water and elapsed time are there and positive. */
    public static final RuleId RUN_UNUSABLE = builtIn("run.unusable", Effect.NO_RATE, Bias.NONE);

    /** Requires: the run's water lies in the band for the time that the prewetting took. */
    public static final RuleId RUN_MASS = builtIn("run.mass", Effect.DEVIATION, Bias.NONE, true);

    /** Requires: the run's water was weighed. */
    public static final RuleId RUN_WATER_BY_VOLUME = builtIn("run.water-by-volume", Effect.DEVIATION, Bias.EITHER);

    /** Requires: the pours sum to the water. */
    public static final RuleId RUN_POURS_DISAGREE = builtIn("run.pours-disagree", Effect.DEVIATION, Bias.EITHER);

    /** Requires: the first run starts soon enough after the prewetting. */
    public static final RuleId RUN_START_DELAY = builtIn("run.start-delay", Effect.DEVIATION, Bias.RAISES, true);

    /** Requires: the times written show that the first run starts soon enough after the prewetting. */
    public static final RuleId RUN_START_DELAY_UNSHOWN =
            builtIn("run.start-delay-unshown", Effect.CAUTION, Bias.RAISES, true);

    /** Requires: a repeat without prewetting starts soon enough after the run before it. */
    public static final RuleId RUN_REPEAT_DELAY = builtIn("run.repeat-delay", Effect.DEVIATION, Bias.RAISES, true);

    /** Requires: the times written show that a repeat starts soon enough after the run before it. */
    public static final RuleId RUN_REPEAT_DELAY_UNSHOWN =
            builtIn("run.repeat-delay-unshown", Effect.CAUTION, Bias.RAISES, true);

    /** Requires: no more runs are made at a location and day than the method allows. */
    public static final RuleId RUN_TOO_MANY = builtIn("run.too-many", Effect.DEVIATION, Bias.EITHER, true);

    /** Requires: the head of the run stays between the marks. */
    public static final RuleId RUN_HEAD = builtIn("run.head", Effect.DEVIATION, Bias.EITHER);

    /** Requires: the run drained. */
    public static final RuleId RUN_DISCONTINUED = builtIn("run.discontinued", Effect.CAUTION, Bias.RAISES);

    /** Requires: the run is not void. */
    public static final RuleId RUN_VOID = builtIn("run.void", Effect.CAUTION, Bias.NONE);

    /** Requires: it is recorded how the run ended. */
    public static final RuleId RUN_END_UNRECORDED = builtIn("run.end-unrecorded", Effect.OMISSION, Bias.RAISES);

    /** Requires: nothing happened that moves the rate. */
    public static final RuleId RUN_EVENT = builtIn("run.event", Effect.CAUTION, Bias.EITHER);

    /** Requires: at the location's slope the ring floor is wet throughout. */
    public static final RuleId RUN_SLOPE_UNCOVERED = builtIn("run.slope-uncovered", Effect.CAUTION, Bias.LOWERS);

    /** Requires: a repeat agrees with the run before it within the user's ratio. */
    public static final RuleId RUN_PAIR_SPREAD = builtIn("run.pair-spread", Effect.CAUTION, Bias.EITHER);

    /** Requires: the rates of prewetting and run agree within the user's ratio. */
    public static final RuleId RUN_PREWET_RATIO = builtIn("run.prewet-ratio", Effect.CAUTION, Bias.EITHER);

    /** Requires: the rate lies within what was ever published. */
    public static final RuleId RUN_IMPLAUSIBLE = builtIn("run.implausible", Effect.CAUTION, Bias.EITHER);

    /** Requires: the water's temperature is recorded, where the user rates by its density. */
    public static final RuleId RATE_WATER_TEMPERATURE_UNRECORDED =
            builtIn("rate.water-temperature-unrecorded", Effect.OMISSION, Bias.LOWERS);

    /** Requires: the water's temperature lies within 0 and 60 °C, where the user rates by its density. */
    public static final RuleId RATE_WATER_TEMPERATURE_RANGE =
            builtIn("rate.water-temperature-range", Effect.CAUTION, Bias.LOWERS);

    /** Requires: every report item of the method is recorded. */
    public static final RuleId REPORT_MISSING = builtIn("report.missing", Effect.OMISSION, Bias.NONE, true);

    private final String id;

    private final Effect effect;
    private final Bias bias;
    private final boolean needsClock;
    private final int position;

    private RuleId(String id, Effect effect, Bias bias, boolean needsClock, int position) {
        this.id = id;
        this.effect = effect;
        this.bias = bias;
        this.needsClock = needsClock;
        this.position = position;
    }

    private static RuleId builtIn(String id, Effect effect, Bias bias) {
        return builtIn(id, effect, bias, false);
    }

    private static RuleId builtIn(String id, Effect effect, Bias bias, boolean needsClock) {
        RuleId rule = new RuleId(id, effect, bias, needsClock, BUILT_IN.size());
        BUILT_IN.put(id, rule);
        return rule;
    }

    /** {@return the built-in rules, in the order in which findings at one place are listed} */
    public static List<RuleId> all() {
        return List.copyOf(BUILT_IN.values());
    }

    /**
     * {@return the built-in rule with an id, or empty if there is none}
     *
     * @param id the id, for example {@code run.mass}
     */
    public static Optional<RuleId> of(String id) {
        Objects.requireNonNull(id, "id");
        return Optional.ofNullable(BUILT_IN.get(id));
    }

    /**
     * {@return the identity of a rule of the user}
     *
     * @param id     the id: a namespace of the user, a dot, a name
     * @param effect the effect of its findings
     * @param bias   the direction in which its findings may bias the rate
     * @throws IllegalArgumentException if a built-in rule has this id
     */
    public static RuleId ofUser(String id, Effect effect, Bias bias) {
        if (of(id).isPresent()) {
            throw new IllegalArgumentException("id: " + id + " is the id of a built-in rule; choose another");
        }
        Objects.requireNonNull(effect, "effect");
        return new RuleId(id, effect, Objects.requireNonNull(bias, "bias"), false, Integer.MAX_VALUE);
    }

    /** {@return the id, for example {@code run.mass}} */
    public String id() {
        return id;
    }

    /** {@return the default effect of its findings} */
    public Effect effect() {
        return effect;
    }

    /** {@return the default direction in which its findings may bias the rate} */
    public Bias bias() {
        return bias;
    }

    /** {@return whether the rule compares clock times with each other, or depends on the order of the runs} */
    public boolean needsClock() {
        return needsClock;
    }

    /** {@return the position among the built-in rules, from 0; rules of users come last} */
    public int position() {
        return position;
    }

    /**
     * {@return whether the id of a finding is that of this rule}
     *
     * @param otherId an id
     */
    public boolean is(String otherId) {
        return id.equals(otherId);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof RuleId rule && id.equals(rule.id);
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }

    /** {@return the id} */
    @Override
    public String toString() {
        return id;
    }
}
