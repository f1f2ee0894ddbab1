// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.host;

import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.Visit;
import dev.infiltration.review.Review;
import java.io.IOException;
import java.io.StringWriter;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;

/** A host that has neither Jakarta Validation nor Jackson's databind: reads a book, reviews it, writes it. */
final class BareHost {

    private BareHost() {}

    public static void main(String[] arguments) throws IOException {
        ReadBook read = FieldBookJson.withDefaults().read(Path.of(arguments[0]));
        Review review = Review.of(read);
        StringWriter written = new StringWriter();
        FieldBookJson.withDefaults().write(review.book(), written);
        for (RecordComponent component : Visit.class.getRecordComponents()) {
            if (component.getAnnotations().length > 0) {
                throw new IllegalStateException(component + " has annotations whose classes are absent");
            }
        }
        System.out.println(LocationTest.class.getModule().isNamed()
                + " " + LocationTest.class.getAnnotations().length
                + " " + isThere("jakarta.validation.Valid")
                + " " + review.runs().size()
                + " " + review.findings().size()
                + " "
                + Review.of(FieldBookJson.withDefaults().read(written.toString()))
                        .findings()
                        .size());
    }

    private static boolean isThere(String type) {
        try {
            Class.forName(type);
            return true;
        } catch (ClassNotFoundException e) {
            return false;
        }
    }
}
