// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.FieldBook;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;

/** The metadata is what the W3C's Metadata Vocabulary for Tabular Data (2015, published) has, and the table is as it says. */
class CsvwJsonTest {

    /** Section 5.6 of the vocabulary: properties of a column description that are used here, and common properties. */
    private static final Set<String> OF_A_COLUMN = Set.of("name", "titles", "datatype", "separator", "dc:description");

    /** Section 5.11.1: built-in datatypes that are used here. */
    private static final Set<String> DATATYPES = Set.of("string", "boolean", "integer", "number", "date");

    private final FieldBook book = FieldBookJson.withDefaults()
            .read(Path.of("../infiltration-examples/demo/harrow-quay.json"))
            .book()
            .orElseThrow();

    CsvwJsonTest() throws IOException {}

    private JsonNode metadata(RunsCsv csv) throws IOException {
        StringWriter text = new StringWriter();
        csv.writeMetadata(book, "runs.csv", text);
        return new JsonMapper().readTree(text.toString());
    }

    private List<String[]> rows(RunsCsv csv, char separator) throws IOException {
        CsvMapper mapper =
                CsvMapper.builder().enable(CsvReadFeature.WRAP_AS_ARRAY).build();
        String table = new String(RunsCsvRoundTripTest.written(csv, book), StandardCharsets.UTF_8);
        return mapper.readerFor(String[].class)
                .with(tools.jackson.dataformat.csv.CsvSchema.emptySchema().withColumnSeparator(separator))
                .<String[]>readValues(table)
                .readAll();
    }

    @Test
    void documentNamesItsVocabularyTableAndDialect() throws IOException {
        JsonNode metadata = metadata(RunsCsv.withDefaults());
        assertEquals("http://www.w3.org/ns/csvw", metadata.get("@context").asString());
        assertEquals("runs.csv", metadata.get("url").asString());
        assertEquals(",", metadata.get("dialect").get("delimiter").asString());
        assertEquals(
                ";",
                metadata(RunsCsv.withDefaults().withDecimalComma())
                        .get("dialect")
                        .get("delimiter")
                        .asString());
    }

    @Test
    void titlesAreTheHeadersInOrderAndNamesAreNamesOnce() throws IOException {
        JsonNode columns = columns(RunsCsv.withDefaults());
        List<String> titles = columns.valueStream()
                .map(column -> column.get("titles").asString())
                .toList();
        assertEquals(List.of(rows(RunsCsv.withDefaults(), ',').get(0)), titles);
        Set<String> names = new HashSet<>();
        for (JsonNode column : columns) {
            assertTrue(OF_A_COLUMN.containsAll(column.propertyNames()), column::toString);
            assertTrue(column.get("name").asString().matches("[a-z0-9][a-z0-9_]*"), column::toString);
            assertTrue(names.add(column.get("name").asString()), column::toString);
        }
    }

    private JsonNode columns(RunsCsv csv) throws IOException {
        return metadata(csv).get("tableSchema").get("columns");
    }

    @Test
    void everyCellIsOfItsDatatype() throws IOException {
        assertCells(RunsCsv.withDefaults(), ',', "[-+]?[0-9]+(\\.[0-9]+)?([eE][-+]?[0-9]+)?");
        assertCells(RunsCsv.withDefaults().withDecimalComma(), ';', "[-+]?[0-9]+(,[0-9]+)?([eE][-+]?[0-9]+)?");
    }

    private void assertCells(RunsCsv csv, char separator, String number) throws IOException {
        JsonNode columns = columns(csv);
        List<String[]> rows = rows(csv, separator);
        for (int at = 0; at < columns.size(); at++) {
            JsonNode datatype = columns.get(at).get("datatype");
            String base = datatype.isString()
                    ? datatype.asString()
                    : datatype.get("base").asString();
            assertTrue(DATATYPES.contains(base), base);
            for (String[] row : rows.subList(1, rows.size())) {
                assertTrue(row[at].isEmpty() || row[at].matches(pattern(base, number)), base + ": " + row[at]);
            }
        }
    }

    private static String pattern(String base, String number) {
        return switch (base) {
            case "boolean" -> "yes|no";
            case "integer" -> "-?[0-9]+";
            case "date" -> "[0-9]{4}-[0-9]{2}-[0-9]{2}";
            case "number" -> number;
            default -> "(?s).*";
        };
    }

    @Test
    void unitsStandAsUcumCodes() throws IOException {
        Stream<String> descriptions = columns(RunsCsv.withDefaults())
                .valueStream()
                .filter(column -> column.get("titles").asString().equals("prewet water [lb]"))
                .map(column -> column.get("dc:description").asString());
        assertEquals(List.of("in the UCUM unit [lb_av]"), descriptions.toList());
    }
}
