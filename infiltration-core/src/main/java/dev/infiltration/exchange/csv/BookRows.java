// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.Visit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The rows of a book: one for each run, each test without runs and each visit without tests.
 *
 * <p>If these rows do not name every site, surface, location and ring in the order of the book, rows with only their ids come
 * first.
 */
final class BookRows {

    private final FieldBook book;
    private final Map<String, Site> sites = new HashMap<>();
    private final Map<String, Surface> surfaces = new HashMap<>();
    private final Map<Surface, Map<String, Location>> locations = new HashMap<>();
    private final Map<String, Ring> rings = new HashMap<>();

    BookRows(FieldBook book) {
        this.book = book;
        book.sites().forEach(this::index);
        book.rings().forEach(ring -> rings.putIfAbsent(String.valueOf(ring.id()), ring));
    }

    private void index(Site site) {
        for (Surface surface : site.surfaces()) {
            sites.putIfAbsent(String.valueOf(surface.id()), site);
            surfaces.putIfAbsent(String.valueOf(surface.id()), surface);
            Map<String, Location> byId = locations.computeIfAbsent(surface, made -> new HashMap<>());
            surface.locations().forEach(location -> byId.putIfAbsent(String.valueOf(location.id()), location));
        }
    }

    Stream<WrittenRow> rows() {
        boolean named = placesNamed(visits()).equals(placesNamed(places()))
                && ringsNamed(visits()).equals(ringsNamed(rings()));
        return named ? visits() : Stream.concat(Stream.concat(places(), rings()), visits());
    }

    private Stream<WrittenRow> visits() {
        return book.visits().stream().flatMap(this::visit);
    }

    private Stream<WrittenRow> visit(Visit visit) {
        return visit.tests().isEmpty()
                ? Stream.of(row(visit, null, 0))
                : visit.tests().stream().flatMap(test -> test(visit, test));
    }

    private Stream<WrittenRow> test(Visit visit, LocationTest test) {
        return test.runs().isEmpty()
                ? Stream.of(row(visit, test, 0))
                : IntStream.rangeClosed(1, test.runs().size()).mapToObj(number -> row(visit, test, number));
    }

    private WrittenRow row(Visit visit, @Nullable LocationTest test, int number) {
        @Nullable Surface surface = surfaces.get(String.valueOf(visit.surface()));
        @Nullable
        Location location = surface == null || test == null
                ? null
                : locations.getOrDefault(surface, Map.of()).get(String.valueOf(test.location()));
        return new WrittenRow(
                sites.get(String.valueOf(visit.surface())),
                surface,
                location,
                test == null ? null : rings.get(String.valueOf(test.ring())),
                visit,
                test,
                test == null || number == 0 ? null : test.runs().get(number - 1),
                number);
    }

    private Stream<WrittenRow> places() {
        return book.sites().stream()
                .flatMap(site -> site.surfaces().isEmpty()
                        ? Stream.of(place(site, null, null))
                        : site.surfaces().stream().flatMap(surface -> places(site, surface)));
    }

    private static Stream<WrittenRow> places(Site site, Surface surface) {
        return surface.locations().isEmpty()
                ? Stream.of(place(site, surface, null))
                : surface.locations().stream().map(location -> place(site, surface, location));
    }

    private static WrittenRow place(Site site, @Nullable Surface surface, @Nullable Location location) {
        return new WrittenRow(site, surface, location, null, null, null, null, 0);
    }

    private Stream<WrittenRow> rings() {
        return book.rings().stream().map(ring -> new WrittenRow(null, null, null, ring, null, null, null, 0));
    }

    /** {@return the ids of sites, and within them of surfaces and of locations, in the order of first mention} */
    private static List<String> placesNamed(Stream<WrittenRow> rows) {
        Map<String, Map<String, Set<String>>> named = new LinkedHashMap<>();
        rows.forEach(row -> {
            Map<String, Set<String>> surfaces =
                    named.computeIfAbsent(id(row, Fields.SITE_ID), made -> new LinkedHashMap<>());
            surfaces.computeIfAbsent(id(row, Fields.SURFACE_ID), made -> new LinkedHashSet<>())
                    .add(id(row, Fields.LOCATION_ID));
        });
        List<String> order = new ArrayList<>();
        named.forEach((site, surfaces) -> {
            order.add(site);
            surfaces.forEach((surface, locations) -> {
                order.add(surface);
                locations.stream().filter(location -> !location.isEmpty()).forEach(order::add);
            });
        });
        return order;
    }

    private static List<String> ringsNamed(Stream<WrittenRow> rows) {
        return rows.map(row -> id(row, Fields.RING_ID))
                .filter(id -> !id.isEmpty())
                .distinct()
                .toList();
    }

    private static String id(WrittenRow row, Field field) {
        @Nullable Object id = row.value(field, List.of("id"));
        return id == null ? "" : id.toString();
    }
}
