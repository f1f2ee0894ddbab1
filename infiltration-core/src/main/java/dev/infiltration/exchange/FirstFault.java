// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.exchange.text.Found;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Finds the first character that cannot stand: the first that makes a text the start of no JSON document (RFC 8259), or that
 * begins a key beyond the limit. A value beyond a limit is no fault here: {@link Tokens} passes over it.
 *
 * <p>It runs over a text that the parser has refused, because the parser tells where it gave up and not where the text
 * went wrong. It does not recurse.
 */
final class FirstFault {

    private static final String DIGITS = "0123456789";
    private static final String HEX = "0123456789abcdefABCDEF";

    /** What may come next. */
    private enum Next {
        VALUE("a value"),
        VALUE_OR_END("a value or ]"),
        KEY("a key in quotes"),
        KEY_OR_END("a key in quotes or }"),
        COLON(":"),
        COMMA_OR_END("a comma or the end of what is open"),
        NOTHING("the end of the text");

        private final String words;

        Next(String words) {
            this.words = words;
        }
    }

    private final CharacterSource text;
    private final char[] chars;
    private final int end;
    private final ReadLimits limits;
    private int at;
    private Next next = Next.VALUE;
    /** The token being read, while it is. */
    private @Nullable String token;
    /** What is beyond a limit. */
    private @Nullable String excess;
    /** For every list that is open the index of its entry; for every object where its key starts, turned negative. */
    private int[] open = new int[16];

    private int depth;
    /** The characters of the last string or key. */
    private int stringLength;

    private FirstFault(CharacterSource text, ReadLimits limits) {
        this.text = text;
        this.chars = text.chars();
        this.end = text.end();
        this.limits = limits;
    }

    /** {@return the first fault of {@code text}, or null when it is a whole JSON document} */
    static @Nullable ReadFault of(CharacterSource text, ReadLimits limits) {
        return new FirstFault(text, limits).find();
    }

    private @Nullable ReadFault find() {
        do {
            skipSpace();
            if (at == end && next == Next.NOTHING && text.cut() == null) {
                return null;
            }
        } while (at < end && step());
        return new ReadFault(at, where(), message());
    }

    private void skipSpace() {
        while (at < end && CharacterSource.isSpace(chars[at])) {
            at++;
        }
    }

    private boolean step() {
        char c = chars[at];
        return switch (next) {
            case VALUE -> value(c);
            case VALUE_OR_END -> c == ']' ? close() : value(c);
            case KEY -> key(c);
            case KEY_OR_END -> c == '}' ? close() : key(c);
            case COLON -> c == ':' && take(Next.VALUE);
            case COMMA_OR_END -> c == ',' ? comma() : c == (inList() ? ']' : '}') && close();
            case NOTHING -> false;
        };
    }

    private boolean take(Next then) {
        at++;
        next = then;
        return true;
    }

    private boolean value(char c) {
        next = Next.VALUE;
        return switch (c) {
            case '{' -> open(-1, Next.KEY_OR_END);
            case '[' -> open(0, Next.VALUE_OR_END);
            case '"' -> string() && valueDone();
            case 't' -> literal("true") && valueDone();
            case 'f' -> literal("false") && valueDone();
            case 'n' -> literal("null") && valueDone();
            default -> (c == '-' || DIGITS.indexOf(c) >= 0) && number() && valueDone();
        };
    }

    private boolean valueDone() {
        token = null;
        next = depth == 0 ? Next.NOTHING : Next.COMMA_OR_END;
        return true;
    }

    private boolean open(int entry, Next then) {
        if (depth == open.length) {
            open = Arrays.copyOf(open, 2 * depth);
        }
        open[depth++] = entry;
        return take(then);
    }

    private boolean close() {
        at++;
        depth--;
        return valueDone();
    }

    private boolean comma() {
        if (inList()) {
            open[depth - 1]++;
        }
        return take(inList() ? Next.VALUE : Next.KEY);
    }

    private boolean inList() {
        return open[depth - 1] >= 0;
    }

    private boolean key(char c) {
        int start = at;
        if (c != '"' || !string()) {
            return false;
        }
        if (stringLength > limits.stringLength()) {
            return beyond(start, "a key of more than " + limits.stringLength() + " characters");
        }
        token = null;
        open[depth - 1] = -start;
        next = Next.COLON;
        return true;
    }

    private boolean string() {
        token = "the rest of a string";
        at++;
        int length = 0;
        while (at < end && chars[at] != '"') {
            if (chars[at] < ' ' || (chars[at] == '\\' && !escape())) {
                return false;
            }
            at++;
            length++;
        }
        stringLength = length;
        return skip("\"");
    }

    /** Leaves the place at the last character of the escape, or at the one that cannot stand in it. */
    private boolean escape() {
        at++;
        if (at < end && chars[at] == 'u') {
            return hexDigits(4);
        }
        return at < end && "\"\\/bfnrt".indexOf(chars[at]) >= 0;
    }

    private boolean hexDigits(int count) {
        for (int i = 0; i < count; i++) {
            at++;
            if (at == end || HEX.indexOf(chars[at]) < 0) {
                return false;
            }
        }
        return true;
    }

    private boolean literal(String word) {
        token = word;
        for (int i = 0; i < word.length(); i++, at++) {
            if (at == end || chars[at] != word.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private boolean number() {
        token = "the rest of a number";
        skip("-");
        boolean whole = skip("0") || digits();
        boolean sound = whole && (!skip(".") || digits()) && (!skip("eE") || exponent());
        return sound && isEndOfNumber();
    }

    private boolean exponent() {
        skip("+-");
        return digits();
    }

    private boolean digits() {
        int start = at;
        while (skip(DIGITS)) {
            // each skips one
        }
        return at > start;
    }

    private boolean skip(String one) {
        boolean met = at < end && one.indexOf(chars[at]) >= 0;
        if (met) {
            at++;
        }
        return met;
    }

    /** A number that touches the end of the text may go on, unless it is all there is. */
    private boolean isEndOfNumber() {
        return at == end ? depth == 0 : CharacterSource.isSpace(chars[at]) || ",]}".indexOf(chars[at]) >= 0;
    }

    private boolean beyond(int start, String what) {
        at = start;
        excess = what;
        return false;
    }

    /** {@return the JSON Pointer of the value being read, no deeper than values are read} */
    private String where() {
        boolean inside = next == Next.VALUE || next == Next.COLON || (next == Next.VALUE_OR_END && at < end);
        int levels = Math.min(inside ? depth : depth - 1, limits.nesting());
        StringBuilder pointer = new StringBuilder();
        for (int level = 0; level < levels; level++) {
            pointer.append('/').append(open[level] >= 0 ? Integer.toString(open[level]) : key(-open[level]));
        }
        return pointer.toString();
    }

    private String key(int start) {
        String key = Tokens.string(chars, start, end);
        return key.replace("~", "~0").replace("/", "~1");
    }

    private String message() {
        return excess != null ? "found " + excess + "; reading ends here" : found() + "; reading ends here";
    }

    private String found() {
        String cut = text.cut();
        if (at == end && cut != null) {
            return cut;
        }
        String found = at == end ? "the end of the text" : Found.character(Character.codePointAt(chars, at, end));
        return "found " + found + ", expected " + (token == null ? next.words : token);
    }
}
