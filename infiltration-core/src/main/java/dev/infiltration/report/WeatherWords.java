// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.field.Weather;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The weather of a visit in a line. */
final class WeatherWords {

    private final List<Phrase> parts = new ArrayList<>();

    private WeatherWords() {}

    static Phrase of(@Nullable Weather weather) {
        if (weather == null) {
            return Phrase.NOT_RECORDED;
        }
        WeatherWords words = new WeatherWords();
        words.given("", weather.description());
        words.given("air ", weather.air());
        words.given("last rain ended ", weather.lastRainEnd());
        words.given("no rain since ", weather.noRainSince());
        words.given("depth of the last rain ", weather.lastRainDepth());
        words.given("rain from ", weather.rainFrom());
        words.given("source: ", weather.source());
        return words.parts.isEmpty() ? Phrase.NOT_RECORDED : Phrase.joined(words.parts, "; ");
    }

    private void given(String name, @Nullable Object value) {
        if (value != null) {
            parts.add(Phrase.of(name).and(Phrase.written(value)));
        }
    }
}
