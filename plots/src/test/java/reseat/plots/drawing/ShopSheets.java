package reseat.plots.drawing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.plots.ExampleDesigns;

/** Shop drawings of the starter files and of odd designs; the main method puts them into files. */
final class ShopSheets {

  static final List<String> STAMP =
      List.of(
          "Design file example.toml, saved 2026-01-31 (UTC), digest 0123456789abcdef (SHA-256,"
              + " first 16 digits).",
          "Made by reseat 0.1.0.");

  private ShopSheets() {}

  static CouplingDesign starter(Starter kind) {
    return DesignFile.read(kind.text()).design().orElseThrow();
  }

  /** Designs by name: every starter, and couplings that no starter has. */
  static Map<String, CouplingDesign> designs() {
    Map<String, CouplingDesign> all = new LinkedHashMap<>();
    all.put("tool-post", starter(Starter.TOOL_POST));
    all.put("pallet", starter(Starter.PALLET));
    all.put("sensor-mount", starter(Starter.SENSOR_MOUNT));
    all.put("edge-forward", ExampleDesigns.toolPost(60));
    all.put("gothic", ExampleDesigns.gothicPost());
    String turned =
        Starter.TOOL_POST
            .text()
            .replace("balls_on = \"holder\"", "balls_on = \"base\"")
            .replace("first_ball_at = \"0 deg\"", "first_ball_at = \"17 deg\"");
    all.put("balls-on-base", DesignFile.read(turned).design().orElseThrow());
    return all;
  }

  static ShopSheet sheet(CouplingDesign design, Half half, boolean inchFirst) {
    return ShopSheet.of(design, half, STAMP, inchFirst);
  }

  /** Writes every sheet as SVG, PNG and DXF into a directory. */
  public static void main(String[] args) throws IOException {
    Path dir = Files.createDirectories(Path.of(args[0]));
    for (Map.Entry<String, CouplingDesign> e : designs().entrySet()) {
      for (Half half : Half.values()) {
        for (boolean inch : new boolean[] {false, true}) {
          ShopSheet s = sheet(e.getValue(), half, inch);
          String name = e.getKey() + "-" + half + (inch ? "-inch" : "-mm");
          Files.write(dir.resolve(name + ".svg"), s.svg());
          Files.write(dir.resolve(name + ".png"), s.png(1.5));
          Files.write(dir.resolve(name + ".dxf"), s.dxf());
        }
      }
    }
  }
}
