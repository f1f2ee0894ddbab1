// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.PouringAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.Ring;
import dev.infiltration.method.TestMethod;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.review.Review;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** How each rate of a visit is computed: the run, the formula, the constant with its density, the method and its limits. */
final class ProvenanceSection {

    private static final String FORMULA = "I = K\u00B7M/(D\u00B2\u00B7t)";

    private final Review review;
    private final VisitAt visit;
    private final Set<PouringAt> counted;
    /** Where a run was made at the visit. */
    private final Set<@Nullable String> withRuns = new HashSet<>();

    private final RateWords words;

    ProvenanceSection(Review review, VisitAt visit) {
        this.review = review;
        this.visit = visit;
        this.counted = review.locations(visit).stream()
                .flatMap(row -> row.counted().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        visit.tests().stream()
                .filter(test -> !test.runs().isEmpty())
                .forEach(test -> withRuns.add(test.test().location()));
        this.words = RateWords.of(visit, review.specification());
    }

    Block.Section section() {
        return new Block.Section(
                "origins",
                Phrase.of("Calculation of the rates"),
                List.of(
                        Block.Paragraph.of(
                                "A run's rate is " + FORMULA
                                        + ": M the mass of the infiltrated water, D the mean inside diameter of the ring, t the infiltration time. "
                                        + "The rate of a location is the mean of its runs that are used; without a run it is the bound from the "
                                        + "discontinued prewetting. The rates of a surface use the locations that have a rate or a bound."),
                        Block.Table.of(
                                "Values used for each run and each discontinued prewetting",
                                List.of("Run or prewetting", "Place in the book", "M", "D", "t", "K", "I", "Used"),
                                figures().map(this::row).toList()),
                        method(),
                        new Block.Points(review.policyChanges().stream()
                                .map(change ->
                                        Phrase.of("Changed by the user: ").and(Phrase.written(change)))
                                .toList())));
    }

    /** Runs and prewettings of the visit, and those of other visits of the day that a rate uses. */
    private Stream<PouringAt> figures() {
        Stream<PouringAt> own = visit.tests().stream()
                .flatMap(test -> Stream.concat(
                        test.preWet().stream().filter(preWet -> preWet.pouring().isStopped()), test.runs().stream()));
        return Stream.concat(own, counted.stream()).distinct();
    }

    private List<Phrase> row(PouringAt figure) {
        Pouring pouring = figure.pouring();
        RateOutcome outcome = figure.outcome();
        boolean isGiven = outcome.figure().isPresent();
        return List.of(
                Phrase.written(figure.subject()),
                Phrase.code(review.placeOf(figure)),
                mass(pouring).orElse(Phrase.NOT_RECORDED),
                figure.test().ring().map(ProvenanceSection::diameter).orElse(Phrase.NOT_RECORDED),
                Phrase.written(pouring.elapsed()),
                figure.constant()
                        .filter(constant -> isGiven)
                        .map(constant -> Phrase.of(constant.toString()))
                        .orElse(Phrase.of("none used")),
                rate(outcome),
                Phrase.of(counted.contains(figure) ? "yes" : "no: " + whyNot(figure, isGiven)));
    }

    private String whyNot(PouringAt figure, boolean isGiven) {
        if (figure.pouring().isVoid()) {
            return "void";
        }
        if (!isGiven) {
            return "no rate";
        }
        if (!figure.isRun()) {
            return withRuns.contains(figure.test().test().location())
                    ? "runs were made there"
                    : "a later prewetting is used";
        }
        String first = visit.method()
                .map(method -> "the first " + method.runsPerDay() + " runs")
                .orElse("the first runs");
        return "only " + first + " of a day, or since maintenance on that day, are used";
    }

    /** {@return the water that was poured, less what was left standing}; empty where it was not recorded */
    static Optional<Phrase> mass(Pouring pouring) {
        return pouring.pouredWater().map(water -> Phrase.written(water).and(leftStanding(pouring)));
    }

    private static String leftStanding(Pouring pouring) {
        boolean isLess = pouring.isStopped() && pouring.depthAtStop() != null;
        return isLess ? ", less the water left at a depth of " + pouring.depthAtStop() : "";
    }

    private Phrase rate(RateOutcome outcome) {
        Phrase figure = Phrase.of(words.text(outcome));
        return outcome.figure()
                .map(rate -> figure.and("; unrounded " + unrounded(rate)))
                .orElse(figure);
    }

    private static String unrounded(InfiltrationRate rate) {
        return rate.in(FieldUnit.MILLIMETRE_PER_HOUR) + " mm/h";
    }

    /** {@return the ring's mean inside diameter}, as it is used */
    static Phrase diameter(Ring ring) {
        if (!ring.isUsable()) {
            return Phrase.missing("no usable diameter");
        }
        int number = ring.diametersInUse().size();
        return number == 1
                ? Phrase.written(ring.diametersInUse().get(0))
                : Phrase.of(String.format(Locale.ROOT, "%.2f mm, mean of %d", RateEquation.meanDiameter(ring), number));
    }

    private Block method() {
        return visit.method()
                .<Block>map(method -> new Block.Facts(List.of(
                        new Block.Fact("Method", Phrase.written(method.designation() + " (" + method.id() + ")")),
                        new Block.Fact("Limits", Phrase.of(ReportText.capital(method.verification()))))))
                .orElse(Block.Paragraph.of("Unknown method: no rule of a method was checked."));
    }

    /** {@return the limits of the method, each with its source and source quality} */
    static Block.Section limits(TestMethod method) {
        return new Block.Section(
                "limits",
                Phrase.of("Limits of the method"),
                List.of(Block.Paragraph.of(ReportText.capital(method.verification()) + "."), LimitTable.of(method)));
    }
}
