package reseat.cli.command;

import java.io.PrintWriter;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;
import reseat.material.FrictionCatalog;
import reseat.material.Material;
import reseat.material.MaterialCatalog;
import reseat.report.catalog.MaterialsText;
import reseat.units.NearestWord;

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
            .description("one material; all of them if not given")
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
      err.println(
          "reseat materials: no material '"
              + name
              + "'"
              + NearestWord.to(name, catalog.names())
                  .map(n -> "; did you mean " + n + "?")
                  .orElse(""));
      err.println("'reseat materials' lists all of them.");
      return ExitCode.BAD_INPUT;
    }
    MaterialsText.one(found.get(), out);
    return ExitCode.HOLDS;
  }
}
