// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import dev.infiltration.exchange.ReferenceJson;
import dev.infiltration.field.Problem;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.rate.ReferenceCheck;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** The library's rate against a file of reference cases. */
record Reference(List<ReferenceCheck> checks) {

    static Reference read(Path file) throws IOException {
        ReferenceJson.ReadCases read = ReferenceJson.read(file);
        if (read.cases().isEmpty()) {
            throw refused(file, read.problems());
        }
        return new Reference(read.cases().get().check(RateEquation.asPublished()::rate));
    }

    /** Why a file was refused, a line for each fault. */
    static IOException refused(Path file, List<Problem> problems) {
        return new IOException(problems.stream()
                .map(problem -> file + ": line " + problem.line() + ", column " + problem.column() + ", "
                        + problem.where() + ": " + problem.message())
                .collect(Collectors.joining("\n")));
    }

    boolean isPassed() {
        return checks.stream().allMatch(ReferenceCheck::isPassed);
    }

    void write(boolean json, Writer writer) throws IOException {
        if (json) {
            ReferenceJson.writeChecks(checks, writer);
            return;
        }
        for (ReferenceCheck check : checks) {
            writer.write(check + "\n");
        }
        long passed = checks.stream().filter(ReferenceCheck::isPassed).count();
        writer.write(passed + " of " + checks.size() + " passed\n");
    }
}
