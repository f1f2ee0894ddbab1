// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.field;

import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Tuple;

/** Texts for field books: ids of which a few come often, so that what names a record often finds one. */
final class Texts {

    private static final List<String> NO_PLAIN_TEXTS = List.of(
            "",
            " ",
            "a/b",
            "a~b",
            "\"",
            "\\",
            "\u0000",
            "\n",
            "\u007F",
            "\u2028",
            "\uFEFF",
            "\uD83D\uDCA7",
            "\uD83D",
            "\uDCA7");

    private static final Map<String, List<String>> IDS = Map.of(
            "surface", List.of("HQ-A", "HQ-B"),
            "location", List.of("A1", "A2", "A3"),
            "ring", List.of("R1", "R2"),
            "instrument", List.of("B1", "W1"),
            "visit", List.of("V1", "V2", "V3"),
            "method", List.of("pervious-concrete", "unit-pavement", "utility-practice", "C1781"),
            "campaign", List.of("2026"),
            "where", List.of("/visits/0/tests/0/ring"));

    private static final Map<String, String> NAMES = Map.of(
            "surface.id", "surface",
            "location.id", "location",
            "locations", "location",
            "ring.id", "ring",
            "instrument.id", "instrument",
            "instruments", "instrument",
            "visit.id", "visit");

    private Texts() {}

    /** {@return texts of any characters} */
    static Arbitrary<String> any() {
        return Arbitraries.frequencyOf(
                Tuple.of(4, Arbitraries.strings().alpha().ofMaxLength(6)),
                Tuple.of(1, Arbitraries.of(NO_PLAIN_TEXTS)),
                Tuple.of(1, Arbitraries.strings().ofMaxLength(4)));
    }

    /** {@return texts for a component} */
    static Arbitrary<String> of(Class<?> owner, String component) {
        String kind = owner.getSimpleName().toLowerCase(java.util.Locale.ROOT) + "." + component;
        List<String> ids = IDS.get(NAMES.getOrDefault(kind, NAMES.getOrDefault(component, component)));
        return ids == null ? any() : Arbitraries.frequencyOf(Tuple.of(9, Arbitraries.of(ids)), Tuple.of(1, any()));
    }
}
