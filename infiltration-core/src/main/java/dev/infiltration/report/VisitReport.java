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
import dev.infiltration.report.Block.Fact;
import dev.infiltration.report.Block.Section;
import dev.infiltration.review.Review;
import dev.infiltration.summary.SurfaceRate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The report of one visit: what the method asks a report to state, and what is missing of it; each rate with the deviations
 * stated beside it and the way they push it; the readings as written; and where every figure comes from.
 *
 * <p>As Markdown (CommonMark with pipe tables), and as one HTML page that needs no other file and no network. Whatever the
 * book says stands there as text: it marks up nothing, runs nothing and reorders nothing around it.
 */
public final class VisitReport {

    private final Review review;
    private final VisitAt visit;
    private final ReportItems items;

    private VisitReport(Review review, VisitAt visit) {
        this.review = review;
        this.visit = visit;
        this.items = new ReportItems(visit);
    }

    /**
     * {@return the report of a visit}
     *
     * @param review the review
     * @param visit  one of its visits
     */
    public static VisitReport of(Review review, VisitAt visit) {
        Objects.requireNonNull(review, "review");
        return new VisitReport(review, Objects.requireNonNull(visit, "visit"));
    }

    /**
     * {@return the report of every visit, in the order of the book}
     *
     * @param review the review
     */
    public static List<VisitReport> all(Review review) {
        return review.surfaces().stream().map(row -> of(review, row.visit())).toList();
    }

    /** {@return what the method's report must state here and the book does not say} */
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
        String verified = visit.method()
                .map(TestMethod::verification)
                .orElse("no method is known for this visit: no rule of a method was judged");
        return List.of(
                new Block.Paragraph(
                        where.and(", ").and(Phrase.written(record.date())).and(".")),
                Block.Paragraph.of(Words.capital(verified) + "."));
    }

    private List<Block> parts() {
        List<Block> parts = new ArrayList<>();
        parts.add(new Section("rates", Phrase.of("Rates"), rates()));
        parts.add(new Section("items", Phrase.of("What the report must state"), stated()));
        parts.add(new Section("record", Phrase.of("The visit"), List.of(new VisitFacts(review, visit).facts())));
        parts.addAll(locationParts());
        parts.add(new Section("findings", Phrase.of("Findings on the visit as a whole"), findings()));
        parts.add(new Section("amendments", Phrase.of("Amendments"), amendments()));
        parts.add(new Origins(review, visit).section());
        visit.method().map(Origins::limits).ifPresent(parts::add);
        parts.add(new Section("cautions", Phrase.of("Cautions, and whom to defer to"), List.of(cautions())));
        return parts;
    }

    private static Block cautions() {
        return new Block.Points(Cautions.OF_A_REVIEW.stream().map(Phrase::of).toList());
    }

    private List<Block> rates() {
        List<List<Phrase>> rows = new ArrayList<>();
        locations()
                .forEach(part -> rows.add(List.of(
                        part.name(),
                        part.rate(),
                        part.deviations().isEmpty() ? Phrase.of("none") : Phrase.of(part.pushes()))));
        return List.of(
                Block.Table.of("Rates of the locations", List.of("Location", "Rate", "Deviations stated"), rows),
                SurfaceFigures.of(surfaceRate(), RateWords.of(visit)));
    }

    private SurfaceRate surfaceRate() {
        return review.surfaces().stream()
                .filter(row -> row.visit() == visit)
                .findFirst()
                .orElseThrow();
    }

    private List<LocationPart> locations() {
        Map<@Nullable String, List<TestAt>> tests = new LinkedHashMap<>();
        visit.tests()
                .forEach(test -> tests.computeIfAbsent(test.test().location(), key -> new ArrayList<>())
                        .add(test));
        List<LocationPart> parts = new ArrayList<>();
        tests.forEach((location, made) -> parts.add(new LocationPart(review, visit, location, made)));
        return parts;
    }

    private List<Section> locationParts() {
        List<Section> parts = new ArrayList<>();
        locations().forEach(part -> parts.add(part.section("location-" + (parts.size() + 1))));
        return parts;
    }

    private List<Block> stated() {
        List<ReportItem.Item> asked = items.askedFor();
        if (asked.isEmpty()) {
            return List.of(Block.Paragraph.of("No method is known that asks for anything."));
        }
        List<Fact> facts = asked.stream()
                .map(item -> new Fact(Words.item(item), value(item)))
                .toList();
        return List.of(Block.Paragraph.of(missingInWords()), new Block.Facts(facts));
    }

    private Phrase value(ReportItem.Item item) {
        Phrase value = items.value(item);
        return missing().contains(item) && !value.equals(Phrase.NOT_RECORDED)
                ? value.and(" ").and(Phrase.missing("incomplete"))
                : value;
    }

    private String missingInWords() {
        List<String> missing = missing().stream().map(Words::item).toList();
        return missing.isEmpty()
                ? "Nothing that the method asks a report to state is missing."
                : "Missing: " + String.join(", ", missing) + ".";
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
