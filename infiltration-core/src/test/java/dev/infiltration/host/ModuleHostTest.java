// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.host;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A host module that requires the library alone: compiled with every warning an error, run, linked, and run from its image. */
class ModuleHostTest {

    private static final String DESCRIPTOR = "module bare.host { requires dev.infiltration.core; }";

    private static final String MAIN = """
            package bare;

            import dev.infiltration.exchange.FieldBookJson;
            import dev.infiltration.field.ReadBook;
            import dev.infiltration.field.Visit;
            import dev.infiltration.review.Review;
            import dev.infiltration.units.FieldUnit;
            import dev.infiltration.units.Reading;
            import java.io.IOException;
            import java.io.StringWriter;
            import java.nio.file.Path;
            import javax.measure.quantity.Mass;

            public final class Main {
                private Main() {}

                public static void main(String[] arguments) throws IOException {
                    Reading<Mass> mass = Reading.of("18", FieldUnit.KILOGRAM);
                    ReadBook read = FieldBookJson.withDefaults().read(Path.of(arguments[0]));
                    Review review = Review.of(read);
                    StringWriter written = new StringWriter();
                    FieldBookJson.withDefaults().write(review.book(), written);
                    Visit first = review.book().visits().get(0);
                    System.out.println(Main.class.getModule().isNamed() + " " + mass + " " + first.date() + " "
                            + review.runs().size() + " " + written.toString().isEmpty());
                }
            }
            """;

    @TempDir
    Path folder;

    /** This JDK and later ones installed beside it, one of each version. */
    static Stream<Path> jdks() throws IOException {
        Path own = Path.of(System.getProperty("java.home")).toRealPath();
        try (Stream<Path> beside = Files.list(own.getParent())) {
            List<Path> later = beside.filter(Files::isDirectory)
                    .map(ModuleHostTest::real)
                    .distinct()
                    .filter(home -> Files.exists(home.resolve("bin/jlink")) && version(home) > version(own))
                    .toList();
            return Stream.concat(Stream.of(own), later.stream());
        }
    }

    private static Path real(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@return the feature version that a JDK states in its file "release"; 0 where it states none} */
    private static int version(Path home) {
        try (Stream<String> lines = Files.lines(home.resolve("release"))) {
            return lines.filter(line -> line.startsWith("JAVA_VERSION="))
                    .map(line -> line.replaceAll("[^0-9.]", "").split("\\.", 2)[0])
                    .mapToInt(Integer::parseInt)
                    .findFirst()
                    .orElse(0);
        } catch (IOException e) {
            return 0;
        }
    }

    @ParameterizedTest
    @MethodSource("jdks")
    void aHostCompilesRunsAndIsLinked(Path jdk) throws Exception {
        Path host = folder.resolve("host");
        Path image = folder.resolve("image");
        String libraries = HostTest.join(HostTest.jars(HostTest.NEEDED));
        String modules = libraries + System.getProperty("path.separator") + host;
        String book = HostTest.book().toString();
        Path descriptor = Files.writeString(folder.resolve("module-info.java"), DESCRIPTOR);
        Path main = Files.writeString(folder.resolve("Main.java"), MAIN);

        run(
                jdk.resolve("bin/javac"),
                "-Xlint:all",
                "-Werror",
                "-d",
                host.toString(),
                "-p",
                libraries,
                descriptor.toString(),
                main.toString());
        String expected = "true 18 kg 2026-06-03 6 false";
        assertEquals(expected, run(jdk.resolve("bin/java"), "-p", modules, "-m", "bare.host/bare.Main", book));
        run(jdk.resolve("bin/jlink"), "-p", modules, "--add-modules", "bare.host", "--output", image.toString());
        assertEquals(expected, run(image.resolve("bin/java"), "-m", "bare.host/bare.Main", book));
        String linked = run(image.resolve("bin/java"), "--list-modules");
        assertTrue(
                linked.lines().noneMatch(name -> name.matches("(jakarta\\.validation|tools\\.jackson\\.databind)@.*")));
    }

    /** {@return what a command prints} */
    private static String run(Path command, String... arguments) throws IOException, InterruptedException {
        List<String> words = new ArrayList<>(List.of(command.toString()));
        Collections.addAll(words, arguments);
        Process process = new ProcessBuilder(words).redirectErrorStream(true).start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), () -> Arrays.toString(arguments) + ": " + printed);
        return printed.strip();
    }
}
