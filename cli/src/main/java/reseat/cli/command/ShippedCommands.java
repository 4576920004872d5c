package reseat.cli.command;

import java.util.List;

/**
 * The commands of the program. A new command is one name and one case of a {@code switch} here; not
 * a map of constructors, since the first lambda of a run costs milliseconds.
 */
final class ShippedCommands implements CommandTable {

  private static final List<String> NAMES =
      List.of(
          "starter",
          "check",
          "remount",
          "interchange",
          "sweep",
          "size",
          "report",
          "shopsheet",
          "mount",
          "readings",
          "materials",
          "verify");

  @Override
  public List<String> names() {
    return NAMES;
  }

  @Override
  public String named(String word) {
    return word.equals("ball-mount") ? "mount" : word;
  }

  @Override
  public Subcommand command(String name) {
    return switch (name) {
      case "starter" -> new StarterCommand();
      case "check" -> new CheckCommand();
      case "remount" -> new RemountCommand(Terminal.showsErrors());
      case "interchange" -> new InterchangeCommand(Terminal.showsErrors());
      case "sweep" -> new SweepCommand(Terminal.showsErrors());
      case "readings" -> new ReadingsCommand();
      case "materials" -> new MaterialsCommand();
      case "mount" -> new BallMountCommand();
      case "size" -> new SizeCommand(Terminal.showsErrors());
      case "report" -> new ReportCommand();
      case "shopsheet" -> new ShopsheetCommand();
      case "verify" -> new VerifyCommand();
      default -> throw new IllegalArgumentException("no command is named " + name);
    };
  }
}
