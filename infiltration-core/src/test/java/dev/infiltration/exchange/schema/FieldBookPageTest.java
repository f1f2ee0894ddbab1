// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.exchange.FieldBookJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** The page on the field book: its example is read and taken, its table is that of the records. */
class FieldBookPageTest {

    private static final Path PAGE = Path.of("../docs/field-book.md");
    private static final String BEGIN = "<!-- table of members: begin -->\n";
    private static final String END = "<!-- table of members: end -->";

    @Test
    void exampleIsReadAndTaken() throws IOException {
        String page = Files.readString(PAGE);
        int begin = page.indexOf("```json\n") + 8;
        String example = page.substring(begin, page.indexOf("```", begin));
        assertEquals(
                Files.readString(Path.of("src/test/resources/dev/infiltration/exchange/harrow-quay.json")), example);
        assertEquals(List.of(), FieldBookJson.withDefaults().read(example).problems());
        assertEquals(List.of(), Validated.by(JsonSchema.FIELD_BOOK).faults(example));
    }

    @Test
    void tableOfMembersIsThatOfTheRecords() throws IOException {
        String page = Files.readString(PAGE);
        int begin = page.indexOf(BEGIN) + BEGIN.length();
        int end = page.indexOf(END);
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(PAGE, page.substring(0, begin) + table() + page.substring(end));
        } else {
            assertEquals(table(), page.substring(begin, end));
        }
    }

    private static String table() {
        JsonNode schema = FieldBookSchema.make();
        StringBuilder table = new StringBuilder("| record | member | holds | is |\n|---|---|---|---|\n");
        rows(table, "field book", schema.get("properties"));
        for (Map.Entry<String, JsonNode> definition : schema.get("$defs").properties()) {
            boolean isRecord = Character.isUpperCase(definition.getKey().charAt(0));
            if (isRecord) {
                rows(table, definition.getKey(), definition.getValue().get("properties"));
            }
        }
        return table.toString();
    }

    private static void rows(StringBuilder table, String record, JsonNode members) {
        String shown = record;
        for (Map.Entry<String, JsonNode> member : members.properties()) {
            if (!member.getKey().equals("extra")) {
                JsonNode node = member.getValue();
                table.append("| " + shown + " | `" + member.getKey() + "` | " + holds(node) + " | "
                        + node.path("description").asString("") + " |\n");
                shown = "";
            }
        }
    }

    private static String holds(JsonNode node) {
        if (node.has("$ref")) {
            return node.get("$ref").asString().replaceAll(".*/", "").replace("clockTime", "clock time");
        }
        if (node.has("anyOf")) {
            return "file name or " + holds(node.get("anyOf").get(1));
        }
        if (node.has("items")) {
            return "list of " + holds(node.get("items"));
        }
        if (node.has("enum")) {
            return node.get("enum")
                    .valueStream()
                    .filter(JsonNode::isString)
                    .map(word -> "`" + word.asString() + "`")
                    .collect(Collectors.joining(", "));
        }
        return node.has("const") ? "`" + node.get("const").asString() + "`" : type(node);
    }

    private static String type(JsonNode node) {
        String type = node.get("type").get(0).asString();
        return type.equals("object") ? "object of strings" : type;
    }
}
