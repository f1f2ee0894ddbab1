// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.Place;
import dev.infiltration.field.Surface;
import dev.infiltration.field.UnreadableValue;
import dev.infiltration.field.Visit;
import dev.infiltration.method.ReportItem;
import dev.infiltration.method.TestMethod;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A visit in its surroundings: its surface, its method and its tests. */
public final class VisitAt {

    private final BookIndex book;
    private final int index;
    private final Place place;
    private final Visit visit;
    private final @Nullable SurfaceAt surface;
    private final @Nullable TestMethod method;
    private final boolean isLaterDouble;
    private final List<TestAt> tests;

    VisitAt(BookIndex book, int index, Visit visit, boolean isLaterDouble) {
        this.book = book;
        this.index = index;
        this.place = Place.BOOK.member("visits").entry(index);
        this.visit = visit;
        this.isLaterDouble = isLaterDouble;
        this.surface = book.register().surface(visit.surface());
        this.method = methodOf(book, visit, surface);
        this.tests = new ArrayList<>(visit.tests().size());
        for (int i = 0; i < visit.tests().size(); i++) {
            tests.add(new TestAt(this, i, visit.tests().get(i)));
        }
    }

    private static @Nullable TestMethod methodOf(BookIndex book, Visit visit, @Nullable SurfaceAt surface) {
        String named = SubjectText.given(visit.method());
        if (named != null) {
            return book.register().methods().find(named).orElse(null);
        }
        Surface.Type type = surface == null ? null : surface.surface().type();
        return book.register().methods().forSurface(type);
    }

    /** {@return the book it stands in} */
    BookIndex book() {
        return book;
    }

    /** {@return its position among the visits of the book, from 0} */
    public int index() {
        return index;
    }

    /** {@return the visit} */
    public Visit visit() {
        return visit;
    }

    /** {@return its place in the book} */
    public Place place() {
        return place;
    }

    /** {@return the surface it names, the first of that id; empty when there is none} */
    public Optional<SurfaceAt> surface() {
        return Optional.ofNullable(surface);
    }

    /** {@return the method it is judged by: the one named, else the one for the kind of surface; empty when not known} */
    public Optional<TestMethod> method() {
        return Optional.ofNullable(method);
    }

    /** {@return what the report of the visit's method must state and the book does not say, in the order of reports} */
    public List<ReportItem.Item> missingItems() {
        return method == null ? List.of() : ReportRules.missing(this, method);
    }

    /** {@return its tests, in the order written} */
    public List<TestAt> tests() {
        return tests;
    }

    /** {@return whether an earlier visit has the same id, which is then the one meant} */
    public boolean isLaterDouble() {
        return isLaterDouble;
    }

    /** {@return the values that could not be read inside this visit, or in its place} */
    public List<UnreadableValue> unreadable() {
        return List.copyOf(book.register().unreadable().within(place));
    }

    /** {@return whether it is a training visit}: checked and rated, and part of no decision, comparison, trend or campaign */
    public boolean isTraining() {
        return visit.purpose() == Visit.Purpose.TRAINING;
    }

    /** {@return the visit in words} */
    public String subject() {
        return SubjectText.orPosition(visit.id(), "visit", index);
    }

    @Nullable
    SurfaceAt surfaceOrNull() {
        return surface;
    }

    @Nullable
    TestMethod methodOrNull() {
        return method;
    }

    @Nullable
    ZoneId zone() {
        return surface == null ? null : surface.zone();
    }

    /** The rules that withhold the rates of the whole visit. */
    Set<BuiltInRule> obstacles() {
        Set<BuiltInRule> obstacles = new LinkedHashSet<>();
        String named = SubjectText.given(visit.surface());
        if (named == null || visit.date() == null) {
            obstacles.add(BuiltInRule.DATA_REQUIRED);
        }
        if (named != null && surface == null) {
            obstacles.add(BuiltInRule.DATA_REFERENCE);
        }
        if (isLaterDouble || book.register().isDoubledSurface(named)) {
            obstacles.add(BuiltInRule.DATA_DUPLICATE);
        }
        return obstacles;
    }
}
