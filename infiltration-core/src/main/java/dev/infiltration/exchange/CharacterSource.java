// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.field.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The characters of a document, or of one line of it, as far as they can be read. */
final class CharacterSource {

    private static final char MARK = '\uFEFF';

    private final char[] chars;
    private final int end;
    private final @Nullable String cut;
    private final int number;

    /**
     * Creates a source of characters.
     *
     * @param length the number of characters that are used
     * @param number the number of the line, from 1; 0 for a document of many lines
     * @param cut    why the text ends early after them, if it does
     */
    private CharacterSource(char[] chars, int length, int number, @Nullable String cut) {
        this.chars = chars;
        this.end = length;
        this.number = number;
        this.cut = cut;
    }

    /**
     * {@return a text whose characters may be cut: at the first that is not a character of the encoding, or at the limit}
     *
     * @param encoding the name of the encoding
     */
    static CharacterSource of(char[] chars, int length, int number, int limit, String encoding) {
        int sound = sound(chars, Math.min(length, limit));
        if (sound < Math.min(length, limit)) {
            return new CharacterSource(chars, sound, number, "found what is no character of " + encoding);
        }
        @Nullable String cut = length > limit ? "found more than the limit of " + limit + " characters" : null;
        return new CharacterSource(chars, sound, number, cut);
    }

    static CharacterSource of(String text, int limit) {
        String unmarked = !text.isEmpty() && text.charAt(0) == MARK ? text.substring(1) : text;
        return of(unmarked.toCharArray(), unmarked.length(), 0, limit, "Unicode");
    }

    /** {@return the number of characters before the first unpaired surrogate}, which no encoding contains */
    private static int sound(char[] chars, int length) {
        for (int i = 0; i < length; i++) {
            if (Character.isSurrogate(chars[i])) {
                if (i + 1 == length || !Character.isSurrogatePair(chars[i], chars[i + 1])) {
                    return i;
                }
                i++;
            }
        }
        return length;
    }

    char[] chars() {
        return chars;
    }

    /** {@return the number of characters that can be read} */
    int end() {
        return end;
    }

    /** {@return why the text ends early, or null if it does not} */
    @Nullable
    String cut() {
        return cut;
    }

    /** {@return a source of the characters before {@code offset}} */
    CharacterSource before(int offset) {
        return new CharacterSource(chars, offset, number, null);
    }

    boolean isBlank() {
        return cut == null && first() == end;
    }

    boolean startsObject() {
        return first() < end && chars[first()] == '{';
    }

    private int first() {
        int first = 0;
        while (first < end && isSpace(chars[first])) {
            first++;
        }
        return first;
    }

    static boolean isSpace(char c) {
        return c == ' ' || c == '\n' || c == '\r' || c == '\t';
    }

    /** {@return the faults in order of place, with line and column} */
    List<Problem> problems(List<ReadFault> faults) {
        List<ReadFault> ordered = new ArrayList<>(faults);
        ordered.sort(Comparator.comparingInt(ReadFault::offset));
        List<Problem> problems = new ArrayList<>(ordered.size());
        Cursor cursor = new Cursor();
        for (ReadFault fault : ordered) {
            cursor.moveTo(fault.offset());
            problems.add(new Problem(cursor.line, cursor.column, fault.where(), fault.message()));
        }
        return problems;
    }

    /** Counts lines and columns in the text; a single line of a file has only columns. */
    private final class Cursor {

        private int at = 0;
        private int line = Math.max(number, 1);
        private int column = 1;

        private void moveTo(int offset) {
            while (at < offset) {
                step(chars[at++]);
            }
        }

        private void step(char c) {
            if (number == 0 && (c == '\r' || (c == '\n' && !isSecondOfTwo('\r')))) {
                line++;
                column = 1;
            } else if (!endsPair(c) && !(number == 0 && c == '\n')) {
                column++;
            }
        }

        private boolean isSecondOfTwo(char first) {
            return at >= 2 && chars[at - 2] == first;
        }

        private boolean endsPair(char c) {
            return at >= 2 && Character.isSurrogatePair(chars[at - 2], c);
        }
    }
}
