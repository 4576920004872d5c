package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.designfile.Starter;

/** What the first screen of a report says, and in which units. */
class ReportFirstScreenTest extends TypedCommand {

  private static final Pattern GREEN = Pattern.compile("<dd class=\"value good\">([^<]*)</dd>");

  @TempDir Path folder;
  private Path design;

  @BeforeEach
  void design() throws IOException {
    design = folder.resolve("post.toml");
    Files.writeString(design, Starter.TOOL_POST.text());
  }

  private String page(String... more) throws IOException {
    Path target = folder.resolve("out");
    type(
        List.of("report", design, "-o", target, "--mounts", 100, "--holders", 40, "--force"), more);
    return Files.readString(target.resolve("report.html"));
  }

  @Test
  void verdictBoxesAssumptionsThenPicturesThenTables() throws IOException {
    String html = page();
    int at = 0;
    for (String part :
        List.of(
            "class=\"verdict good\"><strong>HOLDS: all",
            "<dt>tool comes back</dt>",
            "<h2 id=\"assumed\">",
            "more, all with their sources",
            "<svg",
            "<h2 id=\"charts\">",
            "<h2 id=\"checks\">",
            "<h2 id=\"assumptions\">",
            "<h2 id=\"contacts\">")) {
      int next = html.indexOf(part);
      assertThat(next).as(part).isGreaterThan(at);
      at = next;
    }
    assertThat(html).doesNotContain("± 0 ").doesNotContain("±0 µm").doesNotContain("0.0034 nm");
  }

  @Test
  void noBoxIsGreenWhereToolChangesHangUpOrALimitIsBroken() throws IOException {
    Files.writeString(
        design,
        Starter.TOOL_POST
            .text()
            .replace("gravity = \"-z\"", "gravity = \"+z\"")
            .replace("force = \"600 N\"", "force = \"60 N\""));
    String html = page();
    assertThat(html).contains("class=\"verdict bad\"").contains("hang up</dd>");
    Matcher green = GREEN.matcher(html);
    while (green.find()) {
      assertThat(green.group(1)).doesNotContain("hang up").doesNotContain("±");
    }
    assertThat(html.split("<dd class=\"value bad\">", -1)).hasSizeGreaterThan(2);
  }

  @Test
  void aFindingThatDoesNotHoldIsToldOnce() throws IOException {
    Files.writeString(
        design, Starter.TOOL_POST.text().replace("force = \"600 N\"", "force = \"60 N\""));
    String html = page();
    Matcher finding =
        Pattern.compile("<li class=\"bad\">fails [a-z -]*: ([^<]*)</li>").matcher(html);
    int told = 0;
    while (finding.find()) {
      told++;
      assertThat(html.split(Pattern.quote(finding.group(1)), -1)).as(finding.group(1)).hasSize(2);
    }
    assertThat(told).isPositive();
    assertThat(html.indexOf("<li class=\"bad\">"))
        .isLessThan(
            html.indexOf("<li class=\"careful\">") < 0
                ? html.length()
                : html.indexOf("<li class=\"careful\">"));
  }

  @Test
  void oneUnitSystemInBoxesTablesAndCharts() throws IOException {
    String metric = page("--units", "mm");
    assertThat(text(metric))
        .contains(" GPa")
        .doesNotContain(" ksi")
        .doesNotContain(" lbf")
        .doesNotContain("µin");
    assertThat(metric).contains("preload, N");
    String inch = page("--units", "inch");
    assertThat(text(inch))
        .contains(" ksi")
        .doesNotContain(" GPa")
        .doesNotContain(" µm")
        .doesNotContain(" N ");
    assertThat(inch).contains("preload, lbf").doesNotContain("preload, N");
    assertThat(text(page("--units", "both"))).contains(" GPa (").contains(" ksi)");
    assertThat(type(List.of("report", design, "-o", folder.resolve("x"), "--units", "ells")))
        .isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("allowed are mm, inch and both");
  }

  /**
   * The page's own words without its pictures, and without sources, which print what they print.
   */
  private static String text(String html) {
    return html.replaceAll("(?s)<figure.*?</figure>", "")
        .replaceAll("(?s)<section aria-labelledby=\"assumptions\">.*?</section>", "")
        .replaceAll("(?s)<style>.*?</style>", "");
  }
}
