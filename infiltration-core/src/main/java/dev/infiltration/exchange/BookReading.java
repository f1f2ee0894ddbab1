// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.exchange.text.Found;
import dev.infiltration.field.UnreadableValue;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonToken;

/** One pass over a text: its tokens, what could not be read, what was left out of lists, and the entry that is open. */
final class BookReading implements AutoCloseable {

    private final Tokens tokens;
    private final @Nullable ReadFault end;
    private final List<ReadFault> faults = new ArrayList<>();
    private final Map<String, List<Integer>> gaps = new HashMap<>();
    private final List<UnreadableValue> unreadable = new ArrayList<>();
    private @Nullable RecordKind entry;
    private boolean cut;
    private boolean hasFormat;
    private @Nullable ReadFault whole;

    /**
     * Starts before the first token.
     *
     * @param prefix pointer of the text in its document
     * @param end    why the document breaks off at the end of the text, where that is known
     */
    BookReading(CharacterSource text, String prefix, ReadLimits limits, @Nullable ReadFault end) {
        this.tokens = new Tokens(text, prefix, limits);
        this.end = end;
    }

    Tokens tokens() {
        return tokens;
    }

    /** {@return the faults met, in the order in which they were met} */
    List<ReadFault> faults() {
        return faults;
    }

    /** {@return by the pointer of each list that has a gap, which of the document's entries were kept} */
    Map<String, List<Integer>> gaps() {
        return gaps;
    }

    /** {@return the entry that was open before}; null opens none */
    @Nullable
    RecordKind enter(@Nullable RecordKind inner) {
        @Nullable RecordKind outer = entry;
        entry = inner == null ? outer : inner;
        return outer;
    }

    void leave(@Nullable RecordKind outer) {
        entry = outer;
    }

    /** {@return whether a value that cannot be read takes an entry with it, rather than being left out alone} */
    boolean isInsideEntry() {
        return entry != null && entry.goesWithItsParts();
    }

    /** {@return whether no entry has been cut off yet}: the first to ask, where the text breaks off, is the innermost */
    boolean isInnermostCut() {
        boolean innermost = !cut;
        cut = true;
        return innermost;
    }

    /** Notes that the document is of the format expected. */
    void meetFormat() {
        hasFormat = true;
    }

    boolean hasFormat() {
        return hasFormat;
    }

    /** Reports that nothing of the document can be read: no other fault counts then. */
    void reportWhole(int offset, String where, String found, String expected) {
        whole = new ReadFault(offset, where, "found " + found + ", expected " + expected + "; nothing is read");
    }

    /** {@return why the document breaks off at the end of the text, or null where it does not, or that is not known} */
    @Nullable
    ReadFault end() {
        return end;
    }

    /** Reports that the document broke off before anything could be known of it. */
    void reportWholeCut() {
        whole = end;
    }

    /** {@return why nothing of the document can be read, or null} */
    @Nullable
    ReadFault whole() {
        return whole;
    }

    void report(int offset, String where, String message) {
        faults.add(new ReadFault(offset, where, message));
    }

    /** Reports a value that is not what was expected, and what is excluded with it. */
    void reportValue(int offset, String where, String found, String expected) {
        report(offset, where, "found " + found + ", expected " + expected + "; " + loss());
        unreadable.add(new UnreadableValue(where, where, ""));
    }

    /** {@return the values that could not be read, in the order in which they were met} */
    List<UnreadableValue> unreadable() {
        return unreadable;
    }

    /**
     * Keeps the original text of the value that ends at the current token and could not be read.
     *
     * @param mark  how many unreadable values there were before it
     * @param start characters before it
     */
    void lose(int mark, int start) {
        if (tokens.ended()) {
            return;
        }
        String lost = tokens.pointer();
        String original = tokens.original(start);
        for (int i = mark; i < unreadable.size(); i++) {
            unreadable.set(i, new UnreadableValue(unreadable.get(i).where(), lost, original));
        }
    }

    /** Reports that {@code null} stands for an element, which then could not be read. */
    void refuseNull(String expected) {
        reportValue(tokens.offset(), tokens.pointer(), "null", expected);
        lose(unreadable.size() - 1, tokens.offset());
    }

    /**
     * Passes over the current key and its value, which the object had before, and reports it.
     *
     * @param from characters before the first value
     * @param to   characters before its end
     * @return whether the values differ: then neither can be believed
     */
    boolean refuseRepeated(int from, int to) {
        int offset = tokens.offset();
        String where = tokens.pointer();
        String key = Found.quoted(tokens.text());
        if (tokens.next() == null) {
            return false;
        }
        int start = tokens.offset();
        tokens.skip();
        if (tokens.ended()) {
            return false;
        }
        if (tokens.isAlike(from, to, start)) {
            report(offset, where, "found the key " + key + ", expected it once; the key is left out");
            return false;
        }
        report(
                offset,
                where,
                "found the key " + key + " with another value, expected it once; both values are left out");
        unreadable.add(new UnreadableValue(where, where, tokens.original(from, to)));
        unreadable.add(new UnreadableValue(where, where, tokens.original(start)));
        return true;
    }

    private String loss() {
        return entry != null && isInsideEntry() ? "the " + entry.word() + " is left out" : "it is left out";
    }

    /**
     * Passes over the current value and reports it.
     *
     * @return {@link ValueReader#UNREADABLE}, or null where the text breaks off inside the value
     */
    @Nullable
    Object refuse(String expected) {
        int offset = tokens.offset();
        String found = tokens.found();
        tokens.skip();
        if (tokens.ended()) {
            return null;
        }
        reportValue(offset, tokens.pointer(), found, expected);
        return ValueReader.UNREADABLE;
    }

    /** Passes over the current key and its value and reports the key. */
    void leaveOutKey(String expected) {
        int offset = tokens.offset();
        String where = tokens.pointer();
        String found = Found.quoted(tokens.text());
        if (tokens.next() != null) {
            tokens.skip();
        }
        if (!tokens.ended()) {
            report(offset, where, "found the key " + found + ", expected " + expected + "; the key is left out");
        }
    }

    /** Passes over the current key, which the object had before, and reports it. */
    void leaveOutRepeated() {
        leaveOutKey("it once");
    }

    /** {@return the first token of the current key's value, or null when that is absent} */
    @Nullable
    JsonToken value() {
        @Nullable JsonToken token = tokens.next();
        return token == JsonToken.VALUE_NULL ? null : token;
    }

    /** {@return the first token of the list's next element, or null at its end} */
    @Nullable
    JsonToken element() {
        @Nullable JsonToken token = tokens.next();
        return token == JsonToken.END_ARRAY ? null : token;
    }

    @Override
    public void close() {
        tokens.close();
    }
}
