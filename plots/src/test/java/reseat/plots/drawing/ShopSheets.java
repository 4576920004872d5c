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
    all.put("six-unlike", sixUnlike());
    String post = Starter.TOOL_POST.text();
    all.put("many-springs", read(post.replace("[holder]", springs(14) + "[holder]")));
    all.put(
        "long-names",
        read(
            post.replace("\"front\"", "\"the ball that stands nearest to the tool of all three\"")
                .replace(
                    "\"left\"",
                    "\"W\u00e4rmeausdehnungsausgleichsst\u00fctzpunktlinksau\u00dfen\"")));
    all.put("large", read(post.replace("\"2.750 in\"", "\"900 mm\"")));
    all.put(
        "small",
        read(
            post.replace("\"2.750 in\"", "\"9 mm\"")
                .replace("diameter = \"1/2 in\"", "diameter = \"1.5 mm\"")
                .replace("\"0.413 in\"", "\"1.3 mm\"")
                .replace("\"0.75 in\"", "\"2 mm\"")
                .replace("\"0.06 in\"", "\"0.2 mm\"")
                .replaceAll("(?s)\\[layout.mounting.stud\\].*?(?=\\[layout.groove\\])", "")));
    all.put(
        "leaning-seats",
        read(
            Starter.SENSOR_MOUNT
                .text()
                .replace("kind = \"vee\"", "kind = \"vee\"\nopens = [0, 0.5, 1]")));
    return all;
  }

  private static CouplingDesign read(String text) {
    DesignFile file = DesignFile.read(text);
    return file.design()
        .orElseThrow(() -> new IllegalArgumentException(file.problems().toString()));
  }

  private static String springs(int count) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < count; i++) {
      text.append("[[preload]]\nname = \"spring ").append(i);
      text.append("\"\nforce = \"10 N\"\nscatter = \"2 %\"\ndirection = \"-z\"\nat = [\"");
      text.append(2 * i - 14).append(" mm\", \"").append(i % 3).append(" mm\", \"0 mm\"]\n\n");
    }
    return text.toString();
  }

  /** Six flats of six sizes, two on each of three sides. */
  private static CouplingDesign sixUnlike() {
    StringBuilder text = new StringBuilder();
    String post = Starter.SENSOR_MOUNT.text();
    text.append(post, 0, post.indexOf("[[support]]"));
    for (int i = 0; i < 6; i++) {
      double a = Math.toRadians(60 * i);
      int opens = i % 3;
      text.append("[[support]]\nname = \"flat ").append(i + 1).append("\"\nat = [\"");
      text.append(Math.round(40 * Math.cos(a))).append(" mm\", \"");
      text.append(Math.round(40 * Math.sin(a))).append(" mm\", \"0 mm\"]\n");
      text.append("ball = { diameter = \"6 mm\", material = \"440C\" }\n");
      text.append("[support.seat]\nkind = \"flat\"\nmaterial = \"440C\"\npad_diameter = \"");
      text.append(7 + i).append(" mm\"\nopens = [").append(opens == 1 ? 1 : 0).append(", ");
      text.append(opens == 2 ? 1 : 0).append(", ").append(opens == 0 ? 1 : 0.5).append("]\n");
    }
    text.append(post.substring(post.indexOf("[[preload]]")));
    return read(text.toString().replaceAll("(?s)flank_angle = \"5 arcmin\"", ""));
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
