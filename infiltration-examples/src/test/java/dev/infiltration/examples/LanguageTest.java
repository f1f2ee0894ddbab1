// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Keeps phrases out of documentation, messages and keys that a reader must translate into plain technical English.
 *
 * <p>Whole phrases only: single words such as "figure" have good uses.
 */
class LanguageTest {

    private static final Path ROOT = Path.of("..");

    /** Phrases in documentation, comments and messages, and in brackets what to write. */
    private static final List<String> PHRASES = List.of(
            "comes to a rate", // is a rate, results in
            "comes to nothing",
            "is told of", // is reported for
            "are told of",
            "told at once", // reported together
            "said beside it",
            "says so", // states it
            "say so", // state it
            "stand for the surface", // are representative of the surface
            "stands for the surface",
            "stand for the pattern",
            "holds the limit", // contains the limit
            "of one's own", // your own
            "so often as", // as often as
            "nothing more is to be said",
            "drawn anew", // bootstrap; selected again
            "written anew", // written again
            "counted out", // exact (computed by enumeration)
            "doubled record", // duplicate record
            "of a doubled",
            "far from the others", // outliers
            "what is left out", // excluded
            "gives way", // accelerating
            "give way",
            "levels off", // levelling off
            "rival curve", // alternative model
            "hangs on", // depends on
            "hang on",
            "cannot be had", // a run without a rate is a Withheld
            "absent by type",
            "share brought back", // recovery
            "brought back", // recovery
            "supposition broken", // assumption violated
            "placed blindly", // worst position
            "not sure:", // not confirmed because:
            "how sure", // confirmed, confidence
            "as stated:", // met, not met
            "limit reached,", // expected date at the limit
            "at the risk named", // accepted risk
            "mann and kendall's", // Mann–Kendall
            "theil and sen's", // Theil–Sen
            "factor a year", // annual factor
            "95 % sure", // 95 % confidence
            "nobody hurries", // never hurry
            "cannot tell: too few", // insufficient data
            "no difference shown", // not significant
            "raise the rate", // may bias the rate high
            "makes the rate look", // may bias the rate
            "moves the rate either way", // may bias the rate in either direction
            "too short a time before", // less than the required dry time
            "the spot to", // the location
            "wets the spot",
            "the spot drain",
            "(allowed: at least"); // (required: at least

    /** Keys and tokens of JSON documents that were replaced. */
    private static final Set<String> OLD_KEYS = Set.of(
            "standsForSurface",
            "logCoefficientOfVariation",
            "geometricMeanDrawnAnew",
            "geometricMeanWithBounds",
            "farFromTheOthers",
            "asStated",
            "doubts",
            "moreLocations",
            "moreLocationsCautiously",
            "areaAtLeast",
            "roundedTo",
            "typicalRatio",
            "factorAYear",
            "typicalFactorAYear",
            "fitsBetter",
            "countBasis",
            "tooNear",
            "waterInAll",
            "ringOnJoints",
            "blindly",
            "no-figure");

    /** Uses that are right: a quotation of an input, or a name. */
    private static final Set<String> ALLOWED = Set.of();

    private static final Pattern TEXT_IN_JAVA =
            Pattern.compile("/\\*.*?\\*/|//[^\n]*|\"\"\".*?\"\"\"|\"(?:\\\\.|[^\"\\\\\n])*\"", Pattern.DOTALL);

    @Test
    void documentationAndMessagesUsePlainTerms() throws IOException {
        assertEquals("", found(PHRASES, LanguageTest::phrase));
    }

    @Test
    void keysAreTheNewOnes() throws IOException {
        assertEquals("", found(List.copyOf(OLD_KEYS), key -> Pattern.compile("[\"`./]" + key + "[\"`.\\[]")));
    }

    @Test
    void phraseIsFoundAcrossLines() {
        assertTrue(phrase("how sure").matcher("How\n * sure it is").find());
        assertTrue(phrase("how sure").matcher("\"How \"\n + \"sure\"").find());
    }

    private interface Finder {
        Pattern of(String phrase);
    }

    private static String found(List<String> phrases, Finder finder) throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : files()) {
            String text = text(file);
            for (String phrase : phrases) {
                Matcher matcher = finder.of(phrase).matcher(text);
                while (matcher.find()) {
                    String place = file.getFileName() + ": " + phrase;
                    if (!ALLOWED.contains(place)) {
                        found.add(place);
                    }
                }
            }
        }
        return found.stream().distinct().sorted().collect(Collectors.joining("\n"));
    }

    /** Blanks, line ends, comment stars and the joints of a string in several parts are all one blank. */
    private static Pattern phrase(String phrase) {
        String words = Stream.of(phrase.split(" ", -1)).map(Pattern::quote).collect(Collectors.joining("[\\s*\"+]+"));
        return Pattern.compile("(?<![\\w])" + words + "(?![\\w])", Pattern.CASE_INSENSITIVE);
    }

    private static String text(Path file) throws IOException {
        String all = Files.readString(file);
        return file.toString().endsWith(".java")
                ? TEXT_IN_JAVA.matcher(all).results().map(MatchResult::group).collect(Collectors.joining("\n"))
                : all;
    }

    private static List<Path> files() throws IOException {
        List<Path> files = new ArrayList<>(
                List.of(ROOT.resolve("README.md"), ROOT.resolve("DEVELOPERS.md"), ROOT.resolve("CHANGELOG.md")));
        for (String folder : List.of(
                "docs",
                "infiltration-units/src/main",
                "infiltration-core/src/main",
                "infiltration-examples/src/main",
                "infiltration-examples/demo")) {
            try (Stream<Path> all = Files.walk(ROOT.resolve(folder))) {
                all.filter(file -> file.toString().matches(".*\\.(java|md|json|jsh)"))
                        .sorted()
                        .forEach(files::add);
            }
        }
        return files;
    }
}
