// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Normalises the words of a header: case, separators and abbreviations. */
final class HeaderWords {

    private static final Pattern BETWEEN = Pattern.compile("[\\s._-]+");

    /** Common abbreviations of the trade. */
    private static final Map<String, String> SHORT = Map.of(
            "no", "number",
            "num", "number",
            "#", "number",
            "dia", "diameter",
            "diam", "diameter",
            "wt", "weight",
            "vol", "volume",
            "temp", "temperature",
            "loc", "location",
            "prewetting", "prewet");

    private HeaderWords() {}

    /** {@return the full words in lower case, separated by blanks}; {@code Pour #2 before} becomes {@code pour 2 before} */
    static String of(String header) {
        String words = header.toLowerCase(Locale.ROOT).replace("#", " # ");
        return BETWEEN.splitAsStream(words)
                .filter(word -> !word.isEmpty())
                .map(word -> SHORT.getOrDefault(word, word))
                .collect(Collectors.joining(" "))
                .replaceAll("\\bpre wet(?:ting)?\\b", "prewet")
                .replaceAll("\\bnumber (?=[0-9])", "");
    }
}
