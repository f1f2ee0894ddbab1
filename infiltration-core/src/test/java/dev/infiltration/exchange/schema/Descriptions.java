// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0

package dev.infiltration.exchange.schema;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** What the sources say of records and their components. */
final class Descriptions {

    private final Map<Class<?>, Map<String, String>> known = new HashMap<>();

    /** {@return the first sentence on a record} */
    Optional<String> of(Class<?> record) {
        return of(record, "");
    }

    /** {@return the description of a component} */
    Optional<String> of(Class<?> record, String component) {
        return Optional.ofNullable(
                known.computeIfAbsent(record, Descriptions::read).get(component));
    }

    private static Map<String, String> read(Class<?> record) {
        Path source =
                Path.of("src/main/java", record.getName().replace('.', '/').replaceAll("\\$.*", "") + ".java");
        var compiler = ToolProvider.getSystemJavaCompiler();
        StandardJavaFileManager files = compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8);
        JavacTask task = (JavacTask)
                compiler.getTask(null, files, null, List.of("-proc:none"), null, files.getJavaFileObjects(source));
        Map<String, String> texts = new HashMap<>();
        try {
            for (CompilationUnitTree unit : task.parse()) {
                new Comments(DocTrees.instance(task), record.getSimpleName(), texts).scan(unit, null);
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return texts;
    }

    private static final class Comments extends TreePathScanner<Void, Void> {

        private final DocTrees docs;
        private final String record;
        private final Map<String, String> texts;

        Comments(DocTrees docs, String record, Map<String, String> texts) {
            this.docs = docs;
            this.record = record;
            this.texts = texts;
        }

        @Override
        public Void visitClass(ClassTree type, Void unused) {
            if (type.getSimpleName().contentEquals(record)) {
                take(getCurrentPath());
            }
            return super.visitClass(type, null);
        }

        private void take(TreePath path) {
            DocCommentTree comment = docs.getDocCommentTree(path);
            texts.put("", plain(comment.getFirstSentence()));
            comment.getBlockTags().stream()
                    .filter(ParamTree.class::isInstance)
                    .map(ParamTree.class::cast)
                    .forEach(param -> texts.put(param.getName().toString(), plain(param.getDescription())));
        }

        private static String plain(List<?> parts) {
            StringBuilder text = new StringBuilder();
            parts.forEach(part -> text.append(part));
            return text.toString()
                    .replaceAll("\\{@\\w+ #?([^}]*)}", "$1")
                    .replaceAll("\\s+", " ")
                    .trim();
        }
    }
}
