// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.units.FieldUnit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Headers as people spell them (common practice of forms and spreadsheets, from memory). */
class HeaderWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Pre-Wet Time (s)     | prewet time [s]
            Prewetting Time [s]  | prewet time [s]
            Date of Test         | date
            Test Location        | location
            Elapsed Time (sec)   | time [s]
            Inside Diameter (in) | ring diameter [in]
            Pour 2 Before [kg]   | pour 2 before [kg]
            Surface Temperature (°F) | surface temperature [F]
            Area [sq ft]         | surface area [ft2]
            Run no.              | run
            Run #                | run
            Run#                 | run
            Test No              | test
            Ring no.             | ring
            Location no.         | location
            Loc. #               | location
            Visit no.            | visit
            Surface temp (F)     | surface temperature [F]
            Air temp. (C)        | air temperature [C]
            water_temp [F]       | water temperature [F]
            Wt. of water [lb]    | water [lb]
            Pre-wet wt. (kg)     | prewet water [kg]
            Vol. (L)             | water [L]
            Mass of infiltrated water [kg] | water [kg]
            Ring dia. [mm]       | ring diameter [mm]
            Diam. #2 (in)        | ring diameter 2 [in]
            Pour no. 1 after [kg] | pour 1 after [kg]
            Inspector            | crew
            Photo                | photos
            Photo no.            | photos
            Remark               | note
            No rain since        | no rain since
            Time [m:ss.s]        | time
            Time (mm:ss.0)       | time
            Elapsed [min:sec]    | time
            Prewet time (H:MM:SS) | prewet time
            """)
    void spellingStandsForAColumn(String spelling, String header) {
        assertEquals(header, Column.of(spelling).orElseThrow().header());
    }

    @Test
    void everyColumnIsReadByTheNameItIsWrittenUnder() {
        for (Field field : Fields.ALL) {
            List<FieldUnit<?>> units = field.cell().units();
            Column column = new Column(field, field.isNumbered() ? 9 : 0, units.isEmpty() ? null : units.get(0));
            assertEquals(column, Column.of(column.header()).orElseThrow());
        }
    }
}
