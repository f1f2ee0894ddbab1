// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.check;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.IndexMap;
import dev.infiltration.field.Instrument;
import dev.infiltration.field.Location;
import dev.infiltration.field.LocationTest;
import dev.infiltration.field.Maintenance;
import dev.infiltration.field.Place;
import dev.infiltration.field.Ring;
import dev.infiltration.field.Site;
import dev.infiltration.field.Surface;
import dev.infiltration.field.TestRun;
import dev.infiltration.field.Visit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The keys of findings: the rule, and the place with ids instead of positions.
 *
 * <p>{@code run.mass:/visits/V1/tests/A1/runs/2026-06-03T09:12/water} is the key of a finding at the water of a run. A run is
 * named by its start, or by its number if the start is not recorded. A record without an id, and the second record with one
 * id, get {@code #} and an ordinal.
 */
final class FindingKeys {

    private final FieldBook book;
    private final List<Visit> visits;
    private final IndexMap gaps;
    private final Map<Place, List<String>> names = new HashMap<>();

    private FindingKeys(BookIndex index, IndexMap gaps) {
        this.book = index.book();
        this.visits = new ArrayList<>(book.visits());
        index.visits().forEach(at -> visits.set(at.index(), at.visit()));
        this.gaps = gaps;
    }

    /** {@return the keys of findings at places of the book} */
    static FindingKeys inBook(BookIndex index) {
        return new FindingKeys(index, IndexMap.none());
    }

    /** {@return the keys of findings at places of the document that the book was read from} */
    static FindingKeys inDocument(BookIndex index) {
        return new FindingKeys(index, index.register().unreadable().gaps());
    }

    /** {@return the finding with its key} */
    Finding keyed(Finding finding) {
        String part = finding.part().isEmpty() ? "" : "/" + escaped(finding.part());
        return finding.withKey(finding.rule() + ":" + path(finding.where()) + part);
    }

    private String path(Place place) {
        return place.isBook() ? "" : path(place.outer()) + "/" + name(place);
    }

    private String name(Place place) {
        OptionalInt position = place.position();
        return position.isPresent() ? entryName(place.outer(), position.getAsInt()) : escaped(place.token());
    }

    private String entryName(Place list, int position) {
        int index = indexInBook(list, position);
        List<String> known = names.computeIfAbsent(list, this::entryNames);
        return index < 0 || index >= known.size() ? "#entry" + (position + 1) : known.get(index);
    }

    /** {@return the index in the book of an entry of the document, or -1 if the entry could not be read} */
    private int indexInBook(Place list, int position) {
        String pointer = gaps.isEmpty() ? "" : list.toString();
        for (int index = 0; !gaps.isEmpty() && index <= position; index++) {
            int inDocument = gaps.indexInDocument(pointer, index);
            if (inDocument >= position) {
                return inDocument == position ? index : -1;
            }
        }
        return gaps.isEmpty() ? position : -1;
    }

    private List<String> entryNames(Place list) {
        Map<String, Integer> met = new HashMap<>();
        List<String> all = new ArrayList<>();
        for (Object record : records(list)) {
            String id = id(record);
            boolean isUnnamedRun = id == null && record instanceof TestRun;
            String base = id == null ? "" : escaped(id);
            int ordinal = isUnnamedRun ? all.size() + 1 : met.merge(base, 1, Integer::sum);
            all.add(id != null && ordinal == 1 ? base : base + "#" + ordinal);
        }
        return all;
    }

    private List<?> records(Place list) {
        Object parent = record(list.outer());
        if (parent instanceof FieldBook) {
            return ofBook(list.token());
        }
        if (parent instanceof Site site && list.token().equals("surfaces")) {
            return site.surfaces();
        }
        if (parent instanceof Surface surface && list.token().equals("locations")) {
            return surface.locations();
        }
        if (parent instanceof Visit visit && list.token().equals("tests")) {
            return visit.tests();
        }
        return parent instanceof LocationTest test && list.token().equals("runs") ? test.runs() : List.of();
    }

    private List<?> ofBook(String list) {
        return switch (list) {
            case "sites" -> book.sites();
            case "rings" -> book.rings();
            case "instruments" -> book.instruments();
            case "visits" -> visits;
            case "maintenance" -> book.maintenance();
            default -> List.of();
        };
    }

    private @Nullable Object record(Place place) {
        if (place.isBook()) {
            return book;
        }
        OptionalInt position = place.position();
        if (position.isEmpty()) {
            return null;
        }
        List<?> list = records(place.outer());
        int index = indexInBook(place.outer(), position.getAsInt());
        return index < 0 || index >= list.size() ? null : list.get(index);
    }

    private static @Nullable String id(Object record) {
        if (record instanceof LocationTest test) {
            return Stream.of(test.id() == null ? "" : test.id(), test.location() == null ? "" : test.location())
                    .filter(text -> !text.isEmpty())
                    .findFirst()
                    .orElse(null);
        }
        if (record instanceof TestRun run) {
            return run.start() == null ? null : run.start().toString();
        }
        return SubjectText.given(recordedId(record));
    }

    private static @Nullable String recordedId(Object record) {
        if (record instanceof Visit visit) {
            return visit.id();
        }
        if (record instanceof Ring ring) {
            return ring.id();
        }
        if (record instanceof Instrument instrument) {
            return instrument.id();
        }
        if (record instanceof Maintenance maintenance) {
            return maintenance.id();
        }
        if (record instanceof Surface surface) {
            return surface.id();
        }
        if (record instanceof Location location) {
            return location.id();
        }
        return record instanceof Site site ? site.id() : null;
    }

    /** Escapes as a JSON Pointer does, and also the signs that separate parts of a key. */
    private static String escaped(String text) {
        return text.replace("~", "~0").replace("/", "~1").replace("#", "~2");
    }
}
