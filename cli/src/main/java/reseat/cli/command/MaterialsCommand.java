package reseat.cli.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;
import reseat.material.FrictionCatalog;
import reseat.material.Material;
import reseat.material.MaterialCatalog;
import reseat.report.catalog.MaterialsText;

/** Prints the catalog of materials and friction with its sources. */
final class MaterialsCommand implements Subcommand {

  @Override
  public void describe(CommandSpec spec) {
    spec.usageMessage()
        .description(
            "Lists the materials, or tells one with the source of every value and whether that"
                + " source was read.");
    spec.addPositional(
        PositionalParamSpec.builder()
            .index("0")
            .paramLabel("NAME")
            .arity("0..1")
            .type(String.class)
            .description("one material, or what a shop calls it; all of them if not given")
            .build());
  }

  @Override
  public int run(ParseResult given, PrintWriter out, PrintWriter err) {
    MaterialCatalog catalog = MaterialCatalog.standard();
    String name = given.matchedPositionalValue(0, "");
    if (name.isEmpty()) {
      MaterialsText.list(catalog, FrictionCatalog.standard(), out);
      return ExitCode.HOLDS;
    }
    Optional<Material> found = catalog.find(name);
    if (found.isEmpty()) {
      return choices(catalog, name, out, err);
    }
    MaterialsText.one(found.get(), out);
    return ExitCode.HOLDS;
  }

  /** What a shop word stands for, to choose from; a slip of the pen is refused. */
  private static int choices(
      MaterialCatalog catalog, String name, PrintWriter out, PrintWriter err) {
    List<String> meant = catalog.meant(name);
    if (meant.size() > 1) {
      out.println("'" + name + "' may be any of these; write the one that you have:");
      for (String one : meant) {
        MaterialsText.line(catalog.find(one).orElseThrow(), out);
      }
      return ExitCode.HOLDS;
    }
    err.println(
        "reseat materials: no material '"
            + name
            + "'"
            + (meant.isEmpty() ? "" : "; did you mean " + meant.get(0) + "?"));
    err.println("'reseat materials' lists all of them.");
    return ExitCode.BAD_INPUT;
  }
}
