// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.field.Problem;
import dev.infiltration.field.ReadBook;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A line of a field book that is not a visit is left out and reported; the lines after it are read. */
class LineValuesTest {

    private static final String BOOK = "{\"format\": \"infiltration-field-book/1\"}\n";

    @ParameterizedTest
    @ValueSource(strings = {"5", "-0.5e3", "\"visit\"", "true", "[{}]", " 7 "})
    void lineThatHoldsNoObjectIsOneProblemAtItsStart(String line) throws IOException {
        ReadBook read = read(BOOK + line + "\n{\"id\": \"V2\"}\n");
        assertEquals(1, read.problems().size(), read.problems().toString());
        Problem problem = read.problems().get(0);
        assertEquals(List.of(2, "/visits/0"), List.of(problem.line(), problem.where()));
        assertEquals(line.startsWith(" ") ? 2 : 1, problem.column());
        assertTrue(problem.message().contains("expected an object"), problem.message());
        assertEquals("V2", read.readPart().orElseThrow().visits().get(0).id());
    }

    @Test
    void firstLineThatHoldsNoObjectLeavesNothing() throws IOException {
        ReadBook read = read("5\n{\"id\": \"V2\"}\n");
        assertTrue(read.readPart().isEmpty());
        assertEquals(1, read.problems().size());
    }

    private static ReadBook read(String lines) throws IOException {
        return FieldBookJson.withDefaults().readLines(new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)));
    }
}
