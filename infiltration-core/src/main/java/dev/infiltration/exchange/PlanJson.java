// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.exchange.text.Output;
import dev.infiltration.field.Location;
import dev.infiltration.plan.JointsInRing;
import dev.infiltration.plan.LocationPlan;
import dev.infiltration.plan.RingPlacement;
import dev.infiltration.plan.VisitPlan;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.util.List;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;

/**
 * Writes the plan of a visit as one JSON document.
 *
 * <p>Amounts are those of the plan with their UCUM units, times in seconds to the millisecond; rates in mm/h and the pour rate
 * in L/min to six digits. Values that are unknown are absent.
 */
public final class PlanJson {

    /** The assumed position tolerance of a ring. */
    private static final Reading<Length> POSITION_TOLERANCE = Reading.of("10", FieldUnit.MILLIMETRE);

    private static final MathContext DIGITS = new MathContext(6);

    private final JsonGenerator json;

    private PlanJson(JsonGenerator json) {
        this.json = json;
    }

    /**
     * Writes a plan as one JSON document over many lines, followed by a line end.
     *
     * @param plan the plan
     * @param out  where to; it stays open
     * @throws IOException if it cannot be written
     */
    public static void write(VisitPlan plan, Writer out) throws IOException {
        Output.PAGE.write(out, json -> new PlanJson(json).document(plan));
    }

    /**
     * {@return a plan as one JSON document}
     *
     * @param plan the plan
     */
    public static String text(VisitPlan plan) {
        StringWriter text = new StringWriter();
        try {
            write(plan, text);
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return text.toString();
    }

    private void document(VisitPlan plan) {
        json.writeStartObject();
        text("surface", plan.surface().id());
        method(plan);
        amount("area", plan.surface().area());
        plan.locationCount().ifPresent(count -> json.writeNumberProperty("locationCount", count));
        text("locationCountBasis", plan.countBasis());
        locations(plan);
        window(plan);
        json.writeNumberProperty("runsPerLocation", plan.runs());
        amount("ringDiameter", plan.ring());
        time("setUpTimePerLocation", plan.setUp());
        amount("waterPerLocation", plan.waterPerLocation());
        amount("totalWater", plan.waterInAll().orElse(null));
        json.writeObjectPropertyStart("estimates");
        rate("lowest", plan, plan.expected().lowest());
        rate("likely", plan, plan.expected().likely());
        rate("highest", plan, plan.expected().highest());
        json.writeEndObject();
        plan.joints().ifPresent(this::ring);
        texts("cautions", plan.cautions());
        texts("equipment", plan.equipment());
        texts("steps", plan.steps());
        json.writeEndObject();
    }

    private void method(VisitPlan plan) {
        json.writeObjectPropertyStart("method");
        text("id", plan.method().id());
        text("designation", plan.method().designation());
        text("verification", plan.method().verification());
        json.writeEndObject();
    }

    private void locations(VisitPlan plan) {
        if (!plan.locations().isEmpty()) {
            json.writeArrayPropertyStart("locations");
            plan.locations().forEach(this::location);
            json.writeEndArray();
            texts("spareLocations", plan.spares().stream().map(PlanJson::id).toList());
            tooNear(plan);
            json.writeNumberProperty("missingCount", plan.missing());
        }
        plan.drawn().ifPresent(drawn -> json.writeNumberProperty("seed", drawn.seed()));
    }

    private void tooNear(VisitPlan plan) {
        json.writeArrayPropertyStart("spacingConflicts");
        plan.tooNear().forEach(near -> {
            json.writeStartObject();
            text("plannedLocation", id(near.planned()));
            text("spareLocation", id(near.spare()));
            figure("clearDistance", near.clearMetres(), "m");
            json.writeEndObject();
        });
        json.writeEndArray();
    }

    private static String id(Location location) {
        return location.id() == null ? "" : location.id();
    }

    private void location(Location location) {
        new RecordWriter(json, "", Integer.MAX_VALUE).write(location);
    }

    private void window(VisitPlan plan) {
        plan.rain().ifPresent(rain -> {
            json.writeObjectPropertyStart("rainRecord");
            text("start", rain.from().toString());
            text("end", rain.to().toString());
            json.writeEndObject();
        });
        plan.window().ifPresent(window -> {
            json.writeObjectPropertyStart("startWindow");
            text("earliestStart", window.firstStart().toString());
            text("latestStart", window.lastStart().toString());
            text("timeZone", plan.zone().getId());
            json.writeEndObject();
        });
    }

    private void rate(String name, VisitPlan plan, InfiltrationRate rate) {
        LocationPlan spot = plan.spot(rate);
        json.writeObjectPropertyStart(name);
        figure("rate", rate.millimetresPerHour(), "mm/h");
        figure("pourRate", spot.pourLitresPerMinute(), "L/min");
        amount("preWetWater", spot.preWetWater());
        time("preWetTime", spot.preWetTime());
        amount("runWater", spot.runWater());
        time("runTime", spot.runTime());
        time("timePerLocation", plan.timePerLocation(rate));
        plan.timeOnSite(rate).ifPresent(time -> time("timeOnSite", time));
        json.writeEndObject();
    }

    private void ring(JointsInRing joints) {
        json.writeObjectPropertyStart("ringPlacement");
        placement("best", joints.best(POSITION_TOLERANCE).get(0));
        amount("positionTolerance", POSITION_TOLERANCE);
        placement("worst", joints.worst());
        json.writeEndObject();
    }

    private void placement(String name, RingPlacement placement) {
        json.writeObjectPropertyStart(name);
        figure("x", placement.offset().x(), "mm");
        figure("y", placement.offset().y(), "mm");
        figure("ringOpenShare", placement.openShare(), "1");
        figure("patternOpenShare", placement.patternShare(), "1");
        figure("relativeDifference", placement.mismatch(), "1");
        json.writeEndObject();
    }

    private void figure(String name, double value, String unit) {
        amount(name, new BigDecimal(value).round(DIGITS), unit);
    }

    private void time(String name, Duration time) {
        amount(name, BigDecimal.valueOf(time.toMillis(), 3), "s");
    }

    private void amount(String name, @Nullable Reading<?> reading) {
        if (reading != null) {
            amount(name, reading.value(), reading.unit().code());
        }
    }

    private void amount(String name, BigDecimal value, String unit) {
        json.writeObjectPropertyStart(name);
        json.writeName("value");
        json.writeNumber(value.toString());
        text("unit", unit);
        json.writeEndObject();
    }

    private void text(String name, @Nullable String text) {
        if (text != null) {
            json.writeStringProperty(name, text);
        }
    }

    private void texts(String name, List<String> texts) {
        json.writeArrayPropertyStart(name);
        texts.forEach(json::writeString);
        json.writeEndArray();
    }
}
