// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.check.VisitAt;
import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.Visit;
import dev.infiltration.review.Review;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/** What holds for every page, seen through the eyes of jsoup, a parser of the WHATWG's HTML. */
final class Pages {

    private static final Set<String> HARMLESS = Set.of(
            "html",
            "head",
            "meta",
            "title",
            "style",
            "body",
            "a",
            "header",
            "nav",
            "main",
            "section",
            "h1",
            "h2",
            "h3",
            "h4",
            "p",
            "ul",
            "ol",
            "li",
            "dl",
            "div",
            "dt",
            "dd",
            "table",
            "caption",
            "thead",
            "tbody",
            "tr",
            "th",
            "td",
            "strong",
            "em",
            "code",
            "bdi",
            "figure",
            "figcaption",
            "details",
            "summary",
            "span",
            "svg",
            "desc",
            "g",
            "path",
            "rect",
            "circle",
            "line",
            "polygon",
            "text",
            "defs",
            "clippath");

    private Pages() {}

    static FieldBook demo() {
        try (InputStream in =
                Files.newInputStream(Path.of("..", "infiltration-examples", "demo", "harrow-quay.json"))) {
            ReadBook read = FieldBookJson.withDefaults().read(in);
            return read.book().orElseThrow();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** {@return the demo with the error of the end point stated with every visit} */
    static FieldBook demoWithEndPoints() {
        FieldBook demo = demo();
        return demo.withVisits(demo.visits().stream()
                .map(visit -> visit.withEndPointWithin(Reading.of("2", FieldUnit.SECOND)))
                .toList());
    }

    /** {@return the demo with one of its visits changed} */
    static FieldBook demo(String id, UnaryOperator<Visit> change) {
        FieldBook demo = demo();
        return demo.withVisits(demo.visits().stream()
                .map(visit -> id.equals(visit.id()) ? change.apply(visit) : visit)
                .toList());
    }

    static VisitAt visitAt(Review review, String id) {
        return review.surfaces().stream()
                .map(row -> row.visit())
                .filter(visit -> id.equals(visit.visit().id()))
                .findFirst()
                .orElseThrow();
    }

    /** {@return the report of a visit} */
    static Document visit(Review review, String id) {
        return sound(VisitReport.of(review, visitAt(review, id)).html());
    }

    /** {@return the table of a caption that begins so} */
    static Element table(Element page, String caption) {
        return page.select("table").stream()
                .filter(table -> table.selectFirst("caption").text().startsWith(caption))
                .findFirst()
                .orElseThrow();
    }

    /** {@return the cells of each row} */
    static List<List<String>> rows(Element table) {
        return table.select("tbody tr").stream()
                .map(row -> row.children().stream().map(Element::text).toList())
                .toList();
    }

    /** {@return the page}, which is sound HTML, holds nothing that runs and asks for nothing */
    static Document sound(String html) {
        Parser parser = Parser.htmlParser().setTrackErrors(20);
        Document page = Jsoup.parse(html, "", parser);
        assertEquals(List.of(), List.copyOf(parser.getErrors()));
        page.getAllElements().stream().skip(1).forEach(Pages::harmless);
        assertEquals(1, page.select("h1").size());
        assertEquals(1, page.select("main").size());
        idsAreUniqueAndMet(page);
        headingsSkipNoLevel(page);
        tablesAreNamed(page);
        namesInAListAreUnique(page);
        return page;
    }

    /** HTML, "The dl element": no more than one dt for each name. */
    private static void namesInAListAreUnique(Document page) {
        for (Element list : page.select("dl")) {
            List<String> names = list.select("dt").eachText();
            assertEquals(names.size(), Set.copyOf(names).size(), names.toString());
        }
    }

    private static void harmless(Element element) {
        assertTrue(HARMLESS.contains(element.normalName()), element.normalName());
        for (Attribute attribute : element.attributes()) {
            String name = attribute.getKey();
            boolean isPlain = !name.startsWith("on") && !name.equals("src") && !name.equals("style");
            assertTrue(isPlain || isDrawn(element), name);
            assertTrue(
                    !name.endsWith("href") || attribute.getValue().matches("#.+|[A-Za-z0-9/_-]+\\.(html|md)"),
                    attribute.getValue());
        }
    }

    private static boolean isDrawn(Element element) {
        return element.closest("svg") != null
                && element.attributesSize() > 0
                && !element.hasAttr("src")
                && element.attributes().asList().stream()
                        .noneMatch(attribute -> attribute.getKey().startsWith("on"));
    }

    private static void idsAreUniqueAndMet(Document page) {
        List<String> ids = page.select("[id]").eachAttr("id");
        assertEquals(ids.size(), Set.copyOf(ids).size());
        page.select("[aria-labelledby]").eachAttr("aria-labelledby").forEach(list -> {
            for (String id : list.split(" ", -1)) {
                assertTrue(ids.contains(id), id);
            }
        });
        page.select("a[href^=#]").eachAttr("href").forEach(href -> assertTrue(ids.contains(href.substring(1)), href));
    }

    private static void headingsSkipNoLevel(Document page) {
        int before = 0;
        for (Element heading : page.select("h1, h2, h3, h4, h5, h6")) {
            int level = heading.normalName().charAt(1) - '0';
            assertTrue(level <= before + 1, heading.text());
            before = level;
        }
    }

    private static void tablesAreNamed(Document page) {
        for (Element table : page.select("table")) {
            assertEquals(1, table.select("> caption").size());
            int columns = table.select("> thead > tr > th[scope=col]").size();
            for (Element row : table.select("> tbody > tr")) {
                assertEquals(1, row.select("> th[scope=row]").size());
                assertEquals(columns, row.childrenSize());
            }
        }
    }
}
