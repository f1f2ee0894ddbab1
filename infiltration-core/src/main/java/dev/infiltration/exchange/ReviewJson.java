// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.exchange;

import dev.infiltration.check.Finding;
import dev.infiltration.check.VisitAt;
import dev.infiltration.exchange.text.Output;
import dev.infiltration.field.Problem;
import dev.infiltration.rate.RateConstant;
import dev.infiltration.rate.RateOutcome;
import dev.infiltration.rate.Uncertainty;
import dev.infiltration.rate.UncertaintyBudget;
import dev.infiltration.review.Review;
import dev.infiltration.review.RunRate;
import dev.infiltration.summary.LocationRate;
import dev.infiltration.summary.SurfaceRate;
import dev.infiltration.units.InfiltrationRate;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Collection;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;

/**
 * Writes a review as one JSON document: findings, problems, runs, locations and surfaces.
 *
 * <p>Rates are numbers at full precision, always in mm/h; values that are not recorded or cannot be calculated are absent. The
 * same review gives the same bytes on every machine.
 */
public final class ReviewJson {

    private static final String UNIT = "mm/h";
    private static final double COVERAGE = 0.95;

    private final JsonGenerator json;

    private ReviewJson(JsonGenerator json) {
        this.json = json;
    }

    /**
     * Writes a review as one JSON document, followed by a line end.
     *
     * @param review the review
     * @param out    where to; it stays open
     * @throws IOException if it cannot be written
     */
    public static void write(Review review, Writer out) throws IOException {
        Output.LINE.write(out, json -> new ReviewJson(json).document(review));
    }

    /**
     * {@return a review as one JSON document}
     *
     * @param review the review
     */
    public static String text(Review review) {
        StringWriter text = new StringWriter();
        try {
            write(review, text);
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return text.toString();
    }

    private void document(Review review) {
        json.writeStartObject();
        list("findings", review.findings(), this::finding);
        list("problems", review.problems(), this::problem);
        list("runs", review.runs(), this::run);
        list("locations", review.locations(), this::location);
        list("surfaces", review.surfaces(), surface -> surface(surface, review));
        new DecisionJson(review, new JsonFields(json)).decisions();
        new HistoryJson(review, new JsonFields(json)).histories();
        if (!review.policyChanges().isEmpty()) {
            json.writeArrayPropertyStart("policyChanges");
            review.policyChanges().forEach(json::writeString);
            json.writeEndArray();
        }
        json.writeEndObject();
    }

    private <T> void list(String name, Collection<T> values, Consumer<T> write) {
        json.writeArrayPropertyStart(name);
        for (T value : values) {
            json.writeStartObject();
            write.accept(value);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void finding(Finding finding) {
        json.writeStringProperty("rule", finding.rule());
        json.writeStringProperty("effect", finding.effect().name());
        json.writeStringProperty("bias", finding.bias().name());
        json.writeStringProperty("where", finding.where().toString());
        json.writeStringProperty("subject", finding.subject());
        json.writeStringProperty("observed", finding.observed());
        json.writeStringProperty("allowed", finding.allowed());
        json.writeStringProperty("message", finding.message());
        json.writeStringProperty("remedy", finding.remedy());
        json.writeStringProperty("basis", finding.basis().toString());
        json.writeStringProperty("key", finding.key());
    }

    private void problem(Problem problem) {
        json.writeNumberProperty("line", problem.line());
        json.writeNumberProperty("column", problem.column());
        json.writeStringProperty("where", problem.where());
        json.writeStringProperty("message", problem.message());
    }

    private void run(RunRate run) {
        json.writeStringProperty("where", run.where().toString());
        outcome(run.outcome());
        rateOrRules(run.outcome());
        run.constant().ifPresent(this::constant);
        run.budget().ifPresent(budget -> uncertainty(budget.uncertainty(), budget.label()));
    }

    private void constant(RateConstant constant) {
        json.writeObjectPropertyStart("constant");
        json.writeNumberProperty("value", constant.value());
        json.writeStringProperty("unit", constant.unit());
        json.writeNumberProperty("density", constant.density());
        json.writeStringProperty("source", constant.source().word());
        json.writeEndObject();
    }

    private void location(LocationRate location) {
        visit(location.visit());
        json.writeStringProperty("location", location.location());
        date(location.visit());
        training(location.visit());
        outcome(location.outcome());
        json.writeNumberProperty("runs", location.runs());
        if (location.from() == LocationRate.Source.PREWETTING
                && location.outcome().figure().isPresent()) {
            json.writeStringProperty("from", location.from().word());
        }
        rateOrRules(location.outcome());
        location.uncertainty()
                .ifPresent(uncertainty -> uncertainty(
                        uncertainty, location.uncertaintyCovers().orElse(UncertaintyBudget.INSTRUMENTS_ONLY)));
    }

    private void uncertainty(Uncertainty uncertainty, String covers) {
        json.writeObjectPropertyStart("uncertainty");
        json.writeNumberProperty("standard", uncertainty.standardUncertainty());
        json.writeNumberProperty("expanded", uncertainty.expanded(COVERAGE));
        json.writeNumberProperty("coverage", COVERAGE);
        json.writeNumberProperty("factor", uncertainty.coverageFactor(COVERAGE));
        if (Double.isFinite(uncertainty.degreesOfFreedom())) {
            json.writeNumberProperty("degreesOfFreedom", uncertainty.degreesOfFreedom());
        }
        json.writeStringProperty("unit", UNIT);
        json.writeStringProperty("covers", covers);
        json.writeEndObject();
    }

    private void surface(SurfaceRate surface, Review review) {
        visit(surface.visit());
        date(surface.visit());
        training(surface.visit());
        json.writeNumberProperty("planned", surface.planned());
        json.writeNumberProperty("measured", surface.measured());
        json.writeNumberProperty("bounded", surface.bounded());
        json.writeNumberProperty("withheld", surface.withheld());
        json.writeNumberProperty("notTested", surface.notTested());
        figure("mean", surface.mean());
        figure("geometricMean", surface.geometricMean());
        figure("median", surface.median());
        figure("minimum", surface.minimum());
        new DecisionJson(review, new JsonFields(json)).summary(surface.visit());
    }

    private void visit(VisitAt visit) {
        text("visit", visit.visit().id());
        text("surface", visit.visit().surface());
    }

    private void training(VisitAt visit) {
        if (visit.isTraining()) {
            json.writeBooleanProperty("training", true);
        }
    }

    private void date(VisitAt visit) {
        text("date", visit.visit().date() == null ? null : visit.visit().date().toString());
    }

    private void text(String name, @Nullable String text) {
        if (text != null) {
            json.writeStringProperty(name, text);
        }
    }

    private void outcome(RateOutcome outcome) {
        json.writeStringProperty("outcome", outcome.word());
    }

    private void rateOrRules(RateOutcome outcome) {
        outcome.figure().ifPresentOrElse(rate -> rate("rate", null, rate), () -> {
            json.writeArrayPropertyStart("rules");
            outcome.reasons().forEach(json::writeString);
            json.writeEndArray();
        });
    }

    private void figure(String name, RateOutcome outcome) {
        outcome.figure().ifPresent(rate -> rate(name, outcome.word(), rate));
    }

    private void rate(String name, @Nullable String outcome, InfiltrationRate rate) {
        json.writeObjectPropertyStart(name);
        text("outcome", outcome);
        json.writeNumberProperty("value", rate.millimetresPerHour());
        json.writeStringProperty("unit", UNIT);
        json.writeEndObject();
    }
}
