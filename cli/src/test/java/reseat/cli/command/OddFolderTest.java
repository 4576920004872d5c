package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The names of folders change no byte of any result, and no command stumbles over them. */
class OddFolderTest {

  private static final List<String> COMMANDS =
      List.of(
          "check post.toml",
          "check post.toml --json",
          "remount post.toml --mounts 9 --threads 1 --causes 2",
          "interchange post.toml --holders 9 --threads 1",
          "interchange post.toml --holders 9 --threads 1 --json",
          "sweep post.toml --vary preload.force=500N..700N:2 --mounts 9 --threads 1 --csv s.csv",
          "size post.toml --vary preload.force=500N,600N --winner w.toml --threads 1",
          "report post.toml -o out --mounts 9 --holders 9 --threads 1",
          "shopsheet post.toml -o sheets",
          "shopsheet mount.toml -o mount",
          "mount mount.toml",
          "readings series.csv -o readings",
          "materials",
          "verify");

  @TempDir private Path made;

  @Test
  void everyResultIsTheSameInAFolderOfAnyName() throws IOException {
    Map<String, String> wanted = everything(Files.createDirectory(made.resolve("plain")));
    assertThat(wanted).hasSizeGreaterThan(40);
    for (String odd :
        new String[] {"50 % #1; $HOME & 'so' [x]", "Ölçü  µ 支点 a\u0301\ud83d\udd29"}) {
      Map<String, String> found = everything(Files.createDirectory(made.resolve(odd)));
      assertThat(found.keySet()).isEqualTo(wanted.keySet());
      found.forEach((what, text) -> assertThat(text).as(what).isEqualTo(wanted.get(what)));
    }
  }

  /** Runs every command in the folder; what it printed and wrote, without the folder's name. */
  private static Map<String, String> everything(Path folder) throws IOException {
    for (String[] copy :
        new String[][] {
          {"tool-post.toml", "post.toml"},
          {"ball-mount.toml", "mount.toml"},
          {"readings-five-holders.csv", "series.csv"}
        }) {
      Files.copy(SpoiledRun.EXAMPLES.resolve(copy[0]), folder.resolve(copy[1]));
    }
    Map<String, String> all = new TreeMap<>();
    for (String command : COMMANDS) {
      String[] args = command.split(" ");
      for (int i = 1; i < args.length; i++) {
        boolean isFile = args[i].endsWith(".toml") || args[i].endsWith(".csv");
        if (isFile || args[i - 1].equals("-o")) {
          args[i] = folder.resolve(args[i]).toString();
        }
      }
      StringWriter out = new StringWriter();
      StringWriter err = new StringWriter();
      int code = new Dispatch().run(args, new PrintWriter(out), new PrintWriter(err));
      assertThat(code).as("%s: %s", command, err).isIn(0, 1, 4);
      all.put(command, code + "\n" + inOneLine(withoutFolder(out.toString(), folder)) + err);
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).filter(f -> !isMarker(f)).toList()) {
        String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        // where a paragraph names the folder, its lines break elsewhere
        String lines = withoutFolder(text.replaceAll("\\s+", " "), folder);
        all.put(folder.relativize(file).toString(), lines);
      }
    }
    return all;
  }

  /** The next step without the marks that it goes on in a further line. */
  private static String inOneLine(String printed) {
    return printed.replaceAll(" \\\\\n +", " ");
  }

  /** What is printed without the folder's name, quoted where a shell needs it, coded on a page. */
  private static String withoutFolder(String printed, Path folder) {
    String plain = printed;
    for (String name : List.of(folder.toString(), folder.toString().replaceAll("\\s+", " "))) {
      for (String written :
          List.of(name, name.replace("$", "\\$"), name.replace("&", "&amp;"), onPage(name))) {
        plain =
            plain
                .replaceAll("\"" + Pattern.quote(written) + "([^\"]*)\"", "$1")
                .replace(written, "");
      }
    }
    return plain;
  }

  private static String onPage(String name) {
    return name.replace("&", "&amp;").replace("'", "&#39;");
  }

  /** Holds digests of pages that name the folder. */
  private static boolean isMarker(Path file) {
    return file.getFileName().toString().startsWith(".");
  }
}
