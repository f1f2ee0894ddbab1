// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.schema;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import tools.jackson.core.json.JsonWriteFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.cfg.JsonNodeFeature;
import tools.jackson.databind.json.JsonMapper;

/** Documents under a general-purpose validator of JSON Schema. */
final class Validated {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private final Schema schema;

    private Validated(Schema schema) {
        this.schema = schema;
    }

    static Validated by(JsonSchema schema) {
        return new Validated(REGISTRY.getSchema(tree(schema.text())));
    }

    /** {@return what the draft has against a schema} */
    static List<String> byDraft(JsonSchema schema) {
        SchemaLocation draft = SchemaLocation.of("https://json-schema.org/draft/2020-12/schema");
        return new Validated(REGISTRY.getSchema(draft)).faults(schema.text());
    }

    /** {@return what the schema has against a document} */
    List<String> faults(String document) {
        return schema.validate(tree(document)).stream().map(Error::toString).toList();
    }

    static JsonNode tree(String json) {
        return MAPPER.readTree(json);
    }

    /** {@return a document of ASCII characters alone: a string may hold half a surrogate pair} */
    static String text(JsonNode tree) {
        return MAPPER.writer().with(JsonWriteFeature.ESCAPE_NON_ASCII).writeValueAsString(tree);
    }

    static String pretty(JsonNode tree) {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        return MAPPER.writer()
                        .with(new DefaultPrettyPrinter().withObjectIndenter(lines))
                        .writeValueAsString(tree)
                + "\n";
    }
}
