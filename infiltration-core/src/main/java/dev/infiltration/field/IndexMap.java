// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.field;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Positions of list entries in the document, so that pointers count excluded entries too.
 *
 * <p>Only lists with an excluded entry are stored: for each, the index in the document of every entry that was read.
 */
public final class IndexMap {

    private static final IndexMap NONE = new IndexMap(Map.of());

    private final Map<String, int[]> kept;

    private IndexMap(Map<String, int[]> kept) {
        this.kept = kept;
    }

    /** {@return a map without excluded entries} */
    public static IndexMap none() {
        return NONE;
    }

    /**
     * {@return the map of a document}
     *
     * @param kept by the list's pointer in the document, the document's index of each entry kept
     */
    public static IndexMap of(Map<String, List<Integer>> kept) {
        if (kept.isEmpty()) {
            return NONE;
        }
        Map<String, int[]> copy = new HashMap<>();
        kept.forEach((list, indices) ->
                copy.put(list, indices.stream().mapToInt(Integer::intValue).toArray()));
        return new IndexMap(copy);
    }

    /** {@return whether no entry was excluded} */
    public boolean isEmpty() {
        return kept.isEmpty();
    }

    /**
     * {@return the document's index of an entry}
     *
     * @param list  the list's pointer in the document
     * @param index the entry's index among those that were kept
     */
    public int indexInDocument(String list, int index) {
        int @Nullable [] indices = kept.get(list);
        return indices == null || index >= indices.length ? index : indices[index];
    }
}
