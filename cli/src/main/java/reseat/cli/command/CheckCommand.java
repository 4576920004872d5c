package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import reseat.check.Depth;
import reseat.check.Verdict;
import reseat.designfile.AlterableDesign;
import reseat.equilibrium.NoEquilibriumException;
import reseat.remedy.Counsel;
import reseat.remedy.Remedy;
import reseat.report.check.CheckJson;
import reseat.report.check.CheckText;
import reseat.report.check.ExplainText;
import reseat.report.check.RemedyWords;
import reseat.report.form.FigureText;
import reseat.report.form.Paragraph;
import reseat.report.form.Screen;
import reseat.study.AssumedShares;
import reseat.study.CheckResult;
import reseat.study.CheckStudy;
import reseat.study.SeatedCheck;
import reseat.study.StatedDesign;
import reseat.units.NearestWord;

/** Looks at a whole design: forces, stress, stiffness, lift-off, tool changes, the verdict. */
final class CheckCommand implements FileCommand {

  private static final String NAME = "reseat check: ";
  private static final String JSON = "--json";
  static final String STATICS = "--statics";
  private static final String EXPLAIN = "--explain";
  static final String STRICT = "--strict";
  private static final String NO_REMEDIES = "--no-remedies";
  private static final String PAIRS = "--remedies";
  private static final String REMEDY = "--remedy";
  private static final String FORCE = "--force";

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Checks a design: contact forces and pressures, stiffness at the tool point, lift-off,"
                + " error motion, tool changes, and what to change where a limit is broken.");
    spec.addPositional(Options.file("design file (see 'reseat starter')"));
    spec.addOption(Options.flag(STATICS, "look at the statics alone, not at tool changes"));
    describeStrict(spec);
    ScreenChoices.describe(spec);
    spec.addOption(
        Options.text(
            EXPLAIN, "KEY", "tell one figure in full: formula, inputs, source, what is assumed"));
    spec.addOption(Options.flag(NO_REMEDIES, "do not look for changes after which it holds"));
    spec.addOption(Options.flag(PAIRS, "look for pairs of changes too, where no single one helps"));
    spec.addOption(Options.text(REMEDY, "N", "with -o: write the design with the N-th remedy"));
    spec.addOption(
        OptionSpec.builder("-o", "--output")
            .paramLabel("FILE")
            .type(Path.class)
            .description("with --remedy: the design file to write, comments kept")
            .build());
    spec.addOption(Options.flag(FORCE, "with -o: replace a file that exists already"));
    spec.addOption(Options.flag(JSON, "print the result as JSON, SI units"));
  }

  /** The option that asks for a decision on what results rest on and the file does not state. */
  static void describeStrict(CommandSpec spec) {
    spec.addOption(
        Options.flag(
            STRICT,
            "ask for a decision on every assumption that carries more than a tenth of a deciding"
                + " figure; it is taken by stating the value"));
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException {
    Path file = given.matchedPositionalValue(0, null);
    String key = given.matchedOptionValue(EXPLAIN, "");
    if (!key.isEmpty() && !ExplainText.keys().contains(key)) {
      err.println(
          NAME
              + EXPLAIN
              + ": no figure '"
              + key
              + "'"
              + NearestWord.to(key, ExplainText.keys())
                  .map(k -> "; did you mean " + k + "?")
                  .orElse(""));
      err.println("There are " + String.join(", ", ExplainText.keys()) + ".");
      return ExitCode.BAD_INPUT;
    }
    if (!key.isEmpty()) {
      return explain(file, key, given, err, out);
    }
    Depth depth = given.hasMatchedOption(STATICS) ? Depth.STATICS : Depth.SIMULATED;
    boolean number = given.hasMatchedOption(REMEDY);
    if (number != given.hasMatchedOption("-o")) {
      err.println(NAME + "--remedy N and -o FILE go together: which remedy, and where to write it");
      return ExitCode.BAD_INPUT;
    }
    if (number) {
      return remedy(given, file, depth, out, err);
    }
    TriedChanges.Sought sought =
        given.hasMatchedOption(NO_REMEDIES)
            ? TriedChanges.Sought.NONE
            : given.hasMatchedOption(PAIRS)
                ? TriedChanges.Sought.PAIRS
                : TriedChanges.Sought.SINGLE_KEYS;
    return check(file, given, depth, sought, out, err);
  }

  @Override
  public int run(Path file, PrintWriter out, PrintWriter err) throws IOException {
    return check(file, null, Depth.SIMULATED, TriedChanges.Sought.SINGLE_KEYS, out, err);
  }

  private static int check(
      Path file,
      ParseResult given,
      Depth depth,
      TriedChanges.Sought sought,
      PrintWriter out,
      PrintWriter err)
      throws IOException {
    Optional<StatedDesign> design = DesignInput.read(file, err);
    if (design.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    try {
      Screen screen = ScreenChoices.of(given, design.get().inInches());
      CheckResult found = CheckStudy.run(design.get(), depth);
      boolean strict = given != null && given.hasMatchedOption(STRICT);
      CheckResult result = strict ? AssumedShares.strict(found) : found;
      boolean json = given != null && given.hasMatchedOption(JSON);
      boolean halving = screen.all() && depth == Depth.SIMULATED;
      Counsel counsel = TriedChanges.of(file, result, sought, halving);
      out.print(
          json
              ? CheckJson.of(result, counsel)
              : CheckText.of(result, counsel, file.toString(), screen));
      return ExitCode.of(result.verdict());
    } catch (UnusableChoice e) {
      err.println(NAME + e.getMessage());
      return ExitCode.BAD_INPUT;
    } catch (NoEquilibriumException e) {
      err.println(NAME + file + ": " + e.getMessage());
      return ExitCode.NO_SOLUTION;
    }
  }

  /** Tells one figure in full; that is shown or it is not, whatever the verdict. */
  private static int explain(
      Path file, String key, ParseResult given, PrintWriter err, PrintWriter out)
      throws IOException {
    Optional<StatedDesign> design = DesignInput.read(file, err);
    if (design.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    try {
      Screen screen = ScreenChoices.of(given, design.get().inInches());
      CheckResult result = CheckStudy.run(design.get(), Depth.SIMULATED);
      if (!(result instanceof SeatedCheck seated)) {
        err.println(NAME + file + ": the coupling does not stand, so it has no such figure");
        return ExitCode.NO_SOLUTION;
      }
      Optional<String> told = ExplainText.of(seated, key, screen.figures());
      if (told.isEmpty()) {
        err.println(NAME + file + ": this design has no " + key.replace('-', ' '));
        return ExitCode.NO_SOLUTION;
      }
      out.print(told.get());
      return ExitCode.HOLDS;
    } catch (UnusableChoice e) {
      err.println(NAME + e.getMessage());
      return ExitCode.BAD_INPUT;
    } catch (NoEquilibriumException e) {
      err.println(NAME + file + ": " + e.getMessage());
      return ExitCode.NO_SOLUTION;
    }
  }

  /** Writes the changed design; pairs count where no single key helps. */
  private static int remedy(
      ParseResult given, Path file, Depth depth, PrintWriter out, PrintWriter err)
      throws IOException {
    Optional<StatedDesign> design = DesignInput.read(file, err);
    if (design.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    Path changed = given.matchedOptionValue("-o", null);
    try {
      CheckResult result = CheckStudy.run(design.get(), depth);
      List<Remedy> remedies =
          TriedChanges.of(file, result, TriedChanges.Sought.PAIRS, false).remedies().remedies();
      if (remedies.isEmpty()) {
        err.println(
            NAME
                + file
                + (result.verdict() == Verdict.HOLDS
                    ? ": every check holds, so there is no remedy to write"
                    : ": no remedy was found; nothing was written"));
        return ExitCode.NO_SOLUTION;
      }
      long number =
          WholeNumber.of(REMEDY, given.matchedOptionValue(REMEDY, ""), 1, remedies.size());
      Remedy remedy = remedies.get((int) number - 1);
      String text = remedy.writtenInto(AlterableDesign.read(file));
      AtomicFile.write(
          changed, text.getBytes(StandardCharsets.UTF_8), given.hasMatchedOption(FORCE));
      out.print(
          Paragraph.of(
              "", "wrote " + changed + ": " + RemedyWords.line(remedy, FigureText.METRIC)));
      out.println("Next: reseat check " + changed);
      return ExitCode.HOLDS;
    } catch (UnusableChoice e) {
      err.println(NAME + e.getMessage());
      return ExitCode.BAD_INPUT;
    } catch (NoEquilibriumException e) {
      err.println(NAME + file + ": " + e.getMessage());
      return ExitCode.NO_SOLUTION;
    }
  }
}
