// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.SurfaceAt;
import dev.infiltration.check.TestAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.CrewMember;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Photo;
import dev.infiltration.field.PreWet;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Weather;
import dev.infiltration.method.ReportItem;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What the book says of each thing that a method's report must state. */
final class ReportItems {

    private static final Phrase NO_TEST = Phrase.of("no test was made");

    private final VisitAt visit;
    private final List<TestAt> made;

    ReportItems(VisitAt visit) {
        this.visit = visit;
        this.made = visit.tests().stream().filter(test -> test.test().isMade()).toList();
    }

    /** {@return what the visit's method asks for here, in the order of reports} */
    List<ReportItem.Item> askedFor() {
        Surface.@Nullable Type type = surface(Surface::type);
        return visit.method().stream()
                .flatMap(method -> method.reportItems().stream())
                .filter(item -> item.isAskedFor(type))
                .map(ReportItem::item)
                .distinct()
                .sorted()
                .toList();
    }

    Phrase value(ReportItem.Item item) {
        return switch (item) {
            case IDENTIFICATION -> identification();
            case LOCATION -> locations();
            case SITE_DESCRIPTION -> Phrase.written(site(Site::description));
            case PAVEMENT_DESCRIPTION -> Phrase.written(surface(Surface::description));
            case AGE -> age();
            case THICKNESS -> thickness();
            case DATE -> Phrase.written(visit.visit().date());
            case START_FINISH -> eachTest(ReportItems::startAndFinish);
            case CREW -> crew();
            case WEATHER -> Phrase.written(weather(Weather::description));
            case LAST_RAIN_DEPTH -> Phrase.written(weather(Weather::lastRainDepth));
            case SURFACE_TEMPERATURE -> eachTest(LocationTest::surfaceTemperature);
            case PHOTO -> eachTest(ReportItems::photos);
        };
    }

    private Phrase locations() {
        List<Phrase> names = made.stream()
                .map(test -> Phrase.written(test.test().location()))
                .toList();
        return names.isEmpty() ? NO_TEST : Phrase.joined(names, "; ");
    }

    private Phrase identification() {
        Phrase own = Phrase.of("visit ").and(Phrase.written(visit.visit().id()));
        return made.isEmpty() ? own : own.and("; tests ").and(eachTest(LocationTest::id));
    }

    private Phrase eachTest(Function<LocationTest, @Nullable Object> part) {
        List<Phrase> values = made.stream()
                .map(test ->
                        Phrase.written(test.test().location()).and(": ").and(Phrase.written(part.apply(test.test()))))
                .toList();
        return values.isEmpty() ? NO_TEST : Phrase.joined(values, "; ");
    }

    /** {@return the photographs of a test for people, or null where none is recorded} */
    static @Nullable String photos(LocationTest test) {
        return test.photos().isEmpty()
                ? null
                : test.photos().stream().map(Photo::toString).collect(Collectors.joining(", "));
    }

    private static @Nullable String startAndFinish(LocationTest test) {
        PreWet preWet = test.preWet();
        List<TestRun> runs = test.runs();
        Object start = preWet != null && preWet.start() != null
                ? preWet.start()
                : runs.stream()
                        .map(TestRun::start)
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElse(null);
        Object last = runs.isEmpty()
                ? preWet == null ? null : preWet.elapsed()
                : runs.get(runs.size() - 1).elapsed();
        return start == null || last == null ? null : "started " + start + ", last took " + last;
    }

    private Phrase age() {
        LocalDate placed = surface(Surface::placedOn);
        LocalDate date = visit.visit().date();
        if (placed == null || date == null || date.isBefore(placed)) {
            return Phrase.written(placed);
        }
        Period age = Period.between(placed, date);
        return Phrase.of("placed on " + placed + ", " + ReportText.count(age.getYears(), "year") + " and "
                + ReportText.count(age.getMonths(), "month") + " before the visit");
    }

    private Phrase thickness() {
        Object thickness = surface(Surface::thickness);
        Surface.ThicknessBasis basis = surface(Surface::thicknessIs);
        return thickness == null
                ? Phrase.NOT_RECORDED
                : Phrase.written(thickness)
                        .and(", ")
                        .and(
                                basis == null
                                        ? Phrase.missing("whether measured is not recorded")
                                        : Phrase.of(basis.word()));
    }

    Phrase crew() {
        List<Phrase> members =
                visit.visit().crew().stream().map(ReportItems::member).toList();
        return members.isEmpty() ? Phrase.NOT_RECORDED : Phrase.joined(members, ", ");
    }

    private static Phrase member(CrewMember member) {
        Phrase initials = Phrase.written(member.initials());
        return member.role() == null
                ? initials
                : initials.and(" (").and(Phrase.written(member.role())).and(")");
    }

    private <T> @Nullable T site(Function<Site, @Nullable T> part) {
        return visit.surface().map(SurfaceAt::site).map(part).orElse(null);
    }

    private <T> @Nullable T surface(Function<Surface, @Nullable T> part) {
        return visit.surface().map(SurfaceAt::surface).map(part).orElse(null);
    }

    private <T> @Nullable T weather(Function<Weather, @Nullable T> part) {
        Weather weather = visit.visit().weather();
        return weather == null ? null : part.apply(weather);
    }
}
