// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.SurfaceAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.Surface;
import dev.infiltration.field.Visit;
import dev.infiltration.report.Block.Fact;
import dev.infiltration.review.Review;
import java.util.ArrayList;
import java.util.List;

/** Who was where, when and with what. */
final class VisitFacts {

    private final Review review;
    private final VisitAt visit;

    VisitFacts(Review review, VisitAt visit) {
        this.review = review;
        this.visit = visit;
    }

    Block.Facts facts() {
        Visit record = visit.visit();
        List<Fact> facts = new ArrayList<>(List.of(
                new Fact("Visit", Phrase.written(record.id())),
                new Fact("Date", Phrase.written(record.date())),
                new Fact("Site", site()),
                new Fact("Surface", surface()),
                new Fact("Method", method()),
                new Fact("Crew", new ReportItems(visit).crew()),
                new Fact("Instruments", instruments()),
                new Fact("Swept", Phrase.yesOrNo(record.swept())),
                new Fact("Standing water", Phrase.yesOrNo(record.standingWater())),
                new Fact("Potable water", Phrase.yesOrNo(record.potableWater())),
                new Fact("Weather", WeatherWords.of(record.weather()))));
        if (record.purpose() != null) {
            facts.add(new Fact("Purpose", Phrase.of(record.purpose().word().replace('-', ' '))));
        }
        if (record.campaign() != null) {
            facts.add(new Fact("Campaign", Phrase.written(record.campaign())));
        }
        return new Block.Facts(facts);
    }

    private Phrase site() {
        return visit.surface()
                .map(SurfaceAt::site)
                .map(site -> Phrase.written(site.id()).and(", ").and(Phrase.written(site.name())))
                .orElse(Phrase.NOT_RECORDED);
    }

    private Phrase surface() {
        Phrase id = Phrase.written(visit.visit().surface());
        return visit.surface()
                .map(SurfaceAt::surface)
                .map(surface -> id.and(kind(surface)).and(", area ").and(Phrase.written(surface.area())))
                .orElse(id);
    }

    private static String kind(Surface surface) {
        return surface.type() == null ? "" : ", " + surface.type().word().replace('-', ' ');
    }

    private Phrase method() {
        String named = visit.visit().method();
        Phrase used = visit.method()
                .map(method -> Phrase.written(method.designation() + " (" + method.id() + ")"))
                .orElse(Phrase.missing("unknown"));
        return named == null
                ? used.and(", by the kind of surface: none was named")
                : used.and(", named as ").and(Phrase.written(named));
    }

    private Phrase instruments() {
        List<Phrase> used =
                visit.visit().instruments().stream().map(this::instrument).toList();
        return used.isEmpty() ? Phrase.NOT_RECORDED : Phrase.joined(used, "; ");
    }

    private Phrase instrument(String id) {
        return review.book().instruments().stream()
                .filter(instrument -> id.equals(instrument.id()))
                .findFirst()
                .map(instrument -> Phrase.written(id).and(described(instrument)))
                .orElse(Phrase.written(id));
    }

    private static String described(Instrument instrument) {
        String kind = instrument.kind() == null ? "" : ", " + instrument.kind().word();
        String resolution = instrument.resolution() == null ? "" : " read to " + instrument.resolution();
        return kind + resolution + (instrument.checkedOn() == null ? "" : ", checked on " + instrument.checkedOn());
    }
}
