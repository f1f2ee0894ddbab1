// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.check.SurfaceAt;
import dev.infiltration.check.VisitAt;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.SignOff;
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
        addOptional(facts, record);
        return new Block.Facts(facts);
    }

    private void addOptional(List<Fact> facts, Visit record) {
        List<Phrase> zones = visit.surface().stream()
                .flatMap(surface -> surface.surface().zones().stream())
                .map(zone -> Phrase.written(zone.id()).and(", area ").and(Phrase.written(zone.area())))
                .toList();
        if (!zones.isEmpty()) {
            facts.add(new Fact("Zones", Phrase.joined(zones, "; ")));
        }
        record.references()
                .forEach((kind, text) -> facts.add(
                        new Fact("Reference", Phrase.written(kind).and(": ").and(Phrase.written(text)))));
        if (record.endPointWithin() != null) {
            facts.add(new Fact("End point judged within", Phrase.written(record.endPointWithin())));
        }
        if (record.preparedBy() != null) {
            facts.add(new Fact("Prepared by", signOff(record.preparedBy())));
        }
        if (record.reviewedBy() != null) {
            facts.add(new Fact("Reviewed by", signOff(record.reviewedBy())));
        }
    }

    private static Phrase signOff(SignOff signOff) {
        Phrase who = Phrase.written(signOff.initials());
        Phrase role = signOff.role() == null ? who : who.and(", ").and(Phrase.written(signOff.role()));
        return signOff.on() == null ? role : role.and(", ").and(Phrase.written(signOff.on()));
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
        String checked = instrument.checkedOn() == null ? "" : ", checked on " + instrument.checkedOn();
        return kind
                + resolution
                + checked
                + (instrument.checkDue() == null ? "" : ", check due " + instrument.checkDue());
    }
}
