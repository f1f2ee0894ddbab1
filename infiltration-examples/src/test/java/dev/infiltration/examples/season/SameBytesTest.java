// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command gives the same bytes wherever it runs: each way in a Java of its own. */
class SameBytesTest {

    private static final String MAIN = "dev.infiltration.examples.season.Season";

    private static byte[] expectedJson = {};
    private static byte[] expectedText = {};

    @BeforeAll
    static void runAtHome() throws Exception {
        expectedJson = run(javaHome(), classPath(), List.of(), "--json");
        expectedText = run(javaHome(), classPath(), List.of());
        assertTrue(expectedJson.length > 1_000);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "-Duser.language=de -Duser.country=DE",
                "-Duser.language=ar -Duser.country=EG",
                "-Duser.language=hi -Duser.country=IN -Duser.extensions=u-nu-deva",
                "-Duser.language=tr -Duser.country=TR",
                "-Duser.timezone=Pacific/Kiritimati",
                "-Dfile.encoding=ISO-8859-1 -Dstdout.encoding=ISO-8859-1",
                "-Dline.separator=\r\n",
            })
    void settingsOfTheMachineChangeNothing(String options) throws Exception {
        assertSame(javaHome(), classPath(), Arrays.asList(options.split(" ")));
    }

    @Test
    void modulePathChangesNothing() throws Exception {
        assertSame(javaHome(), modulePath(), List.of());
    }

    @Test
    void newerJavaChangesNothing() throws Exception {
        Optional<Path> newer = newerJava();
        assumeTrue(newer.isPresent(), "no newer Java beside this one");
        assertSame(newer.orElseThrow(), classPath(), List.of());
        assertSame(newer.orElseThrow(), modulePath(), List.of());
    }

    private static void assertSame(Path java, List<String> program, List<String> options) throws Exception {
        assertArrayEquals(expectedJson, run(java, program, options, "--json"));
        assertArrayEquals(expectedText, run(java, program, options));
    }

    private static byte[] run(Path java, List<String> program, List<String> options, String... args) throws Exception {
        List<String> command = new ArrayList<>(List.of(java.resolve("bin/java").toString(), "-XX:TieredStopAtLevel=1"));
        command.addAll(options);
        command.addAll(program);
        command.addAll(List.of("demo/harrow-quay.json", "--today", "2026-11-24"));
        command.addAll(List.of(args));
        Path out = Files.createTempFile("season", ".out");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        assertEquals(0, process.waitFor());
        byte[] bytes = Files.readAllBytes(out);
        Files.delete(out);
        return bytes;
    }

    private static Path javaHome() {
        return Path.of(System.getProperty("java.home"));
    }

    private static Optional<Path> newerJava() throws IOException {
        Path folder = Path.of("/usr/lib/jvm");
        if (!Files.isDirectory(folder)) {
            return Optional.empty();
        }
        try (Stream<Path> javas = Files.list(folder)) {
            return javas.filter(java -> java.getFileName().toString().contains("25"))
                    .filter(java -> Files.isExecutable(java.resolve("bin/java")))
                    .findFirst();
        }
    }

    private static List<String> classPath() {
        return List.of("-cp", System.getProperty("java.class.path"), MAIN);
    }

    /** What the examples need at run time, without what only tests need. */
    private static List<String> modulePath() {
        String path = Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(entry -> !entry.contains("test-classes"))
                .filter(entry -> Stream.of("junit", "jqwik", "opentest4j", "apiguardian", "surefire", "archunit")
                        .noneMatch(entry::contains))
                .collect(Collectors.joining(File.pathSeparator));
        return List.of("-p", path, "-m", "dev.infiltration.examples/" + MAIN);
    }
}
