// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every link of the documentation leads somewhere, and every page is reached. */
class LinksTest {

    private static final Path ROOT = Path.of("..");
    private static final Path INDEX = ROOT.resolve("docs/README.md");

    private static final Pattern FENCE = Pattern.compile("(?ms)^ *```.*?^ *```");
    private static final Pattern CODE = Pattern.compile("`[^`\n]*`");
    private static final Pattern LINK = Pattern.compile("]\\(<?([^)\\s>]+)[^)]*\\)");
    private static final Pattern HEADING = Pattern.compile("(?m)^#{1,6} +(.*?) *#*$");
    private static final Pattern NAMED = Pattern.compile("(?:id|name)=\"([^\"]+)\"");

    static Stream<Path> pages() throws IOException {
        List<Path> pages = new ArrayList<>(
                List.of(ROOT.resolve("README.md"), ROOT.resolve("DEVELOPERS.md"), ROOT.resolve("CHANGELOG.md")));
        try (Stream<Path> docs = Files.list(ROOT.resolve("docs"))) {
            docs.filter(page -> page.toString().endsWith(".md")).sorted().forEach(pages::add);
        }
        return pages.stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pages")
    void everyLinkLeadsSomewhere(Path page) throws IOException {
        List<String> broken = new ArrayList<>();
        for (String link : links(Files.readString(page))) {
            if (!leadsSomewhere(page, link)) {
                broken.add(link);
            }
        }
        assertEquals(List.of(), broken);
    }

    @Test
    void indexListsEveryPage() throws IOException {
        Set<Path> listed = new HashSet<>();
        for (String link : links(Files.readString(INDEX))) {
            listed.add(INDEX.resolveSibling(link.replaceFirst("#.*", "")).normalize());
        }
        List<Path> missing = pages().map(Path::normalize)
                .filter(page -> page.startsWith(ROOT.resolve("docs")) && !page.equals(INDEX) && !listed.contains(page))
                .toList();
        assertEquals(List.of(), missing);
        assertTrue(links(Files.readString(ROOT.resolve("README.md"))).contains("docs/README.md"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            [a](LinksTest.java)           | false
            [a](README.md)                | true
            [a](README.md#no-such)        | false
            [a](README.md#documentation)  | true
            [a](#no-such)                 | false
            [a](../DEVELOPERS.md#build)   | true
            [a](../no-such/)              | false
            """)
    void brokenLinksAreFound(String text, boolean leads) throws IOException {
        assertEquals(leads, leadsSomewhere(INDEX, links(text).get(0)));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "In ten lines, in-ten-lines",
        "`season` and `shell`, season-and-shell",
        "What users' tests ask for: 2 °C, what-users-tests-ask-for-2-c",
        "[A link](x.md) here, a-link-here"
    })
    void headingsAreNamedAsTheirReadersNameThem(String heading, String name) {
        assertEquals(name, name(heading));
    }

    private static List<String> links(String text) {
        String prose = CODE.matcher(FENCE.matcher(text).replaceAll("")).replaceAll("");
        return LINK.matcher(prose).results().map(match -> match.group(1)).toList();
    }

    /** Addresses of the wide world are not asked for: a build reaches no network. */
    private static boolean leadsSomewhere(Path page, String link) throws IOException {
        URI address = URI.create(link);
        if (address.getScheme() != null) {
            return address.getHost() != null;
        }
        String path = address.getPath();
        Path target = path.isEmpty() ? page : page.resolveSibling(path);
        return Files.exists(target)
                && (address.getFragment() == null
                        || names(Files.readString(target)).contains(address.getFragment()));
    }

    private static Set<String> names(String text) {
        Set<String> names = new HashSet<>();
        String prose = FENCE.matcher(text).replaceAll("");
        HEADING.matcher(prose).results().map(match -> name(match.group(1))).forEach(name -> {
            for (int again = 0; !names.add(again == 0 ? name : name + "-" + again); again++) {
                assertTrue(again < 1000);
            }
        });
        NAMED.matcher(prose)
                .results()
                .map(MatchResult::group)
                .forEach(found -> names.add(found.replaceAll(".*\"(.*)\"", "$1")));
        return names;
    }

    /** Small letters, no punctuation, hyphens for spaces: as the usual readers of Markdown name a heading. */
    private static String name(String heading) {
        return heading.replaceAll("\\[([^]]*)]\\([^)]*\\)", "$1")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}\\s_-]", "")
                .replace(' ', '-');
    }
}
