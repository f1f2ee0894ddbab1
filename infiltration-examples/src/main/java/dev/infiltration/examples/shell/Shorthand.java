// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.shell;

import dev.infiltration.check.VisitAt;
import dev.infiltration.compare.GroupComparison;
import dev.infiltration.examples.plots.SvgPlots;
import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.report.HistoryPlot;
import dev.infiltration.review.Review;
import dev.infiltration.review.SurfaceHistory;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.units.InfiltrationRate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Short names for what is typed most in the shell, which imports them all. */
public final class Shorthand {

    private static final String DEMO = "infiltration-examples/demo/harrow-quay.json";

    private Shorthand() {}

    /**
     * {@return the review of the demo season, whose data are invented}
     *
     * @throws IOException if its file cannot be read
     */
    public static Review demo() throws IOException {
        return review(System.getProperty("season.demo", DEMO));
    }

    /**
     * {@return the review of a field book}
     *
     * @param file the book's file, {@code .json}, or {@code .jsonl} for a visit a line
     * @throws IOException if it cannot be read
     */
    public static Review review(String file) throws IOException {
        FieldBookJson json = FieldBookJson.withDefaults();
        Path book = Path.of(file);
        return Review.of(file.endsWith(".jsonl") ? json.readLines(book) : json.read(book));
    }

    /**
     * {@return the rates measured at a visit, one a location; bounds are left out}
     *
     * @param review the review
     * @param visit  id of the visit
     * @throws IllegalArgumentException if the review has no such visit
     */
    public static List<InfiltrationRate> rates(Review review, String visit) {
        VisitAt found = only(
                review.surfaces(),
                row -> row.visit(),
                each -> String.valueOf(each.visit().id()),
                visit);
        return review.locations(found).stream()
                .map(LocationRate::outcome)
                .flatMap(outcome -> outcome.rate().stream())
                .toList();
    }

    /**
     * {@return two groups of rates against each other}
     *
     * @param first  the one group
     * @param second the other
     */
    public static GroupComparison compare(List<InfiltrationRate> first, List<InfiltrationRate> second) {
        return GroupComparison.of(first, second);
    }

    /**
     * {@return what a surface came to over the years, and what its maintenance did}
     *
     * @param review  the review
     * @param surface id of the surface
     * @throws IllegalArgumentException if the review has no dated figure of such a surface
     */
    public static SurfaceHistory history(Review review, String surface) {
        return only(review.histories(), each -> each, Shorthand::surfaceOf, surface);
    }

    private static String surfaceOf(SurfaceHistory history) {
        return String.valueOf(history.surface().surface().id());
    }

    private static <A, B> B only(List<A> all, Function<A, B> part, Function<B, String> id, String wanted) {
        List<B> parts = all.stream().map(part).toList();
        return parts.stream()
                .filter(each -> id.apply(each).equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "no " + wanted + ", there are " + parts.stream().map(id).collect(Collectors.joining(", "))));
    }

    /**
     * {@return a chart of a surface's mean rates and bounds over the years, with its cleanings and fitted lines, as SVG}
     *
     * @param history the surface's history
     */
    public static String chart(SurfaceHistory history) {
        return new SvgPlots().svg(HistoryPlot.of(history), "history");
    }

    /**
     * Writes a text to a file.
     *
     * @param file the file
     * @param text what to write, in UTF-8
     * @return the file
     * @throws IOException if it cannot be written
     */
    public static Path save(String file, String text) throws IOException {
        return Files.writeString(Path.of(file), text);
    }
}
