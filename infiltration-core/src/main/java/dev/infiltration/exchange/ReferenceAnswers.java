// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.rate.ReferenceCase;
import dev.infiltration.rate.ReferenceCheck;
import dev.infiltration.units.Reading;
import java.math.BigDecimal;
import java.util.List;
import javax.measure.quantity.Speed;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;

/** Writes the results of an implementation for reference cases. */
final class ReferenceAnswers {

    private final JsonGenerator json;

    ReferenceAnswers(JsonGenerator json) {
        this.json = json;
    }

    void write(List<ReferenceCheck> checks) {
        long passed = checks.stream().filter(ReferenceCheck::isPassed).count();
        json.writeStartObject();
        json.writeNumberProperty("passed", passed);
        json.writeNumberProperty("failed", checks.size() - passed);
        json.writeArrayPropertyStart("reference");
        checks.forEach(this::check);
        json.writeEndArray();
        json.writeEndObject();
    }

    private void check(ReferenceCheck check) {
        ReferenceCase reference = check.reference();
        json.writeStartObject();
        json.writeStringProperty("id", reference.id());
        json.writeBooleanProperty("passed", check.isPassed());
        expected(reference);
        got(check);
        check.relativeDifference().ifPresent(off -> number("relativeDifference", off));
        number("tolerance", reference.tolerance());
        json.writeStringProperty("basis", reference.basis().toString());
        json.writeEndObject();
    }

    private void expected(ReferenceCase reference) {
        @Nullable Reading<Speed> rate = reference.rate();
        json.writeObjectPropertyStart("expected");
        json.writeStringProperty("outcome", reference.outcome().word());
        if (rate != null) {
            number("value", rate.value());
            json.writeStringProperty("unit", rate.unit().code());
        }
        json.writeEndObject();
    }

    private void got(ReferenceCheck check) {
        json.writeObjectPropertyStart("got");
        json.writeStringProperty("outcome", check.got().word());
        check.got().figure().ifPresent(figure -> {
            json.writeNumberProperty("value", figure.millimetresPerHour());
            json.writeStringProperty("unit", "mm/h");
        });
        json.writeEndObject();
    }

    private void number(String name, BigDecimal value) {
        json.writeName(name);
        json.writeNumber(value.toString());
    }
}
