// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.examples.season;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Folders of output and their temporary files.
 *
 * <p>Names of temporary files: {@code .season-PROCESS-NUMBER.part}. The number of the process tells a file that a killed run left
 * from a file that another run is writing.
 */
final class OutputFolder {

    private static final Pattern NAME = Pattern.compile("\\.season-([0-9]{1,18})-[0-9]+\\.part");

    private OutputFolder() {}

    /**
     * Creates a folder where there is none, and deletes the temporary files of killed runs in it.
     *
     * @return the folder
     * @throws IOException with the folder and the reason in its message
     */
    static Path create(Path folder) throws IOException {
        try {
            Files.createDirectories(folder);
            clean(folder);
            return folder;
        } catch (IOException failed) {
            throw new IOException("cannot write to " + folder + ": " + TextFile.reason(failed), failed);
        }
    }

    /** {@return a free name in a folder} */
    static Path temporaryFile(Path folder) {
        String start = ".season-" + ProcessHandle.current().pid() + "-";
        int number = 1;
        Path free = folder.resolve(start + number + ".part");
        while (Files.exists(free)) {
            number++;
            free = folder.resolve(start + number + ".part");
        }
        return free;
    }

    private static void clean(Path folder) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, ".season-*.part")) {
            for (Path file : files) {
                if (isLeftOver(file)) {
                    Files.deleteIfExists(file);
                }
            }
        }
    }

    /** In a container every run may have the same number: files with the number of this run are of a killed one too. */
    private static boolean isLeftOver(Path file) {
        Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
        if (!name.matches() || !Files.isRegularFile(file)) {
            return false;
        }
        long process = Long.parseLong(name.group(1));
        return process == ProcessHandle.current().pid()
                || ProcessHandle.of(process).filter(ProcessHandle::isAlive).isEmpty();
    }
}
