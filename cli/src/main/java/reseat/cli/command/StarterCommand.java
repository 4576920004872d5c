package reseat.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;
import reseat.designfile.Starter;
import reseat.units.NearestWord;

/** Writes a commented design file to begin from. */
final class StarterCommand implements Subcommand {

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description("Writes a commented design file to edit. Kinds: " + kinds("; ") + ".");
    spec.addPositional(
        PositionalParamSpec.builder()
            .index("0")
            .paramLabel("KIND")
            .required(true)
            .type(String.class)
            .description("what to begin from: " + String.join(", ", Starter.words()))
            .build());
    spec.addPositional(
        PositionalParamSpec.builder()
            .index("1")
            .paramLabel("FILE")
            .arity("0..1")
            .type(Path.class)
            .description("where to write it; to the screen if not given")
            .build());
    spec.addOption(Options.flag("--force", "replace a file that exists already"));
  }

  private static String kinds(String between) {
    return Arrays.stream(Starter.values())
        .map(s -> s.word() + " (" + s.description() + ")")
        .collect(Collectors.joining(between));
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) throws IOException {
    String word = given.matchedPositionalValue(0, "");
    var starter = Starter.named(word);
    if (starter.isEmpty()) {
      err.println(
          "reseat starter: no kind '"
              + word
              + "'"
              + NearestWord.to(word, Starter.words())
                  .map(n -> "; did you mean " + n + "?")
                  .orElse(""));
      err.println("Kinds: " + kinds("; "));
      return ExitCode.BAD_INPUT;
    }
    Path file = given.matchedPositionalValue(1, null);
    String text = starter.get().text();
    if (file == null) {
      out.print(text);
      return ExitCode.HOLDS;
    }
    AtomicFile.write(
        file, text.getBytes(StandardCharsets.UTF_8), given.hasMatchedOption("--force"));
    out.println("wrote " + file + "; next: reseat " + starter.get().command() + " " + file);
    return ExitCode.HOLDS;
  }
}
