// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static dev.infiltration.check.Bias.EITHER;
import static dev.infiltration.check.Bias.LOWERS;
import static dev.infiltration.check.Bias.NONE;
import static dev.infiltration.check.Bias.RAISES;
import static dev.infiltration.check.Effect.CAUTION;
import static dev.infiltration.check.Effect.DEVIATION;
import static dev.infiltration.check.Effect.NO_RATE;
import static dev.infiltration.check.Effect.OMISSION;

import java.util.Arrays;
import java.util.List;

/**
 * The catalogue: every built-in rule with its id, what it weighs, what it does to the rate, what holds, what is wrong when
 * it does not, and what can still be done. The order is that of findings at one place.
 */
enum BuiltInRule {
    DATA_REQUIRED(
            "data.required",
            OMISSION,
            NONE,
            "identifying parts are there; a visit has surface and date, a test location and, if it was made, ring",
            "not recorded",
            "write it down"),
    DATA_REFERENCE(
            "data.reference",
            NO_RATE,
            NONE,
            "the surface, location, ring and instrument named exist",
            "names something that the book does not hold",
            "correct the id, or add the record it means"),
    DATA_DUPLICATE(
            "data.duplicate",
            CAUTION,
            NONE,
            "ids are unique",
            "an earlier record has the same id, which is the one meant; this one is not judged",
            "give this record an id of its own"),
    DATA_CLOCK(
            "data.clock",
            DEVIATION,
            EITHER,
            "times agree with each other, with the visit's date and with the day the surface was placed",
            "the times contradict each other",
            "correct the time that was written wrongly, with an amendment"),
    DATA_UNREADABLE(
            "data.unreadable",
            OMISSION,
            EITHER,
            "every value of the document can be read",
            "a value could not be read",
            "look up the value on the field sheet and write it as the format requires"),
    DATA_FUTURE(
            "data.future",
            CAUTION,
            NONE,
            "no visit is dated after today",
            "dated after today",
            "correct the date, or leave the visit out until it is made"),
    RING_UNUSABLE(
            "ring.unusable",
            NO_RATE,
            NONE,
            "the inside diameter is there and positive",
            "no usable inside diameter",
            "measure the ring and write the diameter down"),
    RING_INSIDE_DIAMETER(
            "ring.inside-diameter",
            DEVIATION,
            NONE,
            "the inside diameter lies in the method's band",
            "inside diameter outside the method's band",
            "use a ring that the method allows; the rate counts with the diameter measured"),
    RING_HEIGHT(
            "ring.height",
            DEVIATION,
            NONE,
            "the ring is as high as the method asks",
            "ring lower than the method asks",
            "use a higher ring"),
    RING_OUT_OF_ROUND(
            "ring.out-of-round",
            CAUTION,
            EITHER,
            "the diameters read lie within the user's limit of each other",
            "the diameters read differ by more than the user's limit",
            "read more diameters, or use a round ring"),
    RING_RESOLUTION(
            "ring.resolution",
            DEVIATION,
            EITHER,
            "the diameter was read as finely as the method asks",
            "diameter read more coarsely than the method asks",
            "read the diameter again with a finer tape"),
    RING_RESOLUTION_UNSHOWN(
            "ring.resolution-unshown",
            CAUTION,
            EITHER,
            "the digits written show that the diameter was read as finely as the method asks",
            "the digits written do not show how finely the diameter was read",
            "state the resolution, or name the tape"),
    VISIT_METHOD_UNRECORDED(
            "visit.method-unrecorded",
            CAUTION,
            NONE,
            "the visit names its method",
            "no method named",
            "name the method; until then it is chosen by the kind of surface"),
    VISIT_METHOD_UNKNOWN(
            "visit.method-unknown",
            OMISSION,
            NONE,
            "the method named is known",
            "the method named is not known: rates are computed, no rule of a method is judged",
            "name a known method, or hand in the method's data"),
    VISIT_SURFACE_TYPE(
            "visit.surface-type",
            CAUTION,
            NONE,
            "the method covers this kind of surface",
            "the method does not cover this kind of surface",
            "name the method that was followed"),
    VISIT_UNSWEPT(
            "visit.unswept",
            DEVIATION,
            LOWERS,
            "loose material was broomed off",
            "loose material was not broomed off",
            "broom off loose material before sealing, and test again"),
    VISIT_WATER_NOT_POTABLE(
            "visit.water-not-potable",
            DEVIATION,
            LOWERS,
            "the water was potable",
            "the water was not potable",
            "test again with potable water"),
    VISIT_STANDING_WATER(
            "visit.standing-water",
            DEVIATION,
            LOWERS,
            "no water stood on the surface",
            "water stood on the surface",
            "come back when no water stands"),
    VISIT_STANDING_WATER_UNRECORDED(
            "visit.standing-water-unrecorded",
            OMISSION,
            LOWERS,
            "it is recorded whether water stood on the surface",
            "not recorded whether water stood on the surface",
            "write down whether water stood"),
    VISIT_RAIN(
            "visit.rain",
            DEVIATION,
            LOWERS,
            "the last rain ended long enough before each test",
            "the last rain ended too short a time before a test",
            "test again after the dry time that the method requires"),
    VISIT_RAIN_UNSHOWN(
            "visit.rain-unshown",
            CAUTION,
            LOWERS,
            "what was written shows that the last rain ended long enough before each test",
            "what was written does not show that it was dry long enough",
            "find the end of the last rain in a gauge's record"),
    VISIT_RAIN_DURING(
            "visit.rain-during",
            DEVIATION,
            LOWERS,
            "no test starts or runs while it rains",
            "a test started or ran in the rain",
            "stop testing in rain, and at the first thunder; test again after the dry time that the method requires"),
    VISIT_RAIN_UNRECORDED(
            "visit.rain-unrecorded",
            OMISSION,
            LOWERS,
            "the end of the last rain is recorded, or since when it has been dry",
            "the last rain is not recorded",
            "find the end of the last rain in a gauge's record"),
    VISIT_HOT_SURFACE(
            "visit.hot-surface",
            CAUTION,
            RAISES,
            "the surface is cool enough for the sealing compound to stick",
            "surface hotter than sealing compound may stick on",
            "check for leaks; shade the location or test at a cooler hour; protect hands and knees from burns"),
    VISIT_FREEZING(
            "visit.freezing",
            CAUTION,
            LOWERS,
            "surface and air are above freezing",
            "at or below freezing",
            "wait for a thaw and test again; do not spread grit or sand, it clogs the pavement; keep people off ice"),
    VISIT_LOCATION_COUNT(
            "visit.location-count",
            DEVIATION,
            NONE,
            "as many locations were tested as the purchaser asked for, else as the method asks for the area",
            "fewer locations tested than asked for",
            "test more locations on this surface in the same campaign"),
    VISIT_AREA_UNRECORDED(
            "visit.area-unrecorded",
            OMISSION,
            NONE,
            "the area is recorded where the number of locations rests on it",
            "area not recorded: the number of locations cannot be judged",
            "measure the surface and write the area down"),
    VISIT_SPACING(
            "visit.spacing",
            DEVIATION,
            LOWERS,
            "locations tested close in time lie far enough apart",
            "another location tested close in time lies too near",
            "choose a location farther away, or wait"),
    VISIT_SPACING_UNKNOWN(
            "visit.spacing-unknown",
            CAUTION,
            LOWERS,
            "the distance between locations tested close in time is known",
            "the distance to another location tested close in time is not known",
            "tape the clear distance, or give the locations x and y"),
    VISIT_MIXED_UNITS(
            "visit.mixed-units",
            CAUTION,
            NONE,
            "ring diameters and run waters of the visit are written in one unit system",
            "ring diameters and run waters are written in both unit systems",
            "use one system throughout a visit"),
    VISIT_RESOLUTION(
            "visit.resolution",
            DEVIATION,
            EITHER,
            "water and elapsed time were read as finely as the method asks",
            "read more coarsely than the method asks",
            "use an instrument that the method allows"),
    VISIT_RESOLUTION_UNSHOWN(
            "visit.resolution-unshown",
            CAUTION,
            EITHER,
            "the digits written show that water and elapsed time were read as finely as the method asks",
            "the digits written do not show how finely it was read",
            "state the resolution, or name the instruments"),
    INSTRUMENT_CHECK_OVERDUE(
            "instrument.check-overdue",
            CAUTION,
            EITHER,
            "no instrument that the visit names was due for a check before the visit",
            "the check of an instrument was overdue at the visit",
            "check the instrument against a reference and record the result; correct what its readings need"),
    TEST_NOT_TESTED(
            "test.not-tested",
            CAUTION,
            NONE,
            "the location was tested",
            "the location was not tested",
            "test it at the next visit, once the reason has gone and it is safe"),
    TEST_EMPTY(
            "test.empty",
            OMISSION,
            NONE,
            "a prewetting, a run or the reason for none is recorded",
            "nothing is recorded for this location",
            "write down the test, or why it was not made"),
    PREWET_ABSENT(
            "prewet.absent",
            DEVIATION,
            RAISES,
            "the first run of a series follows a prewetting",
            "the first run was made without a prewetting that counts",
            "let the spot drain, prewet and test again"),
    PREWET_MASS(
            "prewet.mass",
            DEVIATION,
            EITHER,
            "the prewetting's water lies in the method's band",
            "prewetting with a mass outside the method's band",
            "let the spot drain, then prewet again with the right mass"),
    PREWET_HEAD(
            "prewet.head",
            DEVIATION,
            EITHER,
            "the head of the prewetting stays between the marks",
            "the head of the prewetting left the marks",
            "let the spot drain, then prewet again at the right head"),
    PREWET_DISCONTINUED(
            "prewet.discontinued",
            CAUTION,
            NONE,
            "the prewetting drained",
            "the prewetting was discontinued: it gives an upper bound where no run was made",
            "write down the depth left standing; it sharpens the bound"),
    PREWET_END_UNRECORDED(
            "prewet.end-unrecorded",
            NO_RATE,
            NONE,
            "a prewetting that no run follows has its end recorded",
            "no run follows the prewetting and its end is not recorded: the location has no rate",
            "look up how it ended and write it down, or test again"),
    PREWET_STANDING(
            "prewet.standing",
            DEVIATION,
            LOWERS,
            "no run starts on the water of a prewetting that did not drain",
            "the run started on water that the prewetting had left",
            "wait until the prewetting has drained"),
    RUN_UNUSABLE(
            "run.unusable",
            NO_RATE,
            NONE,
            "water and elapsed time are there and positive",
            "no usable water or elapsed time",
            "repeat the test"),
    RUN_MASS(
            "run.mass",
            DEVIATION,
            NONE,
            "the run's water lies in the band for the time that the prewetting took",
            "run with a mass outside the method's band for this prewetting",
            "repeat the test with the right mass"),
    RUN_WATER_BY_VOLUME(
            "run.water-by-volume",
            DEVIATION,
            EITHER,
            "the run's water was weighed",
            "water measured by volume: it counts at 1000 kg/m³",
            "weigh the water"),
    RUN_POURS_DISAGREE(
            "run.pours-disagree",
            DEVIATION,
            EITHER,
            "the pours sum to the water",
            "the pours do not sum to the water",
            "find the reading that is wrong, and amend it"),
    RUN_START_DELAY(
            "run.start-delay",
            DEVIATION,
            RAISES,
            "the first run starts soon enough after the prewetting",
            "the run started too long after the prewetting",
            "prewet again, then start in time"),
    RUN_START_DELAY_UNSHOWN(
            "run.start-delay-unshown",
            CAUTION,
            RAISES,
            "the times written show that the first run starts soon enough after the prewetting",
            "the times written do not show that the run started in time",
            "write times to the second, or time the delay"),
    RUN_REPEAT_DELAY(
            "run.repeat-delay",
            DEVIATION,
            RAISES,
            "a repeat without prewetting starts soon enough after the run before it",
            "the repeat started too long after the run before it",
            "prewet again before a later repeat"),
    RUN_REPEAT_DELAY_UNSHOWN(
            "run.repeat-delay-unshown",
            CAUTION,
            RAISES,
            "the times written show that a repeat starts soon enough after the run before it",
            "the times written do not show that the repeat started in time",
            "write times to the second, or time the delay"),
    RUN_TOO_MANY(
            "run.too-many",
            DEVIATION,
            EITHER,
            "no more runs are made at a location and day than the method allows",
            "more runs at this location and day than the method allows",
            "leave it out; the method's rate rests on the runs before it"),
    RUN_HEAD(
            "run.head",
            DEVIATION,
            EITHER,
            "the head of the run stays between the marks",
            "the head of the run left the marks",
            "repeat the test at the right head"),
    RUN_DISCONTINUED(
            "run.discontinued",
            CAUTION,
            RAISES,
            "the run drained",
            "the run was discontinued: it gives an upper bound",
            "write down the depth left standing; it sharpens the bound"),
    RUN_VOID("run.void", CAUTION, NONE, "the run is not void", "the run is void and not used", "repeat the test"),
    RUN_END_UNRECORDED(
            "run.end-unrecorded",
            OMISSION,
            RAISES,
            "it is recorded how the run ended",
            "not recorded how the run ended: taken as drained",
            "write down how it ended"),
    RUN_EVENT(
            "run.event",
            CAUTION,
            EITHER,
            "nothing happened that moves the rate",
            "something happened that moves the rate",
            "mend the cause and repeat the test"),
    RUN_SLOPE_UNCOVERED(
            "run.slope-uncovered",
            CAUTION,
            LOWERS,
            "at the location's slope the ring floor is wet throughout",
            "on this slope part of the ring floor stays dry",
            "state it in the report; the head counts at the lowest point"),
    RUN_PAIR_SPREAD(
            "run.pair-spread",
            CAUTION,
            EITHER,
            "a repeat agrees with the run before it within the user's ratio",
            "the repeat differs from the run before it by more than the user's ratio",
            "look for a leak, and for readings typed wrongly"),
    RUN_PREWET_RATIO(
            "run.prewet-ratio",
            CAUTION,
            EITHER,
            "the rates of prewetting and run agree within the user's ratio",
            "the rates of prewetting and run differ by more than the user's ratio",
            "look for minutes typed as seconds and pounds typed as kilograms"),
    RUN_IMPLAUSIBLE(
            "run.implausible",
            CAUTION,
            EITHER,
            "the rate lies within what was ever published",
            "the rate is beyond what was ever published",
            "look for a wrong unit, and for minutes typed as seconds"),
    RATE_WATER_TEMPERATURE_UNRECORDED(
            "rate.water-temperature-unrecorded",
            OMISSION,
            LOWERS,
            "the water's temperature is recorded, where the user rates by its density",
            "water temperature not recorded: rated by the published constant",
            "write the water's temperature down"),
    RATE_WATER_TEMPERATURE_RANGE(
            "rate.water-temperature-range",
            CAUTION,
            LOWERS,
            "the water's temperature lies within 0 and 60 °C, where the user rates by its density",
            "no density for this water temperature: rated by the published constant",
            "look for a wrong unit, and amend it"),
    REPORT_MISSING(
            "report.missing",
            OMISSION,
            NONE,
            "every report item of the method is recorded",
            "report items of the method are not recorded",
            "write them down while somebody remembers");

    private static final List<String> IDS =
            Arrays.stream(values()).map(BuiltInRule::id).toList();

    private final String id;
    private final Effect effect;
    private final Bias bias;
    private final String holds;
    private final String wrong;
    private final String remedy;

    BuiltInRule(String id, Effect effect, Bias bias, String holds, String wrong, String remedy) {
        this.id = id;
        this.effect = effect;
        this.bias = bias;
        this.holds = holds;
        this.wrong = wrong;
        this.remedy = remedy;
    }

    String id() {
        return id;
    }

    Effect effect() {
        return effect;
    }

    Bias bias() {
        return bias;
    }

    /** What holds when the rule is kept. */
    String holds() {
        return holds;
    }

    /** What is wrong when it is not. */
    String wrong() {
        return wrong;
    }

    String remedy() {
        return remedy;
    }

    /** {@return the rule of an id} */
    static BuiltInRule of(String id) {
        int position = IDS.indexOf(id);
        if (position < 0) {
            throw new IllegalArgumentException("rule: the catalogue has no rule " + id);
        }
        return values()[position];
    }

    /** Whether a finding of this rule may withhold a rate as the catalogue has it. */
    boolean canWithhold() {
        return effect == NO_RATE || this == DATA_REQUIRED || this == DATA_UNREADABLE || this == DATA_DUPLICATE;
    }

    /** {@return the position of a rule in the catalogue; rules of users come last} */
    static int order(String id) {
        int position = IDS.indexOf(id);
        return position < 0 ? IDS.size() : position;
    }
}
