// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

/**
 * Size limits of a document: reading stops at them, so that a hostile document cannot use up time or memory.
 *
 * <p>Exceeding a limit is one problem, and reading ends there as at invalid JSON.
 *
 * @param nesting        objects and lists inside each other, 1 to 1000
 * @param stringLength   characters of a string or a key
 * @param numberLength   characters of a number
 * @param documentLength characters of a document; of a line where a file is read line by line
 */
public record ReadLimits(int nesting, int stringLength, int numberLength, int documentLength) {

    /** Reading is recursive, and the stack of a thread is limited. */
    private static final int DEEPEST = 1_000;

    /**
     * Checks the limits.
     *
     * @throws IllegalArgumentException if one is below 1, or nesting above 1000
     */
    public ReadLimits {
        check("nesting", nesting);
        check("stringLength", stringLength);
        check("numberLength", numberLength);
        check("documentLength", documentLength);
        if (nesting > DEEPEST) {
            throw new IllegalArgumentException("nesting: expected at most " + DEEPEST + ", got " + nesting);
        }
    }

    private static void check(String name, int limit) {
        if (limit < 1) {
            throw new IllegalArgumentException(name + ": expected at least 1, got " + limit);
        }
    }

    /**
     * {@return limits above the size of a year of a large utility}: nesting 200, strings of 10 million characters, numbers
     * of 1000, documents of a thousand million
     */
    public static ReadLimits withDefaults() {
        return new ReadLimits(200, 10_000_000, 1_000, 1_000_000_000);
    }

    /**
     * {@return these limits with another nesting}
     *
     * @param nesting objects and lists inside each other, 1 to 1000
     */
    public ReadLimits withNesting(int nesting) {
        return new ReadLimits(nesting, stringLength, numberLength, documentLength);
    }

    /**
     * {@return these limits with another length of strings}
     *
     * @param stringLength characters of a string or a key, at least 1
     */
    public ReadLimits withStringLength(int stringLength) {
        return new ReadLimits(nesting, stringLength, numberLength, documentLength);
    }

    /**
     * {@return these limits with another length of numbers}
     *
     * @param numberLength characters of a number, at least 1
     */
    public ReadLimits withNumberLength(int numberLength) {
        return new ReadLimits(nesting, stringLength, numberLength, documentLength);
    }

    /**
     * {@return these limits with another length of documents}
     *
     * @param documentLength characters of a document or a line, at least 1
     */
    public ReadLimits withDocumentLength(int documentLength) {
        return new ReadLimits(nesting, stringLength, numberLength, documentLength);
    }
}
