// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import dev.infiltration.examples.plots.SvgPlots;
import dev.infiltration.report.FieldForm;
import dev.infiltration.report.Plot;
import dev.infiltration.report.Plots;
import dev.infiltration.report.SeasonPage;
import dev.infiltration.report.VisitReport;
import dev.infiltration.review.Review;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The pages, forms and drawings of a season, as files in a folder. */
final class SeasonFiles {

    private static final String VISITS = "visits";
    private static final String FORMS = "forms";
    private static final String PLOTS = "plots";
    private static final int NAMED = 3;

    private final Path folder;
    private final Plots plots = new SvgPlots();
    private final Set<Path> written = new HashSet<>();
    private final Set<Path> folders = new HashSet<>();

    private SeasonFiles(Path folder) {
        this.folder = folder;
    }

    /** {@return what else lies in the folders of the season, in words; nothing when nothing does} */
    static String write(Path folder, Review review, LocalDate asOf) throws IOException {
        SeasonFiles files = new SeasonFiles(folder);
        SeasonPage page = SeasonPage.of(review, asOf).linkedTo(VISITS);
        files.write(folder.resolve("season.html"), page.withPlots(files.plots).html());
        files.draw(page.plots());
        for (VisitReport report : VisitReport.all(review)) {
            files.write(report);
        }
        for (FieldForm form : FieldForm.all(review)) {
            files.write(files.in(FORMS).resolve(form.name() + ".html"), form.html());
        }
        return files.others();
    }

    /** Files of an earlier run, or somebody's own: nobody but the user can tell which are of use. */
    private String others() throws IOException {
        List<String> names = new ArrayList<>();
        for (String part : List.of(VISITS, FORMS, PLOTS)) {
            if (Files.isDirectory(folder.resolve(part))) {
                try (Stream<Path> files = Files.list(folder.resolve(part))) {
                    files.filter(file -> Files.isRegularFile(file) && !written.contains(file))
                            .map(file -> shown(folder.relativize(file)))
                            .sorted()
                            .forEach(names::add);
                }
            }
        }
        return names.isEmpty()
                ? ""
                : folder + " holds files that are not of this season, left as they are" + some(names);
    }

    private static String some(List<String> names) {
        String more = names.size() > NAMED ? " and " + (names.size() - NAMED) + " more" : "";
        return " (" + names.size() + "): " + names.stream().limit(NAMED).collect(Collectors.joining(", ")) + more;
    }

    private static String shown(Path file) {
        return file.toString().replace('\\', '/').replaceAll("\\p{C}", "?");
    }

    private void write(VisitReport report) throws IOException {
        Path visits = in(VISITS);
        write(visits.resolve(report.name() + ".html"), report.withPlots(plots).html());
        write(visits.resolve(report.name() + ".md"), report.markdown());
        draw(report.plots());
    }

    private void draw(Map<String, Plot> drawn) throws IOException {
        for (Map.Entry<String, Plot> plot : drawn.entrySet()) {
            write(in(PLOTS).resolve(plot.getKey() + ".svg"), plots.svg(plot.getValue(), plot.getKey()));
        }
    }

    private Path in(String part) throws IOException {
        Path inner = folder.resolve(part);
        return folders.add(inner) ? OutputFolder.create(inner) : inner;
    }

    private void write(Path file, String text) throws IOException {
        TextFile.write(file, text);
        written.add(file);
    }
}
