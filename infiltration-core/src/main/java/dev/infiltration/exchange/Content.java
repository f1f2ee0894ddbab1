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
 * What could be read of a text.
 *
 * @param value  what was read; null when nothing was
 * @param faults what could not be read
 * @param gaps   by the pointer of each list that has a gap, which of the document's entries were kept
 * @param unreadable the values that could not be read
 * @param <R>    what is read
 */
record Content<R>(
        @Nullable R value, List<Fault> faults, Map<String, List<Integer>> gaps, List<UnreadableValue> unreadable) {

    /**
     * Reads a text; where it is broken, once more as far as it is sound, so that what is read does not hang on where the
     * parser gave up.
     *
     * @param prefix  pointer of the text in its document
     * @param reading reads one value, or answers null or {@link ValueReader#UNREADABLE}
     */
    static Content<Object> of(Text text, String prefix, ReadLimits limits, Function<Pass, @Nullable Object> reading) {
        try (Pass pass = new Pass(text, prefix, limits, null)) {
            @Nullable Object value = reading.apply(pass);
            if (pass.whole() != null || pass.tokens().isComplete()) {
                return of(pass, value, "");
            }
        }
        @Nullable Fault fault = FirstFault.of(text, limits);
        Fault end = fault == null ? new Fault(text.end(), "", "found what no JSON parser reads") : fault;
        Fault placed = new Fault(end.offset(), prefix + end.where(), end.message());
        try (Pass pass = new Pass(text.before(end.offset()), prefix, limits, placed)) {
            return of(pass, reading.apply(pass), Tokens.beginning(text.chars(), end.offset(), text.end()));
        }
    }

    private static Content<Object> of(Pass pass, @Nullable Object value, String rest) {
        @Nullable Fault whole = pass.whole();
        if (whole != null) {
            return new Content<>(null, List.of(whole), Map.of(), List.of());
        }
        List<Fault> faults = new ArrayList<>(pass.faults());
        List<UnreadableValue> unreadable = new ArrayList<>(pass.unreadable());
        @Nullable Fault end = pass.end();
        if (end != null) {
            faults.add(end);
            unreadable.add(new UnreadableValue(end.where(), end.where(), rest));
        }
        return new Content<>(value == ValueReader.UNREADABLE ? null : value, faults, pass.gaps(), unreadable);
    }
}
