// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.geojson;

import dev.infiltration.check.VisitAt;
import dev.infiltration.exchange.text.Output;
import dev.infiltration.field.Location;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.review.Review;
import dev.infiltration.review.VisitDecision;
import dev.infiltration.summary.Criterion;
import dev.infiltration.summary.Decision;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.summary.SurfaceRate;
import dev.infiltration.units.InfiltrationRate;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import tools.jackson.core.JsonGenerator;

/**
 * A review for maps: a GeoJSON feature (RFC 7946) for every location and every surface, with the latest rate.
 *
 * <p>A location is a point, longitude before latitude, on WGS 84; without a geographic position its geometry is null. A surface
 * is the points of its locations. {@code outcome} qualifies {@code rate}: measured, upper-bound, lower-bound or withheld; both are
 * absent where nothing was tested. Rates are at full precision, in mm/h. The latest rate is that of the latest date with a rate or
 * a bound; of several on one day the last in the book. A later visit without either is also named.
 */
public final class ReviewGeoJson {

    private final Features features;
    private final Latest latest;

    private ReviewGeoJson(JsonGenerator json, Review review) {
        this.features = new Features(json);
        this.latest = new Latest(review);
    }

    /**
     * Writes a review as one feature collection, followed by a line end.
     *
     * @param review the review
     * @param out    where to; it is flushed and stays open
     * @throws IOException if it cannot be written
     */
    public static void write(Review review, Writer out) throws IOException {
        Objects.requireNonNull(review, "review");
        Output.LINE.write(out, json -> new ReviewGeoJson(json, review).collection(review));
    }

    /**
     * {@return a review as one feature collection}
     *
     * @param review the review
     */
    public static String text(Review review) {
        StringWriter text = new StringWriter();
        try {
            write(review, text);
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return text.toString();
    }

    private void collection(Review review) {
        features.collection(() -> {
            for (Site site : review.book().sites()) {
                for (Surface surface : site.surfaces()) {
                    surface(site, surface);
                    surface.locations().forEach(location -> location(site, surface, location));
                }
            }
        });
    }

    private void surface(Site site, Surface surface) {
        features.start(surface.id());
        features.points(surface.locations().stream().map(Location::position).toList());
        features.properties(() -> {
            features.text("kind", "surface");
            place(site, surface);
            Optional<SurfaceRate> row = latest.surface(surface.id());
            row.ifPresent(this::rate);
            lastVisit(latest.visit(surface.id()), row.map(SurfaceRate::visit));
        });
    }

    private void location(Site site, Surface surface, Location location) {
        features.start(surface.id(), location.id());
        features.point(location.position());
        features.properties(() -> {
            features.text("kind", "location");
            place(site, surface);
            features.text("location", location.id());
            features.text("zone", location.zone());
            features.amount("x", location.x());
            features.amount("y", location.y());
            Optional<LocationRate> row = latest.location(surface.id(), location.id());
            row.ifPresent(this::rate);
            lastVisit(latest.visit(surface.id(), location.id()), row.map(LocationRate::visit));
        });
    }

    private void place(Site site, Surface surface) {
        features.text("site", site.id());
        features.text("siteName", site.name());
        features.texts("externalIds", site.externalIds());
        features.text("surface", surface.id());
        features.text(
                "surfaceType", surface.type() == null ? null : surface.type().word());
    }

    private void rate(LocationRate row) {
        visit(row.visit());
        outcome(row.outcome());
        row.outcome().figure().ifPresent(figure -> passes(row, figure));
    }

    private void visit(VisitAt visit) {
        features.text("visit", visit.visit().id());
        features.date("date", visit.visit().date());
    }

    private void lastVisit(Optional<VisitAt> last, Optional<VisitAt> rated) {
        last.filter(visit -> !rated.equals(Optional.of(visit))).ifPresent(visit -> {
            features.text("lastVisit", visit.visit().id());
            features.date("lastVisited", visit.visit().date());
        });
    }

    /** By each criterion for locations that could be evaluated. */
    private void passes(LocationRate row, InfiltrationRate figure) {
        List<Criterion> criteria = latest.decisions(row.visit()).stream()
                .map(VisitDecision::decision)
                .filter(decision -> decision.literalResult() != Decision.LiteralResult.NOT_EVALUATED)
                .map(Decision::criterion)
                .filter(criterion -> criterion.type() == Criterion.Type.EVERY_LOCATION
                        || criterion.type() == Criterion.Type.SHARE_OF_LOCATIONS)
                .toList();
        if (!criteria.isEmpty()) {
            features.objects("decisions", criteria, criterion -> {
                features.text("criterion", criterion.toString());
                features.flag("passes", criterion.passes(figure));
                features.flag("decided", criterion.isSettledBy(row.outcome()));
            });
        }
    }

    private void rate(SurfaceRate row) {
        visit(row.visit());
        if (row.usedCount() + row.withheld() > 0) {
            outcome(row.mean());
        }
        features.count("planned", row.planned());
        features.count("measured", row.measured());
        decisions(latest.decisions(row.visit()));
    }

    private void outcome(RateOutcome outcome) {
        features.text("outcome", outcome.word());
        Optional<Double> rate = outcome.figure().map(figure -> figure.millimetresPerHour());
        rate.ifPresent(features::rate);
        if (rate.isEmpty()) {
            features.list("rules", outcome.reasons());
        }
    }

    private void decisions(List<VisitDecision> decisions) {
        if (!decisions.isEmpty()) {
            features.objects("decisions", decisions, each -> {
                features.text("criterion", each.decision().criterion().toString());
                features.text("literalResult", each.decision().literalResult().word());
                features.flag("confirmed", each.decision().isConfirmed());
            });
        }
    }
}
