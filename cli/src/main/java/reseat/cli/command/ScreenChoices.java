package reseat.cli.command;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
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
        Options.text(
            UNITS,
            "mm|inch|both",
            "units to print in (those of most values in the file if not given)"));
    spec.addOption(Options.flag(ALL, "tell everything, not only what decides"));
  }

  /**
   * Reads the options.
   *
   * @param given the command line; null for none
   * @param inInches whether the file is written in inches, which counts where no units are asked
   *     for
   * @return how the screen is asked for
   * @throws UnusableChoice if the units are none of those offered
   */
  static Screen of(ParseResult given, boolean inInches) throws UnusableChoice {
    String units = given == null ? "" : given.matchedOptionValue(UNITS, "");
    boolean all = given != null && given.hasMatchedOption(ALL);
    return switch (units) {
      case "" -> new Screen(ofFile(inInches), all, called());
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
   * @param inInches whether the file is written in inches
   * @return short, in the units of the file
   */
  static Screen of(boolean inInches) {
    return new Screen(ofFile(inInches), false, called());
  }

  /**
   * Gives what was typed again, for the next step.
   *
   * @param given the command line
   * @param left names of options that the next step does not repeat
   * @return the file and the options with their values, as a shell takes them
   */
  static String again(ParseResult given, String... left) {
    StringBuilder typed =
        new StringBuilder(Screen.word(given.matchedPositionalValue(0, Path.of("")).toString()));
    // an option given twice is matched twice, and holds both values each time
    for (OptionSpec option : new LinkedHashSet<>(given.matchedOptions())) {
      String name = option.longestName();
      // the same comes out on any number of threads
      if (name.equals(ALL) || name.equals(Options.THREADS) || List.of(left).contains(name)) {
        continue;
      }
      List<String> values = option.stringValues();
      if (option.arity().max() == 0) {
        typed.append(' ').append(name);
      } else {
        values.forEach(v -> typed.append(' ').append(name).append(' ').append(Screen.word(v)));
      }
    }
    return typed.toString();
  }

  private static UnitSystem ofFile(boolean inInches) {
    return inInches ? UnitSystem.INCH : UnitSystem.METRIC;
  }

  private static String called() {
    return System.getProperty(CALLED, "reseat");
  }
}
