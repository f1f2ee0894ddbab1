// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import dev.infiltration.exchange.PlanJson;
import dev.infiltration.exchange.ZonesJson;
import dev.infiltration.method.Limit;
import dev.infiltration.method.Methods;
import dev.infiltration.plan.ExpectedRate;
import dev.infiltration.plan.JointsInRing;
import dev.infiltration.plan.RainRecord;
import dev.infiltration.plan.VisitPlan;
import dev.infiltration.review.NextVisit;
import dev.infiltration.review.Review;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/** The plan of the next visit to a surface of a book. */
final class Planning {

    private final VisitPlan plan;

    private Planning(VisitPlan plan) {
        this.plan = plan;
    }

    /**
     * {@return the plan that was asked for}
     *
     * @param today the day before which no visit starts; null for this moment
     * @throws IOException if the book, the zones or the rain do not hold what it needs
     */
    static Planning of(PlanOptions options, Review review, Methods methods, @Nullable LocalDate today)
            throws IOException {
        NextVisit next = NextVisit.of(review, methods, options.surface())
                .orElseThrow(() -> new IOException("no surface " + options.surface() + " in the book"));
        Optional<ExpectedRate> rate = options.expected().or(next::expected);
        VisitPlan plan = next.plan(rate.orElseThrow(
                        () -> new IOException("no rate of " + options.surface() + " on record: give --expected")))
                .withSetUp(options.setUp());
        String refusal = plan.tooMany().orElse(null);
        if (refusal != null) {
            throw new IOException(refusal);
        }
        if (next.ring() == null && plan.method().limit(Limit.INSIDE_DIAMETER).isUnlimited()) {
            throw new IOException("the method sets no inside diameter, and no visit to the surface used a ring");
        }
        plan = inRain(plan, options.rain(), today);
        Path zones = options.zones().orElse(null);
        return new Planning(zones == null ? plan : plan.withDraw(read(zones).zones(), options.seed()));
    }

    private static VisitPlan inRain(VisitPlan plan, List<Path> files, @Nullable LocalDate today) throws IOException {
        @Nullable RainRecord all = null;
        for (Path file : files) {
            RainRecord rain = RainTable.read(file, plan.zone());
            all = all == null ? rain : all.then(rain);
        }
        Instant notBefore =
                today == null ? Instant.now() : today.atStartOfDay(plan.zone()).toInstant();
        return all == null ? plan : plan.withRain(all, notBefore);
    }

    private static ZonesJson.ReadZones read(Path file) throws IOException {
        ZonesJson.ReadZones read = ZonesJson.read(file);
        if (read.zones().isEmpty()) {
            throw Reference.refused(file, read.problems());
        }
        return read;
    }

    void write(boolean json, Writer writer) throws IOException {
        if (json) {
            PlanJson.write(plan, writer);
        } else {
            writer.write(plan.text());
        }
    }

    void writeTo(Path folder) throws IOException {
        OutputFolder.create(folder);
        TextFile.write(folder.resolve("plan.txt"), text -> write(false, text));
        TextFile.write(folder.resolve("plan.json"), text -> write(true, text));
        JointsInRing joints = plan.joints().orElse(null);
        if (joints != null) {
            Reading<Length> slip = Reading.of("10", FieldUnit.MILLIMETRE);
            TextFile.write(
                    folder.resolve("ring.svg"),
                    joints.drawing(joints.best(slip).get(0).offset()));
        }
    }
}
