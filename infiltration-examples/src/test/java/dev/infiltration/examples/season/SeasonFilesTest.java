// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the command leaves in a folder. */
class SeasonFilesTest {

    private static final String DEMO = "demo/harrow-quay.json";

    private static int run(String book, Path folder) {
        PrintStream none = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
        Season season = new Season(
                new ByteArrayInputStream(book.getBytes(StandardCharsets.UTF_8)), new ByteArrayOutputStream(), none);
        return season.run(book.startsWith("{") ? "-" : book, "--today", "2026-11-24", "--out", folder.toString());
    }

    private static Map<String, String> written(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path file : walk.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        }
        return files;
    }

    @Test
    void folderHoldsPagesFormsAndDrawings(@TempDir Path folder) throws IOException {
        assertEquals(0, run(DEMO, folder));
        Set<String> files = written(folder).keySet();
        assertTrue(files.containsAll(List.of(
                "season.html",
                "visits/V1.html",
                "visits/V1.md",
                "forms/unit-pavement.html",
                "plots/season-history-1.svg",
                "plots/visit-V1-rates-1.svg")));
    }

    @Test
    void everyDrawingOfAPageIsAFileToo(@TempDir Path folder) throws IOException {
        run(DEMO, folder);
        Map<String, String> files = written(folder);
        Matcher drawn = Pattern.compile("<svg [^>]*id=\"([^\"]+)\"").matcher(files.get("season.html"));
        int count = 0;
        while (drawn.find()) {
            String file = files.get("plots/" + drawn.group(1) + ".svg");
            assertTrue(file != null && files.get("season.html").contains(file), drawn.group(1));
            count++;
        }
        assertTrue(count > 5);
    }

    @Test
    void linksOfTheSeasonLeadToFiles(@TempDir Path folder) throws IOException {
        run(DEMO, folder);
        Map<String, String> files = written(folder);
        Matcher link = Pattern.compile("href=\"([^#\"]+)\"").matcher(files.get("season.html"));
        int count = 0;
        while (link.find()) {
            assertTrue(files.containsKey(link.group(1)), link.group(1));
            count++;
        }
        assertTrue(count > 5);
    }

    @Test
    void sameBytesEveryTime(@TempDir Path one, @TempDir Path other) throws IOException {
        run(DEMO, one);
        run(DEMO, other);
        assertEquals(written(one), written(other));
    }

    @Test
    void noIdLeavesTheFolder(@TempDir Path folder) throws IOException {
        String visit = "{\"id\": \"../../up\", \"surface\": \"S\", \"date\": \"2026-06-03\"}";
        String book = "{\"format\": \"infiltration-field-book/1\", \"visits\": [" + visit + ", " + visit + "]}";
        Path inner = folder.resolve("inner");
        assertEquals(0, run(book, inner));
        Set<String> reports = written(inner).keySet().stream()
                .filter(name -> name.startsWith("visits/") && name.endsWith(".md"))
                .collect(Collectors.toSet());
        assertEquals(Set.of("visits/visit-1.md", "visits/visit-2.md"), reports);
        assertFalse(written(folder).keySet().stream().anyMatch(name -> !name.startsWith("inner/")));
    }

    private static String book(String visit) {
        return "{\"format\": \"infiltration-field-book/1\", \"sites\": [{\"id\": \"HQ\", \"name\": \"half \\ud800\"}],"
                + " \"visits\": [{\"id\": \"" + visit + "\", \"surface\": \"S \\ud800\", \"date\": \"2026-06-03\","
                + " \"tests\": [{\"id\": \"\\udc00\", \"location\": \"A\"}]}]}";
    }

    @Test
    void halvesOfCharactersShowAsReplaced(@TempDir Path folder) throws IOException {
        assertEquals(0, run(book("V1"), folder));
        Map<String, String> files = written(folder);
        assertTrue(files.get("review.txt").contains("S \uFFFD"), files.get("review.txt"));
        assertTrue(files.get("runs.csv").contains("\uFFFD"), files.get("runs.csv"));
        assertTrue(files.containsKey("season.html") && files.containsKey("locations.geojson"));
    }

    @Test
    void filesOfAnotherSeasonStayAndAreToldOf(@TempDir Path folder) throws IOException {
        run(book("V1"), folder);
        Files.writeString(folder.resolve("visits/\u001B[31m"), "somebody's own");
        Files.writeString(folder.resolve("notes.txt"), "somebody's own");
        Set<String> before = written(folder).keySet();
        SeasonTest.Ran ran = SeasonTest.Ran.of(
                book("V2").getBytes(StandardCharsets.UTF_8), "-", "--today", "2026-11-24", "--out", folder.toString());
        assertEquals(0, ran.status(), ran.err());
        assertTrue(written(folder).keySet().containsAll(before));
        assertTrue(
                ran.err()
                        .contains(
                                "not of this season, left as they are (3): visits/?[31m, visits/V1.html, visits/V1.md\n"),
                ran.err());
    }

    @Test
    void sameSeasonAgainLeavesNoOtherFiles(@TempDir Path folder) throws IOException {
        run(DEMO, folder);
        SeasonTest.Ran ran = SeasonTest.Ran.of(DEMO, "--today", "2026-11-24", "--out", folder.toString());
        assertFalse(ran.err().contains("left as they are"), ran.err());
    }
}
