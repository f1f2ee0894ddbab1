// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.File;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.Arrays;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.regex.Pattern;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;

/**
 * Hosts call from threads whose context class loader is none of ours. What is looked up through it is looked up on first
 * use, so each first use happens here in a loader that nobody has used before.
 */
class ForeignLoaderTest {

    /** Knows the JDK alone. */
    private static final ClassLoader FOREIGN = new URLClassLoader(new URL[0], ClassLoader.getPlatformClassLoader());

    @Test
    void firstUseWorksWithoutContextLoader() throws Exception {
        assertEquals("304.8", firstUse(null));
    }

    @Test
    void firstUseWorksWithForeignContextLoader() throws Exception {
        assertEquals("304.8", firstUse(FOREIGN));
    }

    @Test
    void laterUseWorksWithForeignContextLoader() throws Exception {
        Reading<Length> foot = Reading.of("1.000", FieldUnit.FOOT);
        assertEquals(
                Reading.of("304.8", FieldUnit.MILLIMETRE),
                inThreadOf(FOREIGN, () -> Reading.of(foot.toQuantity().to(FieldUnit.MILLIMETRE.unit()), Length.class)));
    }

    private static String firstUse(ClassLoader context) throws Exception {
        try (URLClassLoader fresh = new URLClassLoader(classPath(), ClassLoader.getPlatformClassLoader())) {
            Class<?> use = fresh.loadClass(FirstUse.class.getName());
            Method footInMillimetres = use.getDeclaredMethod("footInMillimetres");
            footInMillimetres.setAccessible(true);
            return inThreadOf(context, () -> (String) footInMillimetres.invoke(null));
        }
    }

    /** Works in a thread with that context loader and sees that it is left as it was. */
    private static <T> T inThreadOf(ClassLoader context, Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(() -> {
            T result = work.call();
            assertSame(context, Thread.currentThread().getContextClassLoader());
            return result;
        });
        Thread thread = new Thread(task);
        thread.setContextClassLoader(context);
        thread.start();
        return task.get();
    }

    private static URL[] classPath() {
        return Arrays.stream(System.getProperty("java.class.path").split(Pattern.quote(File.pathSeparator)))
                .map(ForeignLoaderTest::url)
                .toArray(URL[]::new);
    }

    private static URL url(String path) {
        try {
            return new File(path).toURI().toURL();
        } catch (MalformedURLException notAPath) {
            throw new UncheckedIOException(notAPath);
        }
    }

    /** What a host does first; loaded afresh, with all that it uses. */
    static final class FirstUse {
        private FirstUse() {}

        static String footInMillimetres() {
            return Reading.of("1", FieldUnit.FOOT)
                    .toQuantity()
                    .to(FieldUnit.MILLIMETRE.unit())
                    .getValue()
                    .toString();
        }
    }
}
