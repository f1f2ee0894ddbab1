// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import static dev.infiltration.exchange.csv.RowRecord.LOCATION;
import static dev.infiltration.exchange.csv.RowRecord.RING;
import static dev.infiltration.exchange.csv.RowRecord.RUN;
import static dev.infiltration.exchange.csv.RowRecord.SITE;
import static dev.infiltration.exchange.csv.RowRecord.SURFACE;
import static dev.infiltration.exchange.csv.RowRecord.TEST;
import static dev.infiltration.exchange.csv.RowRecord.VISIT;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Every column that the table of runs may have, in the order in which they are written. */
final class Fields {

    static final Field SITE_ID = Field.of("site", SITE, "id", "site id", "facility", "project");
    static final Field SURFACE_ID = Field.of("surface", SURFACE, "id", "surface id", "pavement", "pavement id");
    static final Field VISIT_ID = Field.of("visit", VISIT, "id", "visit id", "visit number", "inspection");
    static final Field DATE = Field.of("date", VISIT, "date", "test date", "date of test", "visit date");
    static final Field LOCATION_ID =
            Field.of("location", LOCATION, "id", "location id", "test location", "spot", "location number");
    static final Field RING_ID = Field.of("ring", RING, "id", "ring id", "ring number");
    static final Field TEST_ID = Field.of("test", TEST, "id", "test id", "test number");
    static final Field NOTE = Field.of("note", TEST, "note", "notes", "remark", "remarks", "comment", "comments");
    static final Field RUN_NUMBER =
            new Field("run", RUN, "", Cells.of(Integer.class), List.of("run number", "repeat", "trial"));

    /** Columns of every table, even if they are empty. */
    static final List<Field> ALWAYS = List.of(SITE_ID, SURFACE_ID, VISIT_ID, DATE, LOCATION_ID, RUN_NUMBER);

    static final List<Field> ALL = Stream.of(
                    List.of(
                            SITE_ID,
                            Field.of("site name", SITE, "name"),
                            Field.of("site description", SITE, "description"),
                            Field.of("time zone", SITE, "timeZone"),
                            SURFACE_ID,
                            Field.of("surface type", SURFACE, "type", "pavement type"),
                            Field.of("surface description", SURFACE, "description"),
                            Field.of("surface area", SURFACE, "area", "area", "pavement area"),
                            Field.of("placed on", SURFACE, "placedOn", "date placed", "placement date"),
                            Field.of("thickness", SURFACE, "thickness", "pavement thickness"),
                            Field.of("thickness is", SURFACE, "thicknessIs"),
                            Field.of("joint pattern", SURFACE, "joints.pattern", "laying pattern"),
                            Field.of("unit length", SURFACE, "joints.length"),
                            Field.of("unit width", SURFACE, "joints.width"),
                            Field.of("joint width", SURFACE, "joints.joint"),
                            Field.of("chamfer", SURFACE, "joints.chamfer"),
                            Field.of("voids along", SURFACE, "joints.voids.along"),
                            Field.of("voids across", SURFACE, "joints.voids.across"),
                            Field.of("void length", SURFACE, "joints.voids.length"),
                            Field.of("void width", SURFACE, "joints.voids.width"),
                            VISIT_ID,
                            DATE,
                            Field.of("method", VISIT, "method", "test method"),
                            Field.of("purpose", VISIT, "purpose", "reason"),
                            Field.of("campaign", VISIT, "campaign"),
                            Field.of("requested locations", VISIT, "requestedLocations"),
                            Field.of("crew", VISIT, "crew", "technician", "tested by", "inspector", "initials"),
                            Field.of("instruments", VISIT, "instruments"),
                            Field.of("swept", VISIT, "swept", "broomed"),
                            Field.of("standing water", VISIT, "standingWater"),
                            Field.of("potable water", VISIT, "potableWater"),
                            Field.of("end point within", VISIT, "endPointWithin"),
                            Field.of("prepared by", VISIT, "preparedBy.initials"),
                            Field.of("prepared by role", VISIT, "preparedBy.role"),
                            Field.of("prepared on", VISIT, "preparedBy.on"),
                            Field.of("reviewed by", VISIT, "reviewedBy.initials"),
                            Field.of("reviewed by role", VISIT, "reviewedBy.role"),
                            Field.of("reviewed on", VISIT, "reviewedBy.on"),
                            Field.of("weather", VISIT, "weather.description"),
                            Field.of("air temperature", VISIT, "weather.air"),
                            Field.of("weather source", VISIT, "weather.source"),
                            Field.of("last rain end", VISIT, "weather.lastRainEnd", "end of last rain"),
                            Field.of("no rain since", VISIT, "weather.noRainSince"),
                            Field.of("last rain depth", VISIT, "weather.lastRainDepth", "last rain"),
                            Field.of("rain from", VISIT, "weather.rainFrom")),
                    List.of(
                            LOCATION_ID,
                            Field.of("zone", LOCATION, "zone"),
                            Field.of("selection", LOCATION, "selection"),
                            Field.of("x", LOCATION, "x"),
                            Field.of("y", LOCATION, "y"),
                            Field.of("latitude", LOCATION, "position.latitude", "lat"),
                            Field.of("longitude", LOCATION, "position.longitude", "lon", "long"),
                            Field.of("position accuracy", LOCATION, "position.accuracy"),
                            Field.of("slope", LOCATION, "slope"),
                            RING_ID,
                            Field.of("ring diameter", RING, "insideDiameter", "inside diameter", "diameter"),
                            Field.of("ring diameter #", RING, "insideDiameters.#", "diameter #"),
                            Field.of("ring height", RING, "height"),
                            TEST_ID,
                            Field.of("not tested", TEST, "notTested"),
                            Field.of("ring offset x", TEST, "ringOffset.x"),
                            Field.of("ring offset y", TEST, "ringOffset.y"),
                            Field.of("ring turn", TEST, "ringOffset.turn"),
                            Field.of("surface temperature", TEST, "surfaceTemperature", "pavement temperature"),
                            Field.of("water temperature", TEST, "waterTemperature"),
                            Field.of("clear spacing", TEST, "clearSpacing", "spacing"),
                            Field.of("photos", TEST, "photos", "photo", "photo number"),
                            NOTE),
                    pouring("prewet ", TEST, "preWet."),
                    List.of(RUN_NUMBER),
                    pouring("", RUN, ""))
            .flatMap(List::stream)
            .toList();

    private static final Map<String, Field> BY_NAME = byName();

    private Fields() {}

    private static List<Field> pouring(String prefix, RowRecord level, String path) {
        return List.of(
                Field.of(prefix + "start", level, path + "start", spelled(prefix, "start time", "time of start")),
                Field.of(prefix + "delay", level, path + "delay"),
                Field.of(
                        prefix + "water",
                        level,
                        path + "water",
                        spelled(
                                prefix,
                                "mass",
                                "weight",
                                "mass of water",
                                "weight of water",
                                "mass of infiltrated water",
                                "water mass",
                                "water weight",
                                "water volume",
                                "volume")),
                Field.of(prefix + "pour # vessel", level, path + "pours.#.vessel"),
                Field.of(prefix + "pour # before", level, path + "pours.#.before"),
                Field.of(prefix + "pour # after", level, path + "pours.#.after"),
                Field.of(
                        prefix + "time",
                        level,
                        path + "elapsed",
                        spelled(prefix, "elapsed", "elapsed time", "time elapsed", "infiltration time", "drain time")),
                Field.of(prefix + "end", level, path + "end"),
                Field.of(prefix + "depth left", level, path + "depthAtStop", spelled(prefix, "depth at stop")),
                Field.of(prefix + "void reason", level, path + "voidReason"),
                Field.of(prefix + "head", level, path + "head.state"),
                Field.of(prefix + "lowest head", level, path + "head.lowest", spelled(prefix, "head min")),
                Field.of(prefix + "highest head", level, path + "head.highest", spelled(prefix, "head max")),
                Field.of(prefix + "events", level, path + "events"));
    }

    private static String[] spelled(String prefix, String... spellings) {
        return Arrays.stream(spellings).map(prefix::concat).toArray(String[]::new);
    }

    private static Map<String, Field> byName() {
        Map<String, Field> fields = new HashMap<>();
        for (Field field : ALL) {
            List<String> names = new ArrayList<>(field.spellings());
            names.add(field.name());
            names.forEach(name -> add(fields, name, field));
        }
        return fields;
    }

    /** Each spelling identifies one field. */
    private static void add(Map<String, Field> fields, String name, Field field) {
        String words = HeaderWords.of(name.replace('#', '1')).replace('1', '#');
        if (fields.put(words, field) != null) {
            throw new IllegalStateException("two columns are called " + name);
        }
    }

    /**
     * {@return the field of a header without its unit, or null}
     *
     * @param words the {@linkplain HeaderWords words} of the header, a number replaced by {@code #}
     */
    static @Nullable Field find(String words) {
        return BY_NAME.get(words);
    }
}
