// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.rate.RateOutcome;
import dev.infiltration.report.HistoryPlot;
import dev.infiltration.report.MapPlot;
import dev.infiltration.report.PairPlot;
import dev.infiltration.report.Plot;
import dev.infiltration.report.RateLimit;
import dev.infiltration.report.RateMark;
import dev.infiltration.report.RatePlot;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.quantity.Speed;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Drawings, as the XML parser of the JDK reads them. */
class SvgPlotsTest {

    private static final FieldUnit<Speed> UNIT = FieldUnit.MILLIMETRE_PER_HOUR;
    private static final List<RateLimit> LIMITS =
            List.of(new RateLimit("mean \u2265 254 mm/h", new InfiltrationRate(254)));

    private static RateMark measured(String label, double rate) {
        return new RateMark(
                label, new RateOutcome.Measured(new InfiltrationRate(rate)), new InfiltrationRate(rate / 4));
    }

    private static RateMark atMost(String label, double rate) {
        return RateMark.of(label, new RateOutcome.UpperBound(new InfiltrationRate(rate), List.of()));
    }

    private static RatePlot rates(RateMark... marks) {
        return new RatePlot("V1, S, 2026-06-03", UNIT, List.of(marks), LIMITS);
    }

    private static HistoryPlot.Step step(int day) {
        InfiltrationRate rate = new InfiltrationRate(1000 - day);
        return new HistoryPlot.Step(
                LocalDate.of(2024, 1, 1).plusDays(day), rate, new InfiltrationRate(500), new InfiltrationRate(2000));
    }

    static Stream<Plot> plots() {
        HistoryPlot.Point first = new HistoryPlot.Point(LocalDate.of(2024, 1, 1), measured("V1", 1000));
        HistoryPlot.Point last = new HistoryPlot.Point(LocalDate.of(2025, 1, 1), atMost("V2", 600));
        HistoryPlot.Fit fit = new HistoryPlot.Fit(
                0.95, IntStream.range(0, 9).mapToObj(i -> step(40 * i)).toList());
        return Stream.of(
                rates(measured("A1", 1000), atMost("A2", 100), RateMark.of("A3", new RateOutcome.Withheld(List.of()))),
                new HistoryPlot(
                        "S", UNIT, List.of(first, last), List.of(LocalDate.of(2024, 9, 1)), List.of(fit), LIMITS),
                new MapPlot(
                        "S",
                        UNIT,
                        FieldUnit.METRE,
                        "Along",
                        "Across",
                        List.of(new MapPlot.Spot(0, 0, measured("A1", 1000)), new MapPlot.Spot(9, 3, atMost("A2", 9)))),
                new PairPlot(
                        "S",
                        UNIT,
                        "V1",
                        "V2",
                        List.of(new PairPlot.Pair(atMost("A1", 10), measured("A1", 900))),
                        LIMITS));
    }

    private static Element drawn(Plot plot) throws Exception {
        String svg = new SvgPlots().svg(plot, "p");
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg)))
                .getDocumentElement();
    }

    private static List<Element> all(Element root, String name) {
        NodeList nodes = root.getElementsByTagName(name);
        return IntStream.range(0, nodes.getLength())
                .mapToObj(i -> (Element) nodes.item(i))
                .toList();
    }

    private static List<String> words(Element root) {
        return all(root, "text").stream().map(Element::getTextContent).toList();
    }

    @ParameterizedTest
    @MethodSource("plots")
    void drawingIsNamedDescribedAndAnImage(Plot plot) throws Exception {
        Element svg = drawn(plot);
        assertEquals("img", svg.getAttribute("role"));
        assertEquals("p-title p-desc", svg.getAttribute("aria-labelledby"));
        assertEquals(plot.title(), all(svg, "title").get(0).getTextContent());
        assertEquals(plot.description(), all(svg, "desc").get(0).getTextContent());
        assertTrue(words(svg).contains(plot.title()));
    }

    @ParameterizedTest
    @MethodSource("plots")
    void axesAreNamedWithTheirUnits(Plot plot) throws Exception {
        List<String> words = words(drawn(plot));
        String unit = plot instanceof MapPlot ? " in m" : "in mm/h, log scale";
        assertTrue(words.stream().anyMatch(word -> word.endsWith(unit)), words.toString());
    }

    @ParameterizedTest
    @MethodSource("plots")
    void sameBytesEveryTime(Plot plot) {
        assertEquals(new SvgPlots().svg(plot, "p"), new SvgPlots().svg(plot, "p"));
    }

    @ParameterizedTest
    @MethodSource("plots")
    void idsOfTwoDrawingsNeverMeet(Plot plot) throws Exception {
        Element svg = drawn(plot);
        Set<String> ids = new HashSet<>();
        List<Element> elements = new ArrayList<>(all(svg, "*"));
        elements.add(svg);
        for (Element element : elements) {
            String id = element.getAttribute("id");
            assertTrue(id.isEmpty() || (ids.add(id) && (id.equals("p") || id.startsWith("p-"))), id);
            String clip = element.getAttribute("clip-path");
            assertTrue(clip.isEmpty() || clip.startsWith("url(#p-"), clip);
        }
        assertFalse(ids.isEmpty());
    }

    @ParameterizedTest
    @MethodSource("plots")
    void everyInkFollowsLightAndDark(Plot plot) {
        String svg = new SvgPlots().svg(plot, "p");
        assertFalse(svg.contains("rgb("), "an ink that the page cannot change");
        assertTrue(svg.contains("prefers-color-scheme:dark"));
    }

    @Test
    void markLiesAtItsRate() throws Exception {
        Element svg = drawn(rates(measured("A1", 1000), measured("A2", 100)));
        double left = Double.parseDouble(
                all(svg, "g").get(0).getAttribute("transform").replaceAll(".*\\((\\S+) .*", "$1"));
        List<Double> marks = all(svg, "ellipse").stream()
                .map(mark -> left + Double.parseDouble(mark.getAttribute("cx")))
                .toList();
        assertEquals(tick(svg, "1000"), marks.get(0), 0.1);
        assertEquals(tick(svg, "100"), marks.get(1), 0.1);
    }

    private static double height(Element svg, String words) {
        return all(svg, "text").stream()
                .filter(text -> text.getTextContent().equals(words))
                .mapToDouble(text -> Double.parseDouble(text.getAttribute("y")))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void wordsOfLimitsStandInLinesOfTheirOwnAboveTheMarks() throws Exception {
        List<RateLimit> close = List.of(
                new RateLimit("mean", new InfiltrationRate(2000)), new RateLimit("each", new InfiltrationRate(1800)));
        Element svg = drawn(new RatePlot("V1", UNIT, List.of(measured("A1", 1800)), close));
        assertTrue(height(svg, "each") + Label.HIGH < height(svg, "mean"));
        assertTrue(height(svg, "mean") + Label.HIGH < height(svg, "A1"));
    }

    @Test
    void namesOfPairsOfOneRateDoNotCoverEachOther() throws Exception {
        List<PairPlot.Pair> pairs = IntStream.range(0, 9)
                .mapToObj(i -> new PairPlot.Pair(measured("B" + i, 100), measured("A" + i, 900)))
                .toList();
        Element svg = drawn(new PairPlot("S", UNIT, "V1", "V2", pairs, List.of()));
        for (int i = 1; i < 9; i++) {
            assertTrue(height(svg, "A" + i) - height(svg, "A" + (i - 1)) >= Label.HIGH - 0.1);
        }
    }

    @Test
    void namesOfMorePairsThanThereIsRoomForAreLeftToTheTable() throws Exception {
        List<PairPlot.Pair> pairs = IntStream.range(0, 90)
                .mapToObj(i -> new PairPlot.Pair(measured("B" + i, 100), measured("A" + i, 900 + i)))
                .toList();
        long named = words(drawn(new PairPlot("S", UNIT, "V1", "V2", pairs, List.of()))).stream()
                .filter(word -> word.matches("A\\d+"))
                .count();
        assertTrue(named > 10 && named < 25, () -> named + " names");
    }

    private static double tick(Element svg, String name) {
        return all(svg, "text").stream()
                .filter(text -> text.getTextContent().equals(name))
                .mapToDouble(text -> Double.parseDouble(text.getAttribute("x")))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void rateAndBoundDifferInShapeNotInInkAlone() throws Exception {
        assertEquals(1, all(drawn(rates(measured("A1", 1000))), "ellipse").size());
        Element bound = drawn(rates(atMost("A1", 1000)));
        assertEquals(0, all(bound, "ellipse").size());
        assertEquals(1, all(bound, "path").size());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"<script>x</script>", "&amp;\"'", "\u0000\uFFFE", "\u05E9\u05DC\u05D5\u05DD", "\uD83C\uDF27"})
    void wordsStayWords(String words) throws Exception {
        Element svg = drawn(rates(measured(words, 1000)));
        String shown = words.replace('\u0000', '\uFFFD').replace('\uFFFE', '\uFFFD');
        assertTrue(words(svg).contains(shown), words(svg).toString());
        assertEquals(0, all(svg, "script").size());
    }

    @Test
    void longNameIsShortenedInTheDrawingAlone() throws Exception {
        String name = "a location with a very long name";
        assertTrue(words(drawn(rates(measured(name, 1)))).contains("a location with a v\u2026"));
    }

    @Test
    void nothingToDrawIsADrawingStill() throws Exception {
        assertTrue(words(drawn(rates())).contains("Location"));
        assertTrue(words(drawn(rates(measured("A1", 0)))).contains("A1"));
        Plot history = new HistoryPlot("S", UNIT, List.of(), List.of(), List.of(), List.of());
        assertTrue(words(drawn(history)).contains("Date of visit"));
    }
}
