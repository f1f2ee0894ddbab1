// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.Finding;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Place;
import dev.infiltration.field.Problem;
import dev.infiltration.field.Site;
import dev.infiltration.field.Visit;
import dev.infiltration.method.TestMethod;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.review.Review;
import dev.infiltration.rule.Bias;
import dev.infiltration.rule.Effect;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.summary.SurfaceRate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A review as plain text, the same in every locale.
 *
 * <p>The text lists the problems of reading first. Each visit follows with its findings, the most serious first, each with its
 * remedy; the rate of each location; and the rates of the surface with the number of locations used. The cautions are last.
 * Rates have three significant digits, more where rounding would hide the side of a limit. A measured location has its expanded
 * uncertainty where the visit states the uncertainty of its end point.
 */
public final class SeasonText {

    private static final String NEWLINE = "\n";

    private final Review review;
    private final Map<Place, List<Finding>> findingsByVisit;
    private final Map<VisitAt, List<LocationRate>> locationsByVisit;
    private final DecisionText decisions;
    private final StringBuilder text = new StringBuilder();

    private SeasonText(Review review) {
        this.review = review;
        this.findingsByVisit = review.findings().stream().collect(Collectors.groupingBy(SeasonText::visitOf));
        this.decisions = new DecisionText(review);
        this.locationsByVisit = review.locations().stream().collect(Collectors.groupingBy(LocationRate::visit));
    }

    /**
     * {@return the text of a review}
     *
     * @param review the review
     */
    public static String of(Review review) {
        SeasonText season = new SeasonText(review);
        season.heading();
        season.policy();
        season.problems();
        season.bookFindings();
        review.surfaces().forEach(season::visit);
        season.histories();
        season.cautions();
        return season.text.toString();
    }

    private void line(String indent, String words) {
        text.append(indent).append(Printable.of(words)).append(NEWLINE);
    }

    private void heading() {
        line(
                "",
                ReportText.count(review.surfaces().size(), "visit") + ", "
                        + ReportText.count(review.runs().size(), "run") + ", "
                        + ReportText.count(review.findings().size(), "finding") + ", "
                        + ReportText.count(review.problems().size(), "problem"));
        for (Site site : review.book().sites()) {
            String name = site.name() == null ? String.valueOf(site.id()) : site.name();
            line("", name + (site.description() == null ? "" : ": " + site.description()));
        }
    }

    private void policy() {
        if (!review.policyChanges().isEmpty()) {
            line(NEWLINE, "Rules changed by the user");
            review.policyChanges().forEach(change -> line("  ", change));
        }
    }

    private void problems() {
        if (review.problems().isEmpty()) {
            return;
        }
        line(NEWLINE, "Could not be read");
        for (Problem problem : review.problems()) {
            String at = "line " + problem.line() + ", column " + problem.column();
            line("  ", at + ", " + problem.where() + ": " + problem.message());
        }
    }

    private void bookFindings() {
        List<Finding> findings = findingsByVisit.getOrDefault(Place.BOOK, List.of());
        if (!findings.isEmpty()) {
            line(NEWLINE, "Sites, rings, instruments and maintenance");
            findings(findings);
        }
    }

    private void visit(SurfaceRate surface) {
        VisitAt visit = surface.visit();
        line(NEWLINE, title(visit));
        line(
                "  ",
                visit.method().map(TestMethod::verification).orElse("unknown method: no rule of a method was checked"));
        findings(findingsByVisit.getOrDefault(review.placeOf(visit), List.of()));
        RateWords words = RateWords.of(visit, review.specification());
        List<LocationRate> locations = locationsByVisit.getOrDefault(visit, List.of());
        for (LocationRate location : locations) {
            line("  ", location.location() + ": " + words.text(location) + source(location));
            notes(review.tests(location).stream());
        }
        Set<String> rows = locations.stream().map(LocationRate::location).collect(Collectors.toSet());
        notes(visit.tests().stream()
                .filter(test -> !rows.contains(String.valueOf(test.test().location()))));
        if (locations.stream().anyMatch(LocationRate::hasEndPoint)) {
            line("  ", RateWords.PLUS_MINUS);
        }
        line("  ", figures(surface, words));
        decisions.lines(visit).forEach(decision -> line("  ", decision));
    }

    private void notes(Stream<TestAt> tests) {
        tests.flatMap(test -> Notes.of(test).stream()).forEach(note -> line("      ", note));
    }

    private void histories() {
        HistoryText history = new HistoryText(review);
        review.histories().forEach(each -> {
            List<String> lines = history.lines(each);
            if (!lines.isEmpty()) {
                line(NEWLINE, "History of surface " + each.surface().surface().id());
                lines.forEach(words -> line("  ", words));
            }
        });
    }

    /** The visit that contains a finding; the book where none does. */
    private static Place visitOf(Finding finding) {
        Place place = finding.where();
        while (!place.isBook() && !place.isEntryOf(Visit.class)) {
            place = place.outer();
        }
        return place;
    }

    private static String title(VisitAt visit) {
        String surface =
                visit.visit().surface() == null ? "no surface" : visit.visit().surface();
        String date =
                visit.visit().date() == null ? "no date" : visit.visit().date().toString();
        String method = visit.method()
                .map(TestMethod::id)
                .orElse("unknown method " + visit.visit().method());
        String training = visit.isTraining() ? ", training visit: part of no decision, comparison or trend" : "";
        return "Visit " + visit.subject() + ", " + surface + ", " + date + ", " + method + training;
    }

    private void findings(List<Finding> findings) {
        findings.stream().sorted(Comparator.comparing(Finding::effect)).forEach(finding -> {
            line(
                    "  ",
                    word(finding.effect()) + " " + finding.rule() + ", " + finding.subject() + ": " + finding.message()
                            + bias(finding.bias()) + " [" + finding.basis() + "]");
            line("      ", "What can be done: " + finding.remedy());
        });
    }

    private static String word(Effect effect) {
        return effect.name().replace('_', ' ');
    }

    private static String bias(Bias bias) {
        return bias == Bias.NONE ? "" : "; " + FindingWords.bias(bias);
    }

    private static String source(LocationRate location) {
        if (location.outcome() instanceof RateOutcome.Withheld) {
            return "";
        }
        return location.from() == LocationRate.Source.PREWETTING
                ? ", from the discontinued prewetting"
                : ", " + ReportText.count(location.runs(), "run");
    }

    private static String figures(SurfaceRate surface, RateWords words) {
        String locations = surface.planned() + " planned: " + surface.measured() + " measured, " + surface.bounded()
                + " bounded, " + surface.withheld() + " withheld, " + surface.notTested() + " not tested";
        if (surface.usedCount() == 0 || surface.mean() instanceof RateOutcome.Withheld) {
            return "Surface (" + locations + "): no rate";
        }
        return "Surface (" + locations + "): mean " + words.text(surface.mean()) + " over "
                + ReportText.count(surface.usedCount(), "location") + excluded(surface) + "; geometric mean "
                + words.text(surface.geometricMean()) + "; median " + words.text(surface.median()) + "; minimum "
                + words.text(surface.minimum());
    }

    private static String excluded(SurfaceRate surface) {
        return surface.withheld() == 0
                ? ""
                : "; " + ReportText.count(surface.withheld(), "attempted location") + " without a rate excluded";
    }

    private void cautions() {
        line(NEWLINE, "Cautions");
        Cautions.OF_A_REVIEW.forEach(caution -> line("  ", caution));
    }
}
