// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.rule.Bias;
import dev.infiltration.rule.Effect;
import dev.infiltration.rule.RuleId;
import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The built-in rules: each with its identity, its requirement, what is wrong if it is not met, and what can still be done. The
 * order is that of findings at one place.
 */
enum BuiltInRule {
    DATA_REQUIRED(
            RuleId.DATA_REQUIRED,
            "identifying parts are there; a visit has surface and date, a test location and, if it was made, ring",
            "not recorded",
            "write it down"),
    DATA_REFERENCE(
            RuleId.DATA_REFERENCE,
            "the surface, location, ring and instrument named exist",
            "names a record that is not in the book",
            "correct the id, or add the record it means"),
    DATA_DUPLICATE(
            RuleId.DATA_DUPLICATE,
            "ids are unique",
            "duplicate id: references use the first record with this id, and this record is not checked",
            "give this record a different id"),
    DATA_CLOCK(
            RuleId.DATA_CLOCK,
            "times agree with each other, with the visit's date and with the day the surface was placed",
            "the times contradict each other",
            "correct the time that was written wrongly, with an amendment"),
    DATA_UNREADABLE(
            RuleId.DATA_UNREADABLE,
            "every value of the document can be read",
            "a value could not be read",
            "look up the value on the field sheet and write it as the format requires"),
    DATA_FUTURE(
            RuleId.DATA_FUTURE,
            "no visit is dated after today",
            "dated after today",
            "correct the date, or remove the visit until it is made"),
    RING_UNUSABLE(
            RuleId.RING_UNUSABLE,
            "the inside diameter is there and positive",
            "no usable inside diameter",
            "measure the ring and write the diameter down"),
    RING_INSIDE_DIAMETER(
            RuleId.RING_INSIDE_DIAMETER,
            "the inside diameter is within the method's band",
            "inside diameter outside the method's band",
            "use a ring that the method allows; the rate is computed with the measured diameter"),
    RING_HEIGHT(
            RuleId.RING_HEIGHT,
            "the ring is at least as high as the method requires",
            "ring lower than the method requires",
            "use a higher ring"),
    RING_OUT_OF_ROUND(
            RuleId.RING_OUT_OF_ROUND,
            "the diameters differ by no more than the user's limit",
            "the diameters differ by more than the user's limit",
            "read more diameters, or use a round ring"),
    RING_RESOLUTION(
            RuleId.RING_RESOLUTION,
            "the diameter was read to the resolution that the method requires",
            "diameter read more coarsely than the method requires",
            "read the diameter again with a finer tape"),
    RING_RESOLUTION_UNSHOWN(
            RuleId.RING_RESOLUTION_UNSHOWN,
            "the digits written show that the diameter was read to the resolution that the method requires",
            "the written digits do not show the resolution of the diameter",
            "state the resolution, or name the tape"),
    VISIT_METHOD_UNRECORDED(
            RuleId.VISIT_METHOD_UNRECORDED,
            "the visit names its method",
            "no method named",
            "name the method; until then it is chosen by the type of the surface"),
    VISIT_METHOD_UNKNOWN(
            RuleId.VISIT_METHOD_UNKNOWN,
            "the method named is known",
            "unknown method: rates are computed, but no rule of a method is checked",
            "name a known method, or hand in the method's data"),
    VISIT_SURFACE_TYPE(
            RuleId.VISIT_SURFACE_TYPE,
            "the method covers this type of surface",
            "the method does not cover this type of surface",
            "name the method that was followed"),
    VISIT_UNSWEPT(
            RuleId.VISIT_UNSWEPT,
            "loose material was broomed off",
            "loose material was not broomed off",
            "broom off loose material before sealing, and test again"),
    VISIT_WATER_NOT_POTABLE(
            RuleId.VISIT_WATER_NOT_POTABLE,
            "the water was potable",
            "the water was not potable",
            "test again with potable water"),
    VISIT_STANDING_WATER(
            RuleId.VISIT_STANDING_WATER,
            "no water stood on the surface",
            "water stood on the surface",
            "come back when no water stands"),
    VISIT_STANDING_WATER_UNRECORDED(
            RuleId.VISIT_STANDING_WATER_UNRECORDED,
            "it is recorded whether water stood on the surface",
            "not recorded whether water stood on the surface",
            "write down whether water stood"),
    VISIT_RAIN(
            RuleId.VISIT_RAIN,
            "the last rain ended long enough before each test",
            "less than the required dry time before the test",
            "test again after the dry time that the method requires"),
    VISIT_RAIN_UNSHOWN(
            RuleId.VISIT_RAIN_UNSHOWN,
            "what was written shows that the last rain ended long enough before each test",
            "what was written does not show that it was dry long enough",
            "find the end of the last rain in a gauge's record"),
    VISIT_RAIN_DURING(
            RuleId.VISIT_RAIN_DURING,
            "no test starts or runs while it rains",
            "a test started or ran in the rain",
            "stop testing in rain, and at the first thunder; test again after the dry time that the method requires"),
    VISIT_RAIN_UNRECORDED(
            RuleId.VISIT_RAIN_UNRECORDED,
            "the end of the last rain is recorded, or since when it has been dry",
            "the last rain is not recorded",
            "find the end of the last rain in a gauge's record"),
    VISIT_HOT_SURFACE(
            RuleId.VISIT_HOT_SURFACE,
            "the surface is cool enough for the sealing compound to adhere",
            "surface too hot: the sealing compound may not adhere",
            "check for leaks; shade the location or test at a cooler hour; protect hands and knees from burns"),
    VISIT_FREEZING(
            RuleId.VISIT_FREEZING,
            "surface and air are above freezing",
            "at or below freezing",
            "wait for a thaw and test again; do not spread grit or sand, it clogs the pavement; keep people off ice"),
    VISIT_LOCATION_COUNT(
            RuleId.VISIT_LOCATION_COUNT,
            "as many locations were tested as the purchaser requested, else as the method requires for the area",
            "fewer locations tested than required",
            "test more locations on this surface in the same campaign"),
    VISIT_AREA_UNRECORDED(
            RuleId.VISIT_AREA_UNRECORDED,
            "the area is recorded if the number of locations depends on it",
            "area not recorded: the number of locations cannot be checked",
            "measure the surface and write the area down"),
    VISIT_SPACING(
            RuleId.VISIT_SPACING,
            "locations tested close in time are far enough apart",
            "another location that was tested close in time is too near",
            "choose a location farther away, or wait"),
    VISIT_SPACING_UNKNOWN(
            RuleId.VISIT_SPACING_UNKNOWN,
            "the distance between locations tested close in time is known",
            "the distance to another location tested close in time is not known",
            "tape the clear distance, or give the locations x and y"),
    VISIT_MIXED_UNITS(
            RuleId.VISIT_MIXED_UNITS,
            "ring diameters and run waters of the visit are written in one unit system",
            "ring diameters and run waters are written in both unit systems",
            "use one system throughout a visit"),
    VISIT_RESOLUTION(
            RuleId.VISIT_RESOLUTION,
            "water and elapsed time were read to the resolution that the method requires",
            "read more coarsely than the method requires",
            "use an instrument that the method allows"),
    VISIT_RESOLUTION_UNSHOWN(
            RuleId.VISIT_RESOLUTION_UNSHOWN,
            "the written digits show that water and elapsed time were read to the required resolution",
            "the written digits do not show the resolution",
            "state the resolution, or name the instruments"),
    INSTRUMENT_CHECK_OVERDUE(
            RuleId.INSTRUMENT_CHECK_OVERDUE,
            "no instrument that the visit names was due for a check before the visit",
            "the check of an instrument was overdue at the visit",
            "check the instrument against a reference and record the result; correct what its readings need"),
    TEST_NOT_TESTED(
            RuleId.TEST_NOT_TESTED,
            "the location was tested",
            "the location was not tested",
            "test it at the next visit, once the reason has gone and it is safe"),
    TEST_EMPTY(
            RuleId.TEST_EMPTY,
            "a prewetting, a run or the reason for none is recorded",
            "nothing is recorded for this location",
            "write down the test, or why it was not made"),
    PREWET_ABSENT(
            RuleId.PREWET_ABSENT,
            "the first run of a series follows a prewetting",
            "the first run was made without a valid prewetting",
            "let the location drain, prewet and test again"),
    PREWET_MASS(
            RuleId.PREWET_MASS,
            "the prewetting's water is within the method's band",
            "prewetting with a mass outside the method's band",
            "let the location drain, then prewet again with the right mass"),
    PREWET_HEAD(
            RuleId.PREWET_HEAD,
            "the head of the prewetting stays between the marks",
            "the head was outside the marked band during the prewetting",
            "let the location drain, then prewet again at the right head"),
    PREWET_DISCONTINUED(
            RuleId.PREWET_DISCONTINUED,
            "the prewetting drained",
            "the prewetting was discontinued: it gives an upper bound where no run was made",
            "write down the depth left standing; it sharpens the bound"),
    PREWET_END_UNRECORDED(
            RuleId.PREWET_END_UNRECORDED,
            "a prewetting that no run follows has its end recorded",
            "no run follows the prewetting and its end is not recorded: the location has no rate",
            "look up how it ended and write it down, or test again"),
    PREWET_STANDING(
            RuleId.PREWET_STANDING,
            "no run starts on water left by a prewetting that did not drain",
            "the run started on water that the prewetting had left",
            "wait until the prewetting has drained"),
    RUN_UNUSABLE(
            RuleId.RUN_UNUSABLE,
            "water and elapsed time are there and positive",
            "no usable water or elapsed time",
            "repeat the test"),
    RUN_MASS(
            RuleId.RUN_MASS,
            "the run's water is within the band for the elapsed time of the prewetting",
            "run with a mass outside the method's band for this prewetting",
            "repeat the test with the right mass"),
    RUN_WATER_BY_VOLUME(
            RuleId.RUN_WATER_BY_VOLUME,
            "the run's water was weighed",
            "water measured by volume: mass computed with 1000 kg/m³",
            "weigh the water"),
    RUN_POURS_DISAGREE(
            RuleId.RUN_POURS_DISAGREE,
            "the pours sum to the water",
            "the pours do not sum to the water",
            "find the reading that is wrong, and amend it"),
    RUN_START_DELAY(
            RuleId.RUN_START_DELAY,
            "the first run starts soon enough after the prewetting",
            "the run started too long after the prewetting",
            "prewet again, then start in time"),
    RUN_START_DELAY_UNSHOWN(
            RuleId.RUN_START_DELAY_UNSHOWN,
            "the times written show that the first run starts soon enough after the prewetting",
            "the times written do not show that the run started in time",
            "write times to the second, or time the delay"),
    RUN_REPEAT_DELAY(
            RuleId.RUN_REPEAT_DELAY,
            "a repeat without prewetting starts soon enough after the run before it",
            "the repeat started too long after the run before it",
            "prewet again before a later repeat"),
    RUN_REPEAT_DELAY_UNSHOWN(
            RuleId.RUN_REPEAT_DELAY_UNSHOWN,
            "the times written show that a repeat starts soon enough after the run before it",
            "the times written do not show that the repeat started in time",
            "write times to the second, or time the delay"),
    RUN_TOO_MANY(
            RuleId.RUN_TOO_MANY,
            "no more runs are made at a location and day than the method allows",
            "more runs at this location and day than the method allows",
            "exclude this run; the rate of the method is based on the runs before it"),
    RUN_HEAD(
            RuleId.RUN_HEAD,
            "the head of the run stays between the marks",
            "the head was outside the marked band during the run",
            "repeat the test at the right head"),
    RUN_DISCONTINUED(
            RuleId.RUN_DISCONTINUED,
            "the run drained",
            "the run was discontinued: it gives an upper bound",
            "write down the depth left standing; it sharpens the bound"),
    RUN_VOID(RuleId.RUN_VOID, "the run is not void", "the run is void and not used", "repeat the test"),
    RUN_END_UNRECORDED(
            RuleId.RUN_END_UNRECORDED,
            "it is recorded how the run ended",
            "not recorded how the run ended: taken as drained",
            "write down how it ended"),
    RUN_EVENT(
            RuleId.RUN_EVENT,
            "no event during the run may bias the rate",
            "an event during the run may bias the rate",
            "correct the cause and repeat the test"),
    RUN_SLOPE_UNCOVERED(
            RuleId.RUN_SLOPE_UNCOVERED,
            "at the location's slope the ring floor is wet throughout",
            "on this slope part of the ring floor stays dry",
            "state it in the report; measure the head at the lowest point"),
    RUN_PAIR_SPREAD(
            RuleId.RUN_PAIR_SPREAD,
            "a repeat agrees with the run before it within the user's ratio",
            "the repeat differs from the run before it by more than the user's ratio",
            "look for a leak, and for readings typed wrongly"),
    RUN_PREWET_RATIO(
            RuleId.RUN_PREWET_RATIO,
            "the rates of prewetting and run agree within the user's ratio",
            "the rates of prewetting and run differ by more than the user's ratio",
            "look for minutes typed as seconds and pounds typed as kilograms"),
    RUN_IMPLAUSIBLE(
            RuleId.RUN_IMPLAUSIBLE,
            "the rate is within the range of published rates",
            "the rate is outside the range of published rates",
            "look for a wrong unit, and for minutes typed as seconds"),
    RATE_WATER_TEMPERATURE_UNRECORDED(
            RuleId.RATE_WATER_TEMPERATURE_UNRECORDED,
            "the water's temperature is recorded, if the user computes rates with its density",
            "water temperature not recorded: rate computed with the published constant",
            "write the water's temperature down"),
    RATE_WATER_TEMPERATURE_RANGE(
            RuleId.RATE_WATER_TEMPERATURE_RANGE,
            "the water's temperature is within 0 and 60 °C, if the user computes rates with its density",
            "no density for this water temperature: rate computed with the published constant",
            "look for a wrong unit, and amend it"),
    REPORT_MISSING(
            RuleId.REPORT_MISSING,
            "every report item of the method is recorded",
            "report items of the method are not recorded",
            "write them down while they are remembered");

    private static final Map<String, BuiltInRule> BY_ID =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(BuiltInRule::id, Function.identity()));

    @SuppressWarnings("ImmutableEnumChecker") // a rule id is immutable
    private final RuleId ruleId;

    private final String holds;
    private final String wrong;
    private final String remedy;

    BuiltInRule(RuleId ruleId, String holds, String wrong, String remedy) {
        this.ruleId = ruleId;
        this.holds = holds;
        this.wrong = wrong;
        this.remedy = remedy;
    }

    RuleId ruleId() {
        return ruleId;
    }

    String id() {
        return ruleId.id();
    }

    Effect effect() {
        return ruleId.effect();
    }

    Bias bias() {
        return ruleId.bias();
    }

    /** What is required. */
    String holds() {
        return holds;
    }

    /** What is wrong if it is not met. */
    String wrong() {
        return wrong;
    }

    String remedy() {
        return remedy;
    }

    /** {@return the built-in rule with an id} */
    static BuiltInRule of(String id) {
        BuiltInRule rule = BY_ID.get(id);
        if (rule == null) {
            throw new IllegalArgumentException("rule: there is no built-in rule " + id);
        }
        return rule;
    }

    /** Whether a finding of this rule may withhold a rate under the default policy. */
    boolean canWithhold() {
        return effect() == Effect.NO_RATE || this == DATA_REQUIRED || this == DATA_UNREADABLE || this == DATA_DUPLICATE;
    }

    /** {@return the position of a rule among the built-in rules; rules of users come last} */
    static int order(String id) {
        return RuleId.of(id).map(RuleId::position).orElse(Integer.MAX_VALUE);
    }
}
