package reseat.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Where the project is, whatever folder the tests run in. */
final class ProjectFolder {

  private ProjectFolder() {}

  /** The folder that holds README.md and the modules. */
  static Path root() {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.exists(folder.resolve("DEVELOPERS.md"))) {
      folder = folder.getParent();
      if (folder == null) {
        throw new IllegalStateException("the tests of docs must run inside the project");
      }
    }
    return folder;
  }

  static Path docs() {
    return root().resolve("docs");
  }

  static Path examples() {
    return docs().resolve("examples");
  }

  /** Files directly in a folder whose names end so, in alphabetical order. */
  static List<Path> files(Path folder, String ending) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(ending)).sorted().toList();
    }
  }
}
