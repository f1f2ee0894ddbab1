// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import dev.infiltration.field.IndexMap;
import dev.infiltration.field.ReadBook;
import dev.infiltration.field.UnreadableValue;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The original texts of the values of a document that could not be read, for writing them back at their places. */
final class Originals {

    private static final Originals NONE = new Originals(List.of(), IndexMap.none());

    private final IndexMap gaps;
    private final Map<String, List<String>> at = new HashMap<>();
    private final Map<String, String> inside = new HashMap<>();
    private final Map<String, Integer> lastEntries = new HashMap<>();

    private Originals(List<UnreadableValue> values, IndexMap gaps) {
        this.gaps = gaps;
        values.stream().distinct().forEach(this::add);
    }

    private void add(UnreadableValue value) {
        List<String> texts = at.computeIfAbsent(value.lost(), key -> new ArrayList<>());
        if (!texts.contains(value.original())) {
            texts.add(value.original());
        }
        String pointer = value.lost();
        for (int slash = pointer.lastIndexOf('/'); slash >= 0; slash = pointer.lastIndexOf('/')) {
            inside.putIfAbsent(pointer, value.original());
            String token = pointer.substring(slash + 1);
            pointer = pointer.substring(0, slash);
            if (token.matches("0|[1-9][0-9]{0,8}")) {
                lastEntries.merge(pointer, Integer.valueOf(token), Math::max);
            }
        }
    }

    static Originals none() {
        return NONE;
    }

    static Originals of(ReadBook read) {
        return new Originals(read.unreadable(), read.gaps());
    }

    /** {@return the originals of values that are not inside a list} */
    Originals outside(String list) {
        Originals others = new Originals(List.of(), gaps);
        at.forEach((place, texts) -> {
            if (!place.startsWith(list + "/")) {
                texts.forEach(text -> others.add(new UnreadableValue(place, place, text)));
            }
        });
        return others;
    }

    boolean isEmpty() {
        return at.isEmpty() && gaps.isEmpty();
    }

    /** {@return the texts at a place, in order}; more than one where a key was repeated */
    List<String> at(String pointer) {
        return at.getOrDefault(pointer, List.of());
    }

    /** {@return a text at a place or inside it; null where nothing was lost} */
    @Nullable
    String inside(String pointer) {
        return inside.get(pointer);
    }

    /** {@return the values directly inside an object that could not be read, by their keys} */
    Map<String, List<String>> keys(String pointer) {
        Map<String, List<String>> keys = new HashMap<>();
        at.forEach((place, texts) -> {
            int slash = place.lastIndexOf('/');
            if (slash >= 0 && place.substring(0, slash).equals(pointer)) {
                keys.put(place.substring(slash + 1).replace("~1", "/").replace("~0", "~"), texts);
            }
        });
        return keys;
    }

    /** {@return the position in the document of the last entry of a list that was lost or contains a lost value; -1 for none} */
    int lastEntry(String list) {
        return lastEntries.getOrDefault(list, -1);
    }

    /** {@return the position in the document of an entry that was kept} */
    int position(String list, int index) {
        return gaps.indexInDocument(list, index);
    }
}
