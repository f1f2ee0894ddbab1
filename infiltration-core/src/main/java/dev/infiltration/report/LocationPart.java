// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.Finding;
import dev.infiltration.check.TestAt;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Ring;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.report.Block.Fact;
import dev.infiltration.review.Review;
import dev.infiltration.rule.Effect;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.units.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What a visit found at one location: the rate with its deviations beside it, then the readings as they were written. */
final class LocationPart {

    private final Review review;
    private final RateWords words;
    private final @Nullable String location;
    private final List<TestAt> tests;
    private final List<Finding> findings;

    LocationPart(Review review, RateWords words, @Nullable String location, List<TestAt> tests) {
        this.review = review;
        this.words = words;
        this.location = location;
        this.tests = tests;
        this.findings = tests.stream()
                .flatMap(test -> review.findings(test).stream())
                .distinct()
                .toList();
    }

    Block.Section section(String id) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(rate()));
        blocks.add(stated(deviations()));
        blocks.add(new Block.Facts(facts()));
        tests.stream().filter(test -> test.test().isMade()).forEach(test -> blocks.add(ReadingTable.of(test)));
        if (!others().isEmpty()) {
            blocks.add(new Block.Paragraph(Phrase.strong("Worth knowing")));
            blocks.add(
                    new Block.Points(others().stream().map(FindingWords::line).toList()));
        }
        return new Block.Section(id, heading(), blocks);
    }

    private Phrase heading() {
        return Phrase.of("Location ").and(name());
    }

    Phrase name() {
        return Phrase.written(location);
    }

    private static Block stated(List<Finding> findings) {
        return findings.isEmpty()
                ? Block.Paragraph.of("No deviation from the method was found here.")
                : new Block.Points(findings.stream().map(FindingWords::line).toList());
    }

    private Optional<LocationRate> row() {
        return review.location(tests.get(0).visit(), location);
    }

    /** {@return the rate with what it rests on} */
    Phrase rate() {
        return row().map(this::rate).orElse(notTested());
    }

    private Phrase rate(LocationRate row) {
        Phrase rate = Phrase.strong(words.text(row));
        return row.outcome() instanceof RateOutcome.Withheld
                ? rate
                : rate.and(", from " + source(row) + bounding(row) + deviating());
    }

    private static String bounding(LocationRate row) {
        List<String> reasons = row.outcome().reasons();
        return reasons.isEmpty() ? "" : " (a bound because of " + String.join(", ", reasons) + ")";
    }

    private static String source(LocationRate row) {
        return row.from() == LocationRate.Source.PREWETTING
                ? "the discontinued prewetting"
                : row.runs() == 1 ? "1 run" : "the mean of " + row.runs() + " runs";
    }

    private String deviating() {
        return deviations().isEmpty()
                ? ""
                : ", with " + ReportText.count(deviations().size(), "deviation") + " stated below";
    }

    private Phrase notTested() {
        String why = tests.stream()
                .map(test -> test.test().notTested())
                .filter(Objects::nonNull)
                .map(reason -> reason.word().replace('-', ' '))
                .distinct()
                .collect(Collectors.joining(", "));
        return Phrase.strong("not tested").and(why.isEmpty() ? "" : ": " + why);
    }

    List<Finding> deviations() {
        return findings.stream()
                .filter(finding -> finding.effect().compareTo(Effect.DEVIATION) <= 0)
                .toList();
    }

    private List<Finding> others() {
        return findings.stream()
                .filter(finding -> finding.effect().compareTo(Effect.DEVIATION) > 0)
                .toList();
    }

    /** {@return the ways in which the deviations push the rate} */
    String biases() {
        return deviations().stream()
                .map(finding -> FindingWords.bias(finding.bias()))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        tests.get(0).location().ifPresent(spot -> place(spot, facts));
        for (TestAt test : tests) {
            made(test, facts);
        }
        return facts;
    }

    private static void place(Location spot, List<Fact> facts) {
        given(facts, "Zone", spot.zone());
        given(
                facts,
                "Chosen",
                spot.selection() == null ? null : spot.selection().word());
        given(facts, "Along, across", spot.x() == null || spot.y() == null ? null : spot.x() + ", " + spot.y());
        given(facts, "Slope", spot.slope());
        if (spot.position() != null) {
            given(
                    facts,
                    "Latitude, longitude",
                    spot.position().latitude() + ", " + spot.position().longitude());
        }
    }

    private static void made(TestAt at, List<Fact> facts) {
        LocationTest test = at.test();
        facts.add(new Fact(
                "Ring",
                Phrase.written(test.ring())
                        .and(at.ring().map(LocationPart::ring).orElse(""))));
        facts.add(new Fact("Surface temperature", Phrase.written(test.surfaceTemperature())));
        given(facts, "Water temperature", test.waterTemperature());
        given(facts, "Clear distance", test.clearSpacing());
        given(facts, "Photographs", ReportItems.photos(test));
        given(facts, "Note", test.note());
    }

    private static String ring(Ring ring) {
        String diameters = ring.diametersInUse().stream().map(Reading::toString).collect(Collectors.joining(", "));
        return (diameters.isEmpty() ? "" : ", inside diameter " + diameters)
                + (ring.height() == null ? "" : ", height " + ring.height());
    }

    private static void given(List<Fact> facts, String name, @Nullable Object value) {
        if (value != null && !value.toString().isEmpty()) {
            facts.add(new Fact(name, Phrase.written(value)));
        }
    }
}
