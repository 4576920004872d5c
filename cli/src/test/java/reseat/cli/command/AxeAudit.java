package reseat.cli.command;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An audit of a page for people who read it by keyboard, by voice or with little contrast: axe-core
 * of npm, run in the headless browser. Skipped where npm or the package cannot be had.
 */
final class AxeAudit {

  private static final String PACKAGE = "axe-core@4.14.1";
  private static final Pattern RESULT = Pattern.compile("<p id=\"audit\">([^<]*)</p>");

  /** Tells what is serious or critical, and how many rules passed, so that no run is empty. */
  private static final String RUN =
      """
      <script>
      addEventListener('load', () => axe.run(document, {resultTypes: ['violations', 'passes']}).then(r => {
        const bad = r.violations.filter(v => v.impact === 'serious' || v.impact === 'critical');
        const told = bad.map(v => v.id + ' at ' + v.nodes.slice(0, 3).map(n => n.target.join(' ')).join(', '));
        const p = document.createElement('p');
        p.id = 'audit';
        p.textContent = 'passed ' + r.passes.length + '; serious: ' + (told.join('; ') || 'none');
        document.body.append(p);
      }));
      </script>
      """;

  private final String script;

  private AxeAudit(String script) {
    this.script = script;
  }

  /** Fetches the package into a folder, or skips the test. */
  static AxeAudit in(Path folder) throws IOException, InterruptedException {
    Process npm;
    try {
      npm =
          new ProcessBuilder(
                  "npm",
                  "install",
                  "--silent",
                  "--no-audit",
                  "--prefix",
                  folder.toString(),
                  PACKAGE)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
    } catch (IOException e) {
      assumeTrue(false, "no npm on this machine, so the page is not audited by axe");
      throw e;
    }
    boolean done = npm.waitFor(120, TimeUnit.SECONDS);
    if (!done) {
      npm.destroyForcibly();
    }
    Path axe = folder.resolve("node_modules/axe-core/axe.min.js");
    assumeTrue(
        done && Files.exists(axe),
        PACKAGE + " cannot be fetched, so the page is not audited by axe");
    return new AxeAudit(Files.readString(axe));
  }

  /** Audits a page and returns what was found. */
  String of(String html, HeadlessBrowser browser, Path folder, String... options) throws Exception {
    Path audited = Files.createTempFile(folder, "audited", ".html");
    Files.write(
        audited,
        html.replace("</body>", "<script>" + script + "</script>" + RUN + "</body>")
            .getBytes(StandardCharsets.UTF_8));
    String[] words = new String[options.length + 2];
    System.arraycopy(options, 0, words, 0, options.length);
    words[options.length] = "--dump-dom";
    words[options.length + 1] = audited.toUri().toString();
    Matcher found = RESULT.matcher(browser.run(words));
    return found.find() ? found.group(1) : "the audit did not end";
  }
}
