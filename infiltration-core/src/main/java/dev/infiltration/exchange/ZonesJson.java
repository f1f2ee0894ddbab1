// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.field.Problem;
import dev.infiltration.plan.LocationSample;
import dev.infiltration.plan.SurfaceOutline;
import dev.infiltration.units.FieldUnit;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Reads the zones for sampling locations from JSON: their outlines from the datum of the surface, x and y of each corner.
 *
 * <pre>{@code
 * {"format": "infiltration-zones/1", "unit": "m",
 *  "zones": [{"name": "run-on edge", "corners": [[0, 0], [50, 0], [50, 4], [0, 4]]},
 *            {"name": "interior", "corners": [[0, 4], [50, 4], [50, 37], [0, 37]],
 *             "holes": [[[20, 18], [23, 18], [23, 21], [20, 21]]]}]}
 * }</pre>
 *
 * <p>A file is read as a whole or not at all.
 */
public final class ZonesJson {

    /** The value of {@code format} in zones of this version. */
    public static final String FORMAT = "infiltration-zones/1";

    private static final Document<Zones> ZONES =
            Document.of(Zones.class, FORMAT).whole();

    private ZonesJson() {}

    /**
     * The result of reading zones.
     *
     * @param zones    the zones; empty when they were refused
     * @param problems every fault, in order of place
     */
    public record ReadZones(List<LocationSample.Zone> zones, List<Problem> problems) {

        /** Copies the lists. */
        public ReadZones {
            zones = List.copyOf(zones);
            problems = List.copyOf(problems);
        }
    }

    /**
     * The document.
     *
     * @param unit  UCUM code of the corners' unit
     * @param zones the zones
     */
    public record Zones(@Nullable String unit, List<Zone> zones) {}

    /**
     * A zone in the document.
     *
     * @param name    its name
     * @param corners x and y of each corner
     * @param holes   the same of each hole
     */
    public record Zone(@Nullable String name, List<List<BigDecimal>> corners, List<List<List<BigDecimal>>> holes) {}

    /**
     * Reads zones.
     *
     * @param json the document
     * @return the zones, or why they were refused
     */
    public static ReadZones read(String json) {
        ReadLimits limits = ReadLimits.withDefaults();
        return read(CharacterSource.of(json, limits.documentLength()), limits);
    }

    /**
     * Reads zones from a file.
     *
     * @param json the file
     * @return the zones, or why they were refused
     * @throws IOException if the file cannot be read
     */
    public static ReadZones read(Path json) throws IOException {
        ReadLimits limits = ReadLimits.withDefaults();
        try (InputStream bytes = Files.newInputStream(json)) {
            return read(TextReader.of(bytes, limits.documentLength()).rest(), limits);
        }
    }

    private static ReadZones read(CharacterSource text, ReadLimits limits) {
        ReadResult<Zones> content = ZONES.read(text, limits);
        List<ReadFault> faults = new ArrayList<>(content.faults());
        @Nullable Zones written = content.value();
        List<LocationSample.Zone> zones = new ArrayList<>();
        if (faults.isEmpty() && written != null) {
            zones(written, zones, faults);
        }
        return new ReadZones(faults.isEmpty() ? zones : List.of(), text.problems(faults));
    }

    private static void zones(Zones written, List<LocationSample.Zone> zones, List<ReadFault> faults) {
        Optional<FieldUnit<Length>> unit = FieldUnit.parse(String.valueOf(written.unit()), Length.class);
        if (unit.isEmpty() || written.zones().isEmpty()) {
            String where = unit.isEmpty() ? "/unit" : "/zones";
            faults.add(new ReadFault(
                    0, where, unit.isEmpty() ? "expected a unit of length" : "expected at least one zone"));
            return;
        }
        for (int i = 0; i < written.zones().size(); i++) {
            try {
                zones.add(zone(written.zones().get(i), unit.get()));
            } catch (IllegalArgumentException cannotStand) {
                faults.add(new ReadFault(
                        0, "/zones/" + i, "found a zone that cannot stand (" + cannotStand.getMessage() + ")"));
            }
        }
    }

    private static LocationSample.Zone zone(Zone written, FieldUnit<Length> unit) {
        if (written.name() == null) {
            throw new IllegalArgumentException("name: expected one");
        }
        SurfaceOutline outline = SurfaceOutline.of(unit, flat(written.corners()));
        for (List<List<BigDecimal>> hole : written.holes()) {
            outline = outline.withHole(flat(hole));
        }
        return new LocationSample.Zone(written.name(), outline);
    }

    private static double[] flat(List<List<BigDecimal>> corners) {
        if (corners.stream().anyMatch(corner -> corner.size() != 2)) {
            throw new IllegalArgumentException("corners: expected x and y of each");
        }
        return corners.stream()
                .flatMap(List::stream)
                .mapToDouble(BigDecimal::doubleValue)
                .toArray();
    }
}
