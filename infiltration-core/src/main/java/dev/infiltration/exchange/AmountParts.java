// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.exchange.text.Digits;
import dev.infiltration.exchange.text.Found;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonToken;

/** The members of an amount as they were written: they come in any order, and are judged once all are known. */
final class AmountParts {

    private static final List<String> NAMES = List.of("value", "unit", "resolution");

    private final BookReading pass;
    private final int offset;
    private final @Nullable Part[] parts = new Part[NAMES.size()];
    private final boolean[] met = new boolean[NAMES.size()];
    private boolean readable = true;

    private AmountParts(BookReading pass) {
        this.pass = pass;
        this.offset = pass.tokens().offset();
    }

    /** {@return the members of the object that starts at the current token} */
    static AmountParts read(BookReading pass) {
        AmountParts amount = new AmountParts(pass);
        while (pass.tokens().next() == JsonToken.PROPERTY_NAME) {
            amount.member(NAMES.indexOf(pass.tokens().text()));
        }
        return amount;
    }

    private void member(int index) {
        if (index < 0) {
            pass.leaveOutKey("value, unit or resolution");
        } else if (met[index]) {
            repeated(index);
        } else {
            met[index] = true;
            parts[index] = part(NAMES.get(index));
        }
    }

    private static boolean isAlike(@Nullable Part first, @Nullable Part second) {
        if (first == null || second == null) {
            return first == null && second == null;
        }
        return first.token == second.token && first.text.equals(second.text);
    }

    /** Of two values that differ neither can be believed. */
    private void repeated(int index) {
        int keyAt = pass.tokens().offset();
        String where = pass.tokens().pointer();
        @Nullable Part first = parts[index];
        @Nullable Part second = part(NAMES.get(index));
        if (isAlike(first, second)) {
            pass.report(
                    keyAt, where, "found the key \"" + NAMES.get(index) + "\", expected it once; the key is left out");
        } else {
            readable = false;
            pass.reportValue(keyAt, where, "the key \"" + NAMES.get(index) + "\" with another value", "it once");
        }
    }

    private @Nullable Part part(String name) {
        @Nullable JsonToken token = pass.value();
        if (token == null) {
            return null;
        }
        Tokens tokens = pass.tokens();
        Part part = new Part(name, token, tokens.offset(), token.isScalarValue() ? tokens.text() : tokens.found());
        tokens.skip();
        return part;
    }

    @Nullable
    Part value() {
        return parts[0];
    }

    @Nullable
    Part unit() {
        return parts[1];
    }

    @Nullable
    Part resolution() {
        return parts[2];
    }

    /** {@return whether nothing was reported that takes the amount with it} */
    boolean isReadable() {
        return readable;
    }

    /** Reports a member at its own place. */
    void report(Part part, String expected) {
        readable = false;
        pass.reportValue(part.offset, pass.tokens().pointer() + "/" + part.name, part.found(), expected);
    }

    /** Reports, at the amount, that value or unit or both are missing. */
    void reportMissing() {
        if (value() == null || unit() == null) {
            readable = false;
            String missing = value() != null ? "no unit" : unit() != null ? "no value" : "neither value nor unit";
            pass.reportValue(offset, pass.tokens().pointer(), missing, "both");
        }
    }

    /** A member: its name, the kind of its token and the token's text. */
    record Part(String name, JsonToken token, int offset, String text) {

        /** {@return the text of a string, or null of any other value} */
        @Nullable
        String string() {
            return token == JsonToken.VALUE_STRING ? text : null;
        }

        /** {@return the number of a number or of a string of digits that an amount may have, else null} */
        @Nullable
        BigDecimal number() {
            @Nullable
            BigDecimal number = token == JsonToken.VALUE_STRING
                    ? Digits.quoted(text)
                    : token.isNumeric() ? Digits.decimal(text) : null;
            return number == null || !Digits.isAmount(number) ? null : Digits.held(number);
        }

        private String found() {
            return token == JsonToken.VALUE_STRING ? Found.quoted(text) : Found.shortened(text);
        }
    }
}
