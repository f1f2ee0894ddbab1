// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import dev.infiltration.field.Event;
import dev.infiltration.method.ReportItem;
import dev.infiltration.method.TestMethod;
import dev.infiltration.report.Block.Paragraph;
import dev.infiltration.report.Block.Points;
import dev.infiltration.report.Block.Section;
import dev.infiltration.report.Block.Table;
import dev.infiltration.review.Review;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A blank form for the field, made from a method's own data: a page for the visit, then a page for each location with room for
 * pours, times and events, each limit printed where it matters.
 *
 * <p>HTML that prints on A4 and on Letter. Boxes and lines are for a pen; nothing is to be typed.
 */
public final class FieldForm {

    private static final int FEW = 3;
    private static final int MANY = 200;
    private static final int EVENTS = 4;
    private static final int POURS = 2;
    private static final Phrase BLANK = Phrase.of("");

    private final TestMethod method;
    private final String name;
    private final int locations;

    private FieldForm(TestMethod method, String name, int locations) {
        this.method = method;
        this.name = name;
        this.locations = locations;
    }

    /**
     * {@return the form of a method, with pages for as many locations as it always asks for}: three where that depends on the area
     *
     * @param method the method
     */
    public static FieldForm of(TestMethod method) {
        return all(List.of(method)).get(0);
    }

    /**
     * {@return the form of each method that visits of a review were made by}
     *
     * @param review the review
     */
    public static List<FieldForm> all(Review review) {
        return all(review.surfaces().stream()
                .flatMap(row -> row.visit().method().stream())
                .distinct()
                .toList());
    }

    private static List<FieldForm> all(List<TestMethod> methods) {
        List<@Nullable String> ids = new ArrayList<>();
        methods.forEach(method -> ids.add(method.id()));
        List<String> names = FileNames.of("method", ids);
        List<FieldForm> forms = new ArrayList<>();
        for (TestMethod method : methods) {
            long asked = method.locationCount().of(null).orElse(FEW);
            int locations = (int) Math.min(MANY, Math.max(1, asked));
            forms.add(new FieldForm(method, names.get(forms.size()), locations));
        }
        return forms;
    }

    /** {@return a file name for the form, without an ending}: the method's id where that is safe */
    public String name() {
        return name;
    }

    /**
     * {@return this form with another number of pages for locations}
     *
     * @param locations how many, 1 to 200
     * @throws IllegalArgumentException if there are fewer or more
     */
    public FieldForm withLocations(int locations) {
        if (locations < 1 || locations > MANY) {
            throw new IllegalArgumentException("locations: expected 1 to 200, got " + locations);
        }
        return new FieldForm(method, name, locations);
    }

    /** {@return the form as one HTML page} */
    public String html() {
        Phrase title = Phrase.of("Field form: ").and(Phrase.written(method.designation()));
        List<Block> summary = List.of(Paragraph.of(ReportText.capital(method.verification())
                + ". The latest licensed edition, local codes and the engineer of record govern."));
        List<Block> parts = new ArrayList<>(List.of(visit()));
        IntStream.rangeClosed(1, locations).mapToObj(this::location).forEach(parts::add);
        return new HtmlPage(title, "form", summary, parts).html();
    }

    private Section visit() {
        return new Section(
                "visit",
                Phrase.of("Visit"),
                List.of(
                        lines("Who, where, when", FormLines.ofVisit(method)),
                        lines("Before the first test", FormLines.before(method)),
                        new Paragraph(Phrase.strong("The report must also state")),
                        new Points(List.of(Phrase.of(items()))),
                        new Paragraph(Phrase.strong("Mind")),
                        new Points(Cautions.OF_A_REVIEW.stream().map(Phrase::of).toList())));
    }

    private String items() {
        return method.reportItems().stream()
                .map(ReportItem::item)
                .distinct()
                .sorted()
                .map(ReportText::item)
                .collect(Collectors.joining(", "));
    }

    private static Table lines(String caption, List<FormLines.Line> lines) {
        boolean isAsked = lines.stream().anyMatch(line -> !line.asked().isEmpty());
        List<String> heads = isAsked ? List.of("What", "Asked for", "Written down") : List.of("What", "Written down");
        return Table.of(
                caption,
                heads,
                lines.stream()
                        .map(line -> isAsked
                                ? List.of(line.what(), line.asked(), line.boxes())
                                : List.of(line.what(), line.boxes()))
                        .map(cells -> cells.stream().map(Phrase::of).toList())
                        .toList());
    }

    private Section location(int number) {
        return new Section(
                "location-" + number,
                Phrase.of("Location " + number + " of " + locations),
                List.of(lines("The spot", FormLines.ofLocation(method)), pourings(), events()));
    }

    private Table pourings() {
        List<String> heads = new ArrayList<>(List.of("Reading", "Asked for", "Prewetting"));
        IntStream.rangeClosed(1, method.runsPerDay()).forEach(run -> heads.add("Run " + run));
        List<List<Phrase>> rows = new ArrayList<>();
        FormLines.ofPouring(method, POURS).forEach(line -> rows.add(row(line)));
        return Table.of("Pourings", heads, rows);
    }

    private List<Phrase> row(FormLines.Line line) {
        List<Phrase> cells = new ArrayList<>(List.of(Phrase.of(line.what()), Phrase.of(line.asked())));
        for (int pouring = 0; pouring <= method.runsPerDay(); pouring++) {
            cells.add(Phrase.of(line.boxes()));
        }
        return cells;
    }

    private static Table events() {
        String kinds = Arrays.stream(Event.Kind.values())
                .map(kind -> kind.word().replace('-', ' '))
                .collect(Collectors.joining(", "));
        List<List<Phrase>> rows = IntStream.rangeClosed(1, EVENTS)
                .mapToObj(number -> List.of(Phrase.of(String.valueOf(number)), BLANK, BLANK, BLANK))
                .toList();
        return Table.of("Events: " + kinds, List.of("No.", "Time", "During", "What happened"), rows);
    }
}
