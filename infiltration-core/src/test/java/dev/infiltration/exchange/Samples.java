// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Problem;
import dev.infiltration.field.ReadBook;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Documents for tests, and short ways to ask what was read of them. */
final class Samples {

    static final FieldBookJson JSON = FieldBookJson.withDefaults();

    private Samples() {}

    /** {@return the invented book that shows every member} */
    static String harrowQuay() {
        try (InputStream bytes = Objects.requireNonNull(Samples.class.getResourceAsStream("harrow-quay.json"))) {
            return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** {@return a document of these members, on one line} */
    static String document(String members) {
        return "{\"format\":\"infiltration-field-book/1\"," + members + "}";
    }

    static ReadBook read(String members) {
        return JSON.read(document(members));
    }

    static FieldBook book(ReadBook read) {
        return read.readPart().orElseThrow(() -> new AssertionError("no book: " + read.problems()));
    }

    static List<String> places(ReadBook read) {
        return read.problems().stream().map(Problem::where).toList();
    }

    /** {@return the message of the only problem} */
    static String message(ReadBook read) {
        if (read.problems().size() != 1) {
            throw new AssertionError("expected one problem, got " + read.problems());
        }
        return read.problems().get(0).message();
    }
}
