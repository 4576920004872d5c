package reseat.cli.command;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * The kinds of parameter and option that commands accept. A percent sign in a description is
 * written twice.
 */
final class Options {

  static final String SEED = "--seed";
  static final String THREADS = "--threads";

  static final String TRACE = "--trace";

  private Options() {}

  /**
   * The file a command works on: the first word after its name.
   *
   * @param description what is in the file
   * @return a required parameter of type {@link Path}
   */
  static PositionalParamSpec file(String description) {
    return PositionalParamSpec.builder()
        .index("0")
        .paramLabel("FILE")
        .required(true)
        .type(Path.class)
        .description(description)
        .build();
  }

  /**
   * Something to switch on.
   *
   * @param name such as {@code --json}
   * @param description what it switches on
   * @return an option of type boolean, false unless given
   */
  static OptionSpec flag(String name, String description) {
    return OptionSpec.builder(name).type(boolean.class).description(description).build();
  }

  /**
   * Something with a value.
   *
   * @param <T> type of the value
   * @param name such as {@code --mounts}
   * @param label what stands for the value in help, such as {@code N}
   * @param type type of the value
   * @param standard the value if the option is not given, also shown in help
   * @param description what the value decides
   * @return an option of that type
   */
  static <T> OptionSpec value(
      String name, String label, Class<T> type, T standard, String description) {
    return OptionSpec.builder(name)
        .paramLabel(label)
        .type(type)
        .defaultValue(standard.toString())
        .description(description + " (" + standard + " if not given)")
        .build();
  }

  /**
   * A whole number, read as text so that it may be written 1e6.
   *
   * @param name such as {@code --mounts}
   * @param label what stands for the number in help, such as {@code N}
   * @param standard the number if the option is not given
   * @param description what the number decides
   * @return an option of type {@link String}, for {@link WholeNumber}
   */
  static OptionSpec number(String name, String label, long standard, String description) {
    return value(name, label, String.class, String.valueOf(standard), description);
  }

  /**
   * The seed of the random numbers.
   *
   * @return an option for {@link WholeNumber#seed}
   */
  static OptionSpec seed() {
    return number(SEED, "S", 1, "seed of the random numbers");
  }

  /**
   * The number of threads, as many as the machine has processors if not given.
   *
   * @return an option for {@link WholeNumber#threads}
   */
  static OptionSpec threads() {
    return number(
        THREADS,
        "T",
        Runtime.getRuntime().availableProcessors(),
        "threads to work with; the result does not depend on it");
  }

  /**
   * A text that need not be given.
   *
   * @param name such as {@code --date}
   * @param label what stands for the text in help, such as {@code FILE}
   * @param description what the text decides
   * @return an option of type {@link String}
   */
  static OptionSpec text(String name, String label, String description) {
    return OptionSpec.builder(name)
        .paramLabel(label)
        .type(String.class)
        .description(description)
        .build();
  }

  /**
   * A text that may be given several times.
   *
   * @param name such as {@code --target}
   * @param label what stands for one text in help, such as {@code PROBE=VALUE}
   * @param description what the texts decide
   * @return an option of type {@link List} of {@link String}
   */
  static OptionSpec several(String name, String label, String description) {
    return OptionSpec.builder(name)
        .paramLabel(label)
        .arity("1")
        .type(List.class)
        .auxiliaryTypes(String.class)
        .description(description)
        .build();
  }

  /**
   * A switch that shows where a fault of the program came from.
   *
   * @return the option {@code --trace}, which every command takes
   */
  static OptionSpec trace() {
    return flag(TRACE, "show where a fault of the program itself came from, for a report of it");
  }

  /**
   * A switch that prints help and does nothing else.
   *
   * @return the option {@code --help}
   */
  static OptionSpec help() {
    return OptionSpec.builder("-h", "--help")
        .type(boolean.class)
        .usageHelp(true)
        .description("Show this help.")
        .build();
  }
}
