// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Place;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.method.Methods;
import dev.infiltration.rate.RateEquation;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What each name of a field book means: of doubled records the first. */
final class BookLookup {

    private final FieldBook book;
    private final UnreadableValues unreadable;
    private final Methods methods;
    private final EquationChoice equation;
    private final Map<String, SurfaceAt> surfaces = new LinkedHashMap<>();
    private final Set<String> doubledSurfaces = new HashSet<>();
    private final Map<String, Ring> rings = new HashMap<>();
    private final Map<String, Place> ringPlaces = new HashMap<>();
    private final Set<String> doubledRings = new HashSet<>();
    private final Map<String, Instrument> instruments = new HashMap<>();

    BookLookup(FieldBook book, UnreadableValues unreadable, Methods methods, EquationChoice equation) {
        this.book = book;
        this.unreadable = unreadable;
        this.methods = methods;
        this.equation = equation;
        addSurfaces();
        addRings();
        addInstruments();
        addMaintenance();
    }

    private void addSurfaces() {
        for (int i = 0; i < book.sites().size(); i++) {
            Site site = book.sites().get(i);
            Place list = Place.BOOK.member("sites").entry(i).member("surfaces");
            for (int j = 0; j < site.surfaces().size(); j++) {
                SurfaceAt surface = new SurfaceAt(site, site.surfaces().get(j), list.entry(j));
                String id = SubjectText.given(surface.surface().id());
                if (id != null && surfaces.putIfAbsent(id, surface) != null) {
                    doubledSurfaces.add(id);
                }
            }
        }
    }

    private void addRings() {
        for (int i = 0; i < book.rings().size(); i++) {
            String id = SubjectText.given(book.rings().get(i).id());
            if (id != null && rings.putIfAbsent(id, book.rings().get(i)) != null) {
                doubledRings.add(id);
            }
            if (id != null) {
                ringPlaces.putIfAbsent(id, Place.BOOK.member("rings").entry(i));
            }
        }
    }

    private void addInstruments() {
        for (Instrument instrument : book.instruments()) {
            String id = SubjectText.given(instrument.id());
            if (id != null) {
                instruments.putIfAbsent(id, instrument);
            }
        }
    }

    private void addMaintenance() {
        Set<String> met = new HashSet<>();
        for (Maintenance entry : book.maintenance()) {
            String id = SubjectText.given(entry.id());
            SurfaceAt surface = surface(entry.surface());
            if (surface != null && (id == null || met.add(id))) {
                surface.add(entry);
            }
        }
    }

    FieldBook book() {
        return book;
    }

    /** The values of the document that could not be read; none where the book was built in code. */
    UnreadableValues unreadable() {
        return unreadable;
    }

    Methods methods() {
        return methods;
    }

    RateEquation equation(LocationTest test) {
        return equation.equation(test);
    }

    @Nullable
    SurfaceAt surface(@Nullable String id) {
        return id == null ? null : surfaces.get(id);
    }

    boolean isDoubledSurface(@Nullable String id) {
        return id != null && doubledSurfaces.contains(id);
    }

    @Nullable
    Ring ring(@Nullable String id) {
        return id == null ? null : rings.get(id);
    }

    boolean isDoubledRing(@Nullable String id) {
        return id != null && doubledRings.contains(id);
    }

    @Nullable
    Instrument instrument(@Nullable String id) {
        return id == null ? null : instruments.get(id);
    }

    @Nullable
    Place ringPlace(@Nullable String id) {
        return id == null ? null : ringPlaces.get(id);
    }
}
