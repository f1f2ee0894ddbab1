// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.VisitAt;
import dev.infiltration.method.ReportItem;
import dev.infiltration.report.Block.Fact;
import dev.infiltration.report.Block.Paragraph;
import dev.infiltration.report.Block.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a report must state: the items that the method's data name, then the figures of each test; and what is missing of both. */
final class RequiredItemsSection {

    private final ReportItems items;
    private final List<ReportItem.Item> missing;
    private final TestFigures figures;

    RequiredItemsSection(VisitAt visit, RateWords words) {
        this.items = new ReportItems(visit);
        this.missing = visit.missingItems();
        this.figures = new TestFigures(visit, words);
    }

    Section section() {
        return new Section("items", Phrase.of("What the report must state"), blocks());
    }

    private List<Block> blocks() {
        List<ReportItem.Item> asked = items.askedFor();
        if (asked.isEmpty()) {
            return List.of(Paragraph.of("No method is known that asks for anything."));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Paragraph(missing()));
        blocks.add(new Block.Facts(asked.stream()
                .map(item -> new Fact(ReportText.item(item), value(item)))
                .toList()));
        figures.table().ifPresent(blocks::add);
        return blocks;
    }

    private Phrase value(ReportItem.Item item) {
        Phrase value = items.value(item);
        return missing.contains(item) && !value.equals(Phrase.NOT_RECORDED)
                ? value.and(" ").and(Phrase.missing("incomplete"))
                : value;
    }

    private Phrase missing() {
        List<Phrase> all = new ArrayList<>();
        if (!missing.isEmpty()) {
            all.add(Phrase.of(missing.stream().map(ReportText::item).collect(Collectors.joining(", "))));
        }
        all.addAll(figures.missing());
        return all.isEmpty()
                ? Phrase.of("Nothing that the method asks a report to state is missing.")
                : Phrase.of("Missing: ").and(Phrase.joined(all, "; ")).and(".");
    }
}
