// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.FieldBook;
import dev.infiltration.review.Review;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;
import org.jsoup.nodes.Document;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a book says stands on the pages as text, as jsoup reads HTML and commonmark-java reads Markdown. */
class HostileWordsTest {

    private static final Set<String> PLAIN = Set.of(
            "Document",
            "Heading",
            "Paragraph",
            "Text",
            "BulletList",
            "ListItem",
            "StrongEmphasis",
            "Emphasis",
            "TableBlock",
            "TableHead",
            "TableBody",
            "TableRow",
            "TableCell");

    private static final List<org.commonmark.Extension> TABLES = List.of(TablesExtension.create());

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "</title><script>alert(1)</script>",
                "</style></head><body onload=alert(1)>",
                "\" onmouseover=\"alert(1)\" x=\"",
                "' onfocus='alert(1)' autofocus='",
                "<img src=x onerror=alert(1)>",
                "<a href=\"javascript:alert(1)\">link</a>",
                "--><!-- <![CDATA[ ]]> <?php ?>",
                "&lt;b&gt; &amp; &#60;script&#62; &copy",
                "<svg><desc></svg><iframe src=x>",
                "\u05E9\u05DC\u05D5\u05DD \u0645\u0631\u062D\u0628\u0627",
                "\uD83C\uDF27\uFE0F\uD83D\uDC69\u200D\uD83D\uDD27",
                "[link](http://example.org) ![image](x.png) <http://example.org>",
                "http://example.org www.example.org mail@example.org",
                "**bold** __bold__ ~~struck~~ `code` ``` $x$",
                "a | b || c \\| d \\",
                "# heading",
                "- item",
                "1. item",
                "===",
                "---",
                "> quote",
                "{{7*7}} ${7*7} <%= 7 %>"
            })
    void textOfABookStaysText(String words) {
        FieldBook book = Rewritten.book(Pages.demo(), text -> words + text);
        Review review = Review.of(book);
        for (VisitReport report : VisitReport.all(review)) {
            Document page = Pages.sound(report.html());
            assertTrue(page.select("bdi").text().contains(words), words);
            page.select("title, nav").remove();
            assertEquals(count(words, page.text()), count(words, markdown(report.markdown())));
        }
        String season = SeasonPage.of(review, LocalDate.of(2026, 11, 24))
                .linkedTo("visits")
                .html();
        assertTrue(Pages.sound(season).select("bdi").text().contains(words), words);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u0000",
                "\u0007",
                "\u001B[31m",
                "\u007F",
                "\u0085",
                "\uD800",
                "\uFFFE",
                "\uFDD0",
                "\u202E",
                "\u2066",
                "\u2069"
            })
    void whatIsNoTextIsShownAsNone(String sign) {
        FieldBook book = Rewritten.book(Pages.demo(), text -> text + sign);
        Review review = Review.of(book);
        for (VisitReport report : VisitReport.all(review)) {
            String shown = Pages.sound(report.html()).text();
            assertTrue(shown.contains("\uFFFD"));
            assertTrue(sign.startsWith("\u001B") || !shown.contains(sign));
            assertTrue(
                    report.markdown().contains("\uFFFD") && !report.markdown().contains(sign));
        }
    }

    private static int count(String words, String text) {
        return text.split(Pattern.quote(words), -1).length - 1;
    }

    /** Its text; nothing in it is marked up but by the report itself. */
    private static String markdown(String markdown) {
        Node document = Parser.builder().extensions(TABLES).build().parse(markdown);
        assertEquals(Set.of(), strange(document));
        return TextContentRenderer.builder().extensions(TABLES).build().render(document);
    }

    private static Set<String> strange(Node node) {
        Set<String> strange = new TreeSet<>();
        if (!PLAIN.contains(node.getClass().getSimpleName())) {
            strange.add(node.getClass().getSimpleName());
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
            strange.addAll(strange(child));
        }
        return strange;
    }
}
