// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.assets;

import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.FieldBook;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueSerializer;

/** Puts a field book into a host's document as the library writes it. */
final class FieldBookWriter extends ValueSerializer<FieldBook> {

    private static final JsonFactory JSON = new JsonFactory();

    @Override
    public void serialize(FieldBook book, JsonGenerator target, SerializationContext context) {
        StringWriter json = new StringWriter();
        try {
            FieldBookJson.withDefaults().write(book, json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        try (JsonParser parser = JSON.createParser(ObjectReadContext.empty(), json.toString())) {
            parser.nextToken();
            target.copyCurrentStructureExact(parser);
        }
    }
}
