// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.exchange.text.Found;
import dev.infiltration.exchange.text.Output;
import dev.infiltration.field.Problem;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import java.io.IOException;
import java.io.InputStream;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Reads and writes test methods as JSON: a national variant or a utility's own procedure is a file, not code.
 *
 * <p>A file states a whole method, or names another one in {@code basedOn} and gives the differences. It is read as a whole
 * or not at all: a method with a missing part, an unknown unit or a contradiction is refused, and its faults are reported.
 */
public final class MethodJson {

    /** The value of {@code format} in a test method of this version. */
    public static final String FORMAT = "infiltration-test-method/1";

    private static final Document<TestMethod> METHOD = Document.of(TestMethod.class, FORMAT)
            .with("basedOn", Scalars.STRING)
            .whole();

    private static final Document<Base> BASE = Document.of(Base.class, FORMAT);

    private MethodJson() {}

    /**
     * The result of reading a method.
     *
     * @param read     the method; null when it was refused
     * @param problems every fault, in order of place
     */
    public record ReadMethod(@Nullable TestMethod read, List<Problem> problems) {

        /** Copies the problems. */
        public ReadMethod {
            problems = List.copyOf(problems);
        }

        /** {@return the method, or empty when it was refused} */
        public Optional<TestMethod> method() {
            return Optional.ofNullable(read);
        }
    }

    /**
     * The part of a method that is read first.
     *
     * @param basedOn id or alias of another method
     */
    public record Base(@Nullable String basedOn) {}

    /**
     * Reads a method.
     *
     * @param json  the document
     * @param known the methods that {@code basedOn} may name
     * @return the method, or why it was refused
     */
    public static ReadMethod read(String json, Methods known) {
        ReadLimits limits = ReadLimits.withDefaults();
        return read(CharacterSource.of(json, limits.documentLength()), known, limits);
    }

    /**
     * Reads a method from a file.
     *
     * @param json  the file
     * @param known the methods that {@code basedOn} may name
     * @return the method, or why it was refused
     * @throws IOException if the file cannot be read
     */
    public static ReadMethod read(Path json, Methods known) throws IOException {
        ReadLimits limits = ReadLimits.withDefaults();
        try (InputStream bytes = Files.newInputStream(json)) {
            return read(TextReader.of(bytes, limits.documentLength()).rest(), known, limits);
        }
    }

    private static ReadMethod read(CharacterSource text, Methods known, ReadLimits limits) {
        @Nullable Base base = BASE.read(text, limits).value();
        @Nullable String name = base == null ? null : base.basedOn();
        Optional<TestMethod> method = name == null ? Optional.empty() : known.find(name);
        if (name != null && method.isEmpty()) {
            ReadFault unknown = new ReadFault(
                    0,
                    "/basedOn",
                    "found " + Found.quoted(name) + ", expected one of "
                            + String.join(
                                    ", ",
                                    known.all().stream().map(TestMethod::id).toList()));
            return new ReadMethod(null, text.problems(List.of(unknown)));
        }
        ReadResult<TestMethod> content = method.map(MethodJson::unverified)
                .map(METHOD::basedOn)
                .orElse(METHOD)
                .read(text, limits);
        @Nullable TestMethod read = content.faults().isEmpty() ? content.value() : null;
        @Nullable String taken = read == null ? null : taken(read, known);
        if (read == null || taken != null) {
            List<ReadFault> faults = taken == null ? content.faults() : List.of(new ReadFault(0, "/aliases", taken));
            return new ReadMethod(null, text.problems(faults));
        }
        return new ReadMethod(method.map(other -> verified(read, other)).orElse(read), List.of());
    }

    /** The reason why a method conflicts with the known ones, or null. */
    private static @Nullable String taken(TestMethod method, Methods known) {
        try {
            known.with(method);
            return null;
        } catch (IllegalArgumentException refused) {
            return refused.getMessage() + "; a variant says what else it is known by, if only \"aliases\": []";
        }
    }

    private static TestMethod unverified(TestMethod base) {
        return base.withVerified(null);
    }

    /** The verification of a method applies to a variant only if its limits are the same. */
    private static TestMethod verified(TestMethod variant, TestMethod base) {
        TestMethod named = unverified(base)
                .withId(variant.id())
                .withAliases(variant.aliases())
                .withDesignation(variant.designation());
        return variant.equals(named) ? variant.withVerified(base.verified()) : variant;
    }

    /**
     * Writes a whole method.
     *
     * @param method the method
     * @param target where to; it is flushed and stays open
     * @throws IOException if the target cannot be written to
     */
    public static void write(TestMethod method, Writer target) throws IOException {
        Objects.requireNonNull(method, "method");
        int nesting = ReadLimits.withDefaults().nesting();
        Output.PAGE.write(target, json -> new RecordWriter(json, "", nesting).writeDocument(method, FORMAT));
    }
}
