// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.Finding;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Problem;
import dev.infiltration.field.Site;
import dev.infiltration.method.TestMethod;
import dev.infiltration.report.Block.Paragraph;
import dev.infiltration.report.Block.Points;
import dev.infiltration.report.Block.Section;
import dev.infiltration.report.Block.Table;
import dev.infiltration.review.Review;
import dev.infiltration.review.SurfaceHistory;
import dev.infiltration.rule.Effect;
import dev.infiltration.summary.SurfaceRate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A season on one page: the programme in summary, the work list for cleaning crews, the history of every surface, and every
 * visit with its findings.
 *
 * <p>One HTML file that needs no script, no other file and no network; it opens from disk, prints, and follows the reader's
 * choice of light or dark. Criteria, actions and due tests appear if the review has a
 * specification ({@link Review#withSpecification}). No clock is read: the user gives the day on which things are due or overdue.
 */
public final class SeasonPage {

    private static final String PAGE = "season";

    private final Review review;
    private final LocalDate asOf;
    private final Plots plots;
    private final String visitPages;

    private SeasonPage(Review review, LocalDate asOf, Plots plots, String visitPages) {
        this.review = review;
        this.asOf = asOf;
        this.plots = plots;
        this.visitPages = visitPages;
    }

    /**
     * {@return the page of a review, without drawings}
     *
     * @param review the review
     * @param asOf   the day as of which things are due or overdue
     */
    public static SeasonPage of(Review review, LocalDate asOf) {
        Objects.requireNonNull(review, "review");
        return new SeasonPage(review, Objects.requireNonNull(asOf, "asOf"), Plots.none(), "");
    }

    /**
     * {@return this page with drawings}
     *
     * @param plots what draws them
     */
    public SeasonPage withPlots(Plots plots) {
        return new SeasonPage(review, asOf, Objects.requireNonNull(plots, "plots"), visitPages);
    }

    /**
     * {@return this page with a link to the report of each visit}, {@code folder/name.html} beside the page
     *
     * @param folder the folder of the reports, such as {@code visits}
     */
    public SeasonPage linkedTo(String folder) {
        return new SeasonPage(review, asOf, plots, Objects.requireNonNull(folder, "folder"));
    }

    /** {@return the page} */
    public String html() {
        return new HtmlPage(title(), PAGE, summary(), parts(new PlotRegistry(plots, PAGE))).html();
    }

    /** {@return what is drawn on the page, by names that files can bear} */
    public Map<String, Plot> plots() {
        PlotRegistry drawn = new PlotRegistry(Plots.none(), PAGE);
        parts(drawn);
        return Collections.unmodifiableMap(drawn.byName());
    }

    private Phrase title() {
        List<Phrase> sites = review.book().sites().stream()
                .map(site -> Phrase.written(site.name() == null ? site.id() : site.name()))
                .toList();
        return sites.isEmpty()
                ? Phrase.of("Infiltration tests")
                : Phrase.of("Infiltration tests: ").and(Phrase.joined(sites, ", "));
    }

    private List<Block> summary() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Paragraph.of(ReportText.count(review.surfaces().size(), "visit") + ", "
                + ReportText.count(review.runs().size(), "run") + ", "
                + ReportText.count(review.findings().size(), "finding") + ", "
                + ReportText.count(review.problems().size(), "problem") + ". As of " + asOf + "."));
        blocks.add(Paragraph.of(verified()));
        List<Phrase> sites =
                review.book().sites().stream().map(SeasonPage::described).toList();
        blocks.add(new Points(sites));
        return blocks;
    }

    private static Phrase described(Site site) {
        return Phrase.written(site.id()).and(": ").and(Phrase.written(site.description()));
    }

    private String verified() {
        return review.surfaces().stream()
                .flatMap(row -> row.visit().method().stream())
                .distinct()
                .map(method -> method.id() + ": " + method.verification())
                .collect(Collectors.joining("; ", "", "."));
    }

    private List<Block> parts(PlotRegistry drawn) {
        Programme programme = new Programme(review);
        List<Block> parts = new ArrayList<>();
        parts.add(new ProgrammePart(review, programme, asOf).section());
        parts.add(new WorkList(review, programme).section());
        parts.add(new Section("years", Phrase.of("History of each surface"), surfaces(drawn)));
        parts.add(new Section("visits", Phrase.of("Visits"), visits()));
        parts.add(new Section("unread", Phrase.of("What could not be read, and what the user changed"), unread()));
        parts.add(new Section("cautions", Phrase.of("Cautions, and whom to defer to"), List.of(cautions())));
        return parts;
    }

    private static Block cautions() {
        return new Points(Cautions.OF_A_REVIEW.stream().map(Phrase::of).toList());
    }

    private List<Block> surfaces(PlotRegistry drawn) {
        List<Block> parts = new ArrayList<>();
        for (SurfaceHistory history : review.histories()) {
            parts.add(new SurfacePart(review, history, drawn).section("surface-" + (parts.size() + 1)));
        }
        return parts.isEmpty() ? List.of(Paragraph.of("No surface has a dated rate or bound.")) : parts;
    }

    private List<Block> visits() {
        List<VisitReport> reports = VisitReport.all(review);
        List<Block> blocks = new ArrayList<>();
        blocks.add(Table.of(
                "Visits",
                List.of("Visit", "Date", "Surface", "Method", "Mean", "Deviations", "Omissions", "Cautions"),
                reports.stream().map(this::row).toList()));
        reports.forEach(report -> findings(report, "visit-" + blocks.size()).ifPresent(blocks::add));
        return blocks;
    }

    private List<Phrase> row(VisitReport report) {
        VisitAt visit = report.visit();
        List<Finding> findings = findings(visit);
        return List.of(
                name(report),
                Phrase.written(visit.visit().date()),
                Phrase.written(visit.visit().surface()),
                visit.method().map(TestMethod::id).map(Phrase::written).orElse(Phrase.missing("unknown")),
                mean(report.surface()),
                count(findings, Effect.DEVIATION, Effect.NO_RATE),
                count(findings, Effect.OMISSION),
                count(findings, Effect.CAUTION));
    }

    private Phrase name(VisitReport report) {
        String subject = report.visit().subject() + (report.visit().isTraining() ? " (training)" : "");
        return visitPages.isEmpty()
                ? Phrase.written(subject)
                : Phrase.link(visitPages + "/" + report.name() + ".html", subject);
    }

    private Phrase mean(SurfaceRate row) {
        return Phrase.of(
                row.usedCount() == 0
                        ? "none"
                        : RateWords.of(row.visit(), review.specification()).text(row.mean()));
    }

    private static Phrase count(List<Finding> findings, Effect... effects) {
        List<Effect> counted = List.of(effects);
        return Phrase.of(String.valueOf(findings.stream()
                .filter(finding -> counted.contains(finding.effect()))
                .count()));
    }

    private List<Finding> findings(VisitAt visit) {
        Stream<Finding> ofTests = visit.tests().stream().flatMap((TestAt test) -> review.findings(test).stream());
        return Stream.concat(review.findings(visit).stream(), ofTests)
                .distinct()
                .sorted(Comparator.comparing(Finding::effect))
                .toList();
    }

    private Optional<Section> findings(VisitReport report, String id) {
        List<Phrase> lines =
                findings(report.visit()).stream().map(FindingWords::line).toList();
        return lines.isEmpty()
                ? Optional.empty()
                : Optional.of(new Section(
                        id,
                        Phrase.of("Findings of ")
                                .and(Phrase.written(report.visit().subject())),
                        List.of(new Points(lines))));
    }

    private List<Block> unread() {
        List<Phrase> lines = new ArrayList<>();
        for (Problem problem : review.problems()) {
            lines.add(Phrase.of("Line " + problem.line() + ", column " + problem.column() + ", ")
                    .and(Phrase.code(problem.where()))
                    .and(": ")
                    .and(Phrase.written(problem.message())));
        }
        review.policyChanges()
                .forEach(change -> lines.add(Phrase.of("Changed: ").and(Phrase.written(change))));
        return List.of(
                lines.isEmpty() ? Paragraph.of("Everything was read. The user changed no rule.") : new Points(lines));
    }
}
