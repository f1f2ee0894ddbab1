// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.Weather;
import dev.infiltration.method.ReportItem;
import dev.infiltration.method.TestMethod;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** {@code report.missing}: whether what a report of the method must state was recorded. */
final class ReportRules {

    private static final Pattern UNKNOWN =
            Pattern.compile("\\bunknown\\b", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CHARACTER_CLASS);

    private final VisitAt at;

    private ReportRules(VisitAt at) {
        this.at = at;
    }

    static void judge(VisitAt at, TestMethod method, Findings findings) {
        String missing = missing(at, method).stream().map(ReportItem.Item::word).collect(Collectors.joining(" "));
        if (!missing.isEmpty()) {
            findings.add(BuiltInRule.REPORT_MISSING, at.place(), at.subject(), missing, "", RuleBases.REPORT);
        }
    }

    /** {@return what a report must state and the book does not say, in the order of reports} */
    static List<ReportItem.Item> missing(VisitAt at, TestMethod method) {
        ReportRules rules = new ReportRules(at);
        Surface.@Nullable Type type = at.surface().map(s -> s.surface().type()).orElse(null);
        return method.reportItems().stream()
                .filter(item -> item.isAskedFor(type))
                .map(ReportItem::item)
                .filter(item -> !rules.isRecorded(item))
                .distinct()
                .sorted(Comparator.naturalOrder())
                .toList();
    }

    private boolean isRecorded(ReportItem.Item item) {
        return switch (item) {
            case IDENTIFICATION ->
                isGiven(at.visit().id())
                        && everyTest(test -> isGiven(test.test().id()));
            case LOCATION -> everyTest(test -> isGiven(test.test().location()));
            case SITE_DESCRIPTION ->
                at.surface()
                        .map(SurfaceAt::site)
                        .map(Site::description)
                        .filter(ReportRules::isGiven)
                        .isPresent();
            case PAVEMENT_DESCRIPTION -> surface(surface -> isGiven(surface.description()));
            case AGE -> surface(surface -> surface.placedOn() != null);
            case THICKNESS -> surface(surface -> surface.thickness() != null && surface.thicknessIs() != null);
            case DATE -> at.visit().date() != null;
            case START_FINISH -> everyTest(ReportRules::hasStartAndFinish);
            case CREW -> !at.visit().crew().isEmpty();
            case WEATHER -> weather(weather -> isGiven(weather.description()));
            case LAST_RAIN_DEPTH -> weather(ReportRules::hasLastRainDepth);
            case SURFACE_TEMPERATURE -> everyTest(test -> test.test().surfaceTemperature() != null);
            case PHOTO -> everyTest(test -> test.test().photos().stream().anyMatch(photo -> isGiven(photo.file())));
        };
    }

    private static boolean isGiven(@Nullable String text) {
        return SubjectText.given(text) != null;
    }

    /** Of tests that were made. */
    private boolean everyTest(Predicate<TestAt> isRecorded) {
        return at.tests().stream().filter(test -> test.test().isMade()).allMatch(isRecorded);
    }

    private boolean surface(Predicate<Surface> isRecorded) {
        return at.surface().map(SurfaceAt::surface).filter(isRecorded).isPresent();
    }

    private boolean weather(Predicate<Weather> isRecorded) {
        return at.visit().weather() != null && isRecorded.test(at.visit().weather());
    }

    private static boolean hasLastRainDepth(Weather weather) {
        String description = weather.description();
        return weather.lastRainDepth() != null
                || (description != null && UNKNOWN.matcher(description).find());
    }

    /** First start, and the last elapsed time: of the last run that counts, else of the last there is. */
    private static boolean hasStartAndFinish(TestAt at) {
        return at.firstStart() != null && last(at).pouring().elapsed() != null;
    }

    private static PouringAt last(TestAt at) {
        List<PouringAt> counting =
                at.runsInOrder().stream().filter(run -> !run.pouring().isVoid()).toList();
        if (!counting.isEmpty()) {
            return counting.get(counting.size() - 1);
        }
        List<PouringAt> all = at.pourings();
        return all.get(all.size() - 1);
    }
}
