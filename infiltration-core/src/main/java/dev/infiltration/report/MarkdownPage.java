// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.report.Block.Fact;
import dev.infiltration.report.Block.Facts;
import dev.infiltration.report.Block.Paragraph;
import dev.infiltration.report.Block.Picture;
import dev.infiltration.report.Block.Points;
import dev.infiltration.report.Block.Section;
import dev.infiltration.report.Block.Table;
import java.util.List;
import java.util.stream.Collectors;

/** A page in Markdown (CommonMark with pipe tables): plain text that reads well as it is. */
final class MarkdownPage {

    private static final int DEEPEST = 6;

    private final StringBuilder text = new StringBuilder();

    static String of(Phrase title, List<Block> summary, List<Block> blocks) {
        MarkdownPage page = new MarkdownPage();
        page.paragraph("# " + MarkdownWords.of(title));
        summary.forEach(block -> page.write(block, 2));
        blocks.forEach(block -> page.write(block, 2));
        return page.text.toString();
    }

    private void paragraph(String lines) {
        text.append(text.isEmpty() ? "" : "\n").append(lines).append('\n');
    }

    private void write(Block block, int level) {
        if (block instanceof Section section) {
            paragraph("#".repeat(Math.min(level, DEEPEST)) + " " + MarkdownWords.of(section.heading()));
            section.blocks().forEach(each -> write(each, level + 1));
        } else if (block instanceof Paragraph paragraph) {
            paragraph(MarkdownWords.of(paragraph.words()));
        } else if (block instanceof Points points) {
            list(points.points());
        } else if (block instanceof Facts facts) {
            list(facts.facts().stream().map(MarkdownPage::point).toList());
        } else if (block instanceof Table table) {
            table(table);
        } else if (block instanceof Picture picture) {
            table(PlotWords.table(picture.plot()));
        }
    }

    private static Phrase point(Fact fact) {
        return Phrase.strong(fact.name()).and(": ").and(fact.value());
    }

    private void list(List<Phrase> points) {
        if (points.isEmpty()) {
            return;
        }
        paragraph(points.stream().map(point -> "- " + MarkdownWords.of(point)).collect(Collectors.joining("\n")));
    }

    private void table(Table table) {
        paragraph(MarkdownWords.of(table.caption()) + ":");
        String rule = "|" + "---|".repeat(table.heads().size());
        String rows = table.rows().stream().map(row -> "\n" + row(row)).collect(Collectors.joining());
        paragraph(row(table.heads()) + "\n" + rule + rows);
    }

    private static String row(List<Phrase> cells) {
        return cells.stream().map(MarkdownWords::of).collect(Collectors.joining(" | ", "| ", " |"));
    }
}
