// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.ClockTime;
import dev.infiltration.field.Location;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Place;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A surface in its surroundings: its site, its place in the book, its locations and its maintenance. */
public final class SurfaceAt {

    private final Site site;
    private final Surface surface;
    private final Place place;
    private final Map<String, Location> locations = new HashMap<>();
    private final Set<String> doubledLocations = new HashSet<>();
    private final MaintenanceTimes maintenance = new MaintenanceTimes();

    SurfaceAt(Site site, Surface surface, Place place) {
        this.site = site;
        this.surface = surface;
        this.place = place;
        for (Location location : surface.locations()) {
            String id = SubjectText.given(location.id());
            if (id != null && locations.putIfAbsent(id, location) != null) {
                doubledLocations.add(id);
            }
        }
    }

    /** Keeps a maintenance whose time is known. */
    void add(Maintenance entry) {
        TimeRange start = startOf(entry, zone());
        TimeRange end = endOf(entry, zone());
        if (start != null && end != null) {
            maintenance.add(entry.locations(), start, end);
        }
    }

    /** {@return the site it lies on} */
    public Site site() {
        return site;
    }

    /** {@return the surface} */
    public Surface surface() {
        return surface;
    }

    /** {@return its place in the book} */
    public Place place() {
        return place;
    }

    @Nullable
    ZoneId zone() {
        return site.timeZone();
    }

    /** The location meant by an id: the first of that id. */
    @Nullable
    Location location(@Nullable String id) {
        return id == null ? null : locations.get(id);
    }

    boolean isDoubled(@Nullable String location) {
        return location != null && doubledLocations.contains(location);
    }

    /** Whether the surface or a location of it may have been maintained between two times. */
    boolean isMaintained(@Nullable String location, TimeRange before, TimeRange after) {
        return maintenance.isAnyBetween(location, before, after);
    }

    /** When a maintenance began; its end where only that is known. */
    static @Nullable TimeRange startOf(Maintenance entry, @Nullable ZoneId zone) {
        ClockTime start = entry.start() == null ? entry.end() : entry.start();
        return start == null ? null : TimeRange.of(start, zone);
    }

    /** When a maintenance was finished; its start where only that is known. */
    static @Nullable TimeRange endOf(Maintenance entry, @Nullable ZoneId zone) {
        ClockTime end = entry.end() == null ? entry.start() : entry.end();
        return end == null ? null : TimeRange.of(end, zone);
    }
}
