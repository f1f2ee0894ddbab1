// SPDX-FileCopyrightText: The infiltration library contributors
// SPDX-License-Identifier: Apache-2.0
package dev.infiltration.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The page of licences lists each dependency that a POM declares, and no other. */
class LicencePageTest {

    private static final Path ROOT = Path.of("..");
    private static final Pattern ROW = Pattern.compile("^\\| `([^`:]+:[^`:]+)` \\|", Pattern.MULTILINE);

    @Test
    void pageListsEachDeclaredDependency() throws Exception {
        Set<String> declared = new TreeSet<>();
        for (String pom : new String[] {
            "pom.xml", "infiltration-units/pom.xml", "infiltration-core/pom.xml", "infiltration-examples/pom.xml"
        }) {
            declared.addAll(dependencies(ROOT.resolve(pom)));
        }
        Set<String> listed = ROW.matcher(Files.readString(ROOT.resolve("docs/licences.md")))
                .results()
                .map(row -> row.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(declared, listed);
    }

    private static Set<String> dependencies(Path pom) throws Exception {
        try (InputStream xml = Files.newInputStream(pom)) {
            Document document =
                    DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(xml);
            NodeList dependencies = document.getElementsByTagName("dependency");
            return IntStream.range(0, dependencies.getLength())
                    .mapToObj(i -> (Element) dependencies.item(i))
                    .filter(LicencePageTest::isUsed)
                    .map(dependency -> text(dependency, "groupId") + ":" + text(dependency, "artifactId"))
                    .filter(name -> !name.startsWith("dev.infiltration:"))
                    .collect(Collectors.toSet());
        }
    }

    /** A managed version or a plugin's own dependency is no dependency of a module. */
    private static boolean isUsed(Element dependency) {
        String parent = dependency.getParentNode().getParentNode().getNodeName();
        return parent.equals("project") || parent.equals("profile");
    }

    private static String text(Element dependency, String name) {
        return dependency.getElementsByTagName(name).item(0).getTextContent().trim();
    }
}
