// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.field.Books;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.Event;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Photo;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.Visit;
import dev.infiltration.field.WaterReading;
import dev.infiltration.units.Reading;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import net.jqwik.api.Arbitrary;

/**
 * Books that a table can hold, made from any: ids that tell records apart, texts without outer blanks, nothing that has no
 * column.
 */
final class Tabled {

    /** Members that have no column. */
    private static final Set<String> WITHOUT_COLUMN = Set.of(
            "instruments.book",
            "zones",
            "references",
            "maintenance",
            "amendments",
            "externalIds",
            "position.site",
            "extra",
            "source.ring");

    private final Set<String> places = new HashSet<>();

    private Tabled() {}

    static Arbitrary<FieldBook> books() {
        return Books.readable().map(book -> new Tabled().book(book));
    }

    private FieldBook book(FieldBook any) {
        List<Site> sites = numbered(any.sites(), (site, at) -> site(site, "S" + at));
        List<Ring> rings = numbered(any.rings(), (ring, at) -> ((Ring) clean(ring, "")).withId("R" + at));
        List<Visit> visits = numbered(any.visits(), (visit, at) -> visit(visit, "V" + at, rings.size()));
        return FieldBook.of().withSites(sites).withRings(rings).withVisits(visits);
    }

    private interface Numbered<T> {
        T of(T entry, int at);
    }

    private static <T> List<T> numbered(List<T> entries, Numbered<T> change) {
        return IntStream.range(0, entries.size())
                .mapToObj(at -> change.of(entries.get(at), at))
                .toList();
    }

    private Site site(Site any, String id) {
        Site site = ((Site) clean(any, "site")).withId(id);
        return site.withSurfaces(numbered(any.surfaces(), (surface, at) -> surface(surface, id + "-" + at)));
    }

    private Surface surface(Surface any, String id) {
        places.add(id);
        Surface surface = ((Surface) clean(any, "")).withId(id);
        return surface.withLocations(numbered(any.locations(), (location, at) -> location(location, id, "A" + at)));
    }

    private Location location(Location any, String surface, String id) {
        places.add(surface + "/" + id);
        return ((Location) clean(any, "")).withId(id);
    }

    /** A visit of a surface of the book, to locations of it, with rings of the book: others would be new to the table. */
    private Visit visit(Visit any, String id, int rings) {
        List<String> surfaces =
                places.stream().filter(place -> !place.contains("/")).sorted().toList();
        String surface = surfaces.isEmpty() ? null : surfaces.get(any.tests().size() % surfaces.size());
        Visit visit = ((Visit) clean(any, "visit")).withId(id).withSurface(surface);
        return visit.withTests(numbered(any.tests(), (test, at) -> test(test, surface, at, rings)));
    }

    private LocationTest test(LocationTest any, String surface, int at, int rings) {
        String location = "A" + at;
        LocationTest cleaned = (LocationTest) clean(any, "");
        LocationTest test = cleaned.withPhotos(cleaned.photos().stream()
                .map(Photo::file)
                .filter(file -> file != null && !file.isBlank())
                .map(Photo::of)
                .toList());
        return test.withId(test.id() == null && places.contains(surface + "/" + location) ? null : "T" + at)
                .withLocation(places.contains(surface + "/" + location) ? location : null)
                .withRing(rings == 0 ? null : "R" + at % rings);
    }

    /** {@return the value without what no column or no cell holds; null where nothing is left of it} */
    private static Object clean(Object value, String owner) {
        if (value instanceof String text) {
            return text(text);
        }
        if (value instanceof WaterReading water) {
            return new WaterReading(plain(water.reading()));
        }
        if (value instanceof Reading<?> reading) {
            return plain(reading);
        }
        if (value instanceof List<?> list) {
            return list.stream()
                    .map(entry -> clean(entry, owner))
                    .filter(Objects::nonNull)
                    .toList();
        }
        return value instanceof Record && !(value instanceof ClockTime) ? record(value, owner) : value;
    }

    private static <Q extends Quantity<Q>> Reading<Q> plain(Reading<Q> reading) {
        return Reading.of(reading.value(), reading.unit());
    }

    private static String text(String text) {
        String plain = text.replaceAll("[\\p{Cs}\\p{Cc}&&[^\t\n\r]]", "").strip();
        return plain.isEmpty() ? null : plain;
    }

    private static Object record(Object record, String owner) {
        List<Object> values = new ArrayList<>();
        for (RecordComponent component : Paths.components(record.getClass()).values()) {
            String name = component.getName();
            boolean isHeld = !WITHOUT_COLUMN.contains(name) && !WITHOUT_COLUMN.contains(name + "." + owner);
            values.add(isHeld ? clean(Paths.value(record, component), "") : null);
        }
        boolean isPart = !List.of(
                        Site.class, Surface.class, Location.class, Ring.class, Visit.class, LocationTest.class)
                .contains(record.getClass());
        boolean isEmpty = values.stream().allMatch(value -> value == null || value.equals(List.of()));
        boolean isNothing = record instanceof Event event && event.kind() == null;
        return isPart && (isEmpty || isNothing) && !isRun(record)
                ? null
                : Paths.create(record.getClass(), values.toArray());
    }

    /** A run of which nothing is known is a row all the same. */
    private static boolean isRun(Object record) {
        return record.getClass().getSimpleName().equals("TestRun");
    }
}
