// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.plots;

import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import de.erichseifert.vectorgraphics2d.svg.SVGProcessor;
import de.erichseifert.vectorgraphics2d.util.PageSize;
import java.awt.BasicStroke;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** A drawing in the making: lines, marks and areas for the chart library, and words that are set by themselves. */
final class Drawing {

    static final BasicStroke PLAIN = new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    static final BasicStroke THIN = new BasicStroke(0.75f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    static final BasicStroke DASHED = dashes(6, 4);
    static final BasicStroke DASH_DOTTED = dashes(8, 3, 2, 3);

    static final int WIDTH = 400;
    private static final int TOP = 46;
    private static final int BELOW = 42;
    private static final int RIGHT = 16;
    private static final int MARK = 9;

    private final int left;
    private final int height;
    private final Scale x;
    private final Scale y;
    private final XYChart chart;
    private final List<Label> labels = new ArrayList<>();
    private int parts;

    /** A drawing with room for the ticks' words at the left; the height is that of the scales' field. */
    Drawing(int left, int height, Scale x, Scale y) {
        this.left = left;
        this.height = height;
        this.x = x;
        this.y = y;
        this.chart =
                new XYChartBuilder().width(WIDTH - left - RIGHT).height(height).build();
        style(chart.getStyler());
        x.ticks().forEach(this::across);
        y.ticks().forEach(this::up);
    }

    private static BasicStroke dashes(float... dashes) {
        return new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0);
    }

    private void style(XYStyler styler) {
        Color none = new Color(0, 0, 0, 0);
        styler.setChartBackgroundColor(none).setPlotBackgroundColor(none).setPlotBorderVisible(false);
        styler.setLegendVisible(false).setChartTitleVisible(false).setChartPadding(0);
        styler.setAxisTitlesVisible(false)
                .setAxisTicksVisible(false)
                .setPlotMargin(0)
                .setPlotContentSize(1.0);
        styler.setPlotGridLinesVisible(false);
        styler.setXAxisLogarithmic(x.kind() == Scale.Kind.LOG)
                .setXAxisMin(x.low())
                .setXAxisMax(x.high());
        styler.setYAxisLogarithmic(y.kind() == Scale.Kind.LOG)
                .setYAxisMin(y.low())
                .setYAxisMax(y.high());
        styler.setMarkerSize(MARK);
    }

    private void across(Scale.Tick tick) {
        line(Ink.RULE, THIN, new double[] {tick.at(), tick.at()}, new double[] {y.low(), y.high()});
        labels.add(new Label(atX(tick.at()), TOP + height + 16.0, "middle", Ink.FAINT, tick.name()));
    }

    private void up(Scale.Tick tick) {
        line(Ink.RULE, THIN, new double[] {x.low(), x.high()}, new double[] {tick.at(), tick.at()});
        labels.add(new Label(left - 8.0, atY(tick.at()) + 4, "end", Ink.FAINT, tick.name()));
    }

    private double atX(double value) {
        return left + share(x, value) * (WIDTH - left - RIGHT);
    }

    private double atY(double value) {
        return TOP + (1 - share(y, value)) * height;
    }

    private static double share(Scale scale, double value) {
        return scale.kind() == Scale.Kind.LOG
                ? StrictMath.log(value / scale.low()) / StrictMath.log(scale.high() / scale.low())
                : (value - scale.low()) / (scale.high() - scale.low());
    }

    private XYSeries series(double[] xs, double[] ys) {
        return chart.addSeries("s" + parts++, xs, ys);
    }

    void line(Ink ink, BasicStroke stroke, double[] xs, double[] ys) {
        XYSeries line = series(xs, ys);
        line.setXYSeriesRenderStyle(XYSeriesRenderStyle.Line);
        line.setMarker(SeriesMarkers.NONE).setLineColor(ink.colour()).setLineStyle(stroke);
    }

    void mark(Ink ink, Marker marker, double atX, double atY) {
        XYSeries mark = series(new double[] {atX}, new double[] {atY});
        mark.setXYSeriesRenderStyle(XYSeriesRenderStyle.Scatter);
        mark.setMarker(marker).setMarkerColor(ink.colour());
    }

    void area(Ink ink, double[] xs, double[] ys) {
        XYSeries area = series(xs, ys);
        area.setXYSeriesRenderStyle(XYSeriesRenderStyle.PolygonArea);
        area.setMarker(SeriesMarkers.NONE).setLineStyle(SeriesLines.NONE).setFillColor(ink.colour());
    }

    /** Words beside a place on the scales, on the first of some sides where they cover no others. */
    void label(double atX, double atY, Ink ink, String text, Side... sides) {
        String words = Label.shortened(text);
        List<Label> ways = Arrays.stream(sides)
                .map(side -> side.label(atX(atX), atY(atY), ink, words))
                .toList();
        labels.add(ways.stream().filter(this::isFree).findFirst().orElse(ways.get(0)));
    }

    /** Words at the right of places one above the other, moved apart where they would cover each other. */
    void column(double atX, List<Scale.Tick> words) {
        List<Scale.Tick> downwards = words.stream()
                .sorted(Comparator.comparingDouble(word -> atY(word.at())))
                .toList();
        double[] ys = downwards.stream().mapToDouble(word -> atY(word.at())).toArray();
        for (int i = 1; i < ys.length; i++) {
            ys[i] = Math.max(ys[i], ys[i - 1] + Label.HIGH);
        }
        for (int i = ys.length - 1; i >= 0; i--) {
            ys[i] = Math.min(ys[i], TOP + height - (ys.length - 1 - i) * Label.HIGH);
        }
        for (int i = 0; i < ys.length; i++) {
            if (ys[i] >= TOP) {
                labels.add(Side.RIGHT.label(
                        atX(atX),
                        ys[i],
                        Ink.INK,
                        Label.shortened(downwards.get(i).name())));
            }
        }
    }

    private boolean isFree(Label label) {
        return label.left() >= 0 && label.right() <= WIDTH && labels.stream().noneMatch(label::covers);
    }

    /** Names of the scales: one below, one above the field at its left. */
    void named(String across, String up) {
        labels.add(new Label(WIDTH - (double) RIGHT, TOP + height + 34.0, "end", Ink.INK, across));
        labels.add(new Label(8, TOP - 10.0, "start", Ink.INK, up));
    }

    int pageHeight() {
        return TOP + height + BELOW;
    }

    List<Label> labels() {
        return List.copyOf(labels);
    }

    /** {@return what the chart library draws, as it writes it} */
    String shapes() {
        VectorGraphics2D graphics = new VectorGraphics2D();
        graphics.translate(left, TOP);
        chart.paint(graphics, chart.getWidth(), chart.getHeight());
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            new SVGProcessor()
                    .getDocument(graphics.getCommands(), new PageSize(0, 0, WIDTH, pageHeight()))
                    .writeTo(bytes);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }
}
