// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Output files are the old ones or the new ones, whole. */
@EnabledOnOs(OS.LINUX)
class TextFileTest {

    private static final int LENGTH = 2_000_000;
    private static final List<String> NAMES = List.of("a.txt", "b.txt", "c.txt");

    /** Writes files over and over, each of one letter, until it is killed. */
    static final class EndlessWriter {

        private EndlessWriter() {}

        public static void main(String[] args) throws IOException {
            Path folder = OutputFolder.create(Path.of(args[0]));
            System.out.println("writing");
            for (int round = 0; ; round++) {
                for (String name : NAMES) {
                    TextFile.write(folder.resolve(name), text(round));
                }
            }
        }
    }

    private static String text(int round) {
        return String.valueOf((char) ('a' + round % 26)).repeat(LENGTH);
    }

    private static boolean isWhole(String text) {
        return text.length() == LENGTH && text.chars().distinct().count() == 1;
    }

    private static List<String> temporaryFiles(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.startsWith("."))
                    .toList();
        }
    }

    private static void killWhileWriting(Path folder, Random random) throws IOException, InterruptedException {
        Process writer = new ProcessBuilder(
                        ProcessHandle.current().info().command().orElseThrow(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        EndlessWriter.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertTrue(writer.getInputStream().read() >= 0, "the writer starts");
        TimeUnit.MICROSECONDS.sleep(random.nextInt(100_000));
        writer.destroyForcibly().waitFor();
    }

    @Test
    void killsLeaveEveryFileWhole(@TempDir Path folder) throws IOException, InterruptedException {
        assertTrue(kill(10, folder) > 0);
    }

    @Test
    @Tag("slow")
    void twoHundredKillsLeaveEveryFileWhole(@TempDir Path folder) throws IOException, InterruptedException {
        int leftOver = kill(200, folder);
        assertTrue(leftOver > 20, "kills while a file was being written: " + leftOver);
    }

    private static int kill(int times, Path folder) throws IOException, InterruptedException {
        for (String name : NAMES) {
            TextFile.write(folder.resolve(name), text(0));
        }
        Random random = new Random(13);
        int leftOver = 0;
        for (int kill = 0; kill < times; kill++) {
            killWhileWriting(folder, random);
            for (String name : NAMES) {
                assertTrue(isWhole(Files.readString(folder.resolve(name))), name + " after kill " + kill);
            }
            int parts = temporaryFiles(folder).size();
            assertTrue(parts <= 1, "the next run removes what a killed one left: " + parts);
            leftOver += parts;
        }
        OutputFolder.create(folder);
        assertEquals(List.of(), temporaryFiles(folder));
        return leftOver;
    }

    @Test
    void linkIsReplacedAndItsTargetIsUntouched(@TempDir Path folder) throws IOException {
        Path target = Files.writeString(folder.resolve("target"), "good");
        Path link = Files.createSymbolicLink(folder.resolve("link"), target);
        TextFile.write(link, "new");
        assertEquals("good", Files.readString(target));
        assertEquals("new", Files.readString(link));
        assertFalse(Files.isSymbolicLink(link));
    }

    @Test
    void permissionsAreKept(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "good");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r-x"));
        TextFile.write(file, "new");
        assertEquals("rw-rw-r-x", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        assertEquals("new", Files.readString(file));
    }

    @Test
    void deviceIsWrittenDirectly(@TempDir Path folder) throws IOException {
        Path device = Path.of("/dev/full");
        assumeTrue(Files.exists(device));
        Path link = Files.createSymbolicLink(folder.resolve("link"), device);
        IOException failed = assertThrows(IOException.class, () -> TextFile.write(link, "x"));
        assertEquals("cannot write " + link + ": No space left on device", failed.getMessage());
        assertTrue(Files.isSymbolicLink(link));
    }

    @Test
    void pipeIsWrittenDirectly(@TempDir Path folder) throws IOException, InterruptedException {
        Path pipe = folder.resolve("pipe");
        assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
        Process reader = new ProcessBuilder("cat", pipe.toString()).start();
        TextFile.write(pipe, "through");
        assertEquals("through", new String(reader.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
    }

    @Test
    void failureWhileWritingKeepsTheOldFileAndLeavesNothing(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "good");
        IOException failed = assertThrows(
                IOException.class,
                () -> TextFile.write(file, writer -> {
                    writer.write("ha");
                    throw new IOException("half");
                }));
        assertEquals("cannot write " + file + ": half", failed.getMessage());
        assertEquals("good", Files.readString(file));
        assertEquals(List.of(), temporaryFiles(folder));
    }

    @Test
    void fullDiskCostsNoFile(@TempDir Path folder) throws IOException, InterruptedException {
        assumeTrue(run("mount", "-t", "tmpfs", "-o", "size=3m", "tmpfs", folder.toString()), "mount is permitted");
        try {
            Path file = folder.resolve("file");
            TextFile.write(file, text(0));
            IOException failed = assertThrows(IOException.class, () -> TextFile.write(file, text(1)));
            assertEquals("cannot write " + file + ": No space left on device", failed.getMessage());
            assertEquals(text(0), Files.readString(file));
            assertEquals(List.of(), temporaryFiles(folder));
        } finally {
            run("umount", folder.toString());
        }
    }

    private static boolean run(String... command) throws IOException, InterruptedException {
        try {
            return new ProcessBuilder(command).start().waitFor() == 0;
        } catch (IOException notThere) {
            return false;
        }
    }

    @Test
    void folderInPlaceOfTheFileIsNamed(@TempDir Path folder) {
        IOException failed = assertThrows(IOException.class, () -> TextFile.write(folder, "x"));
        assertTrue(failed.getMessage().startsWith("cannot write " + folder + ": "), failed.getMessage());
    }

    @Test
    void fileInPlaceOfTheFolderIsNamed(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "good");
        IOException failed = assertThrows(IOException.class, () -> OutputFolder.create(file));
        assertEquals("cannot write to " + file + ": a file is where a folder is required", failed.getMessage());
    }
}
