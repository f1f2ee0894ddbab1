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
import java.util.Map;

/** The pages, forms and drawings of a season, as files in a folder. */
final class SeasonFiles {

    private static final String VISITS = "visits";

    private final Path folder;
    private final Plots plots = new SvgPlots();

    private SeasonFiles(Path folder) {
        this.folder = folder;
    }

    static void write(Path folder, Review review, LocalDate asOf) throws IOException {
        SeasonFiles files = new SeasonFiles(folder);
        SeasonPage page = SeasonPage.of(review, asOf).linkedTo(VISITS);
        files.write(folder.resolve("season.html"), page.withPlots(files.plots).html());
        files.draw(page.plots());
        for (VisitReport report : VisitReport.all(review)) {
            files.write(report);
        }
        for (FieldForm form : FieldForm.all(review)) {
            files.write(files.in("forms").resolve(form.name() + ".html"), form.html());
        }
    }

    private void write(VisitReport report) throws IOException {
        Path visits = in(VISITS);
        write(visits.resolve(report.name() + ".html"), report.withPlots(plots).html());
        write(visits.resolve(report.name() + ".md"), report.markdown());
        draw(report.plots());
    }

    private void draw(Map<String, Plot> drawn) throws IOException {
        for (Map.Entry<String, Plot> plot : drawn.entrySet()) {
            write(in("plots").resolve(plot.getKey() + ".svg"), plots.svg(plot.getValue(), plot.getKey()));
        }
    }

    private Path in(String part) throws IOException {
        return Files.createDirectories(folder.resolve(part));
    }

    private void write(Path file, String text) throws IOException {
        Files.writeString(file, text);
    }
}
