// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.examples.season;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import org.jspecify.annotations.Nullable;

/**
 * Files in UTF-8 that are written whole or not at all: into a temporary file in the same folder, which replaces the target when
 * it is complete. Halves of characters are written as U+FFFD.
 */
final class TextFile {

    private static final byte[] REPLACEMENT = "\uFFFD".getBytes(StandardCharsets.UTF_8);

    private TextFile() {}

    /** A step that writes text. */
    @FunctionalInterface
    interface Content {

        void writeTo(Writer writer) throws IOException;
    }

    static void write(Path file, String text) throws IOException {
        write(file, writer -> writer.write(text));
    }

    /**
     * Writes a file. A link is replaced and its target is not touched; a pipe or a device is written directly.
     *
     * @throws IOException with the file and the reason in its message; a file that was there before is unchanged
     */
    static void write(Path file, Content content) throws IOException {
        try {
            if (isPipeOrDevice(file)) {
                fill(Files.newOutputStream(file), content);
            } else {
                replace(file, content);
            }
        } catch (IOException failed) {
            throw new IOException("cannot write " + file + ": " + reason(failed), failed);
        }
    }

    private static boolean isPipeOrDevice(Path file) {
        return Files.exists(file) && !Files.isRegularFile(file) && !Files.isDirectory(file);
    }

    private static void replace(Path file, Content content) throws IOException {
        boolean replacesFile = Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
        if (replacesFile && !Files.isWritable(file)) {
            throw new AccessDeniedException(file.toString());
        }
        Path folder = file.toAbsolutePath().getParent();
        Path temporary = OutputFolder.temporaryFile(folder == null ? file.toAbsolutePath() : folder);
        try {
            OutputStream bytes =
                    Files.newOutputStream(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            if (replacesFile) {
                copyPermissions(file, temporary);
            }
            fill(bytes, content);
            Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(temporary);
        }
    }

    private static void copyPermissions(Path from, Path to) throws IOException {
        @Nullable PosixFileAttributeView view = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (view != null) {
            view.setPermissions(Files.getPosixFilePermissions(from));
        }
    }

    private static void fill(OutputStream bytes, Content content) throws IOException {
        CharsetEncoder encoder = StandardCharsets.UTF_8
                .newEncoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .replaceWith(REPLACEMENT);
        // The stream by itself as well: a writer that cannot flush does not close it on every JDK.
        try (bytes;
                Writer writer = new BufferedWriter(new OutputStreamWriter(bytes, encoder))) {
            content.writeTo(writer);
        }
    }

    /** {@return why a file could not be read or written}, without the file */
    static String reason(IOException failed) {
        if (failed instanceof NoSuchFileException) {
            return "no such file or folder";
        }
        if (failed instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (failed instanceof FileAlreadyExistsException || failed instanceof NotDirectoryException) {
            return "a file is where a folder is required";
        }
        @Nullable
        String reason = failed instanceof FileSystemException system ? system.getReason() : failed.getMessage();
        return reason == null ? failed.getClass().getSimpleName() : reason;
    }
}
