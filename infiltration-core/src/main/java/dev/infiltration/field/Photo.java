// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A photograph of a test.
 *
 * @param file   name of the file
 * @param sha256 SHA-256 of the file in hexadecimal digits, so that a later change of the file shows
 * @param extra  the host's own values, kept and written back untouched
 */
public record Photo(@Nullable String file, @Nullable String sha256, Map<String, Object> extra) {

    /** Copies the values of the host; absent ones become empty. */
    public Photo {
        extra = Copies.extra(extra);
    }

    /**
     * {@return a photograph by the name of its file}
     *
     * @param file name of the file
     */
    public static Photo of(@Nullable String file) {
        return new Photo(file, null, Map.of());
    }

    /**
     * {@return this photograph with the SHA-256 of its file}
     *
     * @param sha256 hexadecimal digits
     */
    public Photo withSha256(@Nullable String sha256) {
        return new Photo(file, sha256, extra);
    }

    /**
     * {@return this photograph with other {@code extra}}
     *
     * @param extra the host's own values, kept and written back untouched
     */
    public Photo withExtra(Map<String, Object> extra) {
        return new Photo(file, sha256, extra);
    }

    /** {@return whether the name of the file is all that is recorded} */
    public boolean isNameOnly() {
        return file != null && sha256 == null && extra.isEmpty();
    }

    /** {@return the photograph for people: the name of the file, and its SHA-256 where it is recorded} */
    @Override
    public String toString() {
        return (file == null ? "" : file) + (sha256 == null ? "" : " (SHA-256 " + sha256 + ")");
    }
}
