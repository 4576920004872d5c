package reseat.cli.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import reseat.plots.Picture;

/**
 * The files beside its printed result that a command is told to write, each by an option of its
 * own.
 */
final class ResultFiles {

  private static final String PICTURE = "--picture";
  private static final double SCALE = 2;

  private final ParseResult given;

  ResultFiles(ParseResult given) {
    this.given = given;
  }

  /**
   * Adds the switch without which no file that exists is replaced.
   *
   * @param spec gets the option
   */
  static void describeForce(CommandSpec spec) {
    spec.addOption(Options.flag("--force", "replace files that exist already"));
  }

  /** Whether files that exist may be replaced. */
  boolean force() {
    return given.hasMatchedOption("--force");
  }

  /** The file an option names; empty if it was not given. */
  Optional<Path> named(String option) {
    String name = given.matchedOptionValue(option, "");
    return name.isEmpty() ? Optional.empty() : Optional.of(Path.of(name));
  }

  /**
   * Looks, before any work is done, whether these files could be written.
   *
   * @param options the options that may name one
   * @throws UnusableChoice if the name of a picture ends in neither .svg nor .png
   * @throws FileAlreadyExistsException if a file is there and must not be replaced
   */
  void check(String... options) throws UnusableChoice, FileAlreadyExistsException {
    for (String option : options) {
      Optional<Path> file = named(option);
      if (file.isEmpty()) {
        continue;
      }
      if (option.equals(PICTURE) && !ending(file.get(), ".svg") && !ending(file.get(), ".png")) {
        throw new UnusableChoice(
            PICTURE + " is '" + file.get() + "'; end it in .svg or .png", null);
      }
      if (!force() && Files.exists(file.get())) {
        throw new FileAlreadyExistsException(file.get().toString());
      }
    }
  }

  private static boolean ending(Path file, String end) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(end);
  }

  /** Writes a text, in UTF-8. */
  void write(Path file, String text) throws IOException {
    AtomicFile.write(file, text.getBytes(StandardCharsets.UTF_8), force());
  }

  /** Writes a picture in the format that the name asks for. */
  void write(Path file, Picture picture) throws IOException {
    byte[] content = ending(file, ".png") ? picture.png(SCALE) : picture.svg();
    AtomicFile.write(file, content, force());
  }
}
