// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.schema;

import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The parts that a schema of the field book is made of; every value may be null, which means absent. */
final class SchemaNodes {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    ObjectNode object() {
        return NODES.objectNode();
    }

    ObjectNode ref(String definition) {
        return object().put("$ref", "#/$defs/" + definition);
    }

    ObjectNode nullable(String type) {
        ObjectNode node = object();
        node.putArray("type").add(type).add("null");
        return node;
    }

    ObjectNode text(String description, String pattern) {
        ObjectNode node = object().put("description", description);
        node.setAll(nullable("string"));
        return node.put("pattern", "^(?:" + pattern + ")$");
    }

    ObjectNode words(List<String> words) {
        ObjectNode node = object();
        ArrayNode values = node.putArray("enum");
        words.forEach(values::add);
        values.addNull();
        return node;
    }

    ObjectNode integer() {
        return nullable("integer").put("minimum", Integer.MIN_VALUE).put("maximum", Integer.MAX_VALUE);
    }

    /** A number, or a string of its digits; zero or of magnitude 1e-15 to 1e15. */
    ObjectNode amountNumber(String digits) {
        ObjectNode node =
                object().put("description", "A number or a string of digits: at most 34, zero or 1e-15 to 1e15.");
        ArrayNode either = node.putArray("anyOf");
        ObjectNode number = either.addObject().put("type", "number");
        ArrayNode magnitudes = number.putArray("anyOf");
        magnitudes.addObject().put("minimum", 0).put("maximum", 0);
        magnitudes.add(between("1e-15", "1e15"));
        magnitudes.add(between("-1e15", "-1e-15"));
        either.addObject().put("type", "string").put("pattern", "^(?:" + digits + ")$");
        return node;
    }

    private ObjectNode between(String least, String most) {
        return object().put("minimum", new java.math.BigDecimal(least)).put("maximum", new java.math.BigDecimal(most));
    }

    ObjectNode amount(List<String> units) {
        ObjectNode unit = object();
        ArrayNode values = unit.putArray("enum");
        units.forEach(values::add);
        ObjectNode resolution = object();
        resolution.putArray("anyOf").add(ref("number")).add(object().put("type", "null"));
        return amount(ref("number"), unit, resolution);
    }

    /** What a watch showed, in place of a number; the resolution may be written so, too. */
    ObjectNode watch(String unit, String pattern) {
        ObjectNode shown = object().put("type", "string").put("pattern", "^(?:" + pattern + ")$");
        ObjectNode resolution = object();
        resolution.putArray("anyOf").add(shown.deepCopy()).add(ref("number")).add(object().put("type", "null"));
        return amount(shown, object().put("const", unit), resolution);
    }

    private ObjectNode amount(ObjectNode value, ObjectNode unit, ObjectNode resolution) {
        ObjectNode amount = nullable("object");
        ObjectNode properties = amount.putObject("properties");
        properties.set("value", value);
        properties.set("unit", unit);
        properties.set("resolution", resolution);
        amount.putArray("required").add("value").add("unit");
        return amount.put("additionalProperties", false);
    }
}
