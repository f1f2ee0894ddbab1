// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import dev.infiltration.check.Finding;
import dev.infiltration.exchange.CriterionJson;
import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.exchange.MethodJson;
import dev.infiltration.exchange.ReferenceJson;
import dev.infiltration.exchange.ReviewJson;
import dev.infiltration.exchange.TableMapping;
import dev.infiltration.exchange.TableMappingJson;
import dev.infiltration.exchange.ZonesJson;
import dev.infiltration.exchange.csv.RunsCsv;
import dev.infiltration.field.ReadBook;
import dev.infiltration.method.Methods;
import dev.infiltration.method.TestMethod;
import dev.infiltration.rate.RateEquation;
import dev.infiltration.report.SeasonText;
import dev.infiltration.review.Review;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * One input for each reader, and what must be true of the result.
 *
 * <p>A fuzzer calls this class by name ({@code -Pfuzz}); {@link ReaderFuzzTest} reads the kept inputs.
 */
public final class ReaderFuzz {

    private static final Path FILE = file();
    private static Target target = Target.BOOK;

    private ReaderFuzz() {}

    /**
     * Chooses the reader.
     *
     * @param args the name of the reader, such as {@code book}
     */
    public static void fuzzerInitialize(String[] args) {
        target = Target.valueOf(args[0].toUpperCase(Locale.ROOT));
    }

    /**
     * Reads one input.
     *
     * @param input the bytes of a file
     */
    public static void fuzzerTestOneInput(byte[] input) {
        target.read(input);
    }

    /** The readers by the name of their folder of kept inputs. */
    enum Target {
        BOOK(ReaderFuzz::book),
        LINES(ReaderFuzz::lines),
        TABLE(ReaderFuzz::table),
        MAPPING(ReaderFuzz::mapping),
        CRITERIA(ReaderFuzz::criteria),
        METHOD(ReaderFuzz::method),
        ZONES(ReaderFuzz::zones),
        REFERENCE(ReaderFuzz::reference),
        RAIN(ReaderFuzz::rain);

        @SuppressWarnings("ImmutableEnumChecker") // a method without state
        private final Reader reader;

        Target(Reader reader) {
            this.reader = reader;
        }

        void read(byte[] input) {
            try {
                reader.read(input);
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }
    }

    private interface Reader {
        void read(byte[] input) throws IOException;
    }

    private static Path file() {
        try {
            Path file = Files.createTempFile("fuzz", ".txt");
            file.toFile().deleteOnExit();
            return file;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static void check(boolean isTrue, String otherwise) {
        if (!isTrue) {
            throw new AssertionError(otherwise);
        }
    }

    private static void book(byte[] input) throws IOException {
        FieldBookJson json = FieldBookJson.withDefaults();
        ReadBook read = json.readEither(new ByteArrayInputStream(input));
        review(read);
        if (read.readPart().isPresent()) {
            StringWriter written = new StringWriter();
            json.write(read, written);
            sameReview(read, json.read(written.toString()));
        }
    }

    private static void lines(byte[] input) throws IOException {
        FieldBookJson json = FieldBookJson.withDefaults();
        ReadBook read = json.readLines(new ByteArrayInputStream(input));
        review(read);
        if (read.readPart().isPresent()) {
            StringWriter written = new StringWriter();
            json.writeLines(read, written);
            byte[] lines = written.toString().getBytes(StandardCharsets.UTF_8);
            sameReview(read, json.readLines(new ByteArrayInputStream(lines)));
        }
    }

    /** The mapping, a zero byte, the table. */
    private static void table(byte[] input) throws IOException {
        String text = new String(input, StandardCharsets.ISO_8859_1);
        int end = text.indexOf('\0');
        TableMapping mapping = end < 0
                ? TableMapping.none()
                : TableMappingJson.read(new String(input, 0, end, StandardCharsets.UTF_8))
                        .mapping()
                        .orElse(TableMapping.none());
        ByteArrayInputStream table = new ByteArrayInputStream(input, end + 1, input.length - end - 1);
        ReadBook read = RunsCsv.withDefaults().withMapping(mapping).read(table);
        review(read);
        if (read.readPart().isPresent()) {
            RunsCsv.withDefaults().write(read.readPart().get(), new StringWriter());
        }
    }

    private static void mapping(byte[] input) throws IOException {
        TableMappingJson.ReadMapping read = TableMappingJson.read(text(input));
        check(read.mapping().isEmpty() != read.problems().isEmpty(), "a mapping, or a problem");
        if (read.mapping().isPresent()) {
            StringWriter written = new StringWriter();
            TableMappingJson.write(read.mapping().get(), written);
            check(TableMappingJson.read(written.toString()).mapping().equals(read.mapping()), "the same mapping");
            RunsCsv.withDefaults()
                    .withMapping(read.mapping().get())
                    .read(new ByteArrayInputStream("location,elapsed [s]\nA1,10\n".getBytes(StandardCharsets.UTF_8)));
        }
    }

    private static void criteria(byte[] input) {
        CriterionJson.ReadCriteria read = CriterionJson.read(text(input));
        check(read.specification().isEmpty() != read.problems().isEmpty(), "criteria, or a problem");
        read.specification().ifPresent(criteria -> ReviewJson.text(Small.REVIEW.withSpecification(criteria)));
    }

    private static void method(byte[] input) throws IOException {
        MethodJson.ReadMethod read = MethodJson.read(text(input), Methods.builtIn());
        check(read.method().isEmpty() != read.problems().isEmpty(), "a method, or a problem");
        if (read.method().isPresent()) {
            TestMethod method = read.method().get();
            StringWriter written = new StringWriter();
            MethodJson.write(method, written);
            MethodJson.ReadMethod again = MethodJson.read(written.toString(), Methods.builtIn());
            check(again.method().equals(read.method()), "the same method");
        }
    }

    private static void zones(byte[] input) {
        ZonesJson.ReadZones read = ZonesJson.read(text(input));
        check(read.zones().isEmpty() != read.problems().isEmpty(), "zones, or a problem");
    }

    private static void reference(byte[] input) throws IOException {
        ReferenceJson.ReadCases read = ReferenceJson.read(text(input));
        check(read.cases().isEmpty() != read.problems().isEmpty(), "cases, or a problem");
        if (read.cases().isPresent()) {
            new Reference(read.cases().get().check(RateEquation.asPublished()::rate)).write(true, new StringWriter());
            StringWriter written = new StringWriter();
            ReferenceJson.write(read.cases().get(), written);
            check(ReferenceJson.read(written.toString()).cases().equals(read.cases()), "the same cases");
        }
    }

    private static void rain(byte[] input) throws IOException {
        Files.write(FILE, input);
        try {
            RainTable.read(FILE, ZoneId.of("America/Chicago"));
        } catch (IOException documented) {
            check(documented.getMessage().startsWith(FILE.toString()), "a message that names the file");
        }
    }

    private static String text(byte[] input) {
        return new String(input, StandardCharsets.UTF_8);
    }

    private static void review(ReadBook read) {
        Review review = Review.of(read);
        ReviewJson.text(review);
        SeasonText.of(review);
        check(read.readPart().isPresent() || !read.problems().isEmpty(), "a book, or a problem");
    }

    private static void sameReview(ReadBook read, ReadBook again) {
        if (read.problems().stream().anyMatch(problem -> problem.message().contains("reading ends"))) {
            return;
        }
        String first = essence(read);
        String second = essence(again);
        check(first.equals(second), "the same review, but\n" + first + "\n" + second + "\n" + again.problems());
    }

    /** Places move where an entry that was no record is not written: the rules, and the results in their order, do not. */
    private static String essence(ReadBook read) {
        Review review = Review.of(read);
        Stream<String> rules = review.findings().stream().map(Finding::rule).sorted();
        Stream<String> runs = review.runs().stream().map(run -> run.outcome().toString());
        Stream<String> locations =
                review.locations().stream().map(location -> location.outcome().toString());
        return Stream.of(rules, runs, locations)
                .flatMap(lines -> lines)
                .toList()
                .toString();
    }

    private static final class Small {

        private static final Review REVIEW = Review.of(read());

        private static ReadBook read() {
            try (InputStream book = Objects.requireNonNull(ReaderFuzz.class.getResourceAsStream("fuzz/book/small"))) {
                return FieldBookJson.withDefaults().read(book);
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }
    }
}
