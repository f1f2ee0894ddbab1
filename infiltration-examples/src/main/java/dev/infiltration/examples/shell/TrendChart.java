// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.shell;

import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import de.erichseifert.vectorgraphics2d.svg.SVGProcessor;
import de.erichseifert.vectorgraphics2d.util.PageSize;
import dev.infiltration.trend.DatedRate;
import dev.infiltration.trend.LineFit;
import dev.infiltration.trend.Stretch;
import dev.infiltration.trend.Trend;
import java.awt.BasicStroke;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Measured rates over the years on a log axis, with a fitted line from one maintenance to the next. */
final class TrendChart {

    private static final int WIDTH = 800;
    private static final int HEIGHT = 500;
    private static final double DAYS_A_YEAR = 365.25;

    /** Blue and vermilion, told apart by colour-blind readers too; the points are not told by colour alone. */
    private static final Color POINTS = new Color(0x0072B2);

    private static final Color LINE = new Color(0xD55E00);

    private final XYChart chart;
    private double lowest = Double.POSITIVE_INFINITY;
    private double highest = 0;

    private TrendChart(String surface) {
        chart = new XYChartBuilder()
                .width(WIDTH)
                .height(HEIGHT)
                .title(surface + ": mean surface infiltration rate")
                .xAxisTitle("year")
                .yAxisTitle("rate, mm/h")
                .build();
        chart.getStyler().setLocale(Locale.ROOT);
        chart.getStyler().setYAxisLogarithmic(true);
        chart.getStyler().setXAxisDecimalPattern("0.0");
        chart.getStyler().setYAxisDecimalPattern("0");
        chart.getStyler().setLegendVisible(false);
        chart.getStyler().setChartBackgroundColor(Color.WHITE);
        chart.getStyler().setPlotBorderVisible(false);
    }

    static String svg(String surface, Trend trend) {
        TrendChart chart = new TrendChart(surface);
        trend.stretches().forEach(chart::add);
        chart.frame();
        return chart.svg();
    }

    private void add(Stretch stretch) {
        List<DatedRate> measured = stretch.points().stream()
                .filter(point -> point.outcome()
                        .rate()
                        .filter(rate -> rate.millimetresPerHour() > 0)
                        .isPresent())
                .toList();
        if (measured.isEmpty()) {
            return;
        }
        List<Double> years = new ArrayList<>();
        List<Double> rates = new ArrayList<>();
        for (DatedRate point : measured) {
            years.add(year(point.date()));
            rates.add(point.outcome().rate().orElseThrow().millimetresPerHour());
        }
        rates.forEach(this::reach);
        points("measured from " + measured.get(0).date(), years, rates);
        stretch.trend().line().ifPresent(line -> line(stretch, line, years));
    }

    private void reach(double rate) {
        lowest = Math.min(lowest, rate);
        highest = Math.max(highest, rate);
    }

    /** Whole decades, so that the axis has numbers. */
    private void frame() {
        if (highest > 0) {
            chart.getStyler().setYAxisMin(StrictMath.pow(10, StrictMath.floor(StrictMath.log10(lowest))));
            chart.getStyler().setYAxisMax(StrictMath.pow(10, StrictMath.ceil(StrictMath.log10(highest))));
        }
    }

    /** The line counts years from the stretch's first point. */
    private void line(Stretch stretch, LineFit line, List<Double> years) {
        double start = year(stretch.points().get(0).date());
        List<Double> ends = List.of(years.get(0), years.get(years.size() - 1));
        List<Double> heights =
                ends.stream().map(end -> StrictMath.exp(line.at(end - start))).toList();
        XYSeries series =
                chart.addSeries("fitted from " + stretch.points().get(0).date(), ends, heights);
        series.setMarker(SeriesMarkers.NONE);
        series.setLineColor(LINE);
    }

    private void points(String name, List<Double> years, List<Double> rates) {
        XYSeries series = chart.addSeries(name, years, rates);
        series.setMarker(SeriesMarkers.CIRCLE);
        series.setMarkerColor(POINTS);
        series.setLineStyle(new BasicStroke(0));
        series.setLineColor(new Color(0, 0, 0, 0));
    }

    private static double year(LocalDate date) {
        return LocalDate.EPOCH.getYear() + date.toEpochDay() / DAYS_A_YEAR;
    }

    private String svg() {
        VectorGraphics2D drawing = new VectorGraphics2D();
        chart.paint(drawing, WIDTH, HEIGHT);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            new SVGProcessor()
                    .getDocument(drawing.getCommands(), new PageSize(WIDTH, HEIGHT))
                    .writeTo(bytes);
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
