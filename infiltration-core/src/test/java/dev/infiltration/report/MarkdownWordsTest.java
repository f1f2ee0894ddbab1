// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Numbers in Markdown: CommonMark 0.31.2, 5.2 (published): an ordered list marker is one to nine digits, a full stop or a round
 * bracket, then a space, a tab or the end of the line.
 */
class MarkdownWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    2.0 m        | 2.0 m
                    170.44       | 170.44
                    1)x          | 1)x
                    1. item      | 1\\. item
                    1) item      | 1\\) item
                    12.          | 12\\.
                    1234567890. x| 1234567890. x
                    """)
    void onlyAListMarkerIsEscaped(String text, String markdown) {
        assertEquals(markdown, MarkdownWords.escaped(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2.0 m", "170.44", "1)x", "1. item", "1) item", "12.", "1234567890. x", "  3. x"})
    void numberIsReadAsTextByAParser(String text) {
        Node first = Parser.builder().build().parse(MarkdownWords.escaped(text)).getFirstChild();
        assertEquals(Paragraph.class, first.getClass());
        assertEquals(text.strip(), ((Text) first.getFirstChild()).getLiteral().strip());
        assertEquals(null, first.getFirstChild().getNext());
    }
}
