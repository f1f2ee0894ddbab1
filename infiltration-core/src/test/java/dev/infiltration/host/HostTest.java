// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.host;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.exchange.FieldBookJson;
import java.io.File;
import java.io.IOException;
import java.io.Writer;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Hosts in a JVM of their own, with just the libraries they need. */
class HostTest {

    /** Scope compile of the library's POM, and what it brings. */
    static final List<String> NEEDED = List.of(
            "infiltration-units",
            "infiltration-core/target/classes",
            "jackson-core",
            "unit-api",
            "indriya",
            "uom-lib-common",
            "jakarta.inject-api",
            "jakarta.annotation-api",
            "jspecify",
            "commons-statistics-distribution",
            "commons-numbers",
            "commons-rng");

    private static final List<String> VALIDATION =
            List.of("jakarta.validation-api", "hibernate-validator", "jboss-logging", "classmate");

    @Test
    void nothingBreaksWithoutValidationOnTheClassPath() throws Exception {
        String path = join(Stream.concat(jars(NEEDED), Stream.of(tests())));
        assertEquals("false 1 false 6 0 0", run(List.of("-cp", path), BareHost.class));
    }

    @Test
    void nothingBreaksWithoutValidationOnTheModulePath() throws Exception {
        assertEquals("true 1 false 6 0 0", run(modules(jars(NEEDED), "dev.infiltration.core"), BareHost.class));
    }

    @Test
    void recordsAreValidatedOnTheModulePath() throws Exception {
        List<String> modules = modules(Stream.concat(jars(NEEDED), jars(VALIDATION)), "ALL-MODULE-PATH");
        assertEquals(
                "true [book.visits[0] visit.location-count, book.visits[0].tests[0] prewet.absent,"
                        + " book.visits[0].tests[0].ring, book.visits[0].tests[0].ring data.required]",
                run(modules, ValidatingHost.class));
    }

    private static List<String> modules(Stream<String> jars, String roots) throws URISyntaxException {
        return List.of("-p", join(jars), "--add-modules", roots, "-cp", tests());
    }

    static String join(Stream<String> entries) {
        return entries.collect(Collectors.joining(File.pathSeparator));
    }

    /** Of the class path of this test. */
    static Stream<String> jars(List<String> names) {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                .filter(entry -> names.stream().anyMatch(entry.replace('\\', '/')::contains))
                .filter(entry -> !entry.contains("test-classes"));
    }

    private static String tests() throws URISyntaxException {
        return Path.of(HostTest.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .toURI())
                .toString();
    }

    /** {@return the last line that is said} */
    private static String run(List<String> options, Class<?> main)
            throws IOException, InterruptedException, URISyntaxException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        Collections.addAll(command, main.getName(), book().toString());
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), said);
        return said.lines().reduce("", (before, line) -> line);
    }

    static Path book() throws IOException {
        Path file = Files.createTempFile("season", ".json");
        file.toFile().deleteOnExit();
        try (Writer json = Files.newBufferedWriter(file)) {
            FieldBookJson.withDefaults().write(Season.si().book(), json);
        }
        return file;
    }
}
