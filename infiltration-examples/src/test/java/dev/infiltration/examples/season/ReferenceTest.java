// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.examples.season.SeasonTest.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command against the user's own reference cases. */
class ReferenceTest {

    private static final String SHIPPED =
            "../infiltration-core/src/main/resources/dev/infiltration/exchange/reference-cases.json";

    @TempDir
    private Path folder;

    private String file(String from, String to) throws IOException {
        String cases = Files.readString(Path.of(SHIPPED));
        assertTrue(cases.contains(from));
        return Files.writeString(folder.resolve("cases.json"), cases.replace(from, to))
                .toString();
    }

    @Test
    void shippedCasesPass() {
        Ran ran = Ran.of("--reference", SHIPPED, "--strict");
        assertEquals(0, ran.status(), ran.out() + ran.err());
        assertTrue(ran.out().endsWith("45 of 45 passed\n"), ran.out());
        Ran json = Ran.of("--reference", SHIPPED, "--json");
        assertTrue(
                json.out().startsWith("{\"passed\":45,\"failed\":0,\"reference\":[{\"id\":\"3.60 kg, 300 mm, 30 s\""));
    }

    @Test
    void aCaseThatFailsIsToldAndIsNotCleanWhenStrict() throws IOException {
        String wrong = file("15278.8745368219522338128412838", "15279.8745368219522338128412838");
        assertEquals(0, Ran.of("--reference", wrong).status());
        Ran ran = Ran.of("--reference", wrong, "--strict");
        assertEquals(1, ran.status());
        assertTrue(ran.out().contains("FAILED 18.00 kg, 300 mm, 60 s: expected measured 15279.87"), ran.out());
        assertTrue(ran.out().contains("off by -0.000065, allowed 0.00005"), ran.out());
        assertTrue(ran.out().endsWith("38 of 45 passed\n"), ran.out());
        assertTrue(Ran.of("--json", "--reference", wrong).out().contains("\"passed\":38,\"failed\":7"));
    }

    @Test
    void aFileWithACaseThatCannotBeReadIsRefused() throws IOException {
        Ran ran = Ran.of("--reference", file("\"time zero\"", "7"), "--json");
        assertEquals(2, ran.status());
        assertEquals("", ran.out());
        assertTrue(ran.err().contains("cases.json: line 84, column 10, /cases/41/id: "), ran.err());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            --reference                               | --reference needs a value
            --reference no-such-file.json             | no such file: no-such-file.json
            --reference x.json demo/harrow-quay.json  | --reference goes with --json and --strict alone
            --reference x.json --today 2026-06-03     | --reference goes with --json and --strict alone
            --reference x.json --out somewhere        | --reference goes with --json and --strict alone
            --reference x.json --method m.json        | --reference goes with --json and --strict alone
            --reference x.json --criterion c.json     | --reference goes with --json and --strict alone
            --reference demo/harrow-quay.json         | demo/harrow-quay.json: line
            """)
    void wrongUsageIsToldOnStandardErrorAlone(String words, String message) {
        Ran ran = Ran.of(words.split(" "));
        assertEquals(2, ran.status());
        assertEquals("", ran.out());
        assertTrue(ran.err().startsWith("season: " + message), ran.err());
    }
}
