// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.Ring;
import dev.infiltration.method.TestMethod;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.review.Review;
import dev.infiltration.review.RunRate;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import java.util.List;
import java.util.Locale;

/** Where each figure of a visit comes from: the run, the formula, the constant with its density, the method and its limits. */
final class Origins {

    private static final String FORMULA = "I = K\u00B7M/(D\u00B2\u00B7t)";

    private final Review review;
    private final VisitAt visit;
    private final List<RunRate> runs;
    private final RateWords words;

    Origins(Review review, VisitAt visit, List<RunRate> runs) {
        this.review = review;
        this.visit = visit;
        this.runs = runs;
        this.words = RateWords.of(visit);
    }

    Block.Section section() {
        return new Block.Section(
                "origins",
                Phrase.of("Where the figures come from"),
                List.of(
                        Block.Paragraph.of(
                                "A run's rate is " + FORMULA
                                        + ": M the mass of the water that went in, D the ring's mean inside diameter, t the time it took. "
                                        + "A location's rate is the mean of its runs that count. A surface's figures join the locations that have one."),
                        Block.Table.of(
                                "Figures of the runs",
                                List.of("Run", "Place in the book", "M", "D", "t", "K", "I"),
                                runs.stream().map(this::row).toList()),
                        method(),
                        new Block.Points(review.policyChanges().stream()
                                .map(change ->
                                        Phrase.of("Changed by the user: ").and(Phrase.written(change)))
                                .toList())));
    }

    private List<Phrase> row(RunRate run) {
        Pouring pouring = run.run().pouring();
        return List.of(
                Phrase.written(run.run().subject()),
                Phrase.code(run.where()),
                Phrase.written(pouring.pouredWater().orElse(null)).and(leftStanding(pouring)),
                run.run().test().ring().map(Origins::diameter).orElse(Phrase.NOT_RECORDED),
                Phrase.written(pouring.elapsed()),
                run.constant().map(constant -> Phrase.of(constant.toString())).orElse(Phrase.of("none used")),
                rate(run));
    }

    private static String leftStanding(Pouring pouring) {
        boolean isLess = pouring.isStopped() && pouring.depthAtStop() != null;
        return isLess ? ", less what stood " + pouring.depthAtStop() + " deep" : "";
    }

    private Phrase rate(RunRate run) {
        Phrase figure = Phrase.of(words.text(run.outcome()));
        return run.outcome()
                .figure()
                .map(rate -> figure.and("; unrounded " + unrounded(rate)))
                .orElse(figure);
    }

    private static String unrounded(InfiltrationRate rate) {
        return rate.in(FieldUnit.MILLIMETRE_PER_HOUR) + " mm/h";
    }

    private static Phrase diameter(Ring ring) {
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
                        new Block.Fact("Limits", Phrase.of(Words.capital(method.verification()))))))
                .orElse(Block.Paragraph.of("No method is known for this visit: no rule of a method was judged."));
    }

    /** {@return the limits that the visit was judged by, each with its source and how far it is trusted} */
    static Block.Section limits(TestMethod method) {
        return new Block.Section(
                "limits",
                Phrase.of("Limits of the method"),
                List.of(Block.Paragraph.of(Words.capital(method.verification()) + "."), LimitTable.of(method)));
    }
}
