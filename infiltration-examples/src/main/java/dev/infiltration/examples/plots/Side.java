// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

/** On which side of a mark its words stand. */
enum Side {
    RIGHT("start", 9, 4),
    LEFT("end", -9, 4),
    ABOVE("middle", 0, -9),
    BELOW("middle", 0, 19),
    RIGHT_BELOW("start", 9, 18),
    LEFT_BELOW("end", -9, 18),
    RIGHT_ABOVE("start", 9, -10),
    LEFT_ABOVE("end", -9, -10),
    /** Close by, for the words of a line. */
    ON_LINE("start", 4, -4),
    PAST_LINE("start", 4, 12),
    BEFORE_LINE("end", -4, 12),
    /** Beside the end of a line. */
    PAST_END("start", 4, 4),
    BEFORE_END("end", -4, 4);

    private final String anchor;
    private final double right;
    private final double down;

    Side(String anchor, double right, double down) {
        this.anchor = anchor;
        this.right = right;
        this.down = down;
    }

    Label label(double x, double y, Ink ink, String text) {
        return new Label(x + right, y + down, anchor, ink, text);
    }
}
