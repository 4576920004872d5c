package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import reseat.check.Finding;
import reseat.check.Verdict;
import reseat.design.CouplingDesign;
import reseat.design.ShopFloor;
import reseat.design.Support;
import reseat.designfile.BallMountFile;
import reseat.report.ballmount.BallMountJson;
import reseat.report.ballmount.BallMountPapers;
import reseat.report.check.VerdictWords;
import reseat.report.form.Screen;
import reseat.report.page.PageSource;
import reseat.report.shop.ShopJson;
import reseat.report.shop.ShopPapers;
import reseat.report.shop.ShopUnits;
import reseat.study.BallMountResult;
import reseat.study.BallMountStudy;
import reseat.study.SeatedCheck;
import reseat.study.ShopStudy;
import reseat.study.StatedDesign;
import reseat.units.NearestWord;
import reseat.units.QuantityKind;
import reseat.units.QuantityText;

/** Writes the papers with which a coupling is made, measured and set. */
final class ShopsheetCommand implements Subcommand {

  private static final String NAME = "shopsheet";
  private static final String OUTPUT = "--output";
  private static final String JSON = "--json";
  private static final String UNITS = "--units";
  private static final String BALL = "--gauge-ball";
  private static final String PIN = "--gauge-pin";
  private static final String RAISE = "--raise";
  private static final String FORCE = "--force";

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Writes a folder of papers for the shop floor, one page each: drawings and coordinates,"
                + " gauge heights, bonding, setting, clearances, acceptance test, offsets, upkeep,"
                + " cautions.");
    spec.addPositional(Options.file("design file, or ball mount file"));
    spec.addOption(
        OptionSpec.builder("-o", OUTPUT)
            .paramLabel("DIR")
            .type(Path.class)
            .description("folder to write; needed unless --json is given")
            .build());
    spec.addOption(
        Options.text(
            UNITS,
            "mm|inch|both",
            "units of the papers (both if not given, those of most values in the file first)"));
    spec.addOption(
        Options.several(BALL, "SIZE", "diameter of a gauge ball you own; takes the file's place"));
    spec.addOption(
        Options.several(PIN, "SIZE", "diameter of a gauge pin you own; takes the file's place"));
    spec.addOption(
        Options.several(
            RAISE, "BALL=HEIGHT", "by how much to raise a ball, such as \"front=12 um\""));
    CheckCommand.describeStrict(spec);
    spec.addOption(Options.flag(FORCE, "replace papers that were filled in or changed since"));
    spec.addOption(Options.flag(JSON, "print the numbers of the papers as JSON, SI units"));
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException {
    Path file = given.matchedPositionalValue(0, null);
    Path folder = given.matchedOptionValue(OUTPUT, null);
    if (folder == null && !given.hasMatchedOption(JSON)) {
      err.println("reseat shopsheet: name the folder to write, such as -o sheets");
      return ExitCode.BAD_INPUT;
    }
    if (folder != null) {
      AtomicFolder.check(folder, NAME, given.hasMatchedOption(FORCE));
    }
    try {
      return BallMountFile.isOne(file)
          ? mount(given, file, folder, out, err)
          : coupling(given, file, folder, out, err);
    } catch (UnusableChoice e) {
      err.println("reseat shopsheet: " + e.getMessage());
      return ExitCode.BAD_INPUT;
    }
  }

  private static ShopUnits units(ParseResult given, boolean inInches) throws UnusableChoice {
    String word = given.matchedOptionValue(UNITS, "");
    return switch (word) {
      case "" -> new ShopUnits(inInches);
      case "both" -> new ShopUnits(inInches, true);
      case "mm" -> new ShopUnits(false, false);
      case "inch" -> new ShopUnits(true, false);
      default ->
          throw new UnusableChoice(
              UNITS + ": found '" + word + "'; allowed are mm, inch and both", null);
    };
  }

  private static int coupling(
      ParseResult given, Path file, Path folder, PrintWriter out, PrintWriter err)
      throws IOException, UnusableChoice {
    Optional<StatedDesign> read = DesignInput.read(file, err);
    if (read.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    ShopUnits units = units(given, read.get().inInches());
    CouplingDesign design = withGauges(read.get().design(), given);
    Map<String, Double> rises = rises(design, given);
    JudgedDesign judged =
        JudgedDesign.of(
            read.get().with(design),
            file,
            "reseat shopsheet: ",
            new JudgedDesign.Output(
                ScreenChoices.of(units.inchFirst()),
                given.hasMatchedOption(JSON),
                given.hasMatchedOption(CheckCommand.STRICT),
                out,
                err));
    if (judged.seated().isEmpty()) {
      return judged.code();
    }
    SeatedCheck seated = judged.seated().get();
    ShopStudy study;
    try {
      study = ShopStudy.run(seated, units.inchFirst());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
    if (folder != null) {
      write(
          folder,
          ShopPapers.of(study, stamp(file), units, rises),
          seated.findings(),
          false,
          given,
          out);
    }
    if (given.hasMatchedOption(JSON)) {
      out.print(ShopJson.of(study, rises));
    }
    return ExitCode.of(seated.verdict());
  }

  private static int mount(
      ParseResult given, Path file, Path folder, PrintWriter out, PrintWriter err)
      throws IOException, UnusableChoice {
    for (String option : List.of(BALL, PIN, RAISE)) {
      if (given.hasMatchedOption(option)) {
        throw new UnusableChoice(option + ": is for a whole coupling; leave it out here", null);
      }
    }
    Optional<BallMountFile> read = DesignInput.readMount(file, err);
    if (read.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    ShopUnits units = units(given, read.get().inInches());
    BallMountResult result = BallMountStudy.run(read.get());
    if (folder != null) {
      write(
          folder,
          BallMountPapers.of(result, stamp(file), units),
          result.findings(),
          true,
          given,
          out);
    }
    if (given.hasMatchedOption(JSON)) {
      out.print(BallMountJson.of(result));
    }
    return ExitCode.of(result.verdict());
  }

  private static List<String> stamp(Path file) throws IOException {
    return PageSource.of(file);
  }

  private static void write(
      Path folder,
      Map<String, byte[]> files,
      List<Finding> findings,
      boolean mount,
      ParseResult given,
      PrintWriter out)
      throws IOException {
    AtomicFolder.write(folder, NAME, files, given.hasMatchedOption(FORCE));
    if (!given.hasMatchedOption(JSON)) {
      out.println(VerdictWords.line(findings));
      out.println("wrote " + files.size() + " papers to " + folder + ":");
      for (String name : files.keySet()) {
        out.println("  " + name);
      }
      String file = Screen.word(given.matchedPositionalValue(0, Path.of("")).toString());
      Screen screen = ScreenChoices.of(false);
      out.print(
          mount
              ? screen.next("mount", file, "")
              : Verdict.of(findings) == Verdict.HOLDS
                  ? screen.next("report", file, " -o report")
                  : screen.next("check", file, ""));
      out.flush();
    }
  }

  private static CouplingDesign withGauges(CouplingDesign design, ParseResult given)
      throws UnusableChoice {
    ShopFloor shop = design.shop();
    if (!given.hasMatchedOption(BALL) && !given.hasMatchedOption(PIN)) {
      return design;
    }
    List<Double> balls = given.hasMatchedOption(BALL) ? sizes(given, BALL) : shop.gaugeBalls();
    List<Double> pins = given.hasMatchedOption(PIN) ? sizes(given, PIN) : shop.gaugePins();
    return design.toBuilder().shop(shop.withGauges(balls, pins)).build();
  }

  private static List<Double> sizes(ParseResult given, String option) throws UnusableChoice {
    List<String> words = given.matchedOptionValue(option, List.of());
    List<Double> sizes = new ArrayList<>();
    for (String word : words) {
      double size = length(option, word);
      if (!(size > 0)) {
        throw new UnusableChoice(option + ": \"" + word + "\" must be above 0", null);
      }
      sizes.add(size);
    }
    return sizes;
  }

  private static Map<String, Double> rises(CouplingDesign design, ParseResult given)
      throws UnusableChoice {
    List<String> names = new ArrayList<>();
    for (Support s : design.supports()) {
      if (s.mounting().stud().flatMap(m -> m.thread()).isPresent()) {
        names.add(s.name());
      }
    }
    List<String> words = given.matchedOptionValue(RAISE, List.of());
    Map<String, Double> rises = new LinkedHashMap<>();
    for (String word : words) {
      int equals = word.indexOf('=');
      String name = equals < 0 ? word : word.substring(0, equals).strip();
      if (!names.contains(name)) {
        throw new UnusableChoice(
            RAISE
                + ": no ball '"
                + name
                + "' stands on a thread"
                + NearestWord.to(name, names).map(n -> "; did you mean " + n + "?").orElse("")
                + (names.isEmpty() ? "" : "; there are " + String.join(", ", names)),
            null);
      }
      if (equals < 0) {
        throw new UnusableChoice(RAISE + ": write " + name + "=12 um, or another height", null);
      }
      rises.put(name, length(RAISE, word.substring(equals + 1).strip()));
    }
    return rises;
  }

  private static double length(String option, String word) throws UnusableChoice {
    try {
      return QuantityText.require(word, QuantityKind.LENGTH).value();
    } catch (IllegalArgumentException e) {
      throw new UnusableChoice(option + ": " + e.getMessage(), e);
    }
  }
}
