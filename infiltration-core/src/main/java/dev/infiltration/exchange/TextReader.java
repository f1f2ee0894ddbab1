// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.exchange.text.ByteOrderMark;
import java.io.CharArrayWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import org.jspecify.annotations.Nullable;

/** Turns bytes into text, whole or line by line: UTF-8, or the encoding of the byte-order mark. */
final class TextReader {

    private static final int BLOCK = 1 << 14;

    private final Reader reader;
    private final String encoding;
    private final int limit;
    private final char[] block = new char[BLOCK];
    private int next;
    private int filled;
    private int lines;

    private TextReader(Reader reader, String encoding, int limit) {
        this.reader = reader;
        this.encoding = encoding;
        this.limit = limit;
    }

    /**
     * {@return a reader of bytes}
     *
     * @param limit characters of a text, beyond which it is cut
     */
    static TextReader of(InputStream bytes, int limit) throws IOException {
        ByteOrderMark.Marked marked = ByteOrderMark.reader(bytes);
        return new TextReader(marked.reader(), marked.encoding(), limit);
    }

    static TextReader of(String text, int limit) {
        return new TextReader(new StringReader(text.startsWith("\uFEFF") ? text.substring(1) : text), "Unicode", limit);
    }

    /** {@return all that has not been read yet} */
    CharacterSource rest() throws IOException {
        return rest(new CharArrayWriter());
    }

    /** {@return {@code line}, which was the last line read, and all after it} */
    CharacterSource restFrom(CharacterSource line) throws IOException {
        CharArrayWriter text = new CharArrayWriter();
        text.write(line.chars(), 0, line.chars().length);
        return rest(text);
    }

    private CharacterSource rest(CharArrayWriter text) throws IOException {
        while (text.size() <= limit && fill()) {
            text.write(block, next, filled - next);
            next = filled;
        }
        return CharacterSource.of(text.toCharArray(), text.size(), 0, limit, encoding);
    }

    /** {@return the next line, its {@code \n} or {@code \r\n} after its end, or null after the last} */
    @Nullable
    CharacterSource line() throws IOException {
        if (!fill()) {
            return null;
        }
        CharArrayWriter line = new CharArrayWriter(256);
        boolean ended = false;
        while (!ended && fill()) {
            int after = afterLine();
            ended = block[after - 1] == '\n';
            if (line.size() <= limit) {
                line.write(block, next, after - next);
            }
            next = after;
        }
        lines++;
        char[] chars = line.toCharArray();
        return CharacterSource.of(chars, content(chars), lines, limit, encoding);
    }

    private int afterLine() {
        int after = next;
        while (after < filled && block[after] != '\n') {
            after++;
        }
        return Math.min(after + 1, filled);
    }

    private static int content(char[] line) {
        int length = line.length;
        if (length > 0 && line[length - 1] == '\n') {
            length--;
            return length > 0 && line[length - 1] == '\r' ? length - 1 : length;
        }
        return length;
    }

    private boolean fill() throws IOException {
        if (next == filled) {
            next = 0;
            filled = Math.max(reader.read(block), 0);
        }
        return filled > 0;
    }
}
