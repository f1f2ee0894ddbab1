// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.schema;

import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.ClockTime;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.JsonName;
import dev.infiltration.field.Photo;
import dev.infiltration.field.WaterReading;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Makes the schema of the field book from its records: keys and types from their components, descriptions from what their
 * sources say of each.
 */
final class FieldBookSchema {

    private static final String DATE = "(?:[0-9]{4}-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12][0-9]|3[01])"
            + "|(?:0[469]|11)-(?:0[1-9]|[12][0-9]|30)|02-(?:0[1-9]|1[0-9]|2[0-8]))"
            + "|(?:[0-9]{2}(?:0[48]|[2468][048]|[13579][26])|(?:[02468][048]|[13579][26])00)-02-29)";
    private static final String TIME = "(?:[01][0-9]|2[0-3]):[0-5][0-9](?::[0-5][0-9](?:\\.[0-9]{1,9})?)?";
    private static final String OFFSET = "(?:[Zz]|[+-](?:(?:0[0-9]|1[0-7]):[0-5][0-9]|18:00))?";
    private static final String NUMBER = "-?(?:0|[1-9][0-9]*)(?:\\.[0-9]+)?(?:[eE][+-]?[0-9]+)?";
    private static final String SECONDS = ":[0-5]?[0-9](?:\\.[0-9]{1,34})?";

    private static final Map<Class<?>, String> SCALARS = Map.of(
            LocalDate.class, "date",
            ClockTime.class, "clockTime",
            WaterReading.class, "water");

    private final SchemaNodes nodes = new SchemaNodes();
    private final Descriptions descriptions = new Descriptions();
    private final ObjectNode definitions = nodes.object();

    private FieldBookSchema() {}

    static JsonNode make() {
        return new FieldBookSchema().document();
    }

    private JsonNode document() {
        ObjectNode schema = nodes.object()
                .put("$schema", "https://json-schema.org/draft/2020-12/schema")
                .put("$id", "urn:infiltration:field-book:1")
                .put("title", "Field book of surface infiltration tests, version 1")
                .put(
                        "description",
                        "What was written down, nothing derived. An absent member and null mean the same. Each further line"
                                + " of a .jsonl file is one visit: #/$defs/Visit.")
                .put("type", "object");
        ObjectNode properties = schema.putObject("properties");
        properties.putObject("format").put("const", FieldBookJson.FORMAT);
        properties.setAll(members(FieldBook.class));
        schema.putArray("required").add("format");
        schema.put("additionalProperties", false);
        define();
        schema.set("$defs", definitions);
        return schema;
    }

    private void define() {
        definitions.set("date", nodes.text("A day of the calendar, such as 2026-06-03.", DATE));
        definitions.set(
                "clockTime",
                nodes.text("A time to the minute or finer, local or with an offset.", DATE + "[Tt]" + TIME + OFFSET));
        definitions.set("number", nodes.amountNumber(NUMBER));
        definitions.set("water", nodes.amount(units(unit -> unit.kind() == Mass.class || unit.kind() == Volume.class)));
        ObjectNode elapsed = nodes.object();
        elapsed.putArray("anyOf")
                .add(nodes.ref(kind(Time.class)))
                .add(nodes.watch("min:s", "[0-9]{1,15}" + SECONDS))
                .add(nodes.watch("h:min:s", "[0-9]{1,15}:[0-5]?[0-9]" + SECONDS));
        definitions.set("elapsed", elapsed);
    }

    /** Lists in which null is an element that cannot be read. */
    private static final Set<String> NEVER_NULL = Set.of("tests", "runs", "pours", "events", "insideDiameters");

    private ObjectNode members(Class<?> record) {
        ObjectNode members = nodes.object();
        for (RecordComponent component : record.getRecordComponents()) {
            ObjectNode described = nodes.object();
            descriptions.of(record, component.getName()).ifPresent(text -> described.put("description", text));
            described.setAll(of(component.getGenericType(), component.getName()));
            members.set(component.getName(), described);
        }
        return members;
    }

    private ObjectNode of(Type type, String name) {
        return type instanceof ParameterizedType generic ? generic(generic, name) : plain((Class<?>) type);
    }

    private ObjectNode plain(Class<?> type) {
        if (type.isEnum()) {
            return nodes.words(List.of(type.getEnumConstants()).stream()
                    .map(constant -> ((JsonName) constant).word())
                    .toList());
        }
        if (SCALARS.containsKey(type)) {
            return nodes.ref(SCALARS.get(type));
        }
        if (type == Photo.class) {
            ObjectNode photo = nodes.object();
            photo.putArray("anyOf").add(nodes.nullable("string")).add(record(type));
            return photo;
        }
        if (type.isRecord()) {
            return record(type);
        }
        return type == Integer.class ? nodes.integer() : nodes.nullable(scalar(type));
    }

    private static String scalar(Class<?> type) {
        if (type == Boolean.class) {
            return "boolean";
        }
        if (type == BigDecimal.class) {
            return "number";
        }
        if (type == String.class || type == ZoneId.class) {
            return "string";
        }
        throw new IllegalArgumentException("no schema for " + type);
    }

    private ObjectNode record(Class<?> type) {
        String name = type.getSimpleName();
        if (!definitions.has(name)) {
            definitions.set(name, nodes.object()); // a place in the order, before what it holds
            ObjectNode record = nodes.nullable("object");
            descriptions.of(type).ifPresent(text -> record.put("description", text));
            record.set("properties", members(type));
            record.put("additionalProperties", false);
            definitions.set(name, record);
        }
        return nodes.ref(name);
    }

    private ObjectNode generic(ParameterizedType type, String name) {
        Type last = type.getActualTypeArguments()[type.getActualTypeArguments().length - 1];
        if (type.getRawType() == List.class) {
            ObjectNode list = nodes.nullable("array");
            ObjectNode element = of(last, name);
            if (NEVER_NULL.contains(name)) {
                element.putObject("not").put("type", "null");
            }
            list.set("items", element);
            return list;
        }
        if (type.getRawType() == Map.class) {
            ObjectNode map = nodes.nullable("object");
            return last == String.class ? map.set("additionalProperties", nodes.nullable("string")) : map;
        }
        if (type.getRawType() != Reading.class) {
            throw new IllegalArgumentException("no schema for " + type);
        }
        return nodes.ref(last == Time.class && name.equals("elapsed") ? "elapsed" : kind(last));
    }

    /** {@return the name of the amounts of a kind, or of any kind} */
    private String kind(Type type) {
        String name = type instanceof Class<?> kind ? kind.getSimpleName().toLowerCase(Locale.ROOT) : "amount";
        if (!definitions.has(name)) {
            definitions.set(name, nodes.amount(units(unit -> name.equals("amount") || unit.kind() == type)));
        }
        return name;
    }

    private static List<String> units(Predicate<FieldUnit<?>> wanted) {
        return FieldUnit.all().stream()
                .filter(wanted)
                .flatMap(unit -> unit.spellings().stream())
                .toList();
    }
}
