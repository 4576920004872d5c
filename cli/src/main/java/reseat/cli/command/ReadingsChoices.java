package reseat.cli.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import reseat.csv.DecimalMark;
import reseat.csv.HeadUnit;
import reseat.readings.AnalysisOptions;
import reseat.readings.ColumnFacts;
import reseat.readings.MeasuredSeries;
import reseat.readings.OffsetTable.AxisRule;
import reseat.readings.ReaderWishes;
import reseat.readings.ReadingColumn;
import reseat.report.form.Screen;
import reseat.report.readings.AcceptanceTestPlan;
import reseat.study.AcceptanceStudy;
import reseat.units.PrintedNumber;
import reseat.units.QuantityKind;
import reseat.units.Unit;
import reseat.units.UnitCatalog;

/** The options of {@link ReadingsCommand}, as given. */
final class ReadingsChoices {

  static final String AGAINST = "--against";
  private static final String TARGET = "--target";
  private static final String MULTIPLIER = "--multiplier";
  private static final String GAUGE = "--gauge";
  private static final String RESOLUTION = "--resolution";
  private static final String CONFIDENCE = "--confidence";
  private static final String SHARE = "--share";
  private static final String WEAR_IN = "--wear-in";
  private static final String PLAN = "--plan";
  private static final String EXPECTED = "--expected";
  private static final String DIAMETER = "--diameter";
  private static final String TURN_SIGN = "--turn-sign";
  private static final String DECIMAL = "--decimal";
  private static final String UNIT = "--unit";

  private final ParseResult given;

  /**
   * Takes the options.
   *
   * @param given as read; null for none
   */
  ReadingsChoices(ParseResult given) {
    this.given = given;
  }

  /**
   * Describes the options.
   *
   * @param spec to which they are added
   */
  static void describe(CommandSpec spec) {
    AnalysisOptions usual = AnalysisOptions.USUAL;
    spec.addOption(
        Options.text(
            ScreenChoices.UNITS,
            "mm|inch",
            "units to print in; those of the columns if not given"));
    spec.addOption(Options.flag(ScreenChoices.ALL, "tell everything, not only what decides"));
    spec.addOption(Options.flag("--json", "Machine-readable result in SI units."));
    spec.addOption(
        Options.several(
            UNIT,
            "[PROBE=]UNIT",
            "Unit of the readings where the file names none, such as um, mm or in."));
    spec.addOption(
        Options.text(
            DECIMAL,
            "comma|point",
            "What stands before decimals, where the readings do not show it."));
    spec.addOption(
        Options.several(
            TARGET,
            "[PROBE=]VALUE",
            "Largest scatter allowed, for every probe or for the one named: is it proven?"));
    spec.addOption(
        Options.value(
            MULTIPLIER,
            "K",
            Double.class,
            1.0,
            "The target is meant as K standard deviations, 4 for the ISO 230-2 form"));
    spec.addOption(
        Options.several(
            GAUGE,
            "[PROBE=]VALUE",
            "Standard deviation of repeated readings of an undisturbed mount; is taken out."));
    spec.addOption(
        Options.several(
            RESOLUTION,
            "[PROBE=]VALUE",
            "Step of the gauge; without it, found from the readings."));
    spec.addOption(
        Options.value(
            CONFIDENCE,
            "P",
            Double.class,
            usual.confidence(),
            "Confidence of bounds, intervals and verdicts"));
    spec.addOption(
        Options.value(
            SHARE,
            "P",
            Double.class,
            usual.share(),
            "Share of all mounts that the tolerance interval holds"));
    spec.addOption(
        Options.text(
            WEAR_IN,
            "N",
            "Mounts at the start to leave out; without it, found from the readings."));
    spec.addOption(
        Options.text(
            "--probes", "FILE", "Where the probes stand; solves for the motion of the holder."));
    spec.addOption(
        Options.text(
            PoseChoices.MOTIONS,
            "LIST",
            "Motions the probes are solved for, such as 'z,rx,ry' (all six if not given)."));
    spec.addOption(
        Options.text(
            PoseChoices.TOOL_POINT,
            "X,Y,Z",
            "Point whose shift is wanted from the probes, such as '47 mm, 0 mm, 15.2 mm'."));
    spec.addOption(
        Options.text("--later", "FILE", "Later checks, held to the limits of this series."));
    spec.addOption(
        Options.text(
            AGAINST,
            "DESIGN",
            "Compare with the tool changes simulated for this design file; probes are matched to"
                + " its machine axes by name, and held to its targets."));
    spec.addOption(
        Options.text(
            "--sheet",
            "FILE",
            "Write the filled acceptance sheet: a page if FILE ends in .html, else text."));
    spec.addOption(
        Options.text("--offsets", "FILE", "Write the offset table of several holders as CSV."));
    spec.addOption(
        Options.text(
            "--reference",
            "HOLDER",
            "Master holder of the offsets; without it they count from the zero of the gauges."));
    spec.addOption(
        Options.several(DIAMETER, "PROBE", "Axis whose offset is entered as a diameter."));
    spec.addOption(
        Options.several(TURN_SIGN, "PROBE", "Axis whose offset is entered with its sign turned."));
    spec.addOption(
        Options.flag(
            PLAN,
            "Write FILE as a blank acceptance form for the design named with --against, or for the"
                + " probes named with --target."));
    spec.addOption(
        Options.several(
            EXPECTED,
            "[PROBE=]VALUE",
            "With --plan: standard deviation expected; if not given, two thirds of the target, or"
                + " the simulated one where that is more."));
    spec.addOption(Options.flag("--force", "Replace files that are there already."));
    spec.addOption(Options.text("--date", "TEXT", "Date to print with the offsets."));
  }

  /**
   * Returns what the file of readings leaves open.
   *
   * @return decimals and units as told
   * @throws UnusableChoice if an option cannot be used
   */
  ReaderWishes wishes() throws UnusableChoice {
    Optional<DecimalMark> mark =
        switch (text(DECIMAL)) {
          case "" -> Optional.empty();
          case "comma" -> Optional.of(DecimalMark.COMMA);
          case "point" -> Optional.of(DecimalMark.POINT);
          default ->
              throw new UnusableChoice(
                  DECIMAL + ": found '" + text(DECIMAL) + "'; allowed are comma and point", null);
        };
    Map<String, String> units = new HashMap<>();
    for (String word : words(UNIT)) {
      int equals = word.indexOf('=');
      String unit = word.substring(equals + 1).strip();
      HeadUnit known = HeadUnit.of(unit, QuantityKind.LENGTH, QuantityKind.ANGLE);
      if (!known.problem().isEmpty()) {
        throw new UnusableChoice(UNIT + ": " + known.problem(), null);
      }
      String name = equals < 0 ? "" : word.substring(0, equals).strip();
      if (units.put(name.toLowerCase(Locale.ROOT), unit) != null) {
        throw new UnusableChoice(
            UNIT + " is given twice for " + (name.isEmpty() ? "every probe" : "probe " + name),
            null);
      }
    }
    return new ReaderWishes(mark, units);
  }

  /**
   * Gives the series in the units that are asked for.
   *
   * @param series as read
   * @return in other units, or as it is
   * @throws UnusableChoice if the units are none of those offered
   */
  MeasuredSeries told(MeasuredSeries series) throws UnusableChoice {
    return switch (text(ScreenChoices.UNITS)) {
      case "" -> series;
      case "mm" -> series.in(false);
      case "inch" -> series.in(true);
      default -> throw unknownUnits();
    };
  }

  private UnusableChoice unknownUnits() {
    return new UnusableChoice(
        ScreenChoices.UNITS
            + ": found '"
            + text(ScreenChoices.UNITS)
            + "'; allowed are mm and inch, since a column has one unit",
        null);
  }

  /**
   * Says how the screen is asked for.
   *
   * @param inInches whether lengths are told in inches
   * @return unit system, and how much is told
   */
  Screen screen(boolean inInches) {
    Screen screen = ScreenChoices.of(inInches);
    boolean all = given != null && given.hasMatchedOption(ScreenChoices.ALL);
    return new Screen(screen.units(), all, screen.call());
  }

  boolean json() {
    return given != null && given.hasMatchedOption("--json");
  }

  boolean plan() {
    return given != null && given.hasMatchedOption(PLAN);
  }

  /**
   * Lays out the acceptance test that the options describe.
   *
   * @param design the design to be tested, with the name of its file; empty if there is none
   * @param inInches whether the design is stated in inches
   * @return the blank form
   * @throws UnusableChoice if an option cannot be used
   */
  AcceptanceTestPlan form(Map<String, AcceptanceStudy> design, boolean inInches)
      throws UnusableChoice {
    Optional<Unit> told =
        switch (text(ScreenChoices.UNITS)) {
          case "" -> inInches ? Optional.of(UnitCatalog.UIN) : Optional.empty();
          case "mm" -> Optional.of(UnitCatalog.UM);
          case "inch" -> Optional.of(UnitCatalog.UIN);
          default -> throw unknownUnits();
        };
    try {
      return BlankSheet.of(
          words(TARGET),
          multiplier(),
          words(EXPECTED),
          level(CONFIDENCE, AnalysisOptions.USUAL.confidence()),
          wearIn(Integer.MAX_VALUE),
          design,
          told,
          words(GAUGE),
          words(RESOLUTION));
    } catch (IllegalArgumentException e) {
      throw new UnusableChoice(e.getMessage(), e);
    }
  }

  boolean force() {
    return given != null && given.hasMatchedOption("--force");
  }

  /**
   * Returns a text option.
   *
   * @param name its name
   * @return as typed; empty if not given
   */
  String text(String name) {
    return given == null ? "" : given.matchedOptionValue(name, "");
  }

  private List<String> words(String name) {
    return given == null ? List.of() : given.matchedOptionValue(name, List.<String>of());
  }

  private double number(String name, double standard) {
    return given == null ? standard : given.matchedOptionValue(name, standard);
  }

  /**
   * Returns the levels of the analysis.
   *
   * @param series the series
   * @return the levels
   * @throws IllegalArgumentException if an option cannot be used; the message names it
   */
  AnalysisOptions options(MeasuredSeries series) {
    AnalysisOptions usual = AnalysisOptions.USUAL;
    return new AnalysisOptions(
        level(CONFIDENCE, usual.confidence()),
        level(SHARE, usual.share()),
        usual.falseAlarm(),
        wearIn(series.mounts()));
  }

  private double level(String name, double standard) {
    double value = number(name, standard);
    if (!(value >= 0.5 && value < 1)) {
      throw new IllegalArgumentException(
          name
              + ": "
              + PrintedNumber.shortest(value)
              + " must be from 0.5 to below 1, for instance 0.95");
    }
    return value;
  }

  private int wearIn(int mounts) {
    String text = text(WEAR_IN);
    if (text.isEmpty()) {
      return AnalysisOptions.USUAL.wearIn();
    }
    int most = mounts - 2;
    if (!text.matches("[0-9]{1,9}") || Integer.parseInt(text) > most) {
      throw new IllegalArgumentException(
          WEAR_IN
              + ": \""
              + text
              + "\" must be a whole number from 0 to "
              + most
              + ", so that at least 2 mounts are left");
    }
    return Integer.parseInt(text);
  }

  private double multiplier() {
    double multiplier = number(MULTIPLIER, 1);
    if (!(multiplier > 0) || Double.isInfinite(multiplier)) {
      throw new IllegalArgumentException(
          MULTIPLIER + ": " + PrintedNumber.shortest(multiplier) + " must be above 0");
    }
    return multiplier;
  }

  /**
   * Returns what is known of each probe.
   *
   * @param series the series
   * @param wanted targets of the design by machine axis, m; count where none is named
   * @return facts by the name of the probe
   * @throws IllegalArgumentException if an option cannot be used; the message names it
   */
  Map<String, ColumnFacts> facts(MeasuredSeries series, Map<String, Double> wanted) {
    ColumnValues targets = new ColumnValues(TARGET, words(TARGET), series);
    ColumnValues gauges = new ColumnValues(GAUGE, words(GAUGE), series);
    ColumnValues steps = new ColumnValues(RESOLUTION, words(RESOLUTION), series);
    double multiplier = multiplier();
    Map<String, ColumnFacts> facts = new HashMap<>();
    for (ReadingColumn c : series.columns()) {
      double target = targets.of(c) / multiplier;
      if (target == 0 && c.quantity() == QuantityKind.LENGTH) {
        target = wanted.getOrDefault(c.name(), 0.0);
      }
      facts.put(c.name(), new ColumnFacts(gauges.of(c), steps.of(c), target));
    }
    return facts;
  }

  /**
   * Returns how the control wants its axes: the probes that read lengths.
   *
   * @param series the series
   * @return one rule per such probe
   * @throws IllegalArgumentException if an option names no such probe
   */
  List<AxisRule> axes(MeasuredSeries series) {
    List<String> diameters = lower(DIAMETER, series);
    List<String> turned = lower(TURN_SIGN, series);
    List<AxisRule> axes = new ArrayList<>();
    for (ReadingColumn c : series.columns()) {
      if (c.quantity() == QuantityKind.LENGTH) {
        String name = c.name().toLowerCase(Locale.ROOT);
        axes.add(new AxisRule(c.name(), turned.contains(name) ? -1 : 1, diameters.contains(name)));
      }
    }
    return axes;
  }

  private List<String> lower(String option, MeasuredSeries series) {
    List<String> names = words(option);
    names.forEach(name -> ColumnValues.require(option, name, series));
    return names.stream().map(n -> n.toLowerCase(Locale.ROOT)).toList();
  }
}
