// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.ClockTime;
import dev.infiltration.field.Event;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.Ring;
import dev.infiltration.field.WaterReading;
import dev.infiltration.field.Weather;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Range;
import dev.infiltration.method.TestMethod;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import dev.infiltration.units.UnitSystem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/** Rules of a visit as a whole: its method, surface, water, weather and units. */
final class VisitRules {

    /** Tests that a finding names one by one. */
    private static final int MOST_NAMED = 5;

    private VisitRules() {}

    static void method(VisitAt at, Findings findings) {
        String named = SubjectText.given(at.visit().method());
        TestMethod method = at.methodOrNull();
        if (named == null && method != null) {
            String observed = "checked by " + method.id();
            findings.add(BuiltInRule.VISIT_METHOD_UNRECORDED, at.place(), at.subject(), observed);
        } else if (method == null) {
            String known = String.join(
                    ", ",
                    at.book().register().methods().all().stream()
                            .map(TestMethod::id)
                            .toList());
            findings.add(
                    BuiltInRule.VISIT_METHOD_UNKNOWN,
                    at.place(),
                    at.subject(),
                    String.valueOf(named),
                    known,
                    RuleBases.COMMON_PRACTICE);
        }
    }

    static void surfaceType(VisitAt at, TestMethod method, Findings findings) {
        at.surface().map(surface -> surface.surface().type()).ifPresent(type -> {
            if (!method.surfaceTypes().contains(type)) {
                String allowed = String.join(
                        ", ", method.surfaceTypes().stream().map(t -> t.word()).toList());
                findings.add(
                        BuiltInRule.VISIT_SURFACE_TYPE,
                        at.place(),
                        at.subject(),
                        type.word(),
                        allowed,
                        RuleBases.SURFACES);
            }
        });
    }

    static void conditions(VisitAt at, Findings findings) {
        if (Boolean.FALSE.equals(at.visit().swept())) {
            findings.add(BuiltInRule.VISIT_UNSWEPT, at.place(), at.subject(), "not swept", "swept", RuleBases.BROOMED);
        }
        if (Boolean.FALSE.equals(at.visit().potableWater())) {
            findings.add(
                    BuiltInRule.VISIT_WATER_NOT_POTABLE,
                    at.place(),
                    at.subject(),
                    "not potable",
                    "potable",
                    RuleBases.POTABLE);
        }
        if (Boolean.TRUE.equals(at.visit().standingWater())) {
            findings.add(
                    BuiltInRule.VISIT_STANDING_WATER,
                    at.place(),
                    at.subject(),
                    "standing water",
                    "none",
                    RuleBases.NO_STANDING_WATER);
        } else if (at.visit().standingWater() == null) {
            findings.add(
                    BuiltInRule.VISIT_STANDING_WATER_UNRECORDED,
                    at.place(),
                    at.subject(),
                    "",
                    "",
                    RuleBases.NO_STANDING_WATER);
        }
    }

    static void freezing(VisitAt at, Findings findings) {
        Weather weather = at.visit().weather();
        Reading<Temperature> air = weather == null ? null : weather.air();
        if (air != null && isFreezing(air)) {
            findings.add(
                    BuiltInRule.VISIT_FREEZING,
                    at.place(),
                    at.subject(),
                    "air " + air,
                    "above 0 °C / 32 °F",
                    RuleBases.COMMON_PRACTICE);
        }
    }

    /** One finding for each instrument, however often the visit names it. */
    static void checkOverdue(VisitAt at, Findings findings) {
        LocalDate date = at.visit().date();
        for (Instrument instrument : Resolutions.named(at).distinct().toList()) {
            LocalDate due = instrument.checkDue();
            if (date != null && due != null && date.isAfter(due)) {
                findings.addPart(
                        BuiltInRule.INSTRUMENT_CHECK_OVERDUE,
                        at.place(),
                        at.subject() + ", " + instrument.id(),
                        String.valueOf(instrument.id()),
                        "visit on " + date,
                        "not after " + due);
            }
        }
    }

    static boolean isFreezing(Reading<Temperature> temperature) {
        return temperature.compareAmount(Reading.of("0", FieldUnit.CELSIUS)) <= 0;
    }

    /** Ring diameters and run waters of runs that are not void; an amount that is not positive is judged elsewhere. */
    static void mixedUnits(VisitAt at, Findings findings) {
        Map<UnitSystem, String> met = new EnumMap<>(UnitSystem.class);
        for (TestAt test : at.tests()) {
            for (PouringAt run : test.runs()) {
                if (!run.pouring().isVoid()) {
                    addSystems(run, met);
                }
            }
        }
        if (met.size() > 1) {
            findings.add(
                    BuiltInRule.VISIT_MIXED_UNITS,
                    at.place(),
                    at.subject(),
                    String.join(" and ", met.values()),
                    "one system",
                    RuleBases.SCOPE);
        }
    }

    private static void addSystems(PouringAt run, Map<UnitSystem, String> met) {
        Ring ring = run.test().ringOrNull();
        if (ring != null && ring.isUsable()) {
            ring.diametersInUse().forEach(d -> first(met, d.unit().system(), "diameter " + d));
        }
        waters(run.pouring()).forEach(water -> first(met, water.system(), "water " + water));
    }

    /** Of the readings of a system the first by their words, in whichever order they stand. */
    private static void first(Map<UnitSystem, String> met, UnitSystem system, String reading) {
        met.merge(system, reading, (one, other) -> one.compareTo(other) <= 0 ? one : other);
    }

    private static Stream<WaterReading> waters(Pouring pouring) {
        if (pouring.pouredWater().filter(WaterReading::isPositive).isEmpty()) {
            return Stream.empty();
        }
        return pouring.water() != null
                ? Stream.of(pouring.water())
                : pouring.pours().stream().flatMap(pour -> Stream.of(pour.before(), pour.after()));
    }

    static void rain(VisitAt at, TestMethod method, Findings findings) {
        Weather weather = at.visit().weather();
        ClockTime end = weather == null ? null : weather.lastRainEnd();
        ClockTime dry = weather == null ? null : weather.noRainSince();
        if (end == null && dry == null) {
            findings.add(
                    BuiltInRule.VISIT_RAIN_UNRECORDED,
                    at.place(),
                    at.subject(),
                    "",
                    method.limit(Limit.DRY_TIME).toString(),
                    method.limit(Limit.DRY_TIME).basis());
            return;
        }
        Range<Time> allowed = method.limit(Limit.DRY_TIME).in(UnitSystem.NEITHER);
        @Nullable Reading<Time> least = allowed.lowest();
        if (least == null) {
            return;
        }
        BigDecimal limit = TimeRange.seconds(least);
        TimeRange since = TimeRange.of(end == null ? Objects.requireNonNull(dry) : end, at.zone());
        for (TestAt test : soonest(at, since)) {
            TimeRange start = Objects.requireNonNull(test.firstStart());
            if (start.leastAfter(since).compareTo(limit) < 0) {
                boolean isShown = end != null && start.mostAfter(since).compareTo(limit) < 0;
                findings.add(
                        isShown ? BuiltInRule.VISIT_RAIN : BuiltInRule.VISIT_RAIN_UNSHOWN,
                        at.place().member("weather"),
                        at.subject(),
                        SubjectText.hours(isShown ? start.mostAfter(since) : start.leastAfter(since)) + " ("
                                + test.subject() + ")",
                        allowed.toString(),
                        method.limit(Limit.DRY_TIME).basis());
            }
        }
    }

    /** Tests with a start, the one soonest after the rain first: of several too soon, that one is reported. */
    private static List<TestAt> soonest(VisitAt at, TimeRange rain) {
        return at.tests().stream()
                .filter(test -> test.firstStart() != null)
                .sorted(Comparator.comparing((TestAt test) ->
                                Objects.requireNonNull(test.firstStart()).leastAfter(rain))
                        .thenComparing(TestAt::subject))
                .toList();
    }

    static void rainDuring(VisitAt at, Findings findings) {
        Weather weather = at.visit().weather();
        ClockTime from = weather == null ? null : weather.rainFrom();
        TimeRange rain = from == null ? null : TimeRange.of(from, at.zone());
        List<String> tests = at.tests().stream()
                .filter(test -> rain != null && isInRain(test, rain))
                .map(TestAt::subject)
                .sorted()
                .toList();
        if (!tests.isEmpty()) {
            findings.add(
                    BuiltInRule.VISIT_RAIN_DURING,
                    at.place().member("weather"),
                    at.subject(),
                    "rain from " + from + " (" + some(tests) + ")",
                    "no rain",
                    RuleBases.NO_STANDING_WATER);
        }
    }

    private static String some(List<String> tests) {
        String first = String.join("; ", tests.subList(0, Math.min(MOST_NAMED, tests.size())));
        return first + (tests.size() > MOST_NAMED ? " and " + (tests.size() - MOST_NAMED) + " more" : "");
    }

    static void rainDuring(PouringAt at, Findings findings) {
        if (has(at, Event.Kind.RAIN)) {
            findings.add(
                    BuiltInRule.VISIT_RAIN_DURING,
                    at.place(),
                    at.subject(),
                    "rain",
                    "no rain",
                    RuleBases.NO_STANDING_WATER);
        }
    }

    private static boolean has(PouringAt pouring, Event.Kind kind) {
        return pouring.pouring().events().stream().anyMatch(event -> event.kind() == kind);
    }

    /** Even read most kindly, the test starts after the rain began, or a part of it that counts runs then. */
    private static boolean isInRain(TestAt test, TimeRange rain) {
        TimeRange first = test.firstStart();
        if (first != null && first.leastAfter(rain).signum() > 0) {
            return true;
        }
        List<PouringAt> counting = new ArrayList<>(test.pourings());
        counting.removeIf(pouring -> pouring.pouring().isVoid());
        return counting.stream().anyMatch(pouring -> runsAfter(pouring, rain));
    }

    private static boolean runsAfter(PouringAt pouring, TimeRange rain) {
        TimeRange start = pouring.start();
        BigDecimal elapsed = pouring.elapsed();
        return start != null
                && start.leastAfter(rain)
                                .add(elapsed == null ? BigDecimal.ZERO : elapsed)
                                .signum()
                        > 0;
    }
}
