// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.field.Head;
import dev.infiltration.field.JsonName;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Pouring;
import dev.infiltration.field.Surface;
import dev.infiltration.field.Visit;
import dev.infiltration.method.Band;
import dev.infiltration.method.Limit;
import dev.infiltration.method.MassStep;
import dev.infiltration.method.ReportItem;
import dev.infiltration.method.TestMethod;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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

    private static String boxes(JsonName... words) {
        return Arrays.stream(words)
                .map(word -> "\u2610\u00A0" + word.word().replace('-', '\u00A0'))
                .collect(Collectors.joining(" "));
    }

    static List<Line> ofVisit(TestMethod method) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of("Site, surface"));
        method.reportItems().stream()
                .map(ReportItem::item)
                .distinct()
                .sorted()
                .flatMap(item -> ofSurface(item).stream())
                .forEach(lines::add);
        lines.add(Line.of("Visit no., date"));
        lines.add(new Line("Purpose", "", boxes(Visit.Purpose.values())));
        lines.add(Line.of("Crew, initials and roles"));
        lines.add(Line.of("Weather, air temperature"));
        return lines;
    }

    /** The row of an item on the site and its surface; every other item has its row on every form. */
    private static Optional<Line> ofSurface(ReportItem.Item item) {
        return switch (item) {
            case SITE_DESCRIPTION -> Optional.of(Line.of("Site in words"));
            case PAVEMENT_DESCRIPTION -> Optional.of(Line.of("Unit type, laying pattern, joint filling"));
            case AGE -> Optional.of(Line.of("Day the surface was placed"));
            case THICKNESS -> Optional.of(new Line("Thickness", "", boxes(Surface.ThicknessBasis.values())));
            case IDENTIFICATION,
                    LOCATION,
                    DATE,
                    START_FINISH,
                    CREW,
                    WEATHER,
                    LAST_RAIN_DEPTH,
                    SURFACE_TEMPERATURE,
                    PHOTO -> Optional.empty();
        };
    }

    static List<Line> before(TestMethod method) {
        return List.of(
                new Line("Locations", count(method), ""),
                new Line(
                        "Last rain ended, its depth",
                        method.limit(Limit.DRY_TIME).toString() + " before",
                        ""),
                new Line("Standing water", "none", YES_NO),
                new Line("Surface swept", "yes", YES_NO),
                new Line("Potable water", "yes", YES_NO),
                new Line("Balance, read to", method.limit(Limit.MASS_RESOLUTION).toString(), ""),
                new Line("Watch, read to", method.limit(Limit.TIME_RESOLUTION).toString(), ""));
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
                Line.of("Test no., location, zone, place"),
                new Line("Not tested because", "", boxes(LocationTest.NotTested.values())),
                new Line("Ring no., height", method.limit(Limit.RING_HEIGHT).toString(), ""),
                new Line("Ring, inside diameters", diameters(method), ""),
                Line.of("Slope"),
                new Line(
                        "Clear distance to other spots",
                        method.limit(Limit.CLEAR_SPACING).toString(),
                        ""),
                new Line(
                        "Surface, water temperature",
                        method.limit(Limit.SURFACE_TEMPERATURE).toString(),
                        ""),
                Line.of("Photographs"),
                Line.of("Note"));
    }

    private static String diameters(TestMethod method) {
        return method.limit(Limit.INSIDE_DIAMETER) + "; read to " + bare(method.limit(Limit.DIAMETER_RESOLUTION));
    }

    static List<Line> ofPouring(TestMethod method, int pours) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("Start, h:min:s", starts(method), ""));
        lines.add(new Line("Water poured", water(method), ""));
        for (int pour = 1; pour <= pours; pour++) {
            lines.add(Line.of("Vessel " + pour + ", before / after"));
        }
        lines.add(new Line("Time taken, s", "read to " + bare(method.limit(Limit.TIME_RESOLUTION)), ""));
        lines.add(new Line("Ended", "", boxes(Pouring.End.values())));
        lines.add(Line.of("Void because"));
        lines.add(Line.of("Depth left standing"));
        lines.add(new Line("Head", method.limit(Limit.HEAD).toString(), boxes(Head.State.values())));
        return lines;
    }

    private static String bare(Band<?> band) {
        return band.toString().replace("at most ", "");
    }

    private static String starts(TestMethod method) {
        return "Run " + method.limit(Limit.START_DELAY) + " after the prewetting; repeat "
                + method.limit(Limit.REPEAT_DELAY) + " after the run";
    }

    private static String water(TestMethod method) {
        String runs = method.massSteps().stream().map(FormLines::step).collect(Collectors.joining("; "));
        return "Prewetting " + method.limit(Limit.PREWET_MASS) + ". Run: " + runs;
    }

    private static String step(MassStep step) {
        return (step.below() == null ? "else " : "prewetting below " + step.below() + ": ") + step.mass();
    }
}
