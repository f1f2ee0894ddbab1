// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.Location;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Place;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.rule.Effect;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** {@code data.required}, {@code data.reference}, {@code data.duplicate} and {@code ring.unusable}: whether records can be told apart and found. */
final class DataRules {

    private final BookIndex index;
    private final Findings findings;

    private DataRules(BookIndex index, Findings findings) {
        this.index = index;
        this.findings = findings;
    }

    static void judge(BookIndex index, Findings findings) {
        DataRules rules = new DataRules(index, findings);
        FieldBook book = index.book();
        rules.sites(book.sites());
        rules.ids(book.rings(), Ring::id, Place.BOOK.member("rings"), "ring", Effect.NO_RATE);
        rules.ids(book.instruments(), Instrument::id, Place.BOOK.member("instruments"), "instrument", Effect.CAUTION);
        rules.ids(index.visits(), at -> at.visit().id(), Place.BOOK.member("visits"), "visit", Effect.NO_RATE);
        rules.ids(book.maintenance(), Maintenance::id, Place.BOOK.member("maintenance"), "maintenance", Effect.CAUTION);
        rules.maintenance(book.maintenance());
        rules.rings(book.rings());
        rules.testIds();
    }

    private void sites(List<Site> sites) {
        ids(sites, Site::id, Place.BOOK.member("sites"), "site", Effect.CAUTION);
        Set<String> surfaces = new HashSet<>();
        for (int i = 0; i < sites.size(); i++) {
            Place list = Place.BOOK.member("sites").entry(i).member("surfaces");
            ids(sites.get(i).surfaces(), Surface::id, list, "surface", Effect.NO_RATE, surfaces);
            for (int j = 0; j < sites.get(i).surfaces().size(); j++) {
                Surface surface = sites.get(i).surfaces().get(j);
                ids(surface.locations(), Location::id, list.entry(j).member("locations"), "location", Effect.NO_RATE);
            }
        }
    }

    private <T> void ids(List<T> records, Function<T, @Nullable String> id, Place list, String kind, Effect doubled) {
        ids(records, id, list, kind, doubled, new HashSet<>());
    }

    /** Every record has an id, and none that was met before. */
    private <T> void ids(
            List<T> records,
            Function<T, @Nullable String> idOf,
            Place list,
            String kind,
            Effect doubled,
            Set<String> met) {
        for (int i = 0; i < records.size(); i++) {
            String id = SubjectText.given(idOf.apply(records.get(i)));
            if (id == null) {
                findings.add(BuiltInRule.DATA_REQUIRED, list.entry(i).member("id"), kind + " " + (i + 1), "no id");
            } else if (!met.add(id)) {
                findings.add(
                        BuiltInRule.DATA_DUPLICATE,
                        doubled,
                        list.entry(i),
                        kind + " " + id,
                        "a second " + kind + " " + id);
            }
        }
    }

    /** Tests of a visit that is not meant are none. */
    private void testIds() {
        Set<String> met = new HashSet<>();
        for (VisitAt visit : index.visits()) {
            for (TestAt test : visit.tests()) {
                String id = visit.isLaterDouble()
                        ? null
                        : SubjectText.given(test.test().id());
                if (id != null && !met.add(id)) {
                    doubled(test, findings);
                }
            }
        }
    }

    static void doubled(TestAt test, Findings findings) {
        findings.add(
                BuiltInRule.DATA_DUPLICATE,
                test.place(),
                test.subject(),
                "a second test " + test.test().id());
    }

    private void rings(List<Ring> rings) {
        for (int i = 0; i < rings.size(); i++) {
            Ring ring = rings.get(i);
            if (!ring.isUsable()) {
                String observed = ring.diametersInUse().isEmpty()
                        ? "no diameter"
                        : "diameter " + ring.diametersInUse().get(0);
                Place where = Place.BOOK.member("rings").entry(i);
                findings.add(
                        BuiltInRule.RING_UNUSABLE,
                        where,
                        ring.id() == null ? "ring " + (i + 1) : "ring " + ring.id(),
                        observed);
            }
        }
    }

    private void maintenance(List<Maintenance> entries) {
        for (int i = 0; i < entries.size(); i++) {
            Maintenance entry = entries.get(i);
            Place place = Place.BOOK.member("maintenance").entry(i);
            String subject = SubjectText.orPosition(entry.id(), "maintenance", i);
            SurfaceAt surface = index.register().surface(entry.surface());
            String named = SubjectText.given(entry.surface());
            if (named != null && surface == null) {
                findings.add(
                        BuiltInRule.DATA_REFERENCE,
                        Effect.CAUTION,
                        place.member("surface"),
                        subject,
                        "no surface " + named);
            }
            for (int j = 0; surface != null && j < entry.locations().size(); j++) {
                String location = entry.locations().get(j);
                if (surface.location(location) == null) {
                    Place where = place.member("locations").entry(j);
                    findings.add(BuiltInRule.DATA_REFERENCE, Effect.CAUTION, where, subject, "no location " + location);
                }
            }
        }
    }

    /** What a visit must have and name. */
    static void judge(VisitAt at, Findings findings) {
        Place place = at.place();
        String surface = SubjectText.given(at.visit().surface());
        if (surface == null) {
            findings.add(
                    BuiltInRule.DATA_REQUIRED, Effect.NO_RATE, place.member("surface"), at.subject(), "no surface");
        } else if (at.surfaceOrNull() == null) {
            findings.add(BuiltInRule.DATA_REFERENCE, place.member("surface"), at.subject(), "no surface " + surface);
        }
        if (at.visit().date() == null) {
            findings.add(BuiltInRule.DATA_REQUIRED, Effect.NO_RATE, place.member("date"), at.subject(), "no date");
        }
        List<String> instruments = at.visit().instruments();
        for (int i = 0; i < instruments.size(); i++) {
            if (at.book().register().instrument(instruments.get(i)) == null) {
                Place where = place.member("instruments").entry(i);
                String observed = "no instrument " + instruments.get(i);
                findings.add(BuiltInRule.DATA_REFERENCE, Effect.CAUTION, where, at.subject(), observed);
            }
        }
    }

    /** What a test must have and name. */
    static void judge(TestAt at, Findings findings) {
        String location = SubjectText.given(at.test().location());
        String ring = SubjectText.given(at.test().ring());
        if (location == null) {
            findings.add(
                    BuiltInRule.DATA_REQUIRED,
                    Effect.NO_RATE,
                    at.place().member("location"),
                    at.subject(),
                    "no location");
        } else if (at.visit().surfaceOrNull() != null && at.locationOrNull() == null) {
            findings.add(
                    BuiltInRule.DATA_REFERENCE, at.place().member("location"), at.subject(), "no location " + location);
        }
        if (ring == null && at.test().isMade()) {
            findings.add(BuiltInRule.DATA_REQUIRED, Effect.NO_RATE, at.place().member("ring"), at.subject(), "no ring");
        } else if (ring != null && at.ringOrNull() == null) {
            findings.add(BuiltInRule.DATA_REFERENCE, at.place().member("ring"), at.subject(), "no ring " + ring);
        }
    }
}
