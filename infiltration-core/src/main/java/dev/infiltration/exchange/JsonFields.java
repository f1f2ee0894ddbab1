// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.exchange;

import dev.infiltration.compare.Ratio;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.statistics.Interval;
import dev.infiltration.units.InfiltrationRate;
import dev.infiltration.units.Reading;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;

/** Writes the members of an object: absent, empty and infinite values are omitted. Rates are in mm/h. */
record JsonFields(JsonGenerator json) {

    private static final String UNIT = "mm/h";

    void text(String name, @Nullable String text) {
        if (text != null) {
            json.writeStringProperty(name, text);
        }
    }

    void date(String name, @Nullable LocalDate date) {
        text(name, date == null ? null : date.toString());
    }

    void texts(String name, Collection<String> texts) {
        if (!texts.isEmpty()) {
            json.writeArrayPropertyStart(name);
            texts.forEach(json::writeString);
            json.writeEndArray();
        }
    }

    void number(String name, double number) {
        if (Double.isFinite(number)) {
            json.writeNumberProperty(name, number);
        }
    }

    void number(String name, OptionalDouble number) {
        number.ifPresent(value -> number(name, value));
    }

    void count(String name, int count) {
        json.writeNumberProperty(name, count);
    }

    void count(String name, OptionalInt count) {
        count.ifPresent(value -> json.writeNumberProperty(name, value));
    }

    void flag(String name, boolean flag) {
        json.writeBooleanProperty(name, flag);
    }

    void object(String name, Runnable members) {
        json.writeObjectPropertyStart(name);
        members.run();
        json.writeEndObject();
    }

    <T> void list(String name, Collection<T> values, Consumer<T> members) {
        if (!values.isEmpty()) {
            json.writeArrayPropertyStart(name);
            for (T value : values) {
                json.writeStartObject();
                members.accept(value);
                json.writeEndObject();
            }
            json.writeEndArray();
        }
    }

    /** An amount as it is written, in its own unit. */
    void amount(String name, @Nullable Reading<?> amount) {
        if (amount != null) {
            object(name, () -> {
                json.writeName("value");
                json.writeNumber(amount.value().toPlainString());
                text("unit", amount.unit().code());
            });
        }
    }

    void rate(String name, InfiltrationRate rate) {
        object(name, () -> {
            number("value", rate.millimetresPerHour());
            text("unit", UNIT);
        });
    }

    void outcome(String name, RateOutcome outcome) {
        outcome.figure()
                .ifPresent(rate -> object(name, () -> {
                    text("outcome", outcome.word());
                    number("value", rate.millimetresPerHour());
                    text("unit", UNIT);
                }));
    }

    /** A rate with its limits. */
    void rate(String name, OptionalDouble rate, Optional<Interval> limits) {
        if (rate.isPresent() || limits.isPresent()) {
            object(name, () -> {
                number("value", rate);
                limits(limits);
                text("unit", UNIT);
            });
        }
    }

    void ratio(String name, Optional<Ratio> ratio) {
        ratio.ifPresent(value -> object(name, () -> {
            number("value", value.value());
            limits(value.interval());
        }));
    }

    /** A limit that the data do not give is absent. */
    void limits(Optional<Interval> limits) {
        limits.ifPresent(interval -> {
            number("low", interval.low());
            number("high", interval.high());
            number("level", interval.level());
        });
    }
}
