// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import static dev.infiltration.Amounts.at;
import static dev.infiltration.Amounts.celsius;
import static dev.infiltration.Amounts.kg;
import static dev.infiltration.Amounts.litres;
import static dev.infiltration.Amounts.mm;
import static dev.infiltration.Amounts.s;
import static dev.infiltration.Season.and;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.Season;
import dev.infiltration.check.Checker;
import dev.infiltration.exchange.ReviewJson;
import dev.infiltration.field.Books;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring.End;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.Ring;
import dev.infiltration.field.TestRun;
import dev.infiltration.rate.Uncertainty;
import dev.infiltration.rate.UncertaintyBudget;
import dev.infiltration.report.SeasonText;
import dev.infiltration.summary.LocationRate;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The uncertainty that a review gives from the book's own instruments: balance read to 10 g and asked to be accurate to
 * 10 g, one diameter by a tape read to 1 mm, watch read to 0.1 s, 300 mm, 18.00 kg, 141.7 s and 145.2 s.
 */
class RunUncertaintyTest {

    private static final Season SI = Season.si();

    /** Two runs alike at each location. */
    private static final Season ALIKE = SI.tests(test -> test.withRuns(
            test.runs().stream().map(run -> run.withElapsed(s("141.7"))).toList()));

    private static final Season END_POINT = SI.visit(visit -> visit.withEndPointWithin(s("2")));

    private static double square(double x) {
        return x * x;
    }

    /** u²(I)/I² of what the runs of a ring and balance share, and of what one run has of its own (derived). */
    private static final double SHARED = (4 * square(0.5 / 300) + square(0.01 / 18)) / 3;

    private static final double OWN = (square(0.005 / 18) + square(0.05 / 141.7)) / 3;

    private static Uncertainty run(Season season, int run) {
        return season.review().runs().get(run).uncertainty().orElseThrow();
    }

    private static Uncertainty location(Season season, int location) {
        return season.review().locations().get(location).uncertainty().orElseThrow();
    }

    private static double relative(Uncertainty uncertainty) {
        return uncertainty.standardUncertainty() / uncertainty.value();
    }

    private static double part(Uncertainty uncertainty, String name) {
        return uncertainty.contributions().stream()
                .filter(each -> each.term().name().equals(name))
                .mapToDouble(Uncertainty.Contribution::amount)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void runIsAsUncertainAsItsReadings() {
        Uncertainty uncertainty = run(SI, 0);
        assertEquals(Math.sqrt(SHARED + OWN), relative(uncertainty), 1e-12);
        assertEquals(6469.535638673253, uncertainty.value(), 1e-8);
        assertEquals(Double.POSITIVE_INFINITY, uncertainty.degreesOfFreedom());
    }

    @Test
    void meanOfTwoRunsKeepsWhatTheyShareAndAveragesTheRest() {
        Uncertainty mean = location(ALIKE, 0);
        assertEquals(Math.sqrt(SHARED + OWN / 2), relative(mean), 1e-12);
        for (String shared : List.of("ring R1, diameter 1", "balance B1")) {
            assertEquals(part(run(ALIKE, 0), shared), part(mean, shared), 1e-12, "undiminished");
        }
    }

    /** Three locations with one ring, then with one of another ring read alike: 5/9 of the ring's part (derived). */
    @Test
    void meanOverLocationsKeepsTheRingAsFarAsItIsOne() {
        double balance = square(0.01 / 18) / 3;
        double ring = SHARED - balance;
        assertEquals(Math.sqrt(ring + balance + OWN / 6), relative(mean(ALIKE)), 1e-12);
        Season two = ALIKE.book(book ->
                        book.withRings(and(book.rings(), book.rings().get(0).withId("R2"))))
                .test(2, test -> test.withRing("R2"));
        assertEquals(Math.sqrt(ring * 5 / 9 + balance + OWN / 6), relative(mean(two)), 1e-12);
    }

    private static Uncertainty mean(Season season) {
        return Uncertainty.mean(season.review().locations().stream()
                .map(location -> location.uncertainty().orElseThrow())
                .toList());
    }

    /** Readings of one test are not those of another test at the same location of the same visit. */
    @Test
    void runsOfTwoTestsAtALocationAreTheirOwn() {
        TestRun later = TestRun.of(at("07:40"), dev.infiltration.Amounts.lb("39.7"), s("142"), End.DRAINED);
        Season season = ALIKE.test(0, test -> test.withRuns(List.of(test.runs().get(0))))
                .andTest(test -> test.withId("V1-B").withRuns(List.of(later)));
        LocationRate location = season.review().locations().get(0);
        assertEquals(2, location.runs());
        assertTrue(location.uncertainty().isPresent());
    }

    @Test
    void aRingIsReadByTheTapeOfWhicheverVisitNamesOne() {
        Season season = SI.andVisit(visit -> visit.withId("V2").withInstruments(List.of()))
                .visit(0, visit -> visit.withInstruments(List.of("B1", "L1")))
                .instrument(2, tape -> tape.withResolution(mm("2")));
        List<RunRate> runs = season.review().runs();
        UncertaintyBudget other = runs.get(6).budget().orElseThrow();
        assertTrue(other.table().contains("±1.0 mm"), other.table());
        Uncertainty both = Uncertainty.mean(List.of(run(season, 0), other.uncertainty()));
        assertEquals(part(run(season, 0), "ring R1, diameter 1"), part(both, "ring R1, diameter 1"), 1e-9);
    }

    @Test
    void recordedWaterIsOneErrorOfItsTest() {
        Review review =
                Review.of(ReadBook.of(ALIKE.book()), Checker.withDefaults().withRecordedWater());
        String name = "/visits/0/tests/0, water temperature";
        Uncertainty run = review.runs().get(0).uncertainty().orElseThrow();
        Uncertainty mean = review.locations().get(0).uncertainty().orElseThrow();
        assertEquals(part(run, name), part(mean, name), 1e-9);
        assertTrue(part(run, name) > 0);
        Review cold = Review.of(
                ReadBook.of(ALIKE.test(0, test -> test.withWaterTemperature(celsius("61")))
                        .book()),
                Checker.withDefaults().withRecordedWater());
        assertTrue(cold.runs().get(0).budget().orElseThrow().leftOut().contains("water density"));
    }

    /** A volume gives the same rate at any density (derived): its temperature adds nothing. */
    @Test
    void recordedWaterByVolumeAddsNoDensity() {
        Review review = Review.of(
                ReadBook.of(
                        ALIKE.run(0, 0, run -> run.withWater(litres("18.00"))).book()),
                Checker.withDefaults().withRecordedWater());
        assertTrue(review.runs().get(0).budget().orElseThrow().leftOut().contains("water density"));
    }

    @Test
    void onlyWhatWasMeasuredHasAnUncertainty() {
        Season stopped = SI.run(0, 0, run -> run.withEnd(End.STOPPED)).test(1, test -> test.withRing("R9"));
        Review review = stopped.review();
        assertEquals(Optional.empty(), review.runs().get(0).uncertainty(), "a bound");
        assertEquals(Optional.empty(), review.runs().get(2).budget(), "withheld");
        assertEquals(Optional.empty(), review.locations().get(0).uncertainty(), "a mean with a bound");
        assertEquals(Optional.empty(), review.locations().get(1).uncertainty());
        assertTrue(review.locations().get(2).uncertainty().isPresent());
        assertEquals(2, review.locations().get(0).counted().size());
    }

    @Test
    void aVoidRunHasNeitherConstantNorUncertainty() {
        Review review = SI.run(0, 0, run -> run.withEnd(End.VOID)).review();
        assertEquals(Optional.empty(), review.runs().get(0).constant());
        assertEquals(Optional.empty(), review.runs().get(0).uncertainty());
        assertTrue(review.runs().get(1).constant().isPresent());
    }

    @Test
    void aMeanWithARunBeyondAllMeasureHasNoUncertainty() {
        Review review = SI.run(0, 0, run -> run.withWater(kg("1e80"))).review();
        assertTrue(review.locations().get(0).outcome().rate().isPresent());
        assertEquals(Optional.empty(), review.locations().get(0).uncertainty());
    }

    @Test
    void documentHoldsTheUncertainty() {
        JsonNode json = JsonMapper.shared().readTree(ReviewJson.text(SI.review()));
        JsonNode run = json.at("/runs/0/uncertainty");
        double standard = run(SI, 0).standardUncertainty();
        assertEquals(standard, run.at("/standard").asDouble());
        assertEquals(1.959963984540054 * standard, run.at("/expanded").asDouble(), 1e-9);
        assertEquals(0.95, run.at("/coverage").asDouble());
        assertEquals(1.959963984540054, run.at("/factor").asDouble(), 1e-12);
        assertTrue(run.at("/degreesOfFreedom").isMissingNode());
        assertEquals("mm/h", run.at("/unit").asString());
        assertEquals(
                "instruments only; seal and end point not included",
                run.at("/covers").asString());
        assertEquals(
                location(SI, 2).standardUncertainty(),
                json.at("/locations/2/uncertainty/standard").asDouble());
        assertTrue(json.at("/surfaces/0/uncertainty").isMissingNode());
        assertTrue(json.at("/surfaces/0/mean/uncertainty").isMissingNode());
    }

    /** Four diameters that differ: t of their three degrees of freedom makes the factor larger (JCGM 100, Table G.2). */
    @Test
    void fewDiametersShowInTheFactor() {
        Season season = SI.ring(ring -> Ring.of("R1")
                .withHeight(ring.height())
                .withInsideDiameters(List.of(mm("296"), mm("303"), mm("297"), mm("304"))));
        JsonNode run =
                JsonMapper.shared().readTree(ReviewJson.text(season.review())).at("/runs/0/uncertainty");
        assertEquals(3.06, run.at("/degreesOfFreedom").asDouble(), 0.06);
        assertEquals(3.182446305284263, run.at("/factor").asDouble(), 1e-9);
    }

    @Test
    void textShowsItOnlyWithAStatedEndPoint() {
        List<String> lines =
                SeasonText.of(SI.review()).lines().map(String::strip).toList();
        assertTrue(lines.contains("A1: 6390 mm/h (252 in/h), 2 runs"), lines.toString());
        assertFalse(lines.toString().contains("±"), lines.toString());
        List<String> stated =
                SeasonText.of(END_POINT.review()).lines().map(String::strip).toList();
        // 18.00 kg, 300 mm, runs of 141.7 s and 145.2 s; 2 s either way: u 69.6 mm/h by hand, 136 mm/h at k 1.96
        // (derived)
        assertTrue(stated.contains("A1: 6390 ± 140 mm/h (252 ± 5.4 in/h), 2 runs"), stated.toString());
        assertEquals(
                1,
                stated.stream()
                        .filter(line -> line.equals("± is the expanded uncertainty (95 %) of instruments, end point and"
                                + " the difference of the runs; seal not included"))
                        .count());
        assertTrue(stated.stream().anyMatch(line -> line.startsWith("Surface (") && line.contains("mean")));
        assertFalse(stated.stream().anyMatch(line -> line.startsWith("Surface (") && line.contains("±")));
    }

    @Test
    void statedEndPointAndDifferenceOfTheRunsAreTerms() {
        // both rectangular, u = a/√3 (JCGM 100:2008, 4.3.7, seen); one crew: the error of the end point does not
        // average out
        double end = 2 / Math.sqrt(3);
        double first = run(SI, 0).value();
        double second = run(SI, 1).value();
        double instruments = location(SI, 0).standardUncertainty();
        double ofEnd = (first * end / 141.7 + second * end / 145.2) / 2;
        double ofRuns = Math.abs(first - second) / 2 / Math.sqrt(3);
        Uncertainty stated = location(END_POINT, 0);
        assertEquals(
                Math.sqrt(square(instruments) + square(ofEnd) + square(ofRuns)), stated.standardUncertainty(), 1e-9);
        assertEquals(
                Math.sqrt(square(run(SI, 0).standardUncertainty()) + square(first * end / 141.7)),
                run(END_POINT, 0).standardUncertainty(),
                1e-9);
    }

    @Test
    void endPointThatIsNotPositiveOrTooLongIsNotUsed() {
        for (String within : List.of("0", "-2", "1e300")) {
            Season season = SI.visit(visit -> visit.withEndPointWithin(s(within)));
            assertEquals(
                    location(SI, 0).standardUncertainty(), location(season, 0).standardUncertainty(), within);
            assertFalse(season.review().locations().get(0).hasEndPoint());
        }
    }

    @Test
    void jsonStatesWhatTheUncertaintyCovers() {
        JsonNode root = JsonMapper.shared().readTree(ReviewJson.text(END_POINT.review()));
        assertEquals(
                "instruments and end point; seal not included",
                root.at("/runs/0/uncertainty/covers").asString());
        assertEquals(
                "instruments and end point; seal not included; difference of the runs included",
                root.at("/locations/0/uncertainty/covers").asString());
    }

    @Test
    void textWithoutAMeasuredRateSaysNothingOfUncertainty() {
        Season none = SI.tests(test -> test.withRuns(List.of()));
        assertFalse(SeasonText.of(none.review()).contains("±"));
    }

    @Property(tries = 200)
    void nothingIsThrownAtStrangeRecordsAndNumbersAreFinite(
            @ForAll("rings") Ring ring, @ForAll("instruments") Instrument instrument, @ForAll("runs") TestRun run) {
        Season season = SI.ring(old -> ring.withId("R1"))
                .instrument(0, old -> instrument.withId("B1"))
                .run(0, 0, old -> run)
                .run(1, 0, old -> old.withElapsed(run.elapsed()))
                .run(2, 0, old -> old.withWater(run.water()));
        String json = ReviewJson.text(season.review());
        assertFalse(json.contains("NaN") || json.contains("Infinity"), json);
        assertFalse(SeasonText.of(season.review()).isEmpty());
    }

    @Property(tries = 200)
    void nothingIsThrownAtStrangeWater(
            @ForAll("tests") LocationTest strange, @ForAll("instruments") Instrument instrument) {
        Season season = SI.instrument(2, old -> instrument.withId("L1").withKind(Instrument.Kind.THERMOMETER))
                .tests(test -> test.withWaterTemperature(strange.waterTemperature()));
        Review review =
                Review.of(ReadBook.of(season.book()), Checker.withDefaults().withRecordedWater());
        String json = ReviewJson.text(review);
        assertFalse(json.contains("NaN") || json.contains("Infinity"), json);
        assertTrue(review.runs().stream().allMatch(run -> run.uncertainty().isPresent()));
    }

    @Provide
    Arbitrary<LocationTest> tests() {
        return Books.any(LocationTest.class);
    }

    @Provide
    Arbitrary<Ring> rings() {
        return Books.any(Ring.class);
    }

    @Provide
    Arbitrary<Instrument> instruments() {
        return Books.any(Instrument.class);
    }

    @Provide
    Arbitrary<TestRun> runs() {
        return Books.any(TestRun.class);
    }
}
