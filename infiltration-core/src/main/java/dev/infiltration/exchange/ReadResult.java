// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.field.UnreadableValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The result of reading a text.
 *
 * @param value  the value; null when nothing could be read
 * @param faults what could not be read
 * @param gaps   for each list with a gap, by its pointer, the document's entries that were kept
 * @param unreadable the values that could not be read
 * @param <R>    what is read
 */
record ReadResult<R>(
        @Nullable R value, List<ReadFault> faults, Map<String, List<Integer>> gaps, List<UnreadableValue> unreadable) {

    /**
     * Reads a text. A broken text is read again up to the fault, so that the result does not depend on where the parser
     * stopped.
     *
     * @param prefix  pointer of the text in its document
     * @param reading reads one value, or returns null or {@link ValueReader#UNREADABLE}
     */
    static ReadResult<Object> of(
            CharacterSource text, String prefix, ReadLimits limits, Function<BookReading, @Nullable Object> reading) {
        try (BookReading pass = new BookReading(text, prefix, limits, null)) {
            @Nullable Object value = reading.apply(pass);
            if (pass.whole() != null || pass.tokens().isComplete()) {
                return of(pass, value, "");
            }
        }
        @Nullable ReadFault fault = FirstFault.of(text, limits);
        ReadFault end = fault == null ? new ReadFault(text.end(), "", "found what no JSON parser reads") : fault;
        ReadFault placed = new ReadFault(end.offset(), prefix + end.where(), end.message());
        try (BookReading pass = new BookReading(text.before(end.offset()), prefix, limits, placed)) {
            return of(pass, reading.apply(pass), Tokens.beginning(text.chars(), end.offset(), text.end()));
        }
    }

    private static ReadResult<Object> of(BookReading pass, @Nullable Object value, String rest) {
        @Nullable ReadFault whole = pass.whole();
        if (whole != null) {
            return new ReadResult<>(null, List.of(whole), Map.of(), List.of());
        }
        List<ReadFault> faults = new ArrayList<>(pass.faults());
        List<UnreadableValue> unreadable = new ArrayList<>(pass.unreadable());
        @Nullable ReadFault end = pass.end();
        if (end != null) {
            faults.add(end);
            unreadable.add(new UnreadableValue(end.where(), end.where(), rest));
        }
        return new ReadResult<>(value == ValueReader.UNREADABLE ? null : value, faults, pass.gaps(), unreadable);
    }
}
