// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.csv;

import dev.infiltration.field.FieldBook;
import dev.infiltration.field.Problem;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A book that grows by rows: each speaks of a run and of the records around it, which later rows may say again. */
final class TableBook {

    private final Constants constants;
    private final List<Problem> problems;
    private final RecordDraft book = new RecordDraft(FieldBook.class);
    private final Map<String, String> siteOfSurface = new HashMap<>();
    private final Map<Object, Map<List<String>, TestRows>> tests = new HashMap<>();

    /**
     * Starts an empty book.
     *
     * @param constants what rows take that have no such cell
     * @param problems  takes what cannot stand
     */
    TableBook(Constants constants, List<Problem> problems) {
        this.constants = constants;
        this.problems = problems;
    }

    /** A test and the number of the last run that a row told of. */
    private static final class TestRows {

        private final RecordDraft test;
        private int lastRun;

        TestRows(RecordDraft test) {
            this.test = test;
        }
    }

    FieldBook toBook() {
        return (FieldBook) book.toRecord();
    }

    void add(Row row) {
        Map<RowRecord, RecordDraft> records = records(row);
        row.cells().forEach(cell -> put(cell, records));
        constants.cells().stream()
                .filter(constant -> !constant.header().field().equals(Fields.RUN_NUMBER))
                .forEach(constant -> putConstant(constant, records));
    }

    private void putConstant(Cell constant, Map<RowRecord, RecordDraft> records) {
        @Nullable RecordDraft record = records.get(constant.level());
        if (record != null && constant.value() != null) {
            record.put(constant.header().path(), constant.value());
        } else if (constant.level() != RowRecord.RUN
                && records.containsKey(RowRecord.TEST)
                && constants.isNews(constant)) {
            String name = constant.header().header();
            String expected = "the id of its " + constant.level().entry() + " too";
            problems.add(Constants.problem(name, constant.text(), expected));
        }
    }

    private void put(Cell cell, Map<RowRecord, RecordDraft> records) {
        @Nullable RecordDraft record = records.get(cell.level());
        if (cell.header().field().equals(Fields.RUN_NUMBER) && cell.value() != null) {
            return;
        }
        if (record == null) {
            problems.add(cell.problem("the id of its " + cell.level().entry() + " beside it", "it is left out"));
        } else if (cell.value() == null) {
            records.getOrDefault(cell.level().leavesOut(), record).leaveOut();
            problems.add(cell.problem(cell.expected(), "the " + cell.level().entry() + " is left out"));
        } else if (cell.header().field().equals(Fields.NOTE)) {
            putNote(cell, record);
        } else {
            Object kept = record.put(cell.header().path(), cell.value());
            if (!kept.equals(cell.value())) {
                problems.add(cell.problem(earlier(cell.level(), kept), "it is left out"));
            }
        }
    }

    /** A note stays with its run: from the second run on the number stands before it; the same note is kept once. */
    private static void putNote(Cell cell, RecordDraft test) {
        List<String> path = cell.header().path();
        int run = test.size("runs");
        String note = run > 1 ? "run " + run + ": " + cell.value() : String.valueOf(cell.value());
        @Nullable Object earlier = test.get(path);
        if (earlier == null) {
            test.put(path, note);
        } else if (!earlier.equals(cell.value())) {
            test.replace(path, earlier + "; " + note);
        }
    }

    private static String earlier(RowRecord level, Object kept) {
        return "what stands for this " + level.entry() + " before it: " + kept;
    }

    private Map<RowRecord, RecordDraft> records(Row row) {
        Map<RowRecord, RecordDraft> records = new EnumMap<>(RowRecord.class);
        if (row.hasPlace()) {
            placeRecords(row, records);
        }
        String ring = row.id(Fields.RING_ID);
        if (!ring.isEmpty() && (row.has(RowRecord.RING) || row.hasTest())) {
            records.put(RowRecord.RING, book.entry("rings", ring, RowRecord.RING.type()));
        }
        if (row.hasVisit()) {
            visitRecords(row, records);
        }
        return records;
    }

    private void placeRecords(Row row, Map<RowRecord, RecordDraft> records) {
        String surfaceId = row.id(Fields.SURFACE_ID);
        String said = row.id(Fields.SITE_ID);
        String siteId = row.own(Fields.SITE_ID) != null ? said : siteOfSurface.getOrDefault(surfaceId, said);
        RecordDraft site = book.entry("sites", siteId, RowRecord.SITE.type());
        if (!siteId.isEmpty()) {
            site.put(List.of("id"), siteId);
        }
        records.put(RowRecord.SITE, site);
        if (row.hasSurface()) {
            siteOfSurface.putIfAbsent(surfaceId, siteId);
            RecordDraft surface = site.entry("surfaces", surfaceId, RowRecord.SURFACE.type());
            records.put(RowRecord.SURFACE, surface);
            String location = row.id(Fields.LOCATION_ID);
            if (!location.isEmpty() && (row.has(RowRecord.LOCATION) || row.hasTest())) {
                records.put(RowRecord.LOCATION, surface.entry("locations", location, RowRecord.LOCATION.type()));
            }
        }
    }

    private void visitRecords(Row row, Map<RowRecord, RecordDraft> records) {
        RecordDraft visit = book.entry("visits", row.visit(), RowRecord.VISIT.type());
        records.put(RowRecord.VISIT, visit);
        if (row.hasTest()) {
            testRecords(row, visit, records);
        }
        refer(RowRecord.VISIT, Fields.SURFACE_ID, row, records);
    }

    private void testRecords(Row row, RecordDraft visit, Map<RowRecord, RecordDraft> records) {
        TestRows rows = testRows(row, visit);
        records.put(RowRecord.TEST, rows.test);
        refer(RowRecord.TEST, Fields.LOCATION_ID, row, records);
        refer(RowRecord.TEST, Fields.RING_ID, row, records);
        if (row.has(RowRecord.RUN)) {
            rows.lastRun = number(row, rows);
            int next = rows.test.size("runs");
            records.put(RowRecord.RUN, rows.test.entry("runs", next, RowRecord.RUN.type()));
        }
    }

    /** Has a visit name its surface, or a test its location or ring; a test that the row places elsewhere is left out. */
    private void refer(RowRecord from, Field to, Row row, Map<RowRecord, RecordDraft> records) {
        String id = row.id(to);
        @Nullable RecordDraft record = records.get(from);
        if (id.isEmpty() || record == null) {
            return;
        }
        Object kept = record.put(List.of(to.name()), id);
        @Nullable Cell own = row.own(to);
        if (own != null && !kept.equals(id)) {
            @Nullable RecordDraft test = records.get(RowRecord.TEST);
            if (test != null) {
                test.leaveOut();
            }
            problems.add(own.problem(earlier(from, kept), test == null ? "it is left out" : "the test is left out"));
        }
    }

    private static int number(Row row, TestRows rows) {
        return row.value(Fields.RUN_NUMBER) instanceof Integer number ? number : rows.lastRun + 1;
    }

    /** A run goes on with the latest test of its name or location; one whose number is not the next starts another. */
    private TestRows testRows(Row row, RecordDraft visit) {
        Map<List<String>, TestRows> ofVisit = tests.computeIfAbsent(row.visit(), made -> new HashMap<>());
        @Nullable TestRows latest = ofVisit.get(row.test());
        if (latest != null && row.has(RowRecord.RUN) && latest.lastRun > 0 && number(row, latest) > latest.lastRun) {
            return latest;
        }
        RecordDraft test = visit.entry("tests", visit.size("tests"), RowRecord.TEST.type());
        TestRows rows = new TestRows(test);
        ofVisit.put(row.test(), rows);
        return rows;
    }
}
