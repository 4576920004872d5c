package reseat.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import reseat.designfile.PrevailingUnits;
import reseat.report.form.Screen;
import reseat.report.form.UnitSystem;

/** The options of every command that prints a screen: unit system, and how much is told. */
final class ScreenChoices {

  static final String UNITS = "--units";
  static final String ALL = "--all";

  /** Set by the launcher to how it was called, so that the next step runs as printed. */
  private static final String CALLED = "reseat.called";

  private ScreenChoices() {}

  /**
   * Adds the options.
   *
   * @param spec the command
   */
  static void describe(CommandSpec spec) {
    spec.addOption(
        Options.text(UNITS, "mm|inch|both", "units to print in; those that the file uses more"));
    spec.addOption(Options.flag(ALL, "tell everything, not only what decides"));
  }

  /**
   * Reads the options.
   *
   * @param given the command line
   * @param file the design file, whose units count where none are asked for
   * @return how the screen is asked for
   * @throws IOException if the file cannot be read
   * @throws UnusableChoice if the units are none of those offered
   */
  static Screen of(ParseResult given, Path file) throws IOException, UnusableChoice {
    String units = given.matchedOptionValue(UNITS, "");
    boolean all = given.hasMatchedOption(ALL);
    return switch (units) {
      case "" -> new Screen(ofFile(file), all, called());
      case "mm" -> new Screen(UnitSystem.METRIC, all, called());
      case "inch" -> new Screen(UnitSystem.INCH, all, called());
      case "both" -> new Screen(UnitSystem.BOTH, all, called());
      default ->
          throw new UnusableChoice(
              UNITS + ": found '" + units + "'; allowed are mm, inch and both", null);
    };
  }

  /**
   * The screen where no options are given.
   *
   * @param file the design file
   * @return short, in the units of the file
   * @throws IOException if the file cannot be read
   */
  static Screen of(Path file) throws IOException {
    return new Screen(ofFile(file), false, called());
  }

  private static UnitSystem ofFile(Path file) throws IOException {
    return PrevailingUnits.inch(file) ? UnitSystem.INCH : UnitSystem.METRIC;
  }

  private static String called() {
    return System.getProperty(CALLED, "reseat");
  }
}
