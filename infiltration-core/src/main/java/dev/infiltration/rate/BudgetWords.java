// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.rate;

import dev.infiltration.rate.UncertaintyBudget.Line;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** An uncertainty budget for people: its terms as a table, and the terms that are not included. */
record BudgetWords(RunAmounts run, @Nullable LeakBias seal, List<Line> lines) {

    List<String> leftOut() {
        Stream<String> kinds =
                Stream.of(RingTerm.values()).filter(kind -> !holds(kind)).map(RingTerm::toString);
        return Stream.concat(kinds, seal == null ? Stream.of("seal") : Stream.empty())
                .toList();
    }

    private boolean holds(RingTerm kind) {
        return lines.stream().anyMatch(line -> line.kind() == kind);
    }

    String label() {
        if (lines.isEmpty()) {
            return "no term stated";
        }
        String out = Stream.of(seal == null ? "seal" : "", holds(RingTerm.END_POINT) ? "" : "end point")
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(" and "));
        return included()
                + (out.isEmpty() ? "" : "; " + out + " not included")
                + (seal == null ? "" : "; seal shown apart");
    }

    private String included() {
        List<String> in = Stream.of(
                        hasInstruments() ? "instruments" : "", named(RingTerm.REACTION), named(RingTerm.END_POINT))
                .filter(part -> !part.isEmpty())
                .toList();
        return in.size() == 1
                ? in.get(0) + " only"
                : String.join(", ", in.subList(0, in.size() - 1)) + " and " + in.get(in.size() - 1);
    }

    /** The thermometer contributes to water density too. */
    private boolean hasInstruments() {
        return lines.stream().anyMatch(line -> line.kind() != RingTerm.REACTION && line.kind() != RingTerm.END_POINT);
    }

    private String named(RingTerm kind) {
        return holds(kind) ? kind.toString() : "";
    }

    String table() {
        StringBuilder table = new StringBuilder();
        lines.forEach(line -> table.append(row(line)));
        return table.append("not included: ")
                .append(String.join(", ", leftOut()))
                .toString();
    }

    private String row(Line line) {
        Distribution spread = line.term().spread();
        double share = run.relativeSensitivity(line.kind()) * spread.standardUncertainty();
        return String.format(
                Locale.ROOT,
                "%-32s %-16s %-28s %2d %10s %%  %s%n",
                line.term().name(),
                line.kind(),
                spread + " " + line.kind().unit(),
                line.kind().sensitivity(),
                Rounding.digits(100 * Math.abs(share), 2),
                line.term().basis());
    }
}
