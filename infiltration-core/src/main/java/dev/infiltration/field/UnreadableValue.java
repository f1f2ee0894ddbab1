// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import java.util.Objects;
import java.util.regex.Pattern;

/**
 * A value of a document that could not be read, with its place and its original text.
 *
 * @param where    JSON Pointer (RFC 6901) of the problem, as the document counts: the deepest value at fault
 * @param lost     JSON Pointer of the value that was left out; it equals {@code where} or is above it
 * @param original the text of the value that was left out, as JSON; of a text of more than 1 000 characters its first 1 000,
 *     as a JSON string
 */
public record UnreadableValue(String where, String lost, String original) {

    /** The longest original that is kept whole, in characters. */
    public static final int LONGEST_ORIGINAL = 1_000;

    private static final String POURING = "/visits/\\d+/tests/\\d+/(preWet|runs/\\d+)";
    private static final Pattern PART_OF_RATE = Pattern.compile("(/visits(/\\d+(/(surface|date|tests"
            + "(/\\d+(/(location|ring|notTested|preWet|runs"
            + "|runs/\\d+|(preWet|runs/\\d+)/(water|elapsed|end|depthAtStop|head|head/state"
            + "|pours(/\\d+(/(before|after))?)?|events(/\\d+(/kind)?)?)"
            + "))?)?))?)?|/rings(/\\d+(/(insideDiameter|insideDiameters(/\\d+)?))?)?)?");
    private static final Pattern DECIDES_RUNS = Pattern.compile(POURING + "/(start|delay)"
            + "|/visits/\\d+/(method|purpose|campaign)"
            + "|/sites(/\\d+(/(timeZone|surfaces(/\\d+(/type)?)?))?)?"
            + "|/maintenance(/\\d+(/(surface|start|end|locations(/\\d+)?))?)?");

    /** Checks that all texts are there. */
    public UnreadableValue {
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(lost, "lost");
        Objects.requireNonNull(original, "original");
    }

    /** {@return the place of the problem, as the document counts} */
    public Place place() {
        return Place.parse(where);
    }

    /** {@return whether a rate is computed from the value that was left out} */
    public boolean isPartOfRate() {
        return PART_OF_RATE.matcher(lost).matches();
    }

    /**
     * {@return whether the value that was left out decides which runs are used for a result, or which visits belong together}:
     * a start, a delay, a visit's method, purpose or campaign, a surface's type, a site's time zone, a maintenance entry's
     * surface, locations, start or end
     */
    public boolean decidesWhichRunsAreUsed() {
        return DECIDES_RUNS.matcher(lost).matches();
    }

    /**
     * {@return whether the value that was left out is inside a record or is the record itself}
     *
     * @param record the record's place, as the document counts
     */
    public boolean isWithin(Place record) {
        String pointer = record.toString();
        return lost.startsWith(pointer) && (lost.length() == pointer.length() || lost.charAt(pointer.length()) == '/');
    }
}
