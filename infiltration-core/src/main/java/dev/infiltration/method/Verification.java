// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.method;

import java.time.LocalDate;
import java.util.Objects;

/**
 * That somebody compared a method's limits with a licensed edition of its standard.
 *
 * @param by      initials of who did
 * @param on      when
 * @param edition the edition, such as {@code C1701/C1701M-17a(2023)}
 */
public record Verification(String by, LocalDate on, String edition) {

    /** Checks that all parts are there. */
    public Verification {
        Objects.requireNonNull(by, "by");
        Objects.requireNonNull(on, "on");
        Objects.requireNonNull(edition, "edition");
    }
}
