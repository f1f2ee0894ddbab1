// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.infiltration.check.Checker;
import dev.infiltration.field.ReadBook;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.review.Review;
import dev.infiltration.review.RunRate;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/** The demo book, which is invented, with one of its values made unreadable at a time. */
class UnreadableDemoTest {

    private static final Path DEMO = Path.of("..", "infiltration-examples", "demo", "harrow-quay.json");
    private static final Checker CHECKER = Checker.withDefaults().withToday(LocalDate.of(2030, 1, 1));

    /** Where a value stands in the text. */
    private record Span(String pointer, int start, int end) {}

    private static List<Span> values(String json) {
        List<Span> values = new ArrayList<>();
        List<Integer> open = new ArrayList<>();
        try (JsonParser parser = new JsonFactory().createParser(ObjectReadContext.empty(), json.toCharArray())) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                parser.finishToken();
                int start = (int) parser.currentTokenLocation().getCharOffset();
                int end = (int) parser.currentLocation().getCharOffset();
                String pointer = parser.streamReadContext().pathAsPointer().toString();
                if (token == JsonToken.START_OBJECT || token == JsonToken.START_ARRAY) {
                    open.add(start);
                } else if (token == JsonToken.END_OBJECT || token == JsonToken.END_ARRAY) {
                    values.add(new Span(pointer, open.remove(open.size() - 1), end));
                } else if (token != JsonToken.PROPERTY_NAME) {
                    values.add(new Span(pointer, start, end));
                }
            }
        }
        values.removeIf(value -> value.pointer().isEmpty() || value.pointer().equals("/format"));
        return values;
    }

    private static Review review(ReadBook read) {
        return Review.of(read, CHECKER);
    }

    private static Map<String, RateOutcome> outcomes(Review review) {
        Map<String, RateOutcome> outcomes = new LinkedHashMap<>();
        for (RunRate run : review.runs()) {
            outcomes.put(run.where().toString(), run.outcome());
        }
        return outcomes;
    }

    private static String written(ReadBook read) throws IOException {
        StringWriter text = new StringWriter();
        Samples.JSON.write(read, text);
        return text.toString();
    }

    private static void assertNothingIsChanged(String json, String replacement, int step) throws IOException {
        Map<String, RateOutcome> before = outcomes(review(Samples.JSON.read(json)));
        List<Span> values = values(json);
        for (int i = 0; i < values.size(); i += step) {
            Span value = values.get(i);
            String without = json.substring(0, value.start()) + replacement + json.substring(value.end());
            ReadBook read = Samples.JSON.read(without);
            Review review = review(read);
            outcomes(review)
                    .forEach((run, outcome) -> assertTrue(
                            outcome instanceof RateOutcome.Withheld || outcome.equals(before.get(run)),
                            () -> value.pointer() + " changes " + run + " to " + outcome));
            Review again = review(Samples.JSON.read(written(read)));
            assertEquals(review.findings(), again.findings(), value.pointer());
            assertEquals(outcomes(review), outcomes(again), value.pointer());
        }
    }

    @Test
    void someValuesMadeUnreadableChangeNoRate() throws IOException {
        assertNothingIsChanged(Files.readString(DEMO), "[[]]", 29);
    }

    @Test
    @Tag("slow")
    void anyValueMadeUnreadableChangesNoRate() throws IOException {
        assertNothingIsChanged(Files.readString(DEMO), "[[]]", 1);
    }

    @Test
    void aLostPourWithholdsItsRun() {
        String pours = """
                "rings":[{"id":"R1","insideDiameter":{"value":12,"unit":"in"}}],
                "sites":[{"id":"HQ","surfaces":[{"id":"S","locations":[{"id":"A"}]}]}],
                "visits":[{"id":"V1","surface":"S","date":"2026-06-03","tests":[{"location":"A","ring":"R1","runs":[
                {"elapsed":{"value":60,"unit":"s"},"end":"drained","pours":[%s,
                {"before":{"value":20,"unit":"lb"},"after":{"value":0,"unit":"lb"}}]},null]}]}]""";
        ReadBook read = Samples.read(pours.formatted("null"));
        assertEquals(List.of("/visits/0/tests/0/runs/0/pours/0", "/visits/0/tests/0/runs/1"), Samples.places(read));
        assertEquals(
                List.of("withheld", "withheld"),
                review(read).runs().stream().map(run -> run.outcome().word()).toList());
        assertEquals(
                "measured",
                review(Samples.read(pours.formatted(
                                "{\"before\":{\"value\":20,\"unit\":\"lb\"},\"after\":{\"value\":0,\"unit\":\"lb\"}}")))
                        .runs()
                        .get(0)
                        .outcome()
                        .word());
    }

    @Test
    void aBadDateKeepsTheTestsAndWithholdsTheirRuns() throws IOException {
        String json = Files.readString(DEMO).replaceFirst("\"date\": *\"[^\"]*\"", "\"date\": \"3 June\"");
        Review review = review(Samples.JSON.read(json));
        assertEquals(
                outcomes(review(Samples.JSON.read(Files.readString(DEMO)))).keySet(),
                outcomes(review).keySet());
        assertTrue(review.runs().get(0).outcome().reasons().contains("data.unreadable"));
    }
}
