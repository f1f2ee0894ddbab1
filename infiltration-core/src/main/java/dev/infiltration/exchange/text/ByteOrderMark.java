// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A byte-order mark: its bytes and the encoding that they identify. */
public final class ByteOrderMark {

    /** Replaces bytes that are not a character of the encoding: half a surrogate pair, which valid text never contains. */
    public static final char UNSOUND = '\uDFFF';

    private static final int LONGEST = 4;

    /** A longer mark is before a shorter one with the same start. */
    private static final List<ByteOrderMark> ALL = List.of(
            new ByteOrderMark("\u0000\u0000\u00FE\u00FF", "UTF-32BE"),
            new ByteOrderMark("\u00FF\u00FE\u0000\u0000", "UTF-32LE"),
            new ByteOrderMark("\u00FE\u00FF", "UTF-16BE"),
            new ByteOrderMark("\u00FF\u00FE", "UTF-16LE"),
            new ByteOrderMark("\u00EF\u00BB\u00BF", "UTF-8"),
            new ByteOrderMark("", "UTF-8"));

    private final String bytes;
    private final String encoding;

    private ByteOrderMark(String bytes, String encoding) {
        this.bytes = bytes;
        this.encoding = encoding;
    }

    /**
     * The characters after a mark.
     *
     * @param reader   the characters
     * @param encoding the name of the encoding
     */
    public record Marked(Reader reader, String encoding) {}

    /**
     * {@return the characters of bytes, in the encoding of their mark, or UTF-8 without one}
     *
     * @param bytes the bytes
     * @throws IOException if they cannot be read
     */
    public static Marked reader(InputStream bytes) throws IOException {
        PushbackInputStream marked = new PushbackInputStream(bytes, LONGEST);
        byte[] head = marked.readNBytes(LONGEST);
        ByteOrderMark mark = of(head);
        int length = mark.bytes.length();
        marked.unread(head, length, head.length - length);
        return new Marked(reader(marked, Charset.forName(mark.encoding)), mark.encoding);
    }

    private static ByteOrderMark of(byte[] head) {
        String start = new String(head, StandardCharsets.ISO_8859_1);
        return ALL.stream()
                .filter(mark -> start.startsWith(mark.bytes))
                .findFirst()
                .orElseThrow();
    }

    private static Reader reader(InputStream bytes, Charset charset) {
        return new InputStreamReader(
                bytes,
                charset.newDecoder()
                        .onMalformedInput(CodingErrorAction.REPLACE)
                        .onUnmappableCharacter(CodingErrorAction.REPLACE)
                        .replaceWith(String.valueOf(UNSOUND)));
    }
}
