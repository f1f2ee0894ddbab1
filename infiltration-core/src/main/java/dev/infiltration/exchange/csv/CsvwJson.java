// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.units.FieldUnit;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;

/** Writes the description of a table for programs, in the W3C's Metadata Vocabulary for Tabular Data. */
final class CsvwJson {

    private final JsonGenerator json;
    private final Dialect dialect;

    CsvwJson(JsonGenerator json, Dialect dialect) {
        this.json = json;
        this.dialect = dialect;
    }

    void write(String url, List<Column> columns) {
        json.writeStartObject();
        json.writeStringProperty("@context", "http://www.w3.org/ns/csvw");
        json.writeStringProperty("url", url);
        json.writeStringProperty(
                "dc:description",
                "Surface infiltration tests, a row a run. An apostrophe before a text that a spreadsheet would run as a"
                        + " formula is no part of it. A value that holds a semicolon stands in quotes, those in it doubled.");
        json.writeObjectPropertyStart("dialect");
        json.writeStringProperty("delimiter", String.valueOf(dialect.separator()));
        json.writeStringProperty("encoding", "utf-8");
        json.writeStringProperty("lineTerminators", "\r\n");
        json.writeBooleanProperty("header", true);
        json.writeEndObject();
        json.writeObjectPropertyStart("tableSchema");
        json.writeArrayPropertyStart("columns");
        columns.forEach(this::column);
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndObject();
    }

    private void column(Column column) {
        Cells.Cell cell = column.field().cell();
        json.writeStartObject();
        json.writeStringProperty("name", name(column.header()));
        json.writeStringProperty("titles", column.header());
        @Nullable FieldUnit<?> unit = column.unit();
        if (unit != null) {
            json.writeStringProperty("dc:description", "in the UCUM unit " + unit.code());
        }
        if (cell instanceof ListCell) {
            json.writeStringProperty("separator", ListCell.SEPARATOR);
        }
        json.writeName("datatype");
        datatype(cell.datatype());
        json.writeEndObject();
    }

    private void datatype(String base) {
        if (base.equals("boolean")) {
            json.writeStartObject();
            json.writeStringProperty("base", base);
            json.writeStringProperty("format", "yes|no");
            json.writeEndObject();
        } else if (base.equals("number") && dialect.decimalMark() != '.') {
            json.writeStartObject();
            json.writeStringProperty("base", base);
            json.writeObjectPropertyStart("format");
            json.writeStringProperty("decimalChar", String.valueOf(dialect.decimalMark()));
            json.writeEndObject();
            json.writeEndObject();
        } else {
            json.writeString(base);
        }
    }

    /** {@return the header in letters, digits and underscores} */
    private static String name(String header) {
        return header.toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9%]+", "_")
                .replace("%", "percent")
                .replaceAll("_$", "");
    }
}
