package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import reseat.designfile.Starter;

/**
 * Prints the papers for the shop floor with a real browser, on letter and on A4: with {@code
 * -Pfull} each on both, else by turns.
 */
class ShopsheetBrowserTest {

  private static final boolean FULL = Boolean.getBoolean("full");
  private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page\\b");

  @TempDir Path folder;

  private List<Path> sheets(Starter starter) throws IOException {
    Path design = folder.resolve("design.toml");
    Files.writeString(design, starter.text());
    Path target = folder.resolve("sheets");
    StringWriter err = new StringWriter();
    String[] args = {"shopsheet", design.toString(), "-o", target.toString()};
    new Dispatch().run(args, new PrintWriter(new StringWriter()), new PrintWriter(err, true));
    assertThat(err.toString()).isEmpty();
    try (var files = Files.list(target)) {
      return files.filter(f -> f.toString().matches(".*\\.(html|svg)")).sorted().toList();
    }
  }

  private static long pages(HeadlessBrowser browser, Path page) throws Exception {
    Path pdf = page.resolveSibling(page.getFileName() + ".pdf");
    browser.run("--no-pdf-header-footer", "--print-to-pdf=" + pdf, page.toUri().toString());
    String content = new String(Files.readAllBytes(pdf), StandardCharsets.ISO_8859_1);
    return PAGE.matcher(content).results().count();
  }

  @ParameterizedTest
  @EnumSource(Starter.class)
  void everySheetIsOnePage(Starter starter) throws Exception {
    HeadlessBrowser browser = HeadlessBrowser.in(folder);
    List<String> sizes = List.of("letter", "A4");
    List<Path> sheets = sheets(starter);
    for (Path sheet : sheets) {
      int turn = (sheets.indexOf(sheet) + starter.name().length()) % sizes.size();
      List<String> tried = FULL ? sizes : sizes.subList(turn, turn + 1);
      String html = Files.readString(sheet);
      boolean drawing = sheet.toString().endsWith(".svg"); // names its own page
      for (String size : drawing ? List.of("its own") : tried) {
        Path sized = folder.resolve(size + sheet.getFileName());
        Files.writeString(sized, html.replace("@page{", "@page{size:" + size + ";"));
        assertThat(pages(browser, sized)).as(sheet.getFileName() + " on " + size).isEqualTo(1);
      }
    }
  }

  @Test
  void twoSheetsInOneFileAreCountedAsTwo() throws Exception {
    HeadlessBrowser browser = HeadlessBrowser.in(folder);
    Path two = folder.resolve("two.html");
    Files.writeString(two, "<p>one<p style=\"break-before:page\">two");
    assertThat(pages(browser, two)).isEqualTo(2);
  }
}
