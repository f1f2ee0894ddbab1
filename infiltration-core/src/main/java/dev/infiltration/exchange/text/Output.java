// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.text;

import java.io.IOException;
import java.io.Writer;
import java.util.function.Consumer;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamWriteConstraints;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.exc.JacksonIOException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;

/** Writes JSON on many lines for people, or on one line; both end with a line feed. */
public enum Output {
    /** Each member and entry on a new line, indented by two spaces more than its parent. */
    PAGE(new Page()),
    /** All on one line. */
    LINE(ObjectWriteContext.empty());

    /** Doubles are written with the shortest digits that read back equal, the same in every Java release. */
    private static final JsonFactory JSON = JsonFactory.builder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .disable(StreamWriteFeature.AUTO_CLOSE_CONTENT)
            .streamWriteConstraints(StreamWriteConstraints.builder()
                    .maxNestingDepth(Integer.MAX_VALUE)
                    .build())
            .build();

    @SuppressWarnings("ImmutableEnumChecker") // it hands out a fresh printer each time and holds nothing
    private final ObjectWriteContext layout;

    Output(ObjectWriteContext layout) {
        this.layout = layout;
    }

    /** Writes {@code content} and a line feed to {@code target}, which stays open and is flushed. */
    public void write(Writer target, Consumer<JsonGenerator> content) throws IOException {
        try (JsonGenerator json = JSON.createGenerator(layout, new SoundWriter(target))) {
            content.accept(json);
        } catch (JacksonIOException failed) {
            throw failed.getCause();
        }
        target.write('\n');
        target.flush();
    }

    private static final class Page extends ObjectWriteContext.Base {

        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }

        @Override
        public PrettyPrinter getPrettyPrinter() {
            DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
            Separators separators = Separators.createDefaultInstance()
                    .withObjectNameValueSpacing(Separators.Spacing.AFTER)
                    .withObjectEmptySeparator("")
                    .withArrayEmptySeparator("");
            return new DefaultPrettyPrinter(separators)
                    .withObjectIndenter(indenter)
                    .withArrayIndenter(indenter);
        }
    }
}
