package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.designfile.Starter;

/** Opens the report in a real browser. */
class ReportBrowserTest {

  /** Measures the page from inside: what sticks out, what overlaps, what it asked for. */
  private static final String PROBE =
      """
      <script>
      addEventListener('load', () => {
        const wide = document.documentElement.scrollWidth - document.documentElement.clientWidth;
        const parts = [...document.querySelectorAll('main > *, section > *')]
            .filter(e => e.getClientRects().length > 0);
        let overlaps = 0;
        for (let i = 1; i < parts.length; i++) {
          const a = parts[i - 1].getBoundingClientRect(), b = parts[i].getBoundingClientRect();
          if (parts[i - 1].parentNode === parts[i].parentNode && b.top < a.bottom - 1) overlaps++;
        }
        const asked = performance.getEntriesByType('resource').length;
        document.body.insertAdjacentHTML('beforeend',
            `<p id="probe">width ${innerWidth} sticks out ${wide} overlaps ${overlaps}`
            + ` asked ${asked} sections ${document.querySelectorAll('section').length}.</p>`);
      });
      </script>
      """;

  @TempDir static Path folder;
  private static Path page;
  private static HeadlessBrowser browser;

  @BeforeAll
  static void write() throws IOException {
    browser = HeadlessBrowser.in(folder);
    Path design = folder.resolve("post.toml");
    Files.writeString(design, Starter.TOOL_POST.text());
    Path target = folder.resolve("out");
    String[] args = {
      "report", design.toString(), "-o", target.toString(), "--mounts", "40", "--holders", "40"
    };
    StringWriter err = new StringWriter();
    int code =
        new Dispatch().run(args, new PrintWriter(new StringWriter()), new PrintWriter(err, true));
    assertThat(code).as(err.toString()).isZero();
    page = target.resolve("report.html");
  }

  @ParameterizedTest
  @ValueSource(ints = {1280, 500})
  void nothingSticksOutOverlapsOrIsAskedFor(int width) throws Exception {
    Path probed = folder.resolve("probed" + width + ".html");
    Files.writeString(probed, Files.readString(page).replace("</body>", PROBE + "</body>"));
    String dom =
        chromium("--window-size=" + width + ",900", "--dump-dom", probed.toUri().toString());
    assertThat(dom).contains("width " + width + " sticks out 0 overlaps 0 asked 0 sections ");
  }

  @Test
  void aTelephoneSeesNothingStickOut() throws Exception {
    // Chromium's window is at least 500 wide: a frame of 360 stands in for a small screen
    Path frame = folder.resolve("frame.html");
    Path probed = folder.resolve("inner.html");
    Files.writeString(probed, Files.readString(page).replace("</body>", PROBE + "</body>"));
    String inner = Files.readString(probed).replace("&", "&amp;").replace("\"", "&quot;");
    Files.writeString(
        frame,
        "<iframe id=f style=\"width:360px;height:800px;border:0\" srcdoc=\""
            + inner
            + "\"></iframe><p id=told></p><script>const f=document.getElementById('f');"
            + "f.addEventListener('load',()=>{document.getElementById('told').textContent="
            + "f.contentDocument.getElementById('probe').textContent})</script>");
    String dom = chromium("--window-size=900,900", "--dump-dom", frame.toUri().toString());
    assertThat(dom).contains("<p id=\"told\">width 360 sticks out 0 overlaps 0");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--blink-settings=preferredColorScheme=1",
        "--blink-settings=preferredColorScheme=0"
      })
  void axeFindsNothingSeriousByDayOrByNight(String scheme) throws Exception {
    String told = AxeAudit.in(folder).of(Files.readString(page), browser, folder, scheme);
    assertThat(told).matches("passed [1-9][0-9]*; serious: none");
  }

  @Test
  void axeFindsAFaultThatIsPutIn() throws Exception {
    String faded = Files.readString(page).replace("</style>", "p{color:#eee !important}</style>");
    assertThat(AxeAudit.in(folder).of(faded, browser, folder)).contains("serious: color-contrast");
  }

  @Test
  void itPrints() throws Exception {
    Path pdf = folder.resolve("report.pdf");
    chromium("--no-pdf-header-footer", "--print-to-pdf=" + pdf, page.toUri().toString());
    assertThat(new String(Files.readAllBytes(pdf), 0, 5, StandardCharsets.ISO_8859_1))
        .isEqualTo("%PDF-");
  }

  private static String chromium(String... args) throws Exception {
    return browser.run(args);
  }
}
