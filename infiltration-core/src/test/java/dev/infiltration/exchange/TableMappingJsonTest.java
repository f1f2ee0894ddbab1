// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.field.Problem;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Mappings of tables are files. */
class TableMappingJsonTest {

    private static final TableMapping MAPPING = TableMapping.none()
            .withHeader("H2O", "water [lb]")
            .withHeader("Boss", "")
            .withConstant("method", "unit-pavement")
            .withDates(TableMapping.DateOrder.DAY_MONTH_YEAR);

    @Test
    void mappingIsReadBackAsWritten() throws IOException {
        StringWriter text = new StringWriter();
        TableMappingJson.write(MAPPING, text);
        assertEquals(
                Optional.of(MAPPING), TableMappingJson.read(text.toString()).mapping());
    }

    @Test
    void mappingWithAFaultIsRefused() {
        TableMappingJson.ReadMapping read = TableMappingJson.read(
                "{\"format\":\"infiltration-table-mapping/1\",\"headers\":{\"H2O\":1},\"dates\":\"american\"}");
        assertEquals(Optional.empty(), read.mapping());
        assertEquals(
                List.of("/headers/H2O", "/dates"),
                read.problems().stream().map(Problem::where).toList());
    }

    @Test
    void anotherFormatIsRefused() {
        assertEquals(Optional.empty(), TableMappingJson.read("{\"headers\":{}}").mapping());
    }
}
