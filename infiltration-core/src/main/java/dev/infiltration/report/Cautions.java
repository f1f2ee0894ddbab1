// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import java.util.List;

/** The usual cautions, and the authorities that govern. */
final class Cautions {

    static final List<String> OF_A_REVIEW = List.of(
            "A test result applies to the tested location only; the rate of a surface is the average of several locations.",
            "The rate is measured at a shallow head. It is not a permeability and does not describe the reservoir or the subgrade.",
            "Limits marked memory were not read in the licensed edition of the standard. The latest licensed edition, local codes"
                    + " and the engineer of record govern.",
            "On site: follow the local rules for traffic control, and watch for reversing vehicles. Never hurry to keep a time"
                    + " limit: prewet again. Hot surfaces burn; split heavy water over two vessels; keep walkways clear; stop at"
                    + " the first thunder.",
            "Do not pour water near or below freezing. Do not spread grit or sand on a permeable pavement: it clogs it.");

    private Cautions() {}
}
