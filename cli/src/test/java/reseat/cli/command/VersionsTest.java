package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.designfile.Starter;
import reseat.report.page.Versions;

/** Every JSON, page and paper tells the versions on which its figures rest. */
class VersionsTest extends TypedCommand {

  @TempDir Path folder;
  private Path design;

  @BeforeEach
  void design() throws IOException {
    design = folder.resolve("post.toml");
    Files.writeString(design, Starter.TOOL_POST.text());
  }

  private void json(String... command) {
    type(
        List.of(command[0], design, "--json"),
        List.of(command).subList(1, command.length).toArray(String[]::new));
    assertThat(out.toString().replaceAll("\\s+", " "))
        .as(command[0] + " " + err)
        .startsWith(
            "{ \"versions\": { \"program\": \""
                + Versions.program()
                + "\", \"catalog\": "
                + Versions.catalog()
                + ", \"physics\": "
                + Versions.physics()
                + " }");
  }

  @Test
  void everyJsonBeginsWithThem() {
    json("check");
    json("remount", "--mounts", "40");
    json("interchange", "--holders", "40");
    json("shopsheet");
    json("size", "--vary", "preload.force=500 N, 600 N");
    json("sweep", "--vary", "preload.force=500 N..700 N:2");
  }

  @Test
  void everyPageAndPaperIsStampedWithThem() throws IOException {
    String stamp =
        "Made by reseat "
            + Versions.program()
            + ", materials table "
            + Versions.catalog()
            + ", physics "
            + Versions.physics();
    Path report = folder.resolve("report");
    type(List.of("report", design, "-o", report, "--mounts", 40, "--holders", 40));
    assertThat(Files.readString(report.resolve("report.html"))).contains(stamp);
    Path papers = folder.resolve("papers");
    type(List.of("shopsheet", design, "-o", papers));
    try (var files = Files.list(papers)) {
      List<Path> pages = files.filter(p -> p.toString().endsWith(".html")).toList();
      assertThat(pages).isNotEmpty();
      for (Path page : pages) {
        assertThat(Files.readString(page)).as(page.toString()).contains(stamp);
      }
    }
  }
}
