package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

class DispatchTest {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void aFileAloneAndTheSameWithAnOptionReachTheSameCommand() {
    assertThat(run("weigh", "post.toml")).isEqualTo(ExitCode.HOLDS);
    assertThat(run("weigh", "post.toml", "--json")).isEqualTo(ExitCode.HOLDS);
    assertThat(out).hasToString("weighed post.toml\nweighed post.toml as json\n");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void aMisspeltCommandIsAnsweredWithTheNearestOne() {
    assertThat(run("wiegh", "post.toml")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("reseat: no command 'wiegh'; did you mean weigh?");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void aMisspeltOptionIsAnsweredWithTheNearestOne() {
    assertThat(run("weigh", "post.toml", "--jsno")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString())
        .contains("reseat weigh: no option '--jsno'; did you mean --json?")
        .contains("'reseat weigh --help'");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void anOptionIsNotTakenForAFile() {
    assertThat(run("weigh", "--jsno")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("'--jsno'");
  }

  @Test
  void aMissingFileNameIsAskedFor() {
    assertThat(run("weigh")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("FILE");
  }

  @Test
  void aValueThatIsNoNumberIsQuoted() {
    assertThat(run("weigh", "post.toml", "--times", "many")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("--times").contains("'many'");
  }

  @Test
  void aValueThatACommandRefusesIsBadUsage() {
    assertThat(run("weigh", "post.toml", "--times", "0")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("reseat weigh: --times is 0; at least 1 is needed");
  }

  @Test
  void aWordTooManyIsQuoted() {
    assertThat(run("weigh", "post.toml", "other.toml")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("one word too many: 'other.toml'");
  }

  @Test
  void noCommandAtAllIsBadUsage() {
    assertThat(run()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err.toString()).contains("reseat: name a command").contains("reseat --help");
  }

  @ParameterizedTest
  @ValueSource(strings = {"missing.toml", "broken.toml"})
  void aFaultIsOneLineWithAndWithoutOptions(String file) {
    int plain = run("weigh", file);
    String plainLine = err.toString();
    err.getBuffer().setLength(0);
    assertThat(run("weigh", "--json", file)).isEqualTo(plain);
    assertThat(err).hasToString(plainLine);
    assertThat(plainLine.lines()).hasSize(1);
  }

  @Test
  void aFileThatIsNotThereIsTheUsersToCorrect() {
    assertThat(run("weigh", "missing.toml")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).hasToString("reseat weigh: missing.toml: no such file or folder\n");
  }

  @Test
  void anUnforeseenExceptionIsOwnedUpTo() {
    assertThat(run("weigh", "broken.toml")).isEqualTo(ExitCode.OUR_FAULT);
    assertThat(err.toString())
        .contains("fault of the program")
        .contains("the scale broke")
        .contains("DispatchTest.java:")
        .doesNotContain("\tat ");
  }

  @Test
  void aTraceShowsTheWayToAFaultAndItsCause() {
    assertThat(run("weigh", "broken.toml")).isEqualTo(ExitCode.OUR_FAULT);
    String plain = err.toString();
    err.getBuffer().setLength(0);
    assertThat(run("weigh", "broken.toml", "--trace")).isEqualTo(ExitCode.OUR_FAULT);
    assertThat(err.toString())
        .startsWith(plain)
        .contains("java.lang.IllegalStateException: the scale\nbroke")
        .contains("\tat reseat.cli.command.DispatchTest")
        .contains("Caused by: java.lang.ArithmeticException: by its own weight");
    assertThat(out.toString()).isEmpty();
    // what is no fault of the program has no trace
    err.getBuffer().setLength(0);
    assertThat(run("weigh", "missing.toml", "--trace")).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(err).hasToString("reseat weigh: missing.toml: no such file or folder\n");
  }

  @Test
  void everyShippedCommandTakesTheOptionTrace() {
    CommandTable shipped = new ShippedCommands();
    for (String name : shipped.names()) {
      assertThat(ReseatCommand.describe(name, shipped.command(name)).findOption(Options.TRACE))
          .as(name)
          .isNotNull();
    }
  }

  @Test
  void aBallMountIsLookedAtByEitherName() {
    StringWriter full = new StringWriter();
    StringWriter brief = new StringWriter();
    for (String[] words : new String[][] {{"ball-mount", "--help"}, {"help", "ball-mount"}}) {
      full.getBuffer().setLength(0);
      assertThat(new Dispatch().run(words, new PrintWriter(full, true), new PrintWriter(err)))
          .isEqualTo(ExitCode.HOLDS);
      assertThat(full.toString()).contains("Usage: reseat mount");
    }
    new Dispatch()
        .run(new String[] {"mount", "--help"}, new PrintWriter(brief, true), new PrintWriter(err));
    assertThat(full).hasToString(brief.toString());
  }

  @Test
  void helpNamesEveryCommandAndExitCode() {
    assertThat(run("--help")).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString()).contains("weigh").contains("Exit codes").contains("70");
  }

  @Test
  void helpForACommandIsTheSameBothWays() {
    assertThat(run("weigh", "--help")).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString()).contains("Usage: reseat weigh").contains("--json");
    String direct = out.toString();
    out.getBuffer().setLength(0);
    assertThat(run("help", "weigh")).isEqualTo(ExitCode.HOLDS);
    assertThat(out).hasToString(direct);
  }

  @Test
  void theVersionComesFromTheBuild() {
    assertThat(run("--version")).isEqualTo(ExitCode.HOLDS);
    assertThat(out.toString()).matches("reseat \\d+\\.\\d+\\.\\d+\\R");
  }

  private int run(String... args) {
    return new Dispatch(new OneCommand())
        .run(args, new PrintWriter(out, true), new PrintWriter(err, true));
  }

  private static final class OneCommand implements CommandTable {
    @Override
    public List<String> names() {
      return List.of("weigh");
    }

    @Override
    public Subcommand command(String name) {
      return new Weigh();
    }
  }

  private static final class Weigh implements FileCommand {
    @Override
    public void describe(CommandSpec spec) {
      spec.usageMessage().description("Weighs a design.");
      spec.addPositional(Options.file("the design"))
          .addOption(Options.flag("--json", "Print for machines."))
          .addOption(Options.value("--times", "N", Integer.class, 1, "How often to weigh."));
    }

    @Override
    public int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException {
      int times = given.matchedOptionValue("--times", 1);
      if (times < 1) {
        throw new ParameterException(
            given.commandSpec().commandLine(), "--times is " + times + "; at least 1 is needed");
      }
      Path file = given.matchedPositionalValue(0, null);
      for (int i = 1; i < times; i++) {
        weigh(file, given.hasMatchedOption("--json"), out);
      }
      return weigh(file, given.hasMatchedOption("--json"), out);
    }

    @Override
    public int run(Path file, PrintWriter out, PrintWriter err) throws IOException {
      return weigh(file, false, out);
    }

    private static int weigh(Path file, boolean json, PrintWriter out) throws IOException {
      if (file.startsWith("missing.toml")) {
        throw new NoSuchFileException(file.toString());
      }
      if (file.startsWith("broken.toml")) {
        throw new IllegalStateException(
            "the scale\nbroke", new ArithmeticException("by its own weight"));
      }
      out.println("weighed " + file + (json ? " as json" : ""));
      return ExitCode.HOLDS;
    }
  }
}
