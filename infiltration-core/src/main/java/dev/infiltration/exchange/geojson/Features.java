// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.geojson;

import dev.infiltration.field.Position;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;

/** Writes the parts of a feature collection. Absent values are omitted; an absent geometry is null. */
final class Features {

    private static final BigDecimal MOST_LATITUDE = BigDecimal.valueOf(90);
    private static final BigDecimal MOST_LONGITUDE = BigDecimal.valueOf(180);

    private final JsonGenerator json;

    Features(JsonGenerator json) {
        this.json = json;
    }

    void collection(Runnable features) {
        json.writeStartObject();
        json.writeStringProperty("type", "FeatureCollection");
        json.writeArrayPropertyStart("features");
        features.run();
        json.writeEndArray();
        json.writeEndObject();
    }

    /** A record without an id gives a feature without an id. */
    void start(@Nullable String... id) {
        json.writeStartObject();
        json.writeStringProperty("type", "Feature");
        if (Arrays.stream(id).noneMatch(Objects::isNull)) {
            json.writeStringProperty(
                    "id", Arrays.stream(id).map(Features::escaped).collect(Collectors.joining("/")));
        }
        json.writeName("geometry");
    }

    /** Percent-encoded where it could be read as the separator of two ids (RFC 3986, 2.1). */
    private static String escaped(@Nullable String id) {
        return String.valueOf(id).replace("%", "%25").replace("/", "%2F");
    }

    void properties(Runnable properties) {
        json.writeObjectPropertyStart("properties");
        properties.run();
        json.writeEndObject();
        json.writeEndObject();
    }

    void point(@Nullable Position position) {
        if (position == null || !isOnEarth(position)) {
            json.writeNull();
        } else {
            json.writeStartObject();
            json.writeStringProperty("type", "Point");
            json.writeName("coordinates");
            coordinates(position);
            json.writeEndObject();
        }
    }

    void points(List<? extends @Nullable Position> positions) {
        List<Position> located = positions.stream()
                .flatMap(Stream::ofNullable)
                .filter(Features::isOnEarth)
                .toList();
        if (located.isEmpty()) {
            json.writeNull();
        } else {
            json.writeStartObject();
            json.writeStringProperty("type", "MultiPoint");
            json.writeArrayPropertyStart("coordinates");
            located.forEach(this::coordinates);
            json.writeEndArray();
            json.writeEndObject();
        }
    }

    static boolean isOnEarth(Position position) {
        return isWithin(position.latitude(), MOST_LATITUDE) && isWithin(position.longitude(), MOST_LONGITUDE);
    }

    private static boolean isWithin(@Nullable BigDecimal degrees, BigDecimal most) {
        return degrees != null && degrees.abs().compareTo(most) <= 0;
    }

    private void coordinates(Position position) {
        json.writeStartArray();
        json.writeNumber(String.valueOf(position.longitude()));
        json.writeNumber(String.valueOf(position.latitude()));
        json.writeEndArray();
    }

    void text(String name, @Nullable String text) {
        if (text != null) {
            json.writeStringProperty(name, text);
        }
    }

    void date(String name, @Nullable LocalDate date) {
        text(name, date == null ? null : date.toString());
    }

    void amount(String name, @Nullable Reading<?> reading) {
        if (reading != null) {
            json.writeObjectPropertyStart(name);
            json.writeName("value");
            json.writeNumber(reading.value().toString());
            json.writeStringProperty("unit", reading.unit().code());
            json.writeEndObject();
        }
    }

    void rate(double millimetresPerHour) {
        json.writeNumberProperty("rate", millimetresPerHour);
        json.writeStringProperty("unit", "mm/h");
    }

    void count(String name, int count) {
        json.writeNumberProperty(name, count);
    }

    void flag(String name, boolean flag) {
        json.writeBooleanProperty(name, flag);
    }

    void texts(String name, Map<String, String> texts) {
        if (!texts.isEmpty()) {
            json.writeObjectPropertyStart(name);
            texts.forEach(json::writeStringProperty);
            json.writeEndObject();
        }
    }

    void list(String name, List<String> texts) {
        json.writeArrayPropertyStart(name);
        texts.forEach(json::writeString);
        json.writeEndArray();
    }

    <T> void objects(String name, List<T> values, Consumer<T> members) {
        json.writeArrayPropertyStart(name);
        for (T value : values) {
            json.writeStartObject();
            members.accept(value);
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
