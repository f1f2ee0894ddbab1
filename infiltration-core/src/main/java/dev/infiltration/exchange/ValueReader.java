// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonToken;

/** Reads one value. */
interface ValueReader {

    /** Marks a value that cannot be read and has been reported. */
    Object UNREADABLE = new Object();

    /**
     * Reads the value that starts at the current token, and leaves the place at its last.
     *
     * @param pass  the pass whose current token starts the value
     * @param token that token, which is not {@code null}'s
     * @return the value; {@link #UNREADABLE}; or null when the text ended and nothing of the value can be kept
     */
    @Nullable
    Object read(BookReading pass, JsonToken token);
}
