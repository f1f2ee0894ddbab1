// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.assets;

import dev.infiltration.field.FieldBook;
import dev.infiltration.review.Review;
import jakarta.validation.Validation;
import jakarta.validation.Validator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.hibernate.validator.messageinterpolation.ParameterMessageInterpolator;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/** Where inspections come in: it reads, validates and reviews them, and keeps their rates. */
public final class InspectionDesk {

    private final JsonMapper mapper = JsonMapper.builder()
            .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
            .addModule(new SimpleModule()
                    .addDeserializer(FieldBook.class, new FieldBookReader())
                    .addSerializer(FieldBook.class, new FieldBookWriter()))
            .build();

    private final Validator validator = Validation.byDefaultProvider()
            .configure()
            .messageInterpolator(new ParameterMessageInterpolator())
            .buildValidatorFactory()
            .getValidator();

    private final List<StoredRate> rates = new ArrayList<>();

    /** An empty desk. */
    public InspectionDesk() {}

    /**
     * Takes in an inspection, and stores its rates unless there is a complaint.
     *
     * @param json the inspection
     * @return the complaints: what cannot be read, else what is not valid, each with its place
     */
    public List<String> take(String json) {
        try {
            Inspection inspection = mapper.readValue(json, Inspection.class);
            List<String> complaints = validator.validate(inspection).stream()
                    .map(violation -> violation.getPropertyPath() + ": " + violation.getMessage())
                    .sorted()
                    .toList();
            if (complaints.isEmpty()) {
                store(inspection);
            }
            return complaints;
        } catch (JacksonException e) {
            return List.of(e.getOriginalMessage());
        }
    }

    private void store(Inspection inspection) {
        Review review = Review.of(Objects.requireNonNull(inspection.fieldBook()));
        rates.addAll(StoredRate.of(Objects.requireNonNull(inspection.asset()), review));
    }

    /** {@return what was stored, in the order it came in} */
    public List<StoredRate> rates() {
        return List.copyOf(rates);
    }

    /**
     * {@return an inspection as the department exchanges it}
     *
     * @param inspection the inspection
     */
    public String write(Inspection inspection) {
        return mapper.writeValueAsString(inspection);
    }

    /**
     * Takes in the inspection in a file, and prints its complaints or its rates.
     *
     * @param arguments the file
     * @throws IOException if it cannot be read
     */
    public static void main(String[] arguments) throws IOException {
        InspectionDesk desk = new InspectionDesk();
        desk.take(Files.readString(Path.of(arguments[0]))).forEach(System.out::println);
        desk.rates().forEach(System.out::println);
    }
}
