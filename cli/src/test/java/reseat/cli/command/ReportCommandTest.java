package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.designfile.Starter;

/** What the report command writes, and what it refuses to overwrite. */
class ReportCommandTest extends TypedCommand {

  @TempDir Path folder;
  private Path design;

  @BeforeEach
  void design() throws IOException {
    design = folder.resolve("post.toml");
    Files.writeString(design, Starter.TOOL_POST.text());
  }

  private int run(String... args) {
    return type(List.of(), args);
  }

  private int report(Path target, String... more) {
    return type(List.of("report", design, "-o", target, "--mounts", 40, "--holders", 40), more);
  }

  @Test
  void onePageThatNeedsNothingElseAndItsNumbersBesideIt() throws IOException {
    Path target = folder.resolve("out");
    assertThat(report(target)).as(err.toString()).isEqualTo(ExitCode.HOLDS);
    String html = Files.readString(target.resolve("report.html"));
    assertThat(html).doesNotContain("<script").doesNotContain(" src=").doesNotContain("url(");
    assertThat(html.replaceAll("xmlns(:\\w+)?=\"http[^\"]*\"", "")).doesNotContain("http://");
    assertThat(html).contains("What to change first".substring(0, 4)).contains("Cautions");
    assertThat(html).doesNotContain("NaN");
    for (String file :
        new String[] {
          "contacts.csv",
          "cases.csv",
          "budget.csv",
          "check.json",
          "remount.json",
          "interchange.json"
        }) {
      assertThat(Files.readString(target.resolve(file))).contains(",").doesNotContain("NaN");
    }
  }

  @Test
  void theSameInputGivesTheSameBytesOnAnyNumberOfThreads() throws IOException {
    report(folder.resolve("a"), "--threads", "1");
    report(folder.resolve("b"), "--threads", "8");
    for (String file : new String[] {"report.html", "contacts.csv", "preload-curve.csv"}) {
      assertThat(Files.readAllBytes(folder.resolve("a").resolve(file)))
          .as(file)
          .isEqualTo(Files.readAllBytes(folder.resolve("b").resolve(file)));
    }
  }

  @Test
  void aFolderOfOursIsReplacedAndOneOfOthersIsNot() throws IOException {
    Path target = folder.resolve("out");
    report(target);
    assertThat(report(target)).isEqualTo(ExitCode.HOLDS);
    Files.writeString(target.resolve("contacts.csv"), "my own figures");
    assertThat(report(target)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString())
        .contains(
            "reseat report: " + target + ": contacts.csv changed since this command wrote it");
    assertThat(target.resolve("contacts.csv")).hasContent("my own figures");
    assertThat(report(target, "--force")).isEqualTo(ExitCode.HOLDS);

    Path foreign = Files.createDirectory(folder.resolve("mine"));
    Files.writeString(foreign.resolve("thesis.txt"), "dear");
    assertThat(report(foreign)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("did not write");
    assertThat(Files.readString(foreign.resolve("thesis.txt"))).isEqualTo("dear");
    assertThat(foreign.resolve("report.html")).doesNotExist();
    try (var left = Files.list(folder)) {
      assertThat(left.map(p -> p.getFileName().toString()).filter(n -> n.startsWith(".")))
          .as("nothing half-written is left beside the folder")
          .isEmpty();
    }
  }

  @Test
  void badInputWritesNothing() throws IOException {
    Files.writeString(design, Starter.TOOL_POST.text().replace("600 N", "600"));
    Path target = folder.resolve("out");
    assertThat(report(target)).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(target).doesNotExist();
    assertThat(err.toString()).contains("has no unit");
  }

  @Test
  void textOfTheUserIsEscaped() throws IOException {
    String evil = "<img src=x onerror=alert(1)> & \\\"quoted\\\"";
    Files.writeString(
        design,
        Starter.TOOL_POST
            .text()
            .replace("Tool post for a small facing lathe", evil)
            .replace("name = \"rough\"", "name = \"" + evil + "\"")
            .replace("\"front\"", "\"" + evil + "\"")
            .replace("disc-spring stack on a 5/16-24 drawbolt", evil));
    Path target = folder.resolve("out");
    assertThat(report(target)).as(err.toString()).isEqualTo(ExitCode.HOLDS);
    assertThat(Files.readString(target.resolve("report.html")))
        .doesNotContain("<img")
        .contains("&lt;img");
  }

  @Test
  void aCouplingThatDoesNotStandHasAReportToo() throws IOException {
    Files.writeString(
        design,
        Starter.TOOL_POST.text().replace("kind = \"vee\" ", "axis = \"0 deg\"\nkind = \"vee\" "));
    Path target = folder.resolve("out");
    assertThat(report(target)).as(err.toString()).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(Files.readString(target.resolve("report.html"))).contains("FAILS: ");
  }

  @Test
  void picturesComeOneByOne() throws IOException {
    Path svg = folder.resolve("plan.svg");
    assertThat(run("report", design.toString(), "-o", svg.toString(), "--picture", "plan"))
        .isEqualTo(ExitCode.HOLDS);
    assertThat(Files.readString(svg)).contains("<svg");
    Path png = folder.resolve("plan.png");
    assertThat(run("report", design.toString(), "-o", png.toString(), "--picture", "plan", "--png"))
        .isEqualTo(ExitCode.HOLDS);
    assertThat(new String(Files.readAllBytes(png), 1, 3, StandardCharsets.ISO_8859_1))
        .isEqualTo("PNG");
    Path named = folder.resolve("named.PNG");
    assertThat(run("report", design.toString(), "-o", named.toString(), "--picture", "plan"))
        .isEqualTo(ExitCode.HOLDS);
    assertThat(Files.readAllBytes(named)).isEqualTo(Files.readAllBytes(png));
    assertThat(run("report", design.toString(), "-o", svg.toString(), "--picture", "plan"))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("--force");
    Path curve = folder.resolve("curve.svg");
    assertThat(
            run(
                "report",
                design.toString(),
                "-o",
                curve.toString(),
                "--picture",
                "response:front ball height"))
        .as(err.toString())
        .isEqualTo(ExitCode.HOLDS);
    assertThat(Files.readString(curve)).contains("front ball height");
    assertThat(run("report", design.toString(), "-o", "x.svg", "--picture", "response:front bal"))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("Dimensions of this design:");
    assertThat(run("report", design.toString(), "-o", "x.svg", "--picture", "paln"))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("did you mean plan?");
  }
}
