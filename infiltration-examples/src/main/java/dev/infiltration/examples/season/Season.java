// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import dev.infiltration.check.Checker;
import dev.infiltration.exchange.CriterionJson;
import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.exchange.MethodJson;
import dev.infiltration.exchange.ReviewJson;
import dev.infiltration.field.Problem;
import dev.infiltration.field.ReadBook;
import dev.infiltration.method.Methods;
import dev.infiltration.report.SeasonText;
import dev.infiltration.review.Review;
import dev.infiltration.rule.Effect;
import dev.infiltration.summary.Specification;
import java.io.BufferedWriter;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The main job as a command: a field book in, its review out. */
public final class Season {

    private static final String DEMO = "infiltration-examples/demo/harrow-quay.json";
    private static final Pattern CONTROL = Pattern.compile("[\\p{C}\\u2028\\u2029&&[^\\n]]");
    private static final int REVIEWED = 0;
    private static final int NOT_CLEAN = 1;
    private static final int FAILED = 2;

    private final InputStream in;
    private final OutputStream out;
    private final PrintStream err;

    Season(InputStream in, OutputStream out, PrintStream err) {
        this.in = in;
        this.out = out;
        this.err = err;
    }

    /**
     * Reviews a field book and ends with the status of the review.
     *
     * @param args the command's arguments
     */
    public static void main(String[] args) {
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        System.exit(new Season(System.in, new FileOutputStream(FileDescriptor.out), err).run(args));
    }

    /** {@return the status: 0 reviewed, 1 strict and not clean, 2 nothing done} */
    int run(String... args) {
        try {
            Arguments arguments = Arguments.of(args);
            if (arguments.help()) {
                print(writer -> writer.write(Arguments.USAGE + "\n"));
                return REVIEWED;
            }
            return arguments.reference() == null ? review(arguments) : check(arguments, arguments.reference());
        } catch (Arguments.UsageException wrong) {
            return fail(wrong.getMessage() + "\n" + Arguments.USAGE);
        } catch (IOException broken) {
            return fail(message(broken));
        } catch (OutOfMemoryError full) {
            return fail("not enough memory for this input; with JDK_JAVA_OPTIONS=-Xmx8g Java takes up to 8 GB");
        }
    }

    private static String message(IOException failed) {
        if (failed instanceof NoSuchFileException) {
            return "no such file: " + failed.getMessage();
        }
        boolean namesFile = failed instanceof FileSystemException system && system.getFile() != null;
        return namesFile
                ? "cannot read " + ((FileSystemException) failed).getFile() + ": " + TextFile.reason(failed)
                : String.valueOf(failed.getMessage());
    }

    /** {@return a message}, with escapes for characters that control a terminal or reorder text */
    private static String shown(String message) {
        return CONTROL.matcher(message)
                .replaceAll(found -> Matcher.quoteReplacement(
                        String.format(Locale.ROOT, "\\u%04X", found.group().codePointAt(0))));
    }

    private int fail(String message) {
        err.println("season: " + shown(message));
        return FAILED;
    }

    /** Says what is no failure, and is nothing to be silent of. */
    private void note(String message) {
        if (!message.isEmpty()) {
            err.println("season: " + shown(message));
        }
    }

    private int review(Arguments arguments) throws IOException {
        ReadBook read = read(arguments);
        if (read.readPart().isEmpty()) {
            for (Problem problem : read.problems()) {
                fail("nothing readable: line " + problem.line() + ", column " + problem.column() + ": "
                        + problem.message());
            }
            return FAILED;
        }
        Checker checker = Checker.withDefaults().withMethods(methods(arguments.methods()));
        checker = arguments.today() == null ? checker : checker.withToday(arguments.today());
        Review review = Review.of(read, checker).withSpecification(criteria(arguments.criteria()));
        if (arguments.plan().isAskedFor()) {
            return plan(arguments, Planning.of(arguments.plan(), review, checker.methods(), arguments.today()));
        }
        if (arguments.out() != null) {
            writeTo(arguments.out(), review);
            note(SeasonFiles.write(arguments.out(), review, asOf(arguments)));
        }
        print(writer -> write(review, arguments.json(), writer));
        boolean isClean =
                review.problems().isEmpty() && review.findings(Effect.DEVIATION).isEmpty();
        return arguments.strict() && !isClean ? NOT_CLEAN : REVIEWED;
    }

    private int plan(Arguments arguments, Planning planned) throws IOException {
        if (arguments.out() != null) {
            planned.writeTo(arguments.out());
        }
        print(writer -> planned.write(arguments.json(), writer));
        return REVIEWED;
    }

    private int check(Arguments arguments, Path reference) throws IOException {
        Reference checked = Reference.read(reference);
        print(writer -> checked.write(arguments.json(), writer));
        return arguments.strict() && !checked.isPassed() ? NOT_CLEAN : REVIEWED;
    }

    private static LocalDate asOf(Arguments arguments) {
        return arguments.today() == null ? LocalDate.now(ZoneOffset.UTC) : arguments.today();
    }

    private static Methods methods(List<Path> files) throws IOException {
        Methods methods = Methods.builtIn();
        for (Path file : files) {
            MethodJson.ReadMethod read = MethodJson.read(file, methods);
            if (read.method().isEmpty()) {
                throw Reference.refused(file, read.problems());
            }
            methods = methods.with(read.method().get());
        }
        return methods;
    }

    private static Specification criteria(List<Path> files) throws IOException {
        Specification all = Specification.none();
        for (Path file : files) {
            CriterionJson.ReadCriteria read = CriterionJson.read(file);
            all = all.and(read.specification().orElseThrow(() -> Reference.refused(file, read.problems())));
        }
        return all;
    }

    private ReadBook read(Arguments arguments) throws IOException {
        @Nullable String book = arguments.book();
        FieldBookJson json = FieldBookJson.withDefaults();
        if ("-".equals(book)) {
            try (InputStream input = watched(in)) {
                return json.readEither(input);
            } catch (IOException failed) {
                throw new IOException("cannot read standard input: " + TextFile.reason(failed), failed);
            }
        }
        Path file = Path.of(book == null ? System.getProperty("season.demo", DEMO) : book);
        String name = file.toString().toLowerCase(Locale.ROOT);
        try (InputStream input = watched(Files.newInputStream(file))) {
            if (arguments.isTable()) {
                return RunsTable.read(input, arguments.mapping());
            }
            return name.endsWith(".jsonl") ? json.readLines(input) : json.read(input);
        }
    }

    /** The launcher knows whether standard error is a terminal. */
    private InputStream watched(InputStream input) {
        return Boolean.getBoolean("season.terminal") ? new Progress(input, err) : input;
    }

    private void writeTo(Path folder, Review review) throws IOException {
        OutputFolder.create(folder);
        TextFile.write(folder.resolve("review.txt"), text -> write(review, false, text));
        TextFile.write(folder.resolve("review.json"), text -> write(review, true, text));
        note(RunsTable.writeTo(folder, review.book()));
        LocationsMap.writeTo(folder, review);
    }

    private static void write(Review review, boolean json, Writer writer) throws IOException {
        if (json) {
            ReviewJson.write(review, writer);
        } else {
            writer.write(SeasonText.of(review));
        }
    }

    private void print(TextFile.Content content) throws IOException {
        try {
            Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
            content.writeTo(writer);
            writer.flush();
        } catch (IOException failed) {
            throw new IOException("cannot write to standard output: " + TextFile.reason(failed), failed);
        }
    }
}
