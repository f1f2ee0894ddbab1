// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Names of files after ids: an id that is safe everywhere keeps its own name, any other gets its number. */
final class FileNames {

    private static final Pattern SAFE = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]{0,59}");

    /** Names that some systems keep for devices. */
    private static final Pattern KEPT = Pattern.compile("(?i:con|prn|aux|nul|com[0-9]|lpt[0-9])");

    private FileNames() {}

    /** {@return a name for each id}, no two of them alike even where a system ignores the case of letters */
    static List<String> of(String noun, List<@Nullable String> ids) {
        Set<String> taken = new HashSet<>();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            @Nullable String id = ids.get(i);
            boolean isFree = id != null
                    && SAFE.matcher(id).matches()
                    && !KEPT.matcher(id).matches()
                    && taken.add(lower(id));
            names.add(isFree && id != null ? id : numbered(noun + "-" + (i + 1), taken));
        }
        return names;
    }

    private static String numbered(String name, Set<String> taken) {
        String free = name;
        for (int more = 2; !taken.add(lower(free)); more++) {
            free = name + "-" + more;
        }
        return free;
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
