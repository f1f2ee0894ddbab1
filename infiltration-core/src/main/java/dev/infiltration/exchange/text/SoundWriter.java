// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.text;

import java.io.IOException;
import java.io.Writer;
import java.util.Locale;

/**
 * Writes half a surrogate pair as a JSON escape: a string may contain one, an encoding may not. In JSON it
 * occurs only within a string.
 */
final class SoundWriter extends Writer {

    private final Writer target;
    private char pending;

    SoundWriter(Writer target) {
        this.target = target;
    }

    @Override
    public void write(char[] chars, int offset, int length) throws IOException {
        if (pending == 0 && !hasSurrogate(chars, offset, length)) {
            target.write(chars, offset, length);
            return;
        }
        StringBuilder sound = new StringBuilder(length + 1);
        for (int i = offset; i < offset + length; i++) {
            add(sound, chars[i]);
        }
        target.append(sound);
    }

    private static boolean hasSurrogate(char[] chars, int offset, int length) {
        for (int i = offset; i < offset + length; i++) {
            if (Character.isSurrogate(chars[i])) {
                return true;
            }
        }
        return false;
    }

    private void add(StringBuilder sound, char c) {
        if (pending != 0 && Character.isLowSurrogate(c)) {
            sound.append(pending).append(c);
            pending = 0;
            return;
        }
        if (pending != 0) {
            sound.append(escape(pending));
            pending = 0;
        }
        if (Character.isHighSurrogate(c)) {
            pending = c;
        } else {
            sound.append(Character.isLowSurrogate(c) ? escape(c) : Character.toString(c));
        }
    }

    private static String escape(char half) {
        return String.format(Locale.ROOT, "\\u%04x", (int) half);
    }

    @Override
    public void flush() throws IOException {
        target.flush();
    }

    /** Leaves the target open for the caller to close. */
    @Override
    public void close() throws IOException {
        target.flush();
    }
}
