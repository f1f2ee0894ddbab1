// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A host that has nothing but what plain JSON needs: no annotations of any kind, no databind. */
class PlainHostTest {

    private static final Pattern NEEDED = Pattern.compile(
            ".*(test-classes|infiltration-core.target.classes|infiltration-units.*|jackson-core-[^/]*|unit-api[^/]*|indriya[^/]*|uom-lib[^/]*)");

    @Test
    void plainJsonNeedsTheParserAlone() throws Exception {
        try (URLClassLoader plain = new URLClassLoader(classPath(), ClassLoader.getPlatformClassLoader())) {
            Method roundTrip = plain.loadClass(Host.class.getName()).getDeclaredMethod("roundTrip", String.class);
            roundTrip.setAccessible(true);
            assertEquals("true", roundTrip.invoke(null, Samples.harrowQuay()));
        }
    }

    private static URL[] classPath() {
        return Arrays.stream(System.getProperty("java.class.path").split(Pattern.quote(File.pathSeparator)))
                .filter(path -> NEEDED.matcher(path).matches())
                .map(PlainHostTest::url)
                .toArray(URL[]::new);
    }

    private static URL url(String path) {
        try {
            return new File(path).toURI().toURL();
        } catch (MalformedURLException notAPath) {
            throw new UncheckedIOException(notAPath);
        }
    }

    /** What the host does; loaded afresh, with all that it uses. */
    static final class Host {
        private Host() {}

        static String roundTrip(String text) throws Exception {
            FieldBookJson json = FieldBookJson.withDefaults();
            var book = json.read(text).readPart().orElseThrow();
            StringWriter written = new StringWriter();
            json.write(book, written);
            return Boolean.toString(
                    json.read(written.toString()).book().orElseThrow().equals(book));
        }
    }
}
