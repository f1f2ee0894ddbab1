// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.examples.season;

import dev.infiltration.exchange.TableMappingJson;
import dev.infiltration.exchange.csv.RunsCsv;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Place;
import dev.infiltration.field.ReadBook;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The runs as a table, in and out, with metadata beside it. */
final class RunsTable {

    private static final String NAME = "runs.csv";

    private RunsTable() {}

    /**
     * {@return the book of a table}
     *
     * @param mapping a file that says what its headers stand for; null for none
     * @throws IOException if either cannot be read, or the mapping is refused
     */
    static ReadBook read(InputStream table, @Nullable Path mapping) throws IOException {
        RunsCsv csv = RunsCsv.withDefaults();
        if (mapping == null) {
            return csv.read(table);
        }
        TableMappingJson.ReadMapping read = TableMappingJson.read(mapping);
        return csv.withMapping(read.mapping().orElseThrow(() -> Reference.refused(mapping, read.problems())))
                .read(table);
    }

    /** {@return what of the book is not in the table, in words; nothing when all of it is} */
    static String writeTo(Path folder, FieldBook book) throws IOException {
        RunsCsv csv = RunsCsv.withDefaults();
        TextFile.write(folder.resolve(NAME + "-metadata.json"), metadata -> csv.writeMetadata(book, NAME, metadata));
        TextFile.write(folder.resolve(NAME), table -> csv.writeParts(List.of(book), table));
        List<Place> notHeld = csv.notHeld(book);
        return notHeld.isEmpty() ? "" : NAME + " does not hold all of the book: " + alike(notHeld);
    }

    /** {@return the places in order}, those that differ in numbers alone as one, such as {@code /instruments/# (4)} */
    private static String alike(List<Place> places) {
        return places.stream()
                .map(Place::toString)
                .collect(Collectors.groupingBy(
                        place -> place.replaceAll("/[0-9]+", "/#"), LinkedHashMap::new, Collectors.toList()))
                .entrySet()
                .stream()
                .map(like -> like.getValue().size() == 1
                        ? like.getValue().get(0)
                        : like.getKey() + " (" + like.getValue().size() + ")")
                .collect(Collectors.joining(", "));
    }
}
