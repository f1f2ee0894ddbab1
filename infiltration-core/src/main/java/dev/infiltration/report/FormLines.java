// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.field.Head;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.Visit;
import dev.infiltration.field.Word;
import dev.infiltration.method.Band;
import dev.infiltration.method.MassStep;
import dev.infiltration.method.TestMethod;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** The lines of a field form. */
final class FormLines {

    private static final String YES_NO = "\u2610\u00A0yes \u2610\u00A0no";

    private FormLines() {}

    /**
     * A line to be filled in.
     *
     * @param what  its name
     * @param asked what the method asks for; empty where it asks for nothing
     * @param boxes what may be ticked; empty where it is to be written
     */
    record Line(String what, String asked, String boxes) {

        static Line of(String what) {
            return new Line(what, "", "");
        }
    }

    private static String boxes(Word... words) {
        return Arrays.stream(words)
                .map(word -> "\u2610\u00A0" + word.word().replace('-', '\u00A0'))
                .collect(Collectors.joining(" "));
    }

    static List<Line> ofVisit() {
        return List.of(
                Line.of("Site, surface"),
                Line.of("Visit no., date"),
                new Line("Purpose", "", boxes(Visit.Purpose.values())),
                Line.of("Crew, initials and roles"),
                Line.of("Weather, air temperature"));
    }

    static List<Line> before(TestMethod method) {
        return List.of(
                new Line("Locations", count(method), ""),
                new Line("Last rain ended, its depth", method.dryTime().toString() + " before", ""),
                new Line("Standing water", "none", YES_NO),
                new Line("Surface swept", "yes", YES_NO),
                new Line("Potable water", "yes", YES_NO),
                new Line("Balance, read to", method.massResolution().toString(), ""),
                new Line("Watch, read to", method.timeResolution().toString(), ""));
    }

    private static String count(TestMethod method) {
        List<String> steps = method.locationCount().si().stream()
                .map(Object::toString)
                .collect(Collectors.toCollection(ArrayList::new));
        List<String> inchPound = method.locationCount().inchPound().stream()
                .map(Object::toString)
                .toList();
        String si = String.join(", then ", steps);
        return steps.equals(inchPound) ? si : si + "; " + String.join(", then ", inchPound);
    }

    static List<Line> ofLocation(TestMethod method) {
        return List.of(
                Line.of("Location, zone, place"),
                new Line("Not tested because", "", boxes(LocationTest.NotTested.values())),
                new Line("Ring, inside diameters", method.insideDiameter().toString(), ""),
                new Line("Clear distance to other spots", method.clearSpacing().toString(), ""),
                new Line(
                        "Surface, water temperature",
                        method.surfaceTemperature().toString(),
                        ""),
                Line.of("Photographs"));
    }

    static List<Line> ofPouring(TestMethod method, int pours) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("Start, h:min:s", starts(method), ""));
        lines.add(new Line("Water poured", water(method), ""));
        for (int pour = 1; pour <= pours; pour++) {
            lines.add(Line.of("Vessel " + pour + ", before / after"));
        }
        lines.add(new Line("Time taken, s", "read to " + bare(method.timeResolution()), ""));
        lines.add(new Line("Ended", "", boxes(Pouring.End.values())));
        lines.add(Line.of("Depth left standing"));
        lines.add(new Line("Head", method.head().toString(), boxes(Head.State.values())));
        return lines;
    }

    private static String bare(Band<?> band) {
        return band.toString().replace("at most ", "");
    }

    private static String starts(TestMethod method) {
        return "Run " + method.startDelay() + " after the prewetting; repeat " + method.repeatDelay()
                + " after the run";
    }

    private static String water(TestMethod method) {
        String runs = method.massSteps().stream().map(FormLines::step).collect(Collectors.joining("; "));
        return "Prewetting " + method.preWetMass() + ". Run: " + runs;
    }

    private static String step(MassStep step) {
        return (step.below() == null ? "else " : "prewetting below " + step.below() + ": ") + step.mass();
    }
}
