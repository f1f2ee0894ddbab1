// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.Season;
import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.ReadBook;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A book (invented) in which every member of every record is written somewhere: only what is planted in it is found. */
class CompleteBookTest {

    private static final Path BOOK =
            Path.of("src", "test", "resources", "dev", "infiltration", "check", "complete-book.json");

    private static ReadBook read() throws IOException {
        return FieldBookJson.withDefaults().read(BOOK);
    }

    @Test
    void everyMemberIsWrittenSomewhere() throws Exception {
        ReadBook read = read();
        assertEquals(List.of(), read.problems());
        Set<String> all = new TreeSet<>();
        Set<String> written = new TreeSet<>();
        collect(read.book().orElseThrow(), all, written);
        assertEquals(all, written);
    }

    private static void collect(Object value, Set<String> all, Set<String> written)
            throws ReflectiveOperationException {
        if (value instanceof Collection<?> list) {
            for (Object entry : list) {
                collect(entry, all, written);
            }
        } else if (value instanceof Record record && record.getClass().getPackage() == FieldBook.class.getPackage()) {
            for (RecordComponent member : record.getClass().getRecordComponents()) {
                String name = record.getClass().getSimpleName() + "." + member.getName();
                Object held = member.getAccessor().invoke(record);
                all.add(name);
                if (isWritten(held)) {
                    written.add(name);
                    collect(held, all, written);
                }
            }
        }
    }

    private static boolean isWritten(Object value) {
        boolean isEmpty = (value instanceof Collection<?> list && list.isEmpty())
                || (value instanceof Map<?, ?> map && map.isEmpty());
        return value != null && !isEmpty;
    }

    @Test
    void nothingButWhatIsPlantedIsFound() throws IOException {
        List<String> found =
                Checker.withDefaults()
                        .withToday(Season.TODAY)
                        .check(read().book().orElseThrow())
                        .findings()
                        .stream()
                        .map(finding -> finding.rule() + " " + finding.effect() + " " + finding.where())
                        .toList();
        assertEquals(
                List.of(
                        "run.event CAUTION /visits/0/tests/1/runs/0",
                        "run.void CAUTION /visits/0/tests/1/runs/1",
                        "prewet.discontinued CAUTION /visits/0/tests/2/preWet",
                        "test.not-tested CAUTION /visits/0/tests/3",
                        "prewet.absent DEVIATION /visits/0/tests/4",
                        "run.discontinued CAUTION /visits/0/tests/4/runs/0"),
                found);
    }
}
