// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Changes a document in one or two places, to what may or may not stand there. */
final class Mutation {

    /** Values of every type, at home in one place and strange in most. */
    private static final List<String> VALUES = List.of(
            "null",
            "true",
            "0",
            "-1",
            "3.0",
            "1.5",
            "2147483647",
            "2147483648",
            "1e15",
            "1.1e15",
            "1e-15",
            "9e-16",
            "\"\"",
            "\"x\"",
            "\"drained\"",
            "\"pavers\"",
            "\"routine\"",
            "\"UTC\"",
            "\"40.00\"",
            "\"-1e3\"",
            "\"01\"",
            "\"+1\"",
            "\"1.\"",
            "\"2024-02-29\"",
            "\"2023-02-29\"",
            "\"2000-02-29\"",
            "\"1900-02-29\"",
            "\"0000-02-29\"",
            "\"2026-04-31\"",
            "\"2026-06-03\\n\"",
            "\"2026-06-03T09:10\"",
            "\"2026-06-03t23:59:59.123456789z\"",
            "\"2026-06-03T24:00\"",
            "\"2026-06-03T09:60\"",
            "\"2026-06-03T09:10:60\"",
            "\"2026-06-03T09:10+18:00\"",
            "\"2026-06-03T09:10+18:01\"",
            "\"2026-06-03T09:10-00:00\"",
            "\"2026-06-03 09:10\"",
            "[]",
            "[null]",
            "[1]",
            "[\"A1\"]",
            "[{}]",
            "{}",
            "{\"id\": \"A1\"}",
            "{\"id\": 1}",
            "{\"value\": 1, \"unit\": \"kg\"}",
            "{\"value\": 1, \"unit\": \"in\"}",
            "{\"value\": \"1.0\", \"unit\": \"s\", \"resolution\": null}",
            "{\"value\": 1, \"unit\": \"s\", \"resolution\": \"0.1\"}",
            "{\"value\": null, \"unit\": \"s\"}",
            "{\"value\": 1}",
            "{\"unit\": \"s\"}",
            "{\"value\": 1, \"unit\": \"parsec\"}",
            "{\"value\": \"2:21.7\", \"unit\": \"min:s\"}",
            "{\"value\": \"2:60\", \"unit\": \"min:s\"}",
            "{\"value\": \"1:02:21.7\", \"unit\": \"h:min:s\", \"resolution\": \"0:00:00.1\"}",
            "{\"value\": 141.7, \"unit\": \"min:s\"}",
            "{\"value\": \"2:21.7\", \"unit\": \"s\"}");

    private final Random random;

    Mutation(Random random) {
        this.random = random;
    }

    JsonNode of(JsonNode document) {
        for (int change = random.nextInt(2); change >= 0; change--) {
            List<JsonNode> holders = new ArrayList<>();
            collect(document, holders);
            change(holders.get(random.nextInt(holders.size())));
        }
        return document;
    }

    private static void collect(JsonNode node, List<JsonNode> holders) {
        if (node.isContainer()) {
            holders.add(node);
            node.forEach(inner -> collect(inner, holders));
        }
    }

    private void change(JsonNode holder) {
        if (holder instanceof ArrayNode list) {
            changeEntry(list);
        } else {
            changeMember((ObjectNode) holder);
        }
    }

    private void changeEntry(ArrayNode list) {
        int at = random.nextInt(list.size() + 1);
        if (at == list.size()) {
            list.add(value());
        } else {
            list.set(at, value());
        }
    }

    private void changeMember(ObjectNode object) {
        List<String> names = new ArrayList<>(object.propertyNames());
        if (names.isEmpty() || random.nextInt(10) == 0) {
            object.set(random.nextBoolean() ? "id" : "surprise", value());
        } else if (random.nextInt(10) == 0) {
            object.remove(names.get(random.nextInt(names.size())));
        } else {
            object.set(names.get(random.nextInt(names.size())), value());
        }
    }

    private JsonNode value() {
        return Validated.tree(random.nextInt(3) == 0 ? "null" : VALUES.get(random.nextInt(VALUES.size())));
    }
}
