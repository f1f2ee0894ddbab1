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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Blocks in HTML; sections of the page are landmarks, tables carry captions and scopes. */
final class HtmlBlocks {

    private static final int TOP = 2;
    private static final int DEEPEST = 6;

    private final StringBuilder html = new StringBuilder();
    private int captions;

    static String of(List<Block> blocks) {
        HtmlBlocks writer = new HtmlBlocks();
        blocks.forEach(block -> writer.write(block, TOP));
        return writer.html.toString();
    }

    private void write(Block block, int level) {
        if (block instanceof Section section) {
            section(section, level);
        } else if (block instanceof Paragraph paragraph) {
            line("<p>" + HtmlWords.of(paragraph.words()) + "</p>");
        } else if (block instanceof Points points) {
            points(points);
        } else if (block instanceof Facts facts) {
            facts(facts);
        } else if (block instanceof Table table) {
            table(table);
        } else if (block instanceof Picture picture) {
            picture(picture);
        }
    }

    private void line(String text) {
        html.append(text).append('\n');
    }

    private void section(Section section, int level) {
        String heading = "h" + Math.min(level, DEEPEST);
        String id = HtmlWords.escaped(section.id());
        String landmark = level == TOP ? "\" aria-labelledby=\"" + id + "-h\">" : "\">";
        line("<section id=\"" + id + landmark);
        line("<" + heading + " id=\"" + id + "-h\">" + HtmlWords.of(section.heading()) + "</" + heading + ">");
        section.blocks().forEach(block -> write(block, level + 1));
        line("</section>");
    }

    private void points(Points points) {
        if (points.points().isEmpty()) {
            return;
        }
        line("<ul>");
        points.points().forEach(point -> line("<li>" + HtmlWords.of(point) + "</li>"));
        line("</ul>");
    }

    /** HTML allows each name once in a list; facts of one name share it. */
    private void facts(Facts facts) {
        Map<String, List<Fact>> byName = facts.facts().stream()
                .collect(Collectors.groupingBy(Fact::name, LinkedHashMap::new, Collectors.toList()));
        line("<dl>");
        byName.forEach((name, same) -> line("<div><dt>" + HtmlWords.escaped(name) + "</dt>"
                + same.stream()
                        .map(fact -> "<dd>" + HtmlWords.of(fact.value()) + "</dd>")
                        .collect(Collectors.joining())
                + "</div>"));
        line("</dl>");
    }

    /** A table that is wider than the page scrolls by itself, by keyboard too. */
    private void table(Table table) {
        captions++;
        String caption = "caption-" + captions;
        line("<div class=\"table\" role=\"group\" aria-labelledby=\"" + caption + "\" tabindex=\"0\">");
        line("<table>");
        line("<caption id=\"" + caption + "\">" + HtmlWords.of(table.caption()) + "</caption>");
        row("thead", table.heads(), "<th scope=\"col\">", "</th>");
        line("<tbody>");
        table.rows().forEach(this::row);
        line("</tbody>");
        line("</table>");
        line("</div>");
    }

    private void row(String part, List<Phrase> cells, String open, String close) {
        line("<" + part + "><tr>");
        cells.forEach(cell -> line(open + HtmlWords.of(cell) + close));
        line("</tr></" + part + ">");
    }

    private void row(List<Phrase> cells) {
        line("<tr>");
        line("<th scope=\"row\">" + HtmlWords.of(cells.get(0)) + "</th>");
        cells.subList(1, cells.size()).forEach(cell -> line("<td>" + HtmlWords.of(cell) + "</td>"));
        line("</tr>");
    }

    private void picture(Picture picture) {
        if (picture.svg().isEmpty()) {
            table(PlotWords.table(picture.plot()));
            return;
        }
        line("<figure>");
        line(picture.svg());
        line("<figcaption>" + HtmlWords.escaped(picture.plot().description()) + "</figcaption>");
        line("</figure>");
        line("<details><summary>The same in figures</summary>");
        table(PlotWords.table(picture.plot()));
        line("</details>");
    }
}
