// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples.season;

import dev.infiltration.field.ClockTime;
import dev.infiltration.plan.RainRecord;
import dev.infiltration.plan.RainRecord.Fall;
import dev.infiltration.units.FieldUnit;
import dev.infiltration.units.Reading;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A record of rain as comma-separated values: times and depths, of a gauge or a forecast.
 *
 * <p>Columns by the header, in any order: {@code from} and {@code to}, or one of both, and {@code depth mm} or
 * {@code depth in}. Without {@code to} a row lasts up to the next, without {@code from} it begins at the one before; the row
 * that has no neighbour there lasts as long as its other neighbour, alone an hour. An empty depth is not known and counts as rain,
 * as does what no row tells.
 */
final class RainTable {

    private static final Reading<Length> DRY = Reading.of("0", FieldUnit.MILLIMETRE);
    private static final List<String> TIMES = List.of("from", "to");
    private static final List<String> DEPTHS = List.of("depth mm", "depth in");

    /** A hundred years of hours are about 40 MB. */
    private static final int MOST_BYTES = 50_000_000;

    private final Path file;
    private final ZoneId zone;
    private final List<String> header;
    private final List<Instant> from = new ArrayList<>();
    private final List<Instant> to = new ArrayList<>();
    private final List<@Nullable Reading<Length>> depths = new ArrayList<>();

    private RainTable(Path file, ZoneId zone, String header) throws IOException {
        this.file = file;
        this.zone = zone;
        this.header = cells(header.toLowerCase(Locale.ROOT));
        long times = this.header.stream().filter(TIMES::contains).count();
        boolean isTwice =
                this.header.stream().filter(TIMES::contains).distinct().count() < times;
        if (times == 0
                || isTwice
                || this.header.stream().filter(DEPTHS::contains).count() != 1) {
            throw refused(1, "expected columns from, to or both, and depth mm or depth in");
        }
    }

    /**
     * {@return the rain that a file tells}
     *
     * @param zone the zone of times that have no offset
     * @throws IOException if the file cannot be read or a row cannot stand
     */
    static RainRecord read(Path file, ZoneId zone) throws IOException {
        List<String> lines = text(file).lines().toList();
        RainTable table = new RainTable(file, zone, lines.isEmpty() ? "" : lines.get(0));
        for (int i = 1; i < lines.size(); i++) {
            if (!lines.get(i).isBlank()) {
                table.row(i + 1, cells(lines.get(i)));
            }
        }
        if (table.depths.isEmpty()) {
            throw table.refused(lines.size(), "expected a row");
        }
        return table.record();
    }

    /** {@return the text of a file}: UTF-8, or UTF-16 by its byte-order mark */
    private static String text(Path file) throws IOException {
        byte[] bytes = bytes(file);
        boolean isMarked = bytes.length >= 2 && (bytes[0] & 0xFF) + (bytes[1] & 0xFF) == 0xFF + 0xFE;
        try {
            return (isMarked ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8)
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString()
                    .replace("\uFEFF", "");
        } catch (CharacterCodingException notText) {
            throw new IOException(file + ": expected text in UTF-8, or in UTF-16 with a byte-order mark", notText);
        }
    }

    private static byte[] bytes(Path file) throws IOException {
        try (InputStream input = Files.newInputStream(file)) {
            byte[] bytes = input.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new IOException(file + ": found more than 50 MB; a rain record has at most 50 MB");
            }
            return bytes;
        }
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.split(",", -1))
                .map(cell -> cell.replace("\"", "").trim())
                .toList();
    }

    private IOException refused(int line, String why) {
        return new IOException(file + ": line " + line + ": " + why);
    }

    private void row(int line, List<String> cells) throws IOException {
        if (cells.size() != header.size()) {
            throw refused(line, "expected " + header.size() + " cells, got " + cells.size());
        }
        try {
            for (int i = 0; i < cells.size(); i++) {
                take(header.get(i), cells.get(i));
            }
        } catch (DateTimeException | NumberFormatException cannotStand) {
            throw refused(line, "cannot read " + String.join(",", cells));
        }
        @Nullable Reading<Length> depth = depths.get(depths.size() - 1);
        if (depth != null && depth.value().signum() < 0) {
            throw refused(line, "expected a depth of 0 or more, got " + depth);
        }
        if (isBackwards(from) || isBackwards(to) || hasNegativeSpan()) {
            throw refused(line, "expected times in order");
        }
    }

    private void take(String column, String cell) {
        switch (column) {
            case "from" -> from.add(time(cell).withEarlierOffsetAtOverlap().toInstant());
            case "to" -> to.add(time(cell).withLaterOffsetAtOverlap().toInstant());
            case "depth mm" -> depths.add(cell.isEmpty() ? null : Reading.of(cell, FieldUnit.MILLIMETRE));
            case "depth in" -> depths.add(cell.isEmpty() ? null : Reading.of(cell, FieldUnit.INCH));
            default -> {}
        }
    }

    private ZonedDateTime time(String cell) {
        ClockTime time = ClockTime.parse(cell.replace(' ', 'T'));
        return time.offset() == null
                ? time.dateTime().atZone(zone)
                : time.dateTime().atZone(time.offset());
    }

    private static boolean isBackwards(List<Instant> times) {
        int last = times.size() - 1;
        return last > 0 && !times.get(last).isAfter(times.get(last - 1));
    }

    private boolean hasNegativeSpan() {
        int last = depths.size() - 1;
        return from.size() == to.size() && to.get(last).isBefore(from.get(last));
    }

    private RainRecord record() {
        if (to.isEmpty()) {
            to.addAll(from.subList(1, from.size()));
            to.add(from.get(from.size() - 1).plus(span(from, from.size() - 1)));
        } else if (from.isEmpty()) {
            from.add(to.get(0).minus(span(to, 1)));
            from.addAll(to.subList(0, to.size() - 1));
        }
        List<Fall> falls = new ArrayList<>();
        for (int i = 0; i < depths.size(); i++) {
            if (i > 0 && from.get(i).isAfter(to.get(i - 1))) {
                falls.add(new Fall(to.get(i - 1), from.get(i), null));
            }
            falls.add(new Fall(from.get(i), to.get(i), depths.get(i)));
        }
        return new RainRecord(from.get(0), to.get(to.size() - 1), falls).without(DRY);
    }

    /** {@return the time between a row and the one before it; an hour where there is only one} */
    private static Duration span(List<Instant> times, int later) {
        return times.size() == 1 ? Duration.ofHours(1) : Duration.between(times.get(later - 1), times.get(later));
    }
}
