// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import java.util.List;

/** A part of a page. */
sealed interface Block {

    /**
     * A part under a heading of its own.
     *
     * @param id      its place on the page, the only one of this name
     * @param heading the heading
     * @param blocks  what stands under it
     */
    record Section(String id, Phrase heading, List<Block> blocks) implements Block {

        public Section {
            blocks = List.copyOf(blocks);
        }
    }

    /**
     * A paragraph.
     *
     * @param words the words
     */
    record Paragraph(Phrase words) implements Block {

        static Paragraph of(String own) {
            return new Paragraph(Phrase.of(own));
        }
    }

    /**
     * A list.
     *
     * @param points its points
     */
    record Points(List<Phrase> points) implements Block {

        public Points {
            points = List.copyOf(points);
        }
    }

    /**
     * Names and what they are, line by line.
     *
     * @param facts the lines
     */
    record Facts(List<Fact> facts) implements Block {

        public Facts {
            facts = List.copyOf(facts);
        }
    }

    /**
     * A name and what it is.
     *
     * @param name  the name
     * @param value what it is
     */
    record Fact(String name, Phrase value) {}

    /**
     * A table; the first cell of each row names the row.
     *
     * @param caption what it shows
     * @param heads   the names of the columns
     * @param rows    the rows, each with as many cells as there are columns
     */
    record Table(Phrase caption, List<Phrase> heads, List<List<Phrase>> rows) implements Block {

        public Table {
            heads = List.copyOf(heads);
            rows = rows.stream().map(List::copyOf).toList();
        }

        static Table of(String caption, List<String> heads, List<List<Phrase>> rows) {
            return new Table(Phrase.of(caption), heads.stream().map(Phrase::of).toList(), rows);
        }
    }

    /**
     * A picture and the table that says the same.
     *
     * @param plot  what is drawn
     * @param svg   the drawing; empty where nobody draws
     */
    record Picture(Plot plot, String svg) implements Block {}
}
