// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.exchange.ZonesJson.ReadZones;
import dev.infiltration.units.FieldUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ZonesJsonTest {

    private static final String TWO = """
            {"format": "infiltration-zones/1", "unit": "ft",
             "zones": [{"name": "run-on edge", "corners": [[0, 0], [50, 0], [50, 4], [0, 4]]},
                       {"name": "interior", "corners": [[0, 4], [50, 4], [50, 37], [0, 37]],
                        "holes": [[[20, 18], [23, 18], [23, 21], [20, 21]]]}]}
            """;

    @Test
    void zonesAreReadWithTheirHoles() {
        ReadZones read = ZonesJson.read(TWO);
        assertEquals(List.of(), read.problems());
        assertEquals(
                List.of("run-on edge", "interior"),
                read.zones().stream().map(zone -> zone.name()).toList());
        assertEquals(FieldUnit.FOOT, read.zones().get(0).outline().unit());
        assertEquals(200, read.zones().get(0).outline().area());
        assertEquals(50 * 33 - 9, read.zones().get(1).outline().area());
    }

    @Test
    void fileReadsLikeText(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("zones.json"), TWO);
        assertEquals(2, ZonesJson.read(file).zones().size());
    }

    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "unit": "ft"                    | "unit": "lb"           | /unit
            "unit": "ft",                   |                        | /unit
            "name": "interior",             |                        | /zones/1
            [50, 4], [0, 4]]                | [0, 4], [50, 4]]       | /zones/0
            [50, 37], [0, 37]               | [50, 37, 1], [0, 37]   | /zones/1
            [20, 18], [23, 18]              | [70, 18], [23, 18]     | /zones/1
            [[0, 0], [50, 0], [50, 4], [0, 4]] | []                  | /zones/0
            [0, 0], [50, 0]                 | [0, "much"], [50, 0]   | /zones/0/corners/0/1
            "corners": [[0, 4]              | "corner": [[0, 4]      | /zones/1/corner
            infiltration-zones/1            | infiltration-zones/2   | /format
            """)
    void whatCannotStandIsRefusedAsAWhole(String was, String now, String where) {
        assertTrue(TWO.contains(was), was);
        ReadZones read = ZonesJson.read(TWO.replace(was, now == null ? "" : now));
        assertEquals(List.of(), read.zones());
        assertEquals(where, read.problems().get(0).where());
    }

    @Test
    void noZoneIsAFault() {
        ReadZones read = ZonesJson.read("{\"format\": \"infiltration-zones/1\", \"unit\": \"m\"}");
        assertEquals("/zones", read.problems().get(0).where());
    }
}
