// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.review;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Invented documents of one surface with one to three visits, like those that crews write, complete and incomplete. */
final class RandomBookJson {

    private final Random random;

    private RandomBookJson(Random random) {
        this.random = random;
    }

    static ObjectNode of(Random random) {
        return (ObjectNode) new JsonMapper().readTree(new RandomBookJson(random).book());
    }

    private String book() {
        return """
                {"format": "infiltration-field-book/1",
                 "sites": [{"id": "HQ", "timeZone": "Europe/London", "surfaces": [
                  {"id": "HQ-A", "type": "pavers", "area": {"value": 500, "unit": "m2"}, "locations": [%s]}]}],
                 "rings": [{"id": "R1", "insideDiameter": {"value": 300, "unit": "mm"}},
                           {"id": "R2", "insideDiameters": [{"value": 299, "unit": "mm"}, {"value": 301, "unit": "mm"}]}],
                 "maintenance": [%s],
                 "visits": [%s]}
                """.formatted(
                        joined(4, i -> "{\"id\": \"A" + i + "\", \"selection\": \"" + selection() + "\"}"),
                        random.nextInt(3) == 0
                                ? "{\"id\": \"M1\", \"surface\": \"HQ-A\", \"end\": \"2026-06-0"
                                        + (1 + random.nextInt(4)) + "T12:00\"}"
                                : "",
                        joined(1 + random.nextInt(3), this::visit));
    }

    private String selection() {
        return random.nextInt(5) == 0 ? "targeted" : "random";
    }

    private static String joined(int count, java.util.function.IntFunction<String> entry) {
        return IntStream.range(0, count).mapToObj(entry).collect(Collectors.joining(", "));
    }

    private String visit(int i) {
        return "{\"id\": \"V" + i + "\", \"surface\": \"HQ-A\", \"date\": \"2026-06-0" + (1 + i) + "\""
                + (random.nextBoolean() ? ", \"method\": \"unit-pavement\"" : "")
                + (random.nextInt(4) == 0 ? ", \"swept\": false" : "")
                + (random.nextInt(6) == 0 ? ", \"purpose\": \"training\"" : ", \"purpose\": \"routine\"")
                + (random.nextInt(3) == 0 ? ", \"weather\": {\"lastRainEnd\": \"2026-06-0" + (1 + i) + "T02:00\"}" : "")
                + ", \"tests\": [" + joined(3 + random.nextInt(2), location -> test(i, location)) + "]}";
    }

    private String test(int visit, int location) {
        String head = "{\"location\": \"A" + location + "\", \"ring\": \"R" + (1 + random.nextInt(2)) + "\"";
        String warm = random.nextInt(5) == 0 ? ", \"surfaceTemperature\": {\"value\": 41, \"unit\": \"Cel\"}" : "";
        return switch (random.nextInt(8)) {
            case 0 -> head + ", \"notTested\": \"traffic\"}";
            case 1 -> head + ", \"preWet\": " + pouring(visit, "08:00", "3.60", false) + "}";
            default ->
                head + warm + ", \"preWet\": " + pouring(visit, "08:00", "3.60", true) + ", \"runs\": ["
                        + joined(
                                1 + random.nextInt(3),
                                run -> pouring(visit, "08:0" + (2 + run), "3.60", random.nextInt(5) > 0))
                        + "]}";
        };
    }

    private String pouring(int visit, String start, String water, boolean isDrained) {
        String amount = "{\"value\": " + water + ", \"unit\": \"kg\"}";
        String half = "{\"value\": 1.80, \"unit\": \"kg\"}";
        return "{\"start\": \"2026-06-0" + (1 + visit) + "T" + start + ":00\""
                + (random.nextInt(3) == 0
                        ? ", \"pours\": [{\"before\": {\"value\": 4, \"unit\": \"kg\"}, \"after\": {\"value\": 2.2, \"unit\": \"kg\"}},"
                                + " {\"before\": {\"value\": 4, \"unit\": \"kg\"}, \"after\": {\"value\": 2.2, \"unit\": \"kg\"}}]"
                        : ", \"water\": " + (random.nextInt(8) == 0 ? half : amount))
                + (random.nextInt(20) == 0
                        ? ""
                        : ", \"elapsed\": {\"value\": " + (10 + random.nextInt(400)) + ".5, \"unit\": \"s\"}")
                + (random.nextInt(15) == 0 ? "" : ", \"end\": \"" + end(isDrained) + "\"")
                + (isDrained || random.nextInt(3) == 0 ? "" : ", \"depthAtStop\": {\"value\": 20, \"unit\": \"mm\"}")
                + (random.nextInt(8) == 0 ? ", \"events\": [{\"kind\": \"" + event() + "\"}]" : "")
                + "}";
    }

    private String end(boolean isDrained) {
        return isDrained ? random.nextInt(10) == 0 ? "void" : "drained" : "stopped";
    }

    private String event() {
        List<String> kinds = List.of("leak", "spill", "pour-interrupted", "ring-moved", "other", "rain");
        return kinds.get(random.nextInt(kinds.size()));
    }
}
