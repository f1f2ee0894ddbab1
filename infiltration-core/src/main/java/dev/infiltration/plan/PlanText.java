// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.plan;

import dev.infiltration.field.Location;
import dev.infiltration.field.Surface;
import dev.infiltration.method.Limit;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/** A plan as plain text: cautions first, then what, where, when and how. */
final class PlanText {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private static final double LITRES_PER_GALLON = 3.785411784;

    /** Position tolerance of a ring. */
    static final Reading<Length> SLIP = Reading.of("10", FieldUnit.MILLIMETRE);

    /** Shorter times are given in seconds. */
    private static final long SHORT_MINUTES = 5;

    private final VisitPlan plan;
    private final List<String> lines = new ArrayList<>();

    private PlanText(VisitPlan plan) {
        this.plan = plan;
    }

    static String of(VisitPlan plan) {
        PlanText text = new PlanText(plan);
        text.head();
        text.list("Safety", plan.cautions());
        text.locations();
        text.amounts();
        plan.joints().ifPresent(text::ring);
        text.list("Equipment", plan.equipment());
        text.list("At each location", plan.steps());
        return String.join("\n", text.lines) + "\n";
    }

    private void head() {
        Surface surface = plan.surface();
        add("Plan of a visit to surface %s", or(surface.id(), "without id"));
        add("Method: %s (%s)", plan.method().designation(), plan.method().verification());
        add("Area: %s", or(surface.area(), "not known"));
        add(
                "Start: %s",
                plan.window()
                        .map(window -> "from " + clock(window.firstStart()) + " to " + clock(window.lastStart()) + " ("
                                + plan.zone() + ")")
                        .orElseGet(this::noWindow));
    }

    private String noWindow() {
        return plan.rain()
                .map(rain -> "no dry time in the rain record from " + clock(rain.from()) + " to " + clock(rain.to())
                        + " (" + plan.zone() + ")")
                .orElseGet(() -> "no rain record given; required: the last rain ended "
                        + plan.method().limit(Limit.DRY_TIME) + " before");
    }

    private String clock(Instant instant) {
        return CLOCK.format(instant.atZone(plan.zone()));
    }

    private void locations() {
        String count = plan.locationCount().isPresent()
                ? String.valueOf(plan.locationCount().getAsLong())
                : "not known without the area";
        add("");
        add("Locations: %s, %s", count, plan.countBasis());
        plan.planned().forEach(location -> location(location, ""));
        plan.spares().forEach(location -> location(location, spare(location)));
        if (plan.missing() > 0) {
            String why = plan.drawn().isPresent() ? "no room found for %d more" : "%d more to select";
            add("  " + why, plan.missing());
        }
        plan.drawn().ifPresent(drawn -> add("  selected with seed %d", drawn.seed()));
    }

    private String spare(Location location) {
        return "; spare"
                + plan.tooNear().stream()
                        .filter(near -> near.spare().equals(location))
                        .map(near -> String.format(
                                Locale.ROOT,
                                ", %.2f m clear of %s (required: %s)",
                                near.clearMetres(),
                                or(near.planned().id(), "one without id"),
                                plan.method().limit(Limit.CLEAR_SPACING).in(plan.system())))
                        .collect(Collectors.joining());
    }

    private void location(Location location, String remark) {
        String place = location.x() == null || location.y() == null
                ? "place not recorded"
                : "x " + location.x() + ", y " + location.y();
        add("  %s: %s, %s%s", or(location.id(), "without id"), place, or(location.zone(), "no zone"), remark);
    }

    private void amounts() {
        add("");
        add("Expected rate: %s", spread(InfiltrationRate::toString));
        add("Runs per location: %d, after a prewetting", plan.runs());
        add(
                "Water: %s per location, %s in total",
                plan.waterPerLocation(), plan.waterInAll().map(Object::toString).orElse("not known"));
        add(
                "Pour rate to keep the head: %s",
                spread(rate -> pour(plan.spot(rate).pourLitresPerMinute())));
        add("Prewetting time: %s", spread(rate -> time(plan.spot(rate).preWetTime())));
        add("Run time: %s", spread(rate -> time(plan.spot(rate).runTime())));
        add("Moving, sealing and cleaning up: %s", plan.setUp().isZero() ? "not included" : time(plan.setUp()));
        add("Time per location: %s", spread(rate -> time(plan.timePerLocation(rate))));
        add(
                "Time on site: %s",
                spread(rate -> plan.timeOnSite(rate).map(PlanText::time).orElse("not known")));
    }

    private void ring(JointsInRing joints) {
        RingPlacement best = joints.best(SLIP).get(0);
        add("");
        add("Ring of %s on the joints, from the middle of a unit that lies along x:", plan.ring());
        add(
                "  best at x %.0f mm, y %.0f mm, set to %s: %.1f %% open in the ring, %.1f %% in the pattern",
                best.offset().x(), best.offset().y(), SLIP, 100 * best.openShare(), 100 * best.patternShare());
        add(
                "  worst position: open area differs from the pattern by %+.0f %%",
                100 * joints.worst().mismatch());
    }

    /** {@return a figure at the likely rate, and at the bounds where they differ} */
    private String spread(Function<InfiltrationRate, String> figure) {
        String likely = figure.apply(plan.expected().likely());
        String low = figure.apply(plan.expected().lowest());
        String high = figure.apply(plan.expected().highest());
        return low.equals(high) ? likely : likely + " (at the lowest rate " + low + ", at the highest " + high + ")";
    }

    private static String pour(double litresPerMinute) {
        return String.format(
                Locale.ROOT, "%.3g L/min (%.3g gal/min)", litresPerMinute, litresPerMinute / LITRES_PER_GALLON);
    }

    static String time(Duration time) {
        if (time.toMinutes() < SHORT_MINUTES) {
            return time.toSeconds() + " s";
        }
        long minutes = time.plusSeconds(30).toMinutes();
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }

    private void list(String title, List<String> items) {
        add("");
        add("%s:", title);
        items.forEach(item -> add("  - %s", item));
    }

    private static String or(@Nullable Object value, String otherwise) {
        return value == null ? otherwise : value.toString();
    }

    private void add(String pattern, @Nullable Object... values) {
        lines.add(String.format(Locale.ROOT, pattern, values));
    }
}
