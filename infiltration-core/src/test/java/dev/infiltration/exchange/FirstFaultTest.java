// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.async.ByteArrayFeeder;
import tools.jackson.core.json.JsonFactory;

/**
 * The first character that cannot stand, against a general parser that takes its input bit by bit: it takes all before that
 * character as the start of something, and refuses it once the character has come.
 */
class FirstFaultTest {

    private static final JsonFactory JSON = new JsonFactory();
    private static final ReadLimits LIMITS = ReadLimits.withDefaults();

    private static ReadFault fault(String text) {
        return FirstFault.of(CharacterSource.of(text, LIMITS.documentLength()), LIMITS);
    }

    /** The parser takes one document behind another: in a list it takes none without a comma. */
    private static boolean isStart(String text) {
        return isTaken(text) && isTaken("[" + text);
    }

    /** {@return whether the parser takes these characters, more of which may follow} */
    private static boolean isTaken(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        try (JsonParser parser = JSON.createNonBlockingByteArrayParser(ObjectReadContext.empty())) {
            ((ByteArrayFeeder) parser.nonBlockingInputFeeder()).feedInput(bytes, 0, bytes.length);
            JsonToken token = parser.nextToken();
            while (token != JsonToken.NOT_AVAILABLE) {
                token = parser.nextToken();
            }
            return true;
        } catch (JacksonException refused) {
            return false;
        }
    }

    /** {@return whether the parser takes these characters as a whole document} */
    private static boolean isWhole(String text) {
        try (JsonParser parser = JSON.createParser(ObjectReadContext.empty(), text)) {
            if (parser.nextToken() == null) {
                return false;
            }
            parser.skipChildren();
            parser.finishToken();
            return parser.nextToken() == null;
        } catch (JacksonException refused) {
            return false;
        }
    }

    @Provide
    Arbitrary<String> almostJson() {
        List<String> pieces = List.of(
                "{",
                "}",
                "[",
                "]",
                ",",
                ":",
                "\"",
                "\\",
                "\"a\"",
                "\"a\":",
                "\"\\u00e9\"",
                "\"\\n\"",
                "\\u12",
                "0",
                "1",
                "-",
                "-0",
                "12",
                "1.5",
                ".",
                "e",
                "E+1",
                "+",
                "true",
                "false",
                "null",
                "nul",
                "tru",
                " ",
                "\n",
                "\t",
                "x",
                "é",
                "\u0001",
                "/");
        return Arbitraries.of(pieces).list().ofMaxSize(12).map(list -> String.join("", list));
    }

    @Provide
    Arbitrary<String> mutatedJson() {
        String sound = "{\"a\":[1,-2.5e+3,\"x\\u00e9\\n\",{\"b\":null}],\"c\":{},\"d\":[],\"e\":true , \"f\":false}";
        return Combinators.combine(
                        Arbitraries.integers().between(0, sound.length()),
                        Arbitraries.of("", "\"", "x", "0", ",", "}", "]", ":", "\\", ".", "e", "-", "u", " "),
                        Arbitraries.integers().between(0, 3))
                .as((at, piece, cut) ->
                        sound.substring(0, at) + piece + sound.substring(Math.min(at + cut, sound.length())));
    }

    @Property(tries = 5_000)
    void soundTextHasNoFaultAndNoOther(@ForAll("almostJson") String text) {
        assertEquals(isWhole(text), fault(text) == null, text);
    }

    @Property(tries = 5_000)
    void allBeforeTheFaultStandsAndTheFaultDoesNot(@ForAll("almostJson") String text) {
        assertFirst(text);
    }

    @Property(tries = 5_000)
    void faultOfAMutatedDocumentIsTheFirst(@ForAll("mutatedJson") String text) {
        assertEquals(isWhole(text), fault(text) == null, text);
        assertFirst(text);
    }

    private static void assertFirst(String text) {
        ReadFault fault = fault(text);
        if (fault == null) {
            return;
        }
        assertTrue(isStart(text.substring(0, fault.offset())), () -> text + " up to " + fault);
        if (fault.offset() < text.length()) {
            String through = text.substring(0, fault.offset() + 1);
            assertTrue(isRefused(through), () -> text + " through " + fault);
        }
    }

    /** Behind a letter, and at a plus, the parser makes up its mind only when the next character has come. */
    private static boolean isRefused(String text) {
        return !isStart(text) || (text.matches("(?s).*([a-z].|[+])") && !isStart(text + " "));
    }

    @Property
    void cutDocumentFailsAtItsEnd(@ForAll @IntRange(max = 60) int length) {
        String sound = "{\"a\":[1,-2.5e+3,\"x\\u00e9\\n\",{\"b\":null}],\"c\":{},\"d\":[true]}";
        String text = sound.substring(0, Math.min(length, sound.length() - 1));
        assertEquals(text.length(), fault(text).offset());
    }
}
