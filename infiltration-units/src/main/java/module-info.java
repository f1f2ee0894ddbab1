// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

/** Readings as they were written down, their units, and computed infiltration rates. */
module dev.infiltration.units {
    requires static org.apiguardian.api;
    requires transitive org.jspecify;
    requires transitive java.measure;
    requires tech.units.indriya;

    exports dev.infiltration.units;
}
