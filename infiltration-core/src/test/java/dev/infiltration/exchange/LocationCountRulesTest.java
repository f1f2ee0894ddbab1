// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.field.Surface;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import dev.infiltration.plan.ExpectedRate;
import dev.infiltration.plan.VisitPlan;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import javax.measure.quantity.Area;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Other counting rules than the standard's are data: files, from which surfaces are counted in both unit systems. */
class LocationCountRulesTest {

    private static final Path FOLDER = Path.of("src/test/resources/dev/infiltration/plan");

    @ParameterizedTest(name = "{0}: {1} {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # Everett WA maintenance table 22 (published): 1 up to 2 500 ft2, 1 per further 2 500 ft2 up to 15 000, then 1 per 10 000
            everett-table-22 |     1     | [sft_i]   | 1
            everett-table-22 |  2500     | [sft_i]   | 1
            everett-table-22 |  2501     | [sft_i]   | 2
            everett-table-22 |  5000     | [sft_i]   | 2
            everett-table-22 | 15000     | [sft_i]   | 6
            everett-table-22 | 15001     | [sft_i]   | 7
            everett-table-22 | 25000     | [sft_i]   | 7
            everett-table-22 | 25001     | [sft_i]   | 8
            everett-table-22 |   232.25  | m2        | 1
            everett-table-22 |   232.26  | m2        | 2
            everett-table-22 |  1393.54  | m2        | 6
            everett-table-22 |  1393.55  | m2        | 7
            # Everett WA specification 5-06.3(6) (published): 4 in each lot of at most 360 yd2 = 3 240 ft2
            everett-lots     |  3240     | [sft_i]   | 4
            everett-lots     |  3241     | [sft_i]   | 8
            everett-lots     |   301.01  | m2        | 4
            everett-lots     |   301.02  | m2        | 8
            # Japan (published): 1 per 1 000 m2
            japan            |  1000     | m2        | 1
            japan            |  1000.1   | m2        | 2
            japan            |  2500     | m2        | 3
            japan            | 10763.9   | [sft_i]   | 1
            japan            | 10764     | [sft_i]   | 2
            """)
    void surfacesAreCountedByTheRuleOfTheFile(String file, String area, String unit, long count) throws IOException {
        Reading<Area> written =
                Reading.of(area, FieldUnit.parse(unit, Area.class).orElseThrow());
        VisitPlan plan = VisitPlan.of(
                method(file), Surface.of("HQ-A").withArea(written), ExpectedRate.of(new InfiltrationRate(254)));
        assertEquals(OptionalLong.of(count), plan.locationCount());
    }

    @ParameterizedTest
    @ValueSource(strings = {"everett-table-22", "everett-lots", "japan"})
    void ruleIsWrittenAndReadBackEqual(String file) throws IOException {
        StringWriter written = new StringWriter();
        MethodJson.write(method(file), written);
        assertEquals(
                method(file),
                MethodJson.read(written.toString(), Methods.builtIn()).method().orElseThrow());
    }

    @Test
    void planNamesWhereTheCountComesFrom() throws IOException {
        String text = VisitPlan.of(
                        method("japan"),
                        Surface.of("HQ-A").withArea(Reading.of("1500", FieldUnit.SQUARE_METRE)),
                        ExpectedRate.of(new InfiltrationRate(254)))
                .text();
        assertEquals(
                List.of("Locations: 2, Japan, one location in 1000 square metres (published)"),
                text.lines().filter(line -> line.startsWith("Locations")).toList());
    }

    private static TestMethod method(String file) throws IOException {
        MethodJson.ReadMethod read = MethodJson.read(FOLDER.resolve(file + ".json"), Methods.builtIn());
        assertEquals(List.of(), read.problems());
        return read.method().orElseThrow();
    }
}
