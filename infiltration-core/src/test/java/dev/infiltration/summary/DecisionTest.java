// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.summary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Location.Selection;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.rate.RateOutcome.LowerBound;
import dev.infiltration.rate.RateOutcome.Measured;
import dev.infiltration.rate.RateOutcome.UpperBound;
import dev.infiltration.rate.RateOutcome.Withheld;
import dev.infiltration.rule.Bias;
import dev.infiltration.statistics.Interval;
import dev.infiltration.summary.Criterion.Relation;
import dev.infiltration.summary.Decision.Guarded;
import dev.infiltration.summary.Decision.LiteralResult;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DecisionTest {

    private static final String METHOD = "unit-pavement";
    private static final double[] HIGH = {900, 1100, 1000, 1200, 950, 1050};
    private static final double[] LOW = {90, 110, 100, 120, 95, 105};

    private static Criterion criterion(Criterion.Type type, Relation relation) {
        return Criterion.of(type, relation, Reading.of("254", FieldUnit.MILLIMETRE_PER_HOUR), METHOD, "the owner");
    }

    private static Decision of(Criterion.Type type, Relation relation, Sample sample, Bias... biases) {
        return Decision.of(criterion(type, relation), RateSummary.of(sample), METHOD, Set.of(biases));
    }

    private static Measured measured(double rate) {
        return new Measured(new InfiltrationRate(rate));
    }

    private static UpperBound atMost(double rate) {
        return new UpperBound(new InfiltrationRate(rate), List.of("run.discontinued"));
    }

    private static LowerBound atLeast(double rate) {
        return new LowerBound(new InfiltrationRate(rate), List.of("run.event"));
    }

    private static Sample random(RateOutcome... outcomes) {
        return Sample.of(Selection.RANDOM, List.of(outcomes));
    }

    private static void assertDecided(LiteralResult literalResult, boolean isShown, Decision decision) {
        assertEquals(literalResult, decision.literalResult(), decision::toString);
        assertEquals(isShown, decision.isConfirmed(), decision::toString);
    }

    @ParameterizedTest
    @EnumSource(
            names = {"MEAN", "GEOMETRIC_MEAN", "MEDIAN", "EVERY_LOCATION", "SHARE_OF_LOCATIONS", "CONFIDENCE_BOUND"})
    void clearRatesAreShownInEveryForm(Criterion.Type type) {
        assertDecided(LiteralResult.MET, true, of(type, Relation.AT_LEAST, Sample.random(HIGH)));
        assertDecided(LiteralResult.NOT_MET, true, of(type, Relation.AT_LEAST, Sample.random(LOW)));
        assertDecided(LiteralResult.NOT_MET, true, of(type, Relation.AT_MOST, Sample.random(HIGH)));
        assertDecided(LiteralResult.MET, true, of(type, Relation.AT_MOST, Sample.random(LOW)));
    }

    @ParameterizedTest(name = "high {0}, floor {1}, {2}: {3}")
    @CsvSource({
        "true, true, RAISES, false",
        "true, true, LOWERS, true",
        "false, true, RAISES, true",
        "false, true, LOWERS, false",
        "true, false, RAISES, false",
        "true, false, LOWERS, true",
        "false, false, RAISES, true",
        "false, false, LOWERS, false",
        "true, true, EITHER, true",
        "true, true, NONE, true"
    })
    void biasTakesFromWhatItCouldHaveMade(boolean isHigh, boolean isFloor, Bias bias, boolean isShown) {
        Decision decision = of(
                Criterion.Type.MEAN,
                isFloor ? Relation.MORE_THAN : Relation.LESS_THAN,
                Sample.random(isHigh ? HIGH : LOW),
                bias);
        assertDecided(isHigh == isFloor ? LiteralResult.MET : LiteralResult.NOT_MET, isShown, decision);
        assertEquals(bias == Bias.EITHER, decision.notes().toString().contains("either direction"));
    }

    @Test
    void theStatementStandsWhateverTheDoubt() {
        Decision raised = of(Criterion.Type.MEAN, Relation.AT_LEAST, Sample.random(HIGH), Bias.RAISES);
        assertEquals(LiteralResult.MET, raised.literalResult());
        assertEquals(List.of("findings on these tests may bias the rate high"), raised.reasons());
        assertTrue(raised.toString().matches("(?s).*result +met\n.*"));
        assertTrue(raised.toString().matches("(?s).*confirmed +no\n.*"));
    }

    @Test
    void boundsSettleOnlyWhatTheySay() {
        assertDecided(
                LiteralResult.MET,
                false,
                of(Criterion.Type.MEAN, Relation.AT_LEAST, random(measured(900), atMost(800))));
        assertDecided(
                LiteralResult.MET,
                true,
                of(Criterion.Type.MEAN, Relation.AT_LEAST, random(measured(900), atLeast(800))));
        assertDecided(
                LiteralResult.NOT_MET,
                true,
                of(Criterion.Type.MEAN, Relation.AT_LEAST, random(measured(90), atMost(80))));
        assertDecided(
                LiteralResult.NOT_MET,
                false,
                of(Criterion.Type.MEAN, Relation.AT_LEAST, random(measured(90), atLeast(80))));
        assertDecided(
                LiteralResult.MET, true, of(Criterion.Type.MEAN, Relation.AT_MOST, random(measured(90), atMost(80))));
        assertDecided(
                LiteralResult.NOT_MET,
                true,
                of(Criterion.Type.MEAN, Relation.AT_MOST, random(measured(900), atLeast(800))));
        Decision upper = of(Criterion.Type.MEAN, Relation.AT_LEAST, random(measured(900), atMost(800)));
        assertEquals(List.of("it is based on upper bounds"), upper.reasons());
        assertTrue(
                upper.notes()
                        .contains(
                                "no confidence interval is computed from bounds; the result applies to the tested locations only"));
        assertEquals("upper-bound", upper.comparedRate().orElseThrow().word());
        assertTrue(upper.toString().contains("at most 850 mm/h"), upper::toString);
    }

    @Test
    void bothBoundsGiveNoFigure() {
        Decision decision = of(Criterion.Type.MEAN, Relation.AT_LEAST, random(atMost(800), atLeast(900)));
        assertDecided(LiteralResult.NOT_EVALUATED, false, decision);
        assertTrue(decision.rateOrBound().isEmpty());
    }

    @Test
    void anIntervalThatHoldsTheLimitDecidesNothing() {
        Decision close = of(Criterion.Type.GEOMETRIC_MEAN, Relation.AT_LEAST, Sample.random(200, 300, 280, 350));
        assertDecided(LiteralResult.MET, false, close);
        assertTrue(close.reasons()
                .get(0)
                .matches(
                        "the confidence interval of the geometric mean, .* to .* mm/h \\(95 %\\), contains the limit"));
    }

    @Test
    void fewOrTargetedLocationsDecideNothing() {
        assertEquals(
                List.of("no confidence interval: too few locations, or a rate of zero"),
                of(Criterion.Type.MEAN, Relation.AT_LEAST, Sample.random(900, 1000))
                        .reasons());
        assertEquals(
                List.of(
                        "the locations are not representative of the surface (not selected at random, or areas of the zones unknown)"),
                of(Criterion.Type.MEAN, Relation.AT_LEAST, Sample.of(Selection.TARGETED, HIGH))
                        .reasons());
    }

    @Test
    void everyLocationIsJudgedByItself() {
        Decision oneFails = of(Criterion.Type.EVERY_LOCATION, Relation.AT_LEAST, Sample.random(900, 1000, 200));
        assertDecided(LiteralResult.NOT_MET, true, oneFails);
        assertEquals(new PassingShare(2, 3), oneFails.passing());
        assertDecided(
                LiteralResult.NOT_MET,
                false,
                of(Criterion.Type.EVERY_LOCATION, Relation.AT_LEAST, random(measured(900), atLeast(200))));
        assertDecided(
                LiteralResult.NOT_MET,
                true,
                of(Criterion.Type.EVERY_LOCATION, Relation.AT_LEAST, random(measured(90), atLeast(200))));
        assertDecided(
                LiteralResult.MET,
                false,
                of(Criterion.Type.EVERY_LOCATION, Relation.AT_LEAST, random(measured(900), atMost(400))));
        assertDecided(
                LiteralResult.MET,
                true,
                of(Criterion.Type.EVERY_LOCATION, Relation.AT_LEAST, random(measured(900), atLeast(400))));
    }

    @Test
    void aLocationLeftOutMayHaveFailed() {
        Decision pass = of(
                Criterion.Type.EVERY_LOCATION,
                Relation.AT_LEAST,
                Sample.random(900, 1000).withNotTested(1));
        assertEquals(List.of("1 of 3 planned locations has no rate and is excluded"), pass.reasons());
        Decision fail = of(
                Criterion.Type.EVERY_LOCATION,
                Relation.AT_LEAST,
                Sample.random(90, 1000).withNotTested(1));
        assertTrue(fail.isConfirmed());
        Decision withheld = of(
                Criterion.Type.EVERY_LOCATION,
                Relation.AT_LEAST,
                random(measured(900), new Withheld(List.of("run.void"))));
        assertFalse(withheld.isConfirmed());
    }

    @Test
    void aShareOfTheLocationsMustPass() {
        Criterion most =
                criterion(Criterion.Type.SHARE_OF_LOCATIONS, Relation.AT_LEAST).withRequiredShare(0.75);
        Decision three = Decision.of(most, RateSummary.of(Sample.random(900, 800, 700, 20)), METHOD, Set.of());
        assertDecided(LiteralResult.MET, true, three);
        assertTrue(three.notes().get(0).startsWith("not confirmed for the area of the surface: 3 of 4 pass"));
        Decision two = Decision.of(most, RateSummary.of(Sample.random(900, 800, 70, 20)), METHOD, Set.of());
        assertDecided(LiteralResult.NOT_MET, true, two);
        Decision bound = Decision.of(
                most,
                RateSummary.of(random(measured(900), measured(800), measured(700), atLeast(20))),
                METHOD,
                Set.of());
        assertDecided(LiteralResult.MET, true, bound);
        Decision open = Decision.of(
                most, RateSummary.of(random(measured(900), measured(800), atLeast(70), atLeast(20))), METHOD, Set.of());
        assertDecided(LiteralResult.NOT_MET, false, open);
        Decision targeted =
                Decision.of(most, RateSummary.of(Sample.of(Selection.FIXED, 900, 800, 700)), METHOD, Set.of());
        assertTrue(targeted.notes().contains("no statement about the area: the locations were not selected at random"));
    }

    @Test
    void theBoundIsOneSided() {
        Decision decision = of(Criterion.Type.CONFIDENCE_BOUND, Relation.AT_LEAST, Sample.random(HIGH));
        Interval both =
                RateSummary.of(Sample.random(HIGH)).geometricMeanInterval(0.9).orElseThrow();
        assertEquals(both.low(), decision.rateOrBound().orElseThrow().millimetresPerHour(), 1e-9);
        assertEquals(
                both.high(),
                of(Criterion.Type.CONFIDENCE_BOUND, Relation.AT_MOST, Sample.random(HIGH))
                        .rateOrBound()
                        .orElseThrow()
                        .millimetresPerHour(),
                1e-9);
        assertDecided(
                LiteralResult.NOT_EVALUATED,
                false,
                of(Criterion.Type.CONFIDENCE_BOUND, Relation.AT_LEAST, Sample.random(900)));
    }

    @Test
    void anotherMethodIsRefusedUnlessTheUserSaysHow() {
        RateSummary summary = RateSummary.of(Sample.random(HIGH));
        Criterion ring = criterion(Criterion.Type.MEAN, Relation.AT_LEAST);
        Decision refused = Decision.of(ring, summary, "falling-head", Set.of());
        assertDecided(LiteralResult.NOT_EVALUATED, false, refused);
        assertEquals(
                List.of("the limit applies to method unit-pavement; these rates were measured by falling-head"),
                refused.reasons());
        Decision allowed =
                Decision.of(ring.forOtherMethods("the owner takes both alike"), summary, "falling-head", Set.of());
        assertDecided(LiteralResult.MET, true, allowed);
        assertTrue(allowed.notes().contains("limit of unit-pavement: the owner takes both alike"));
    }

    @Test
    void moreLocationsAreThoseThatWouldShowIt() {
        Sample sample = Sample.random(200, 500, 280, 650);
        Decision close = of(Criterion.Type.GEOMETRIC_MEAN, Relation.AT_LEAST, sample);
        int more = close.additionalLocationCount().orElseThrow();
        RateSummary summary = RateSummary.of(sample);
        double factor = summary.surfaceGeometricMean().orElseThrow() / 254;
        ScatterPlan scatter = new ScatterPlan(summary.logMoments().orElseThrow().sd());
        assertTrue(scatter.factor(4 + more, 0.95) <= factor && scatter.factor(3 + more, 0.95) > factor);
        assertTrue(close.additionalLocationCountConservative().orElseThrow() > more);
        assertTrue(close.additionalLocationCount(new ScatterPlan(0.1)).isEmpty());
        assertTrue(of(Criterion.Type.MEAN, Relation.AT_LEAST, sample)
                .additionalLocationCount()
                .isPresent());
        assertTrue(close.toString().matches("(?s).*additional locations +about " + more + "[ \n].*"), close::toString);
    }

    @Test
    void whatIsDecidedNeedsNoMore() {
        assertTrue(of(Criterion.Type.MEAN, Relation.AT_LEAST, Sample.random(HIGH))
                .additionalLocationCount()
                .isEmpty());
        assertTrue(of(Criterion.Type.EVERY_LOCATION, Relation.AT_LEAST, random(atMost(800)))
                .additionalLocationCount()
                .isEmpty());
        assertTrue(of(Criterion.Type.MEAN, Relation.AT_LEAST, Sample.random(900))
                .additionalLocationCountConservative()
                .isEmpty());
    }

    @ParameterizedTest(name = "{0} with U = 10: {1}")
    @CsvSource({"264, ACCEPTED", "263.9, BETWEEN", "254, BETWEEN", "244.1, BETWEEN", "244, REJECTED", "100, REJECTED"})
    void guardBandsAreAsWideAsTheExpandedUncertainty(double rate, Guarded guarded) {
        // JCGM 106:2012, 8.3.2.1: acceptance limit T_L + w, w = U (memory)
        Decision decision = of(Criterion.Type.MEAN, Relation.AT_LEAST, Sample.random(rate, rate, rate));
        assertEquals(guarded, decision.guarded(new InfiltrationRate(10)));
    }

    @Test
    void guardBandsNeedAMeasuredFigure() {
        InfiltrationRate u = new InfiltrationRate(10);
        assertEquals(
                Guarded.BETWEEN,
                of(Criterion.Type.MEAN, Relation.AT_LEAST, random(atLeast(900))).guarded(u));
        assertTrue(Double.isNaN(
                of(Criterion.Type.MEAN, Relation.AT_LEAST, random(atLeast(900))).conformance(u)));
        assertEquals(
                Guarded.ACCEPTED,
                of(Criterion.Type.MEAN, Relation.AT_MOST, Sample.random(LOW)).guarded(u));
    }

    @Test
    void conformanceIsTheShareOfTheErrorWithinTheLimit() {
        // JCGM 106:2012, 7.3: 1.4 standard uncertainties within one limit, p 0.92 (memory); Φ(1.4) = 0.919243 (derived)
        Decision decision = of(Criterion.Type.MEAN, Relation.AT_LEAST, Sample.random(268, 268, 268));
        assertEquals(0.919243, decision.conformance(new InfiltrationRate(10)), 1e-6);
        Decision above = of(Criterion.Type.MEAN, Relation.AT_MOST, Sample.random(268, 268, 268));
        assertEquals(1 - 0.919243, above.conformance(new InfiltrationRate(10)), 1e-6);
    }

    @Test
    void nothingTestedGivesNoFigure() {
        assertDecided(LiteralResult.NOT_EVALUATED, false, of(Criterion.Type.MEAN, Relation.AT_LEAST, Sample.random()));
        assertDecided(
                LiteralResult.NOT_EVALUATED,
                false,
                of(Criterion.Type.EVERY_LOCATION, Relation.AT_LEAST, Sample.random()));
    }

    /** As doubles 0.55 · 100 is 55.00000000000001 and 0.29 · 100 is 28.999999999999996. */
    @ParameterizedTest(name = "{0} of 100 for {1}: {2}")
    @CsvSource({
        "55, 0.55, MET",
        "54, 0.55, NOT_MET",
        "29, 0.29, MET",
        "28, 0.29, NOT_MET",
        "100, 1, MET",
        "99, 1, NOT_MET"
    })
    void shareOfLocationsIsCountedNotRounded(int passing, double share, LiteralResult expected) {
        double[] rates = new double[100];
        Arrays.fill(rates, 0, passing, 300);
        Arrays.fill(rates, passing, 100, 200);
        Criterion criterion =
                criterion(Criterion.Type.SHARE_OF_LOCATIONS, Relation.AT_LEAST).withRequiredShare(share);
        assertEquals(
                expected,
                Decision.of(criterion, RateSummary.of(Sample.random(rates))).literalResult());
    }

    @Test
    void plainRatesAreJudgedByTheCriterionsOwnMethod() {
        Criterion mean = criterion(Criterion.Type.MEAN, Relation.AT_LEAST);
        Sample asRates = Sample.ofRates(
                Selection.RANDOM,
                Arrays.stream(HIGH).mapToObj(InfiltrationRate::new).toList());
        assertDecided(LiteralResult.MET, true, Decision.of(mean, RateSummary.of(asRates)));
        assertDecided(LiteralResult.NOT_MET, true, Decision.of(mean, RateSummary.of(Sample.random(LOW))));
    }

    @Test
    void shareOfTheAreaIsGivenWhereTheLocationsStandForIt() {
        Decision random = of(Criterion.Type.EVERY_LOCATION, Relation.AT_LEAST, Sample.random(HIGH));
        assertEquals(new PassingShare(6, 6), random.areaShare().orElseThrow());
        Decision fixed = of(
                Criterion.Type.EVERY_LOCATION,
                Relation.AT_LEAST,
                Sample.of(Selection.FIXED, List.of(measured(900), measured(1100))));
        assertEquals(2, fixed.passing().passing());
        assertTrue(fixed.areaShare().isEmpty());
        assertFalse(fixed.toString().contains("of the area passes"), fixed::toString);
    }

    /** Common practice: a location rated "at most 6390 mm/h" may lie on either side of a limit of 1800 mm/h. */
    @Test
    void locationWhoseBoundLeavesItOpenNeitherPassesNorFails() {
        Decision decision = of(
                Criterion.Type.EVERY_LOCATION,
                Relation.AT_LEAST,
                random(measured(900), atMost(800), atMost(100), measured(20)));
        assertEquals("1 of 4 pass, 2 fail, 1 is undecided", decision.locationsText());
        assertEquals(1, decision.passing().passing());
        assertEquals(1, decision.undecidedCount());
    }

    @Test
    void boundThatSettlesNothingIsNoPartOfTheAreaThatSurelyPasses() {
        Decision decision =
                of(Criterion.Type.EVERY_LOCATION, Relation.AT_LEAST, random(measured(900), atMost(800), atLeast(700)));
        assertEquals(new PassingShare(2, 3), decision.passing());
        assertEquals(1, decision.undecidedCount());
        assertEquals("2 of 3 pass, 1 is undecided", decision.locationsText());
        assertEquals(new PassingShare(2, 3), decision.areaShare().orElseThrow());
    }

    @Test
    void oneLocationDecidesNothingAndPrints() {
        Decision one = of(Criterion.Type.MEAN, Relation.AT_LEAST, Sample.random(1990));
        assertDecided(LiteralResult.MET, false, one);
        assertTrue(one.additionalLocationCount().isEmpty());
        assertTrue(one.toString().contains("too few locations"), one::toString);
    }

    /** Six of 3600 and five of 60 mm/h: the median is 3600, the interval of the surface's typical rate lies far below 3000. */
    @Test
    void intervalOnTheOtherSideShowsNothing() {
        Criterion limit = Criterion.of(
                Criterion.Type.MEDIAN,
                Relation.AT_LEAST,
                Reading.of("3000", FieldUnit.MILLIMETRE_PER_HOUR),
                METHOD,
                "the owner");
        double[] rates = {3600, 3600, 3600, 3600, 3600, 3600, 60, 60, 60, 60, 60};
        Decision decision = Decision.of(limit, RateSummary.of(Sample.random(rates)));
        assertDecided(LiteralResult.MET, false, decision);
        assertTrue(decision.reasons().get(0).endsWith(" (95 %), is entirely on the other side of the limit"));
        assertTrue(decision.additionalLocationCount().isEmpty(), "more of the same would not settle it");
    }

    private static Sample zones(double ofA, double ofB, double... rates) {
        List<Sample.Spot> spots = IntStream.range(0, rates.length)
                .mapToObj(i -> new Sample.Spot(measured(rates[i]), i < rates.length / 2 ? "a" : "b"))
                .toList();
        return new Sample(spots, Selection.STRATIFIED, Map.of("a", ofA, "b", ofB), 0);
    }

    /** Nine tenths of the area at about 100 mm/h: the mean over the locations is above the limit, the area is not. */
    @Test
    void zonesCountByTheirAreas() {
        Decision mean =
                of(Criterion.Type.MEAN, Relation.AT_LEAST, zones(90, 10, 98, 100, 102, 101, 480, 500, 520, 510));
        assertDecided(LiteralResult.MET, false, mean);
        assertTrue(mean.areaShare().isEmpty(), "locations of zones are no fair count of the area");
    }

    @Test
    void zoneWithoutALocationLeavesTheSurfaceUnknown() {
        Sample one = new Sample(
                List.of(new Sample.Spot(measured(900), "a"), new Sample.Spot(measured(1000), "a")),
                Selection.STRATIFIED,
                Map.of("a", 1.0, "b", 99.0),
                0);
        assertFalse(one.isRepresentative());
        assertDecided(LiteralResult.MET, false, of(Criterion.Type.MEAN, Relation.AT_LEAST, one));
    }

    @Test
    void boundFromOneLocationOrATargetedOneShowsNothing() {
        assertDecided(LiteralResult.NOT_MET, false, of(Criterion.Type.MEAN, Relation.AT_LEAST, random(atMost(80))));
        Sample targeted = Sample.of(Selection.TARGETED, List.of(atMost(80), atMost(70)));
        assertDecided(LiteralResult.NOT_MET, false, of(Criterion.Type.MEAN, Relation.AT_LEAST, targeted));
    }

    @Test
    void moreLocationsAreNamedWhereTheyWouldSettleIt() {
        double[] scattered = {150, 900, 300, 700, 350};
        Decision random = of(Criterion.Type.GEOMETRIC_MEAN, Relation.AT_LEAST, Sample.random(scattered));
        assertFalse(random.isConfirmed());
        assertTrue(random.additionalLocationCount().isPresent());
        assertTrue(of(Criterion.Type.GEOMETRIC_MEAN, Relation.AT_LEAST, Sample.of(Selection.TARGETED, scattered))
                .additionalLocationCount()
                .isEmpty());
        assertTrue(
                of(Criterion.Type.GEOMETRIC_MEAN, Relation.AT_LEAST, Sample.random(scattered), Bias.RAISES, Bias.LOWERS)
                        .additionalLocationCount()
                        .isEmpty());
    }

    @Test
    void locationsLeftOutOfAMeanAreTold() {
        Decision left =
                of(Criterion.Type.MEAN, Relation.AT_LEAST, Sample.random(HIGH).withNotTested(5));
        assertTrue(
                left.notes().contains("5 of " + (HIGH.length + 5) + " planned locations have no rate and are excluded"),
                left::toString);
    }

    /** 253.6 mm/h rounded to 10 passes 250 and is 0.4 short of 254: a guard band goes by the figure. */
    @Test
    void guardBandGoesByTheFigureNotItsRounding() {
        Criterion rounded = criterion(Criterion.Type.MEAN, Relation.AT_LEAST)
                .withRounding(Reading.of("10", FieldUnit.MILLIMETRE_PER_HOUR));
        Criterion limit = Criterion.of(
                        Criterion.Type.MEAN,
                        Relation.AT_LEAST,
                        Reading.of("250", FieldUnit.MILLIMETRE_PER_HOUR),
                        METHOD,
                        "the owner")
                .withRounding(Reading.of("10", FieldUnit.MILLIMETRE_PER_HOUR));
        Decision decision = Decision.of(limit, RateSummary.of(Sample.random(246, 246, 246)));
        assertEquals(LiteralResult.MET, decision.literalResult());
        assertEquals(Guarded.REJECTED, decision.guarded(new InfiltrationRate(3)));
        assertTrue(rounded.toString().contains("254 mm/h after rounding to 10"), rounded::toString);
    }

    @Test
    void figureNearTheLimitHasTheDigitsThatShowItsSide() {
        Criterion limit = Criterion.of(
                Criterion.Type.MEAN,
                Relation.AT_LEAST,
                Reading.of("2000", FieldUnit.MILLIMETRE_PER_HOUR),
                METHOD,
                "the owner");
        Decision below = Decision.of(limit, RateSummary.of(Sample.random(1996, 1996, 1996)));
        assertEquals(
                "1996 mm/h",
                below.comparedRateText(FieldUnit.MILLIMETRE_PER_HOUR).orElseThrow());
        Decision at = Decision.of(limit, RateSummary.of(Sample.random(2000, 2000)));
        assertEquals(
                "2000 mm/h", at.comparedRateText(FieldUnit.MILLIMETRE_PER_HOUR).orElseThrow());
        assertEquals(
                "1000 mm/h",
                of(Criterion.Type.MEAN, Relation.AT_LEAST, Sample.random(1000, 1000))
                        .comparedRateText(FieldUnit.MILLIMETRE_PER_HOUR)
                        .orElseThrow());
    }
}
