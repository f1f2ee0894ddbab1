// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import java.util.List;

/** The usual cautions, and whom to defer to. */
final class Cautions {

    static final List<String> OF_A_REVIEW = List.of(
            "One result holds for its own spot; a surface's rate is the average over several locations.",
            "The rate is read at a shallow head: it is no permeability, and says nothing of reservoir or subgrade.",
            "Limits marked memory were not read in the licensed edition of the standard. The latest licensed edition, local codes"
                    + " and the engineer of record govern.",
            "On site: mind traffic and reversing vehicles, hot surfaces, lifting and trips; follow the local rules for traffic"
                    + " control.");

    private Cautions() {}
}
