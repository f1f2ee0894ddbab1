// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.IndexMap;
import dev.infiltration.field.Problem;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.UnreadableValue;
import dev.infiltration.field.Visit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonToken;

/** Reads a book line by line: the book without visits, then one visit on each line. */
final class BookLines {

    private static final Document<FieldBook> FIRST = FieldBookJson.BOOK.without("visits");
    private static final RecordReader<Visit> VISIT = RecordReader.of(Visit.class, Map.of());

    private final ReadLimits limits;
    private final @Nullable FieldBook book;
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, List<Integer>> gaps = new HashMap<>();
    private final List<UnreadableValue> unreadable = new ArrayList<>();
    private final List<Visit> visits = new ArrayList<>();
    private final List<Integer> positions = new ArrayList<>();
    private int lines;

    /** Reads the first line. */
    BookLines(CharacterSource first, ReadLimits limits) {
        this.limits = limits;
        ReadResult<FieldBook> content = FIRST.read(first, limits);
        this.book = content.value();
        take(first, content);
    }

    /** {@return whether the first line was a book, so that lines may follow} */
    boolean isBook() {
        return book != null;
    }

    /** Skips blank lines. */
    void skip(int blanks) {
        lines += blanks;
    }

    /** Reads a further line. */
    void add(CharacterSource line) {
        int index = lines++;
        if (line.isBlank()) {
            return;
        }
        ReadResult<Object> content = ReadResult.of(line, "/visits/" + index, limits, BookLines::visit);
        take(line, content);
        if (content.value() instanceof Visit visit) {
            visits.add(visit);
            positions.add(index);
        }
    }

    private static @Nullable Object visit(BookReading pass) {
        @Nullable JsonToken token = pass.value();
        return token == null ? null : VISIT.read(pass, token);
    }

    private void take(CharacterSource line, ReadResult<?> content) {
        problems.addAll(line.problems(content.faults()));
        gaps.putAll(content.gaps());
        unreadable.addAll(content.unreadable());
    }

    /** {@return what was read} */
    ReadBook toBook() {
        if (book == null) {
            return new ReadBook(null, problems, IndexMap.none(), List.of());
        }
        boolean hasGap = !positions.equals(IntStream.range(0, lines).boxed().toList());
        if (hasGap) {
            gaps.put("/visits", positions);
        }
        return new ReadBook(book.withVisits(visits), problems, IndexMap.of(gaps), unreadable);
    }
}
