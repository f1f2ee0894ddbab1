// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.examples.season;

/** The main job as a command: a field book in, its review out. */
public final class Season {

    private Season() {}

    /**
     * Reviews a field book.
     *
     * @param args the command's arguments
     */
    public static void main(String[] args) {
        System.err.println("usage: season [BOOK.json|BOOK.jsonl|-] [--json] [--strict] [--today DATE]"
                + " [--method FILE]... [--criterion FILE] [--out DIR]");
        System.exit(2);
    }
}
