// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import static dev.infiltration.plan.Laid.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Laying;
import java.io.StringReader;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class PatternDrawingTest {

    private static final RingOffset OFFSET = new RingOffset(40, -25, 10);

    @ParameterizedTest
    @EnumSource
    void drawingShowsWhatTheRingHolds(Laying laying) throws Exception {
        JointsInRing ring = JointsInRing.of(Laid.example(laying), mm("300")).orElseThrow();
        Document svg = parse(ring.drawing(OFFSET));
        double[] middle = numbers(((Element) svg.getElementsByTagName("g").item(0))
                .getAttribute("transform")
                .replaceAll(".*translate\\((.*)\\)", "$1"));
        double solid = polygons(svg).stream()
                .mapToDouble(face -> CirclePolygon.area(face, -middle[0], -middle[1], 150))
                .sum();
        assertEquals(ring.at(OFFSET).openShare(), 1 - solid / (Math.PI * 150 * 150), 1e-3);
    }

    /** The pattern lies as its own axes say: seen from the ring's middle, the unit at the datum points the right way. */
    @Test
    void herringboneAt45StandsTurned() {
        JointsInRing ring =
                JointsInRing.of(Laid.example(Laying.HERRINGBONE_45), mm("300")).orElseThrow();
        assertTrue(ring.drawing(OFFSET).contains("scale(1 -1) rotate(-45.000)"));
    }

    @Test
    void voidsLookLikeJoints() throws Exception {
        JointsInRing ring =
                JointsInRing.of(Laid.example(Laying.GRID), mm("300")).orElseThrow();
        Document svg = parse(ring.drawing(OFFSET));
        String joints = ((Element) svg.getElementsByTagName("rect").item(0)).getAttribute("fill");
        NodeList faces = svg.getElementsByTagName("polygon");
        for (int i = 0; i < faces.getLength(); i++) {
            Element face = (Element) faces.item(i);
            boolean isVoid = CirclePolygon.signedArea(numbers(face.getAttribute("points"))) < 0;
            assertEquals(isVoid ? joints : "", face.getAttribute("fill"));
        }
    }

    @Test
    void drawingNamesItselfForThoseWhoDoNotSeeIt() throws Exception {
        JointsInRing ring =
                JointsInRing.of(Laid.example(Laying.STACK), mm("300")).orElseThrow();
        Document svg = parse(ring.drawing(OFFSET));
        assertEquals("img", svg.getDocumentElement().getAttribute("role"));
        assertEquals("title desc", svg.getDocumentElement().getAttribute("aria-labelledby"));
        assertEquals("title", ((Element) svg.getElementsByTagName("title").item(0)).getAttribute("id"));
        String description = svg.getElementsByTagName("desc").item(0).getTextContent();
        assertTrue(
                description.startsWith("The middle of a ring of 300 mm lies 40 mm along x and -25 mm along y"),
                description);
    }

    private static Document parse(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static List<double[]> polygons(Document svg) {
        NodeList nodes = svg.getElementsByTagName("polygon");
        return IntStream.range(0, nodes.getLength())
                .mapToObj(i -> numbers(((Element) nodes.item(i)).getAttribute("points")))
                .toList();
    }

    private static double[] numbers(String text) {
        return Stream.of(text.trim().split("[ ,]+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
