// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.infiltration.check.Checker;
import dev.infiltration.check.Finding;
import dev.infiltration.field.Books;
import dev.infiltration.field.FieldBook;
import jakarta.validation.Valid;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The records' annotations ask for the same parts as {@code data.required}. */
class RequiredPartsTest {

    @Property(tries = 300)
    void annotationsAndRuleAskForTheSame(@ForAll("books") FieldBook book) {
        List<Finding> findings = Checker.withDefaults().check(book).findings();
        assertEquals(places(findings, "data.required"), notOfDoubles(annotated(book), findings));
    }

    private static Set<String> annotated(FieldBook book) {
        return Validators.DEFAULT.validate(new Holder(book)).stream()
                .map(violation -> Validators.pointer(violation.getPropertyPath()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    record Holder(@Valid FieldBook book) {}

    /** For a duplicate record the rules report only the duplicate. */
    private static Set<String> notOfDoubles(Set<String> places, List<Finding> findings) {
        Set<String> doubles = places(findings, "data.duplicate");
        places.removeIf(place -> doubles.stream().anyMatch(record -> place.startsWith(record + "/")));
        return places;
    }

    private static Set<String> places(List<Finding> findings, String rule) {
        return findings.stream()
                .filter(finding -> finding.rule().equals(rule))
                .map(finding -> finding.where().toString())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Provide
    Arbitrary<FieldBook> books() {
        return Books.any();
    }
}
