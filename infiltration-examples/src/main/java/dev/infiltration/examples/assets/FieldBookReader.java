// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.assets;

import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.ReadBook;
import java.io.StringWriter;
import java.util.stream.Collectors;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.ValueDeserializer;

/** Hands the field book in a host's document to the library, digit by digit, and refuses what it cannot read. */
final class FieldBookReader extends ValueDeserializer<FieldBook> {

    private static final JsonFactory JSON = new JsonFactory();

    @Override
    public FieldBook deserialize(JsonParser parser, DeserializationContext context) {
        StringWriter json = new StringWriter();
        try (JsonGenerator copy = JSON.createGenerator(ObjectWriteContext.empty(), json)) {
            copy.copyCurrentStructureExact(parser);
        }
        ReadBook read = FieldBookJson.withDefaults().read(json.toString());
        return read.problems().isEmpty()
                ? read.book().orElseThrow()
                : context.reportInputMismatch(FieldBook.class, "%s", problems(read));
    }

    private static String problems(ReadBook read) {
        return read.problems().stream()
                .map(problem -> problem.where() + ": " + problem.message())
                .collect(Collectors.joining("; "));
    }
}
