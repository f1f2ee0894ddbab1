// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.exchange.text.Found;
import dev.infiltration.field.UnreadableValue;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.io.JsonStringEncoder;
import tools.jackson.core.json.JsonFactory;

/**
 * The tokens of a text, until it ends or the parser refuses it: after that there are no more.
 *
 * <p>The limits are checked here and not by the parser. A value beyond a limit is passed over and given as one
 * {@link JsonToken#VALUE_EMBEDDED_OBJECT}, which no reader accepts. A key beyond the limit ends the tokens.
 */
final class Tokens implements AutoCloseable {

    private static final JsonFactory JSON = JsonFactory.builder()
            .disable(TokenStreamFactory.Feature.FAIL_ON_SYMBOL_HASH_OVERFLOW)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(Integer.MAX_VALUE)
                    .maxNumberLength(Integer.MAX_VALUE)
                    .maxStringLength(Integer.MAX_VALUE)
                    .maxNameLength(Integer.MAX_VALUE)
                    .build())
            .build();

    private final JsonParser parser;
    private final char[] chars;
    private final int end;
    private final boolean isCut;
    private final String prefix;
    private final ReadLimits limits;
    private int depth;
    private boolean ended;
    private boolean refused;
    private boolean isEmpty = true;
    /** Names the limit that the current value exceeds, or null. */
    private @Nullable String excess;
    /** The characters before the current value, where it exceeds a limit. */
    private int excessStart;

    /**
     * Starts before the first token.
     *
     * @param prefix pointer of the text in its document
     */
    Tokens(CharacterSource text, String prefix, ReadLimits limits) {
        this.parser = JSON.createParser(ObjectReadContext.empty(), text.chars(), 0, text.end());
        this.chars = text.chars();
        this.end = text.end();
        this.isCut = text.cut() != null;
        this.prefix = prefix;
        this.limits = limits;
    }

    /** {@return what the string says whose opening quote stands at {@code start}} */
    static String string(char[] chars, int start, int end) {
        try (JsonParser parser = JSON.createParser(ObjectReadContext.empty(), chars, start, end - start)) {
            parser.nextToken();
            return parser.getString();
        }
    }

    /** {@return the next token, or null when there are no more} */
    @Nullable
    JsonToken next() {
        if (ended) {
            return null;
        }
        @Nullable JsonToken token = advance();
        ended = token == null;
        return token;
    }

    private @Nullable JsonToken advance() {
        try {
            excess = null;
            @Nullable JsonToken token = parser.nextToken();
            refused = token == null ? isEmpty : !isWhole(token);
            isEmpty = false;
            return token == null || refused ? null : withinLimits(token);
        } catch (JacksonException broken) {
            refused = true;
            return null;
        }
    }

    private boolean isWhole(JsonToken token) {
        return switch (token) {
            case PROPERTY_NAME -> parser.getStringLength() <= limits.stringLength();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> isWholeNumber();
            default -> true;
        };
    }

    /** A number that touches the end of the text may go on, unless it is the whole text. */
    private boolean isWholeNumber() {
        return depth == 0 || (int) parser.currentTokenLocation().getCharOffset() + parser.getStringLength() < end;
    }

    private @Nullable JsonToken withinLimits(JsonToken token) {
        @Nullable String beyond = beyond(token);
        if (beyond == null) {
            return token;
        }
        int start = offset();
        boolean isPassed = !isStart(token) || isPassedOver();
        excess = beyond;
        excessStart = start;
        return isPassed ? JsonToken.VALUE_EMBEDDED_OBJECT : null;
    }

    /** {@return the limit that the current value exceeds, for people, or null} */
    private @Nullable String beyond(JsonToken token) {
        return switch (token) {
            case START_OBJECT, START_ARRAY ->
                ++depth <= limits.nesting() ? null : "objects and lists nested deeper than " + limits.nesting();
            case VALUE_STRING -> beyond("string", limits.stringLength());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> beyond("number", limits.numberLength());
            case END_OBJECT, END_ARRAY -> {
                depth--;
                yield null;
            }
            default -> null;
        };
    }

    private @Nullable String beyond(String kind, int limit) {
        return parser.getStringLength() <= limit ? null : "a " + kind + " of more than " + limit + " characters";
    }

    /** {@return whether the text contains the end of the current object or list}; the place is then at that end */
    private boolean isPassedOver() {
        depth--;
        int inside = 1;
        while (inside > 0) {
            @Nullable JsonToken token = parser.nextToken();
            if (token == null) {
                refused = true;
                return false;
            }
            inside += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
        }
        return true;
    }

    /** {@return whether tokens ran out} */
    boolean ended() {
        return ended;
    }

    /** {@return whether the text is a whole value and nothing but space is left of it}; there are no more tokens then */
    boolean isComplete() {
        boolean goesOn = next() != null;
        refused = refused || goesOn;
        ended = true;
        return !refused && !isCut;
    }

    /** Leaves the place at the end of the current value. */
    void skip() {
        int outside = depth - (isStart(parser.currentToken()) ? 1 : 0);
        while (depth > outside && next() != null) {
            // all inside is passed over
        }
    }

    private static boolean isStart(@Nullable JsonToken token) {
        return token == JsonToken.START_OBJECT || token == JsonToken.START_ARRAY;
    }

    /** {@return the characters before the current token} */
    int offset() {
        return excess != null
                ? excessStart
                : (int) parser.currentTokenLocation().getCharOffset();
    }

    /** {@return the text from {@code start} to the end of the current token, as JSON}; of a long one the beginning, as a string */
    String original(int start) {
        return original(start, end());
    }

    String original(int start, int end) {
        return original(chars, start, end);
    }

    /** {@return the characters before the end of the current token} */
    int end() {
        parser.finishToken();
        return (int) parser.currentLocation().getCharOffset();
    }

    /** {@return whether the value from {@code from} to {@code to} is written as the one from {@code start} to the current token} */
    boolean isAlike(int from, int to, int start) {
        return Arrays.equals(chars, from, to, chars, start, end());
    }

    static String original(char[] chars, int start, int end) {
        return end - start <= UnreadableValue.LONGEST_ORIGINAL
                ? new String(chars, start, end - start)
                : beginning(chars, start, end);
    }

    /** {@return the first characters of a text, as a JSON string} */
    static String beginning(char[] chars, int start, int end) {
        int length = Math.min(end - start, UnreadableValue.LONGEST_ORIGINAL);
        if (length > 0 && Character.isHighSurrogate(chars[start + length - 1])) {
            length--;
        }
        char[] quoted = JsonStringEncoder.getInstance().quoteAsCharArray(new String(chars, start, length));
        return '"' + new String(quoted) + '"';
    }

    /** {@return the JSON Pointer of the current value or key} */
    String pointer() {
        return prefix + parser.streamReadContext().pathAsPointer();
    }

    /** {@return the text of the current string, key or number} */
    String text() {
        return parser.getString();
    }

    /** {@return the current value for people} */
    String found() {
        if (excess != null) {
            return excess;
        }
        @Nullable JsonToken token = parser.currentToken();
        if (token == null) {
            return "nothing";
        }
        return switch (token) {
            case START_OBJECT -> "an object";
            case START_ARRAY -> "a list";
            case VALUE_STRING -> Found.quoted(text());
            default -> Found.shortened(text());
        };
    }

    @Override
    public void close() {
        parser.close();
    }
}
