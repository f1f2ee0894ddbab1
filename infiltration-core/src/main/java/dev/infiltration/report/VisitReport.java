// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.Finding;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Amendment;
import dev.infiltration.field.Visit;
import dev.infiltration.method.ReportItem;
import dev.infiltration.method.TestMethod;
import dev.infiltration.report.Block.Section;
import dev.infiltration.review.Review;
import dev.infiltration.review.VisitDecision;
import dev.infiltration.summary.Decision;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.summary.SurfaceRate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The report of one visit: what the method asks a report to state, and what is missing of it; each rate with the deviations
 * and their bias; the readings as written; and how every rate is computed.
 *
 * <p>As Markdown (CommonMark with pipe tables), and as one HTML page that needs no other file and no network. Text of
 * the book is escaped: it cannot add markup, run code or reorder the text around it.
 */
public final class VisitReport {

    private final Review review;
    private final VisitAt visit;
    private final SurfaceRate row;
    private final List<Decision> decisions;
    private final String name;
    private final Plots plots;

    private VisitReport(Review review, SurfaceRate row, List<Decision> decisions, String name, Plots plots) {
        this.review = review;
        this.visit = row.visit();
        this.row = row;
        this.decisions = decisions;
        this.name = name;
        this.plots = plots;
    }

    /**
     * {@return the report of a visit}
     *
     * @param review the review
     * @param visit  one of its visits
     * @throws IllegalArgumentException if it is none of them
     */
    public static VisitReport of(Review review, VisitAt visit) {
        Objects.requireNonNull(visit, "visit");
        return all(review).stream()
                .filter(report -> report.visit == visit)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("visit: expected one of the review's, got another"));
    }

    /**
     * {@return the report of every visit, in the order of the book}
     *
     * @param review the review
     */
    public static List<VisitReport> all(Review review) {
        List<SurfaceRate> rows = review.surfaces();
        Map<VisitAt, List<Decision>> decisions = review.decisions().stream()
                .collect(Collectors.groupingBy(
                        VisitDecision::visit, Collectors.mapping(VisitDecision::decision, Collectors.toList())));
        List<@Nullable String> ids = new ArrayList<>();
        rows.forEach(row -> ids.add(row.visit().visit().id()));
        List<String> names = FileNames.of("visit", ids);
        List<VisitReport> reports = new ArrayList<>();
        for (SurfaceRate row : rows) {
            VisitAt visit = row.visit();
            List<Decision> made = decisions.getOrDefault(visit, List.of());
            reports.add(new VisitReport(review, row, made, names.get(reports.size()), Plots.none()));
        }
        return reports;
    }

    /**
     * {@return this report with drawings}
     *
     * @param plots what draws them
     */
    public VisitReport withPlots(Plots plots) {
        return new VisitReport(review, row, decisions, name, Objects.requireNonNull(plots, "plots"));
    }

    /** {@return the visit} */
    public VisitAt visit() {
        return visit;
    }

    SurfaceRate surface() {
        return row;
    }

    /** {@return a file name for the report, without an ending}: the visit's id where that is safe, no two of a review alike */
    public String name() {
        return name;
    }

    /** {@return what is drawn in the report, by names that files can bear} */
    public Map<String, Plot> plots() {
        PlotRegistry drawn = new PlotRegistry(Plots.none(), "visit-" + name);
        drawn.of(new VisitPlots(review, visit).all());
        return Collections.unmodifiableMap(drawn.byName());
    }

    /**
     * {@return the items that the method requires in a report of this visit and that the book does not state}; missing values of a
     * test, such as its prewetting time, are reported with the test
     */
    public List<ReportItem.Item> missing() {
        return visit.missingItems();
    }

    /** {@return the report in Markdown} */
    public String markdown() {
        return MarkdownPage.of(title(), summary(), parts());
    }

    /** {@return the report as one HTML page} */
    public String html() {
        return new HtmlPage(title(), "report", summary(), parts()).html();
    }

    private Phrase title() {
        return Phrase.of("Infiltration tests, ").and(Phrase.written(visit.subject()));
    }

    private List<Block> summary() {
        Visit record = visit.visit();
        Phrase where = Phrase.of("Surface ").and(Phrase.written(record.surface()));
        String verified =
                visit.method().map(TestMethod::verification).orElse("unknown method: no rule of a method was checked");
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(
                where.and(", ").and(Phrase.written(record.date())).and(".")));
        if (visit.isTraining()) {
            blocks.add(Block.Paragraph.of("Training visit: part of no decision, action, comparison or trend."));
        }
        blocks.add(Block.Paragraph.of(ReportText.capital(verified) + "."));
        return blocks;
    }

    private List<Block> parts() {
        List<Block> parts = new ArrayList<>();
        RateWords words = RateWords.of(visit, review.specification());
        List<LocationPart> locations = locations(words);
        parts.add(new Section("rates", Phrase.of("Rates"), rates(locations, words)));
        if (!decisions.isEmpty()) {
            parts.add(new Section(
                    "decisions",
                    Phrase.of("Decisions"),
                    decisions.stream().map(DecisionPart::of).toList()));
        }
        parts.add(new RequiredItemsSection(visit, words).section());
        parts.add(new Section("record", Phrase.of("The visit"), List.of(new VisitFacts(review, visit).facts())));
        parts.addAll(sections(locations));
        parts.add(new Section("findings", Phrase.of("Findings on the visit as a whole"), findings()));
        parts.add(new Section("amendments", Phrase.of("Amendments"), amendments()));
        parts.add(new ProvenanceSection(review, visit).section());
        visit.method().map(ProvenanceSection::limits).ifPresent(parts::add);
        instrumentsOnly(words).ifPresent(parts::add);
        parts.add(new Section("cautions", Phrase.of("Cautions, and whom to defer to"), List.of(cautions())));
        return parts;
    }

    /** The appendix: the ± of the instruments, for locations of which nobody stated how far the end point may be off. */
    private Optional<Section> instrumentsOnly(RateWords words) {
        List<List<Phrase>> rows = review.locations(visit).stream()
                .flatMap(row -> words.instrumentsOnly(row).stream()
                        .map(text -> List.of(Phrase.written(row.location()), Phrase.of(text))))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new Section(
                        "instruments-only",
                        Phrase.of("Appendix: uncertainty of the instruments only"),
                        List.of(
                                Block.Paragraph.of(
                                        ReportText.capital(RateWords.INSTRUMENTS)
                                                + ". It is not the uncertainty of the result: the end point and the seal add to it."),
                                Block.Table.of("Instruments only", List.of("Location", "Rate"), rows))));
    }

    private static Block cautions() {
        return new Block.Points(Cautions.OF_A_REVIEW.stream().map(Phrase::of).toList());
    }

    private List<Block> rates(List<LocationPart> locations, RateWords words) {
        List<List<Phrase>> rows = new ArrayList<>();
        locations.forEach(part -> rows.add(List.of(
                part.name(), part.rate(), part.deviations().isEmpty() ? Phrase.of("none") : Phrase.of(part.biases()))));
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.Table.of("Rates of the locations", List.of("Location", "Rate", "Deviations stated"), rows));
        if (review.locations(visit).stream().anyMatch(LocationRate::hasEndPoint)) {
            blocks.add(Block.Paragraph.of(ReportText.capital(RateWords.PLUS_MINUS) + "."));
        }
        blocks.add(SurfaceFigures.of(row, words));
        blocks.addAll(new PlotRegistry(plots, "visit-" + name).of(new VisitPlots(review, visit).all()));
        return blocks;
    }

    private List<LocationPart> locations(RateWords words) {
        Map<@Nullable String, List<TestAt>> tests = new LinkedHashMap<>();
        visit.tests()
                .forEach(test -> tests.computeIfAbsent(test.test().location(), key -> new ArrayList<>())
                        .add(test));
        List<LocationPart> parts = new ArrayList<>();
        tests.forEach((location, made) -> parts.add(new LocationPart(review, words, location, made)));
        return parts;
    }

    private static List<Section> sections(List<LocationPart> locations) {
        List<Section> parts = new ArrayList<>();
        locations.forEach(part -> parts.add(part.section("location-" + (parts.size() + 1))));
        return parts;
    }

    private List<Block> findings() {
        List<Finding> findings = review.findings(visit);
        return List.of(
                findings.isEmpty()
                        ? Block.Paragraph.of("None beyond those stated with the locations.")
                        : new Block.Points(
                                findings.stream().map(FindingWords::line).toList()));
    }

    private List<Block> amendments() {
        List<Amendment> made = visit.visit().amendments();
        if (made.isEmpty()) {
            return List.of(Block.Paragraph.of("Nothing was amended."));
        }
        List<List<Phrase>> rows = made.stream().map(VisitReport::row).toList();
        return List.of(Block.Table.of(
                "What was amended after it was written", List.of("When", "By", "Where", "Was", "Now", "Why"), rows));
    }

    private static List<Phrase> row(Amendment amendment) {
        return List.of(
                Phrase.written(amendment.at()),
                Phrase.written(amendment.by()),
                Phrase.written(amendment.where()),
                Phrase.written(amendment.was()),
                Phrase.written(amendment.now()),
                Phrase.written(amendment.why()));
    }
}
