// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** What the compiler's own doc check does not tell apart, and no formatter looks at. */
class SourcesTest {

    private static final List<String> HEADER = List.of(
            "// SPDX-FileCopyrightText: The infiltration library contributors",
            "// SPDX-License-Identifier: Apache-2.0");

    @Test
    void everyFileStartsWithItsLicence() throws IOException {
        List<Path> without = new ArrayList<>();
        for (Path file : sources("src")) {
            List<String> lines = Files.readAllLines(file);
            if (!lines.subList(0, Math.min(2, lines.size())).equals(HEADER)) {
                without.add(file);
            }
        }
        assertEquals(List.of(), without);
    }

    @Test
    void everyPublicMemberIsDocumented() throws IOException {
        JavacTask task = parser(sources("src/main"));
        Undocumented undocumented = new Undocumented(DocTrees.instance(task));
        for (CompilationUnitTree unit : task.parse()) {
            undocumented.scan(unit, null);
        }
        assertEquals(List.of(), undocumented.members);
    }

    private static JavacTask parser(List<Path> files) {
        var compiler = ToolProvider.getSystemJavaCompiler();
        StandardJavaFileManager manager = compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8);
        return (JavacTask) compiler.getTask(
                null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(files));
    }

    /** The modules lie side by side, and a test runs in its module's folder. */
    private static List<Path> sources(String folder) throws IOException {
        List<Path> files = new ArrayList<>();
        for (String module : List.of("units", "core", "examples")) {
            Path root = Path.of("..", "infiltration-" + module, folder);
            try (Stream<Path> walk = Files.walk(root)) {
                walk.filter(file -> file.toString().endsWith(".java")).forEach(files::add);
            }
        }
        assertFalse(files.isEmpty());
        return files;
    }

    /** Public and protected types and members without a doc comment; an override has that of what it overrides. */
    private static final class Undocumented extends TreePathScanner<Void, Void> {

        private final DocTrees docs;
        private final List<String> members = new ArrayList<>();

        Undocumented(DocTrees docs) {
            this.docs = docs;
        }

        @Override
        public Void visitClass(ClassTree type, Void unused) {
            if (!isOpen(type.getModifiers())) {
                return null;
            }
            check(type.getSimpleName().toString());
            return super.visitClass(type, null);
        }

        @Override
        public Void visitMethod(MethodTree method, Void unused) {
            if (isOpen(method.getModifiers()) && !overrides(method)) {
                check(method.getName().toString());
            }
            return null;
        }

        @Override
        public Void visitVariable(VariableTree field, Void unused) {
            if (isOpen(field.getModifiers())) {
                check(field.getName().toString());
            }
            return null;
        }

        private boolean isOpen(ModifiersTree modifiers) {
            Set<Modifier> flags = modifiers.getFlags();
            return flags.contains(Modifier.PUBLIC)
                    || flags.contains(Modifier.PROTECTED)
                    || (isInInterface() && !flags.contains(Modifier.PRIVATE));
        }

        private boolean isInInterface() {
            return getCurrentPath().getParentPath().getLeaf().getKind() == Tree.Kind.INTERFACE;
        }

        private static boolean overrides(MethodTree method) {
            return method.getModifiers().getAnnotations().stream()
                    .anyMatch(annotation ->
                            annotation.getAnnotationType().toString().equals("Override"));
        }

        private void check(String name) {
            TreePath path = getCurrentPath();
            if (docs.getDocComment(path) == null) {
                members.add(path.getCompilationUnit().getSourceFile().getName() + ": " + name);
            }
        }
    }
}
