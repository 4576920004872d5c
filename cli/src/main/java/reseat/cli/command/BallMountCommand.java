package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import reseat.designfile.BallMountFile;
import reseat.report.ballmount.BallMountJson;
import reseat.report.ballmount.BallMountPictures;
import reseat.report.ballmount.BallMountText;
import reseat.report.form.Screen;
import reseat.study.BallMountResult;
import reseat.study.BallMountStudy;

/** Looks at one ball mount: stud, bond, thread, lock nut, seat, adjustment. */
final class BallMountCommand implements FileCommand {

  private static final String JSON = "--json";
  private static final String PICTURE = "--picture";

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Looks at one ball mount: what the stud gives and bears, bond, thread beside another"
                + " pitch, lock nut, which screw to turn how far, the seat the ball turns in and the"
                + " pad behind it.");
    spec.addPositional(Options.file("ball mount file (see 'reseat starter ball-mount')"));
    ScreenChoices.describe(spec);
    spec.addOption(Options.flag(JSON, "print the result as JSON, SI units"));
    spec.addOption(
        OptionSpec.builder(PICTURE)
            .paramLabel("NAME")
            .type(String.class)
            .description("write this picture instead: section-stud or section-seat; needs --output")
            .build());
    spec.addOption(
        OptionSpec.builder("-o", "--output")
            .paramLabel("FILE")
            .type(Path.class)
            .description("with --picture: the file to write")
            .build());
    spec.addOption(Options.flag("--svg", "with --picture: SVG (the default)"));
    spec.addOption(Options.flag("--png", "with --picture: PNG"));
    spec.addOption(Options.flag("--force", "with --picture: replace a file that exists already"));
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException {
    Path file = given.matchedPositionalValue(0, null);
    return given.hasMatchedOption(PICTURE)
        ? picture(given, file, out, err)
        : mount(file, given, out, err);
  }

  @Override
  public int run(Path file, PrintWriter out, PrintWriter err) throws IOException {
    return mount(file, null, out, err);
  }

  private static int mount(Path file, ParseResult given, PrintWriter out, PrintWriter err)
      throws IOException {
    Optional<BallMountFile> found = read(file, err);
    if (found.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    BallMountFile read = found.get();
    Screen screen;
    try {
      screen = ScreenChoices.of(given, read.inInches());
    } catch (UnusableChoice e) {
      err.println("reseat mount: " + e.getMessage());
      return ExitCode.BAD_INPUT;
    }
    BallMountResult result = BallMountStudy.run(read);
    boolean json = given != null && given.hasMatchedOption(JSON);
    out.print(
        json
            ? BallMountJson.of(result)
            : BallMountText.of(result, read.assumed(), Screen.word(file.toString()), screen));
    return ExitCode.of(result.verdict());
  }

  private static Optional<BallMountFile> read(Path file, PrintWriter err) throws IOException {
    return DesignInput.readMount(file, err);
  }

  private static int picture(ParseResult given, Path file, PrintWriter out, PrintWriter err)
      throws IOException {
    Path target = given.matchedOptionValue("--output", null);
    if (target == null) {
      err.println("reseat mount: --picture needs --output FILE, the file to write");
      return ExitCode.BAD_INPUT;
    }
    Optional<BallMountFile> read = read(file, err);
    if (read.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    Screen screen;
    try {
      screen = ScreenChoices.of(given, read.get().inInches());
    } catch (UnusableChoice e) {
      err.println("reseat mount: " + e.getMessage());
      return ExitCode.BAD_INPUT;
    }
    BallMountResult looked = BallMountStudy.run(read.get());
    return new OnePicture(
            "reseat mount",
            "this mount",
            target,
            given.hasMatchedOption("--png"),
            given.hasMatchedOption("--force"))
        .write(given.matchedOptionValue(PICTURE, ""), BallMountPictures.of(looked, screen.units()), out, err);
  }
}
