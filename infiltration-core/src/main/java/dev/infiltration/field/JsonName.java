// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import java.util.Locale;

/** A constant with a name in JSON documents: {@code PERVIOUS_CONCRETE} is written {@code pervious-concrete}. */
public interface JsonName {

    /** {@return the name of the constant} */
    String name();

    /** {@return the name in JSON documents} */
    default String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
