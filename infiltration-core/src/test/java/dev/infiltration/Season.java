// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.celsius;
import static dev.infiltration.Amounts.fahrenheit;
import static dev.infiltration.Amounts.ft;
import static dev.infiltration.Amounts.ft2;
import static dev.infiltration.Amounts.in;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.lb;
import static dev.infiltration.Amounts.m;
import static dev.infiltration.Amounts.m2;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.percent;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Amounts.time;

import dev.infiltration.check.Checker;
import dev.infiltration.field.CrewMember;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Head;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Photo;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import dev.infiltration.field.WaterReading;
import dev.infiltration.field.Weather;
import dev.infiltration.review.Review;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;

/**
 * A complete and clean book, invented, of which a test changes one thing at a time: one surface of pavers with three
 * locations, tested on one day, a prewetting and two runs each. No rule finds anything in it, by any of the methods.
 */
public final class Season {

    /** The day of the visit. */
    public static final String DATE = "2026-06-03";

    /** The day on which the book is checked. */
    public static final LocalDate TODAY = LocalDate.parse("2026-06-10");

    /** What is written differently in the two unit systems. */
    private record Written(
            Reading<Area> area,
            Reading<Length> thickness,
            Reading<Length> height,
            Reading<Length> diameter,
            Reading<Mass> balance,
            Reading<Length> tape,
            WaterReading preWet,
            WaterReading run,
            Reading<Length> lowest,
            Reading<Length> highest,
            Reading<Temperature> air,
            Reading<Temperature> surface,
            Reading<Temperature> water,
            Reading<Length> rain,
            Reading<Length> step,
            Reading<Length> zero) {}

    private static final Written SI = new Written(
            m2("1850"),
            mm("80"),
            mm("100"),
            mm("300"),
            mass(kg("0.01")),
            mm("1"),
            kg("3.60"),
            kg("18.00"),
            mm("11"),
            mm("14"),
            celsius("23"),
            celsius("31"),
            celsius("19"),
            mm("8"),
            m("10.0"),
            m("0.0"));

    private static final Written INCH_POUND = new Written(
            ft2("20000"),
            in("3.15"),
            in("4.0"),
            in("12.00"),
            mass(lb("0.02")),
            in("0.05"),
            lb("8.00"),
            lb("40.00"),
            in("0.45"),
            in("0.55"),
            fahrenheit("74"),
            fahrenheit("88"),
            fahrenheit("66"),
            in("0.3"),
            ft("30.0"),
            ft("0.0"));

    private final FieldBook book;

    private Season(FieldBook book) {
        this.book = book;
    }

    /** {@return the clean book in SI units} */
    public static Season si() {
        return new Season(bookOf(SI));
    }

    /** {@return the clean book in inch-pound units} */
    public static Season inchPound() {
        return new Season(bookOf(INCH_POUND));
    }

    private static Reading<Mass> mass(WaterReading water) {
        return water.mass();
    }

    private static FieldBook bookOf(Written w) {
        return FieldBook.of()
                .withSites(List.of(Site.of("HQ")
                        .withName("Harrow Quay car park")
                        .withDescription("short-stay bays beside the slipway")
                        .withTimeZone(ZoneId.of("America/Chicago"))
                        .withSurfaces(List.of(surfaceOf(w)))))
                .withRings(List.of(Ring.of("R1").withHeight(w.height()).withInsideDiameter(w.diameter())))
                .withInstruments(List.of(
                        instrument("B1", Instrument.Kind.BALANCE, w.balance()),
                        instrument("W1", Instrument.Kind.WATCH, s("0.1")),
                        instrument("L1", Instrument.Kind.TAPE, w.tape())))
                .withVisits(List.of(visitOf(w)))
                .withMaintenance(List.of(Maintenance.of("M1", "HQ-A")
                        .withLocations(List.of("A1"))
                        .withStart(time("2025-10-11T07:00"))
                        .withEnd(time("2025-10-11T11:00"))));
    }

    private static Instrument instrument(String id, Instrument.Kind kind, Reading<?> resolution) {
        return Instrument.of(id).withKind(kind).withResolution(resolution);
    }

    private static Surface surfaceOf(Written w) {
        return Surface.of("HQ-A")
                .withType(Surface.Type.PAVERS)
                .withDescription("80 mm blocks, herringbone, 2-5 mm joint stone")
                .withArea(w.area())
                .withPlacedOn(LocalDate.parse("2019-05-20"))
                .withThickness(w.thickness())
                .withThicknessIs(Surface.ThicknessBasis.ACTUAL)
                .withLocations(
                        IntStream.range(0, 3).mapToObj(i -> locationOf(i, w)).toList());
    }

    private static Location locationOf(int i, Written w) {
        return Location.of("A" + (i + 1))
                .withX(times(i, w.step()))
                .withY(w.zero())
                .withSlope(percent("1.5"));
    }

    private static <Q extends Quantity<Q>> Reading<Q> times(int factor, Reading<Q> step) {
        return Reading.of(step.value().multiply(BigDecimal.valueOf(factor)), step.unit());
    }

    private static Visit visitOf(Written w) {
        return Visit.of("V1", "HQ-A", LocalDate.parse(DATE))
                .withMethod("unit-pavement")
                .withPurpose(Visit.Purpose.ROUTINE)
                .withCrew(List.of(CrewMember.of("MV", "technician")))
                .withInstruments(List.of("B1", "W1", "L1"))
                .withSwept(true)
                .withStandingWater(false)
                .withPotableWater(true)
                .withWeather(Weather.of()
                        .withDescription("clear")
                        .withAir(w.air())
                        .withSource("gauge at the depot")
                        .withLastRainEnd(time("2026-06-01T17:30"))
                        .withLastRainDepth(w.rain()))
                .withTests(IntStream.range(0, 3).mapToObj(i -> testOf(i, w)).toList());
    }

    private static LocationTest testOf(int i, Written w) {
        String hour = "0" + (7 + i) + ":";
        Head head = Head.of(Head.State.BETWEEN_MARKS).withLowest(w.lowest()).withHighest(w.highest());
        return LocationTest.of("V1-A" + (i + 1), "A" + (i + 1), "R1")
                .withSurfaceTemperature(w.surface())
                .withWaterTemperature(w.water())
                .withPreWet(PreWet.of(at(hour + "10:00"), w.preWet(), s("21.4"), End.DRAINED)
                        .withHead(head))
                .withRuns(List.of(
                        TestRun.of(at(hour + "11:30"), w.run(), s("141.7"), End.DRAINED)
                                .withHead(head),
                        TestRun.of(at(hour + "16:00"), w.run(), s("145.2"), End.DRAINED)
                                .withHead(head)))
                .withPhotos(List.of(Photo.of("A" + (i + 1) + "-outline.jpg")));
    }

    /** {@return the book} */
    public FieldBook book() {
        return book;
    }

    public Season book(UnaryOperator<FieldBook> change) {
        return new Season(change.apply(book));
    }

    public Season site(UnaryOperator<Site> change) {
        return book(b -> b.withSites(changed(b.sites(), 0, change)));
    }

    public Season surface(UnaryOperator<Surface> change) {
        return site(site -> site.withSurfaces(changed(site.surfaces(), 0, change)));
    }

    public Season location(int i, UnaryOperator<Location> change) {
        return surface(surface -> surface.withLocations(changed(surface.locations(), i, change)));
    }

    public Season ring(UnaryOperator<Ring> change) {
        return book(b -> b.withRings(changed(b.rings(), 0, change)));
    }

    public Season instrument(int i, UnaryOperator<Instrument> change) {
        return book(b -> b.withInstruments(changed(b.instruments(), i, change)));
    }

    public Season maintenance(UnaryOperator<Maintenance> change) {
        return book(b -> b.withMaintenance(changed(b.maintenance(), 0, change)));
    }

    public Season visit(UnaryOperator<Visit> change) {
        return visit(0, change);
    }

    public Season visit(int i, UnaryOperator<Visit> change) {
        return book(b -> b.withVisits(changed(b.visits(), i, change)));
    }

    public Season weather(UnaryOperator<Weather> change) {
        return visit(visit -> visit.withWeather(change.apply(Objects.requireNonNull(visit.weather()))));
    }

    public Season test(int i, UnaryOperator<LocationTest> change) {
        return visit(visit -> visit.withTests(changed(visit.tests(), i, change)));
    }

    public Season tests(UnaryOperator<LocationTest> change) {
        return visit(visit -> visit.withTests(visit.tests().stream().map(change).toList()));
    }

    public Season preWet(int test, UnaryOperator<PreWet> change) {
        return test(test, t -> t.withPreWet(change.apply(Objects.requireNonNull(t.preWet()))));
    }

    public Season run(int test, int i, UnaryOperator<TestRun> change) {
        return test(test, t -> t.withRuns(changed(t.runs(), i, change)));
    }

    /** The season with another visit, made from the first one. */
    public Season andVisit(UnaryOperator<Visit> change) {
        return book(b -> b.withVisits(and(b.visits(), change.apply(b.visits().get(0)))));
    }

    /** The season with another test at its visit, made from the first one. */
    public Season andTest(UnaryOperator<LocationTest> change) {
        return visit(visit ->
                visit.withTests(and(visit.tests(), change.apply(visit.tests().get(0)))));
    }

    /** {@return a list with one entry changed} */
    public static <T> List<T> changed(List<T> list, int i, UnaryOperator<T> change) {
        List<T> copy = new ArrayList<>(list);
        copy.set(i, change.apply(copy.get(i)));
        return copy;
    }

    /** {@return a list with one more entry} */
    public static <T> List<T> and(List<T> list, T more) {
        List<T> copy = new ArrayList<>(list);
        copy.add(more);
        return copy;
    }

    /** {@return what the built-in checker finds, in order: {@code rule EFFECT BIAS pointer}} */
    public List<String> findings() {
        return findings(Checker.withDefaults());
    }

    /** {@return what a checker finds, in order} */
    public List<String> findings(Checker checker) {
        return checker.withToday(TODAY).check(book).findings().stream()
                .map(f -> f.rule() + " " + f.effect() + " " + f.bias() + " " + f.where())
                .toList();
    }

    /** {@return the review of the book} */
    public Review review() {
        return Review.of(book);
    }
}
