// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * ReportText of a page: our own and those of the book kept apart, so that neither passes for the other.
 *
 * @param pieces the words, in order
 */
record Phrase(List<Piece> pieces) {

    /** What a piece is. */
    enum Kind {
        OWN,
        STRONG,
        /** As somebody wrote it, in any script and direction. */
        WRITTEN,
        /** A pointer into the book or another code. */
        CODE,
        /** That something was not written down. */
        MISSING,
        LINK
    }

    /**
     * A piece of a phrase.
     *
     * @param kind   what it is
     * @param text   the words
     * @param target where a link leads, a path beside the page or a place on it; empty for every other kind
     */
    record Piece(Kind kind, String text, String target) {}

    static final Phrase NOT_RECORDED = missing("not recorded");

    Phrase {
        pieces = List.copyOf(pieces);
    }

    private static Phrase of(Kind kind, String text) {
        return new Phrase(List.of(new Piece(kind, text, "")));
    }

    static Phrase of(String own) {
        return of(Kind.OWN, own);
    }

    static Phrase strong(String own) {
        return of(Kind.STRONG, own);
    }

    static Phrase missing(String what) {
        return of(Kind.MISSING, what);
    }

    static Phrase code(Object pointer) {
        return of(Kind.CODE, pointer.toString());
    }

    /** {@return what was written}, or that nothing was */
    static Phrase written(@Nullable Object value) {
        String text = value == null ? "" : value.toString();
        return text.isEmpty() ? NOT_RECORDED : of(Kind.WRITTEN, text);
    }

    static Phrase link(String target, String written) {
        return new Phrase(List.of(new Piece(Kind.LINK, written, target)));
    }

    static Phrase yesOrNo(@Nullable Boolean value) {
        return value == null ? NOT_RECORDED : of(value ? "yes" : "no");
    }

    static Phrase joined(List<Phrase> phrases, String between) {
        Phrase all = new Phrase(List.of());
        for (Phrase phrase : phrases) {
            all = all.pieces.isEmpty() ? phrase : all.and(between).and(phrase);
        }
        return all;
    }

    Phrase and(Phrase other) {
        List<Piece> all = new ArrayList<>(pieces);
        all.addAll(other.pieces);
        return new Phrase(all);
    }

    Phrase and(String own) {
        return and(of(own));
    }
}
