package reseat.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/** What the POMs of the project name from outside it. */
final class BuildFiles {

  private static final String MAVEN = "org.apache.maven.plugins";
  private final Map<String, String> properties = new HashMap<>();
  private final Map<String, String> versions = new TreeMap<>();

  private BuildFiles() {}

  /** Version of every dependency, plugin and tool of the build, under {@code group:artifact}. */
  static Map<String, String> versions() throws IOException {
    BuildFiles files = new BuildFiles();
    for (String module : List.of("", "coupling", "plots", "cli/report", "cli", "docs")) {
      files.read(ProjectFolder.root().resolve(module).resolve("pom.xml"));
    }
    return files.versions;
  }

  private void read(Path pom) throws IOException {
    Element project = parse(pom);
    for (Element group : children(project, "properties")) {
      for (Element property : children(group, "")) {
        properties.put(property.getTagName(), property.getTextContent().strip());
      }
    }
    for (String kind : List.of("dependency", "plugin", "path")) {
      var found = project.getElementsByTagName(kind);
      for (int i = 0; i < found.getLength(); i++) {
        add((Element) found.item(i));
      }
    }
    if (properties.containsKey("google-java-format.version")) {
      // Spotless is told a version only; it knows the artifact itself.
      versions.put(
          "com.google.googlejavaformat:google-java-format",
          properties.get("google-java-format.version"));
    }
  }

  private void add(Element named) {
    String artifact = text(named, "artifactId");
    String version = text(named, "version");
    String group = text(named, "groupId");
    if (artifact.isEmpty() || version.isEmpty() || group.equals("reseat")) {
      return;
    }
    versions.put((group.isEmpty() ? MAVEN : group) + ":" + artifact, resolved(version));
  }

  private String resolved(String version) {
    return version.startsWith("${")
        ? properties.get(version.substring(2, version.length() - 1))
        : version;
  }

  private static String text(Element parent, String name) {
    List<Element> found = children(parent, name);
    return found.isEmpty() ? "" : found.get(0).getTextContent().strip();
  }

  /** The elements right below one, of a name, or all for an empty name. */
  private static List<Element> children(Element parent, String name) {
    List<Element> found = new java.util.ArrayList<>();
    for (Node n = parent.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element e && (name.isEmpty() || e.getTagName().equals(name))) {
        found.add(e);
      }
    }
    return found;
  }

  private static Element parse(Path pom) throws IOException {
    try (var in = Files.newInputStream(pom)) {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(in)
          .getDocumentElement();
    } catch (ParserConfigurationException | SAXException e) {
      throw new IOException("cannot read " + pom, e);
    }
  }
}
