// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonToken;

/** Reads a list: what cannot be read is a gap in a list of entries, and takes any other list with it. */
final class ListReader implements ValueReader {

    private final ValueReader element;
    private final boolean ofEntries;
    private final boolean eachCounts;

    /**
     * Reads lists.
     *
     * @param element    reads an element
     * @param eachCounts whether an element that cannot be read, {@code null} included, keeps its place
     */
    ListReader(ValueReader element, boolean eachCounts) {
        this.eachCounts = eachCounts;
        this.element = element;
        this.ofEntries = element instanceof RecordReader<?> record && record.entry() != null;
    }

    boolean isOfEntries() {
        return ofEntries;
    }

    @Override
    public @Nullable Object read(BookReading pass, JsonToken token) {
        return token == JsonToken.START_ARRAY ? elements(pass) : pass.refuse("a list");
    }

    private @Nullable Object elements(BookReading pass) {
        Kept kept = new Kept(pass);
        boolean readable = true;
        for (JsonToken token = pass.element(); token != null; token = pass.element()) {
            int mark = pass.unreadable().size();
            int start = pass.tokens().offset();
            @Nullable Object value = token == JsonToken.VALUE_NULL ? nothing(pass) : element.read(pass, token);
            if (value == UNREADABLE) {
                pass.lose(mark, start);
            }
            readable &= value != UNREADABLE || ofEntries || !pass.isInsideEntry();
            kept.add(value == UNREADABLE ? lost(pass) : value);
        }
        if (!readable) {
            return UNREADABLE;
        }
        return pass.tokens().ended() && !ofEntries ? null : kept.values;
    }

    /** {@code null} is no element, unless each element counts. */
    private @Nullable Object nothing(BookReading pass) {
        if (!eachCounts || pass.isInsideEntry()) {
            return null;
        }
        pass.refuseNull("an element that can be read");
        return UNREADABLE;
    }

    /** {@return a record that keeps the place of one that could not be read, or null where none is needed} */
    private @Nullable Object lost(BookReading pass) {
        return eachCounts
                        && element instanceof RecordReader<?> record
                        && !pass.tokens().ended()
                ? record.empty(pass)
                : null;
    }

    /** The elements kept and, from the first gap on, their positions in the document. */
    private static final class Kept {

        private final BookReading pass;
        private final List<Object> values = new ArrayList<>();
        private @Nullable List<Integer> positions;
        private int next;

        private Kept(BookReading pass) {
            this.pass = pass;
        }

        private void add(@Nullable Object value) {
            if (value == null) {
                gap();
            } else {
                values.add(value);
                if (positions != null) {
                    positions.add(next);
                }
            }
            next++;
        }

        private void gap() {
            if (positions == null && !pass.tokens().ended()) {
                positions = new ArrayList<>(IntStream.range(0, next).boxed().toList());
                String element = pass.tokens().pointer();
                pass.gaps().put(element.substring(0, element.lastIndexOf('/')), positions);
            }
        }
    }
}
