package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import reseat.report.page.PageSource;
import reseat.report.page.PageWriter;
import reseat.report.readings.AcceptanceSheet;
import reseat.report.readings.OffsetTableText;
import reseat.report.readings.ReadingsJson;
import reseat.report.readings.ReadingsPage;
import reseat.report.readings.ReadingsPictures;
import reseat.report.readings.ReadingsReport;
import reseat.report.readings.ReadingsText;

/** The page of a remount series with its files, or one of its pictures. */
final class ReadingsFiles {

  private static final String OUTPUT = "--output";
  private static final String PICTURE = "--picture";

  private final ParseResult given;
  private final ReadingsChoices choices;

  /**
   * Takes the options.
   *
   * @param given as read; null for none
   * @param choices all other options
   */
  ReadingsFiles(ParseResult given, ReadingsChoices choices) {
    this.given = given;
    this.choices = choices;
  }

  /**
   * Describes the options.
   *
   * @param spec to which they are added
   */
  static void describe(CommandSpec spec) {
    spec.addOption(
        OptionSpec.builder("-o", OUTPUT)
            .paramLabel("DIR")
            .type(Path.class)
            .description(
                "Write a folder with one self-contained page, its text, JSON and acceptance sheet;"
                    + " with --picture, the file to write.")
            .build());
    spec.addOption(
        Options.text(
            PICTURE,
            "NAME",
            "Write this picture alone, as SVG or with --png as PNG: readings, plane-X-Z,"
                + " histogram-X, control-X for probes X and Z."));
    spec.addOption(Options.flag("--svg", "With --picture: SVG (the default)."));
    spec.addOption(Options.flag("--png", "With --picture: PNG."));
  }

  private Path target() {
    return given == null ? null : given.matchedOptionValue(OUTPUT, null);
  }

  private boolean has(String option) {
    return given != null && given.hasMatchedOption(option);
  }

  boolean wanted() {
    return target() != null;
  }

  /**
   * Refuses options that do not go together, before anything is computed.
   *
   * @throws UnusableChoice if a picture has no file to go to or a form is none
   * @throws IOException if the folder holds what this program did not write
   */
  void check() throws UnusableChoice, IOException {
    if (has(PICTURE) && !wanted()) {
      throw new UnusableChoice(PICTURE + ": name the file to write with -o", null);
    }
    if (!has(PICTURE) && (has("--svg") || has("--png"))) {
      throw new UnusableChoice(
          "--svg and --png: say which picture with --picture, such as --picture readings", null);
    }
    if (wanted() && !has(PICTURE)) {
      AtomicFolder.check(target(), "readings", choices.force());
    }
  }

  /**
   * Writes what is wanted.
   *
   * @param file the file of readings
   * @param report what is reported
   * @param out gets one line
   * @param err gets what is wrong
   * @return exit code
   * @throws IOException if it cannot be written
   */
  int write(Path file, ReadingsReport report, PrintWriter out, PrintWriter err) throws IOException {
    ReadingsPictures pictures = ReadingsPictures.of(report);
    if (has(PICTURE)) {
      return new OnePicture(
              "reseat readings", "these readings", target(), has("--png"), choices.force())
          .write(choices.text(PICTURE), pictures, out, err);
    }
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("readings.html", utf8(page(file, report, pictures)));
    files.put("readings.txt", utf8(ReadingsText.of(report)));
    files.put("readings.json", utf8(ReadingsJson.of(report)));
    files.put("acceptance.txt", utf8(AcceptanceSheet.filled(report)));
    if (!report.offsets().isEmpty()) {
      files.put("offsets.csv", utf8(OffsetTableText.csv(report.offsets().get(0))));
    }
    AtomicFolder.write(target(), "readings", files, choices.force());
    out.println("wrote " + target().resolve("readings.html"));
    return ExitCode.of(report.verdict());
  }

  private String page(Path file, ReadingsReport report, ReadingsPictures pictures)
      throws IOException {
    Map<Path, String> others = new LinkedHashMap<>();
    other(others, "--probes", "Probes");
    other(others, "--later", "Later checks");
    other(others, ReadingsChoices.AGAINST, "Design file");
    return PageWriter.html(ReadingsPage.of(report, pictures, PageSource.ofReadings(file, others)));
  }

  /**
   * Sets out the acceptance sheet for the file that is to hold it.
   *
   * @param file the file of readings
   * @param report what is reported
   * @return a page for a file that ends in .html or .htm, else text
   * @throws IOException if a file that the page names cannot be read
   */
  String sheet(Path file, ReadingsReport report) throws IOException {
    String name = choices.text("--sheet").toLowerCase(Locale.ROOT);
    return name.endsWith(".html") || name.endsWith(".htm")
        ? page(file, report, ReadingsPictures.of(report))
        : AcceptanceSheet.filled(report);
  }

  private void other(Map<Path, String> others, String option, String what) {
    if (!choices.text(option).isEmpty()) {
      others.put(Path.of(choices.text(option)), what);
    }
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
