// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.host;

import dev.infiltration.check.Finding;
import dev.infiltration.exchange.FieldBookJson;
import dev.infiltration.field.FieldBook;
import dev.infiltration.field.LocationTest;
import dev.infiltration.validation.FollowsMethod;
import jakarta.validation.ConstraintViolation;
import jakarta.validation.Valid;
import jakarta.validation.Validation;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.hibernate.validator.engine.HibernateConstraintViolation;
import org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator;

/** A host that validates: its own code on the class path, all libraries as modules. */
final class ValidatingHost {

    record Inspection(@Valid @FollowsMethod FieldBook book) {}

    private ValidatingHost() {}

    public static void main(String[] arguments) throws IOException {
        FieldBook book =
                FieldBookJson.withDefaults().read(Path.of(arguments[0])).book().orElseThrow();
        List<LocationTest> tests =
                List.of(book.visits().get(0).tests().get(0).withRing(null).withPreWet(null));
        Inspection inspection =
                new Inspection(book.withVisits(List.of(book.visits().get(0).withTests(tests))));
        try (var factory = Validation.byDefaultProvider()
                .configure()
                .messageInterpolator(new ParameterMessageInterpolator())
                .buildValidatorFactory()) {
            TreeSet<String> told = new TreeSet<>();
            factory.getValidator().validate(inspection).forEach(violation -> told.add(told(violation)));
            System.out.println(LocationTest.class.getModule().isNamed() + " " + told);
        }
    }

    private static String told(ConstraintViolation<?> violation) {
        HibernateConstraintViolation<?> known = violation.unwrap(HibernateConstraintViolation.class);
        Finding finding = known.getDynamicPayload(Finding.class);
        return violation.getPropertyPath() + (finding == null ? "" : " " + finding.rule());
    }
}
