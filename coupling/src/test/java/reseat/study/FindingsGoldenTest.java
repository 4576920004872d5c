package reseat.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import reseat.check.Argument;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.Statement;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;

/**
 * Holds where they are what a check finds in the starters and in designs spoiled in one place each:
 * a change here is a change in what users see, and wants a line in the change log. Recorded from
 * this program, no outside value; written anew with {@code -Dfindings.write=true}.
 */
class FindingsGoldenTest {

  private static final String FILE = "findings.txt";

  private static Map<String, String> designs() {
    Map<String, String> designs = new LinkedHashMap<>();
    for (Starter s : List.of(Starter.PALLET, Starter.SENSOR_MOUNT, Starter.CONE_VEE_FLAT)) {
      designs.put(s.word(), s.text());
    }
    Starter post = Starter.TOOL_POST;
    designs.put("post", post.text());
    designs.put(
        "post with an edge forward",
        with(post, "first_ball_at = \"0 deg\"", "first_ball_at = \"180 deg\""));
    String bare = without(post, "[preload.device]", "[holder]");
    designs.put("post hardly pulled", with(bare, "force = \"600 N\"", "force = \"40 N\""));
    designs.put("post pulled hard", with(bare, "force = \"600 N\"", "force = \"9000 N\""));
    designs.put(
        "post pulled beside its triangle",
        with(
            bare,
            "direction = \"-z\"\nat = [\"0 mm\", \"0 mm\", \"0 mm\"]",
            "direction = \"-z\"\nat = [\"24 mm\", \"0 mm\", \"0 mm\"]"));
    designs.put(
        "post with steep flanks",
        with(post, "flank_angle = \"45 deg\"", "flank_angle = \"72 deg\""));
    designs.put(
        "post with narrow grooves",
        with(post, "mouth_width = \"0.413 in\"", "mouth_width = \"0.356 in\""));
    designs.put(
        "post with short grooves", with(post, "length = \"0.75 in\"", "length = \"0.3 mm\""));
    designs.put(
        "post cut too shallow", with(post, "root_width = \"0.06 in\"", "root_width = \"0.24 in\""));
    designs.put(
        "post with a thin case",
        with(post, "root_width = \"0.06 in\"", "root_width = \"0.06 in\"\ncase_depth = \"40 um\""));
    designs.put("post of soft grooves", with(post, "material = \"A2\"", "material = \"6061-T6\""));
    designs.put(
        "post on weak studs",
        with(post, "neck_diameter = \"0.312 in\"", "neck_diameter = \"2.5 mm\""));
    designs.put(
        "post that wanders", with(post, "line_wander = \"0.3 mm\"", "line_wander = \"18 mm\""));
    designs.put("post that scatters", with(post, "scatter = \"2 %\"", "scatter = \"40 %\""));
    Starter pallet = Starter.PALLET;
    designs.put("pallet on turned pins", with(pallet, "axis = \"30.96 deg\"", "axis = \"75 deg\""));
    designs.put("pallet on short pins", with(pallet, "length = \"32 mm\"", "length = \"0.2 mm\""));
    designs.put(
        "pallet near its floor",
        with(pallet, "floor_depth = \"5 mm\"", "floor_depth = \"-0.5 mm\""));
    designs.put(
        "stand on a ball too large",
        with(Starter.CONE_VEE_FLAT, "mouth_diameter = \"7 mm\"", "mouth_diameter = \"5.7 mm\""));
    designs.put(
        "bracket pushed off", with(Starter.SENSOR_MOUNT, "force = \"28 N\"", "force = \"1 N\""));
    designs.putAll(more(bare));
    return designs;
  }

  private static Map<String, String> more(String bare) {
    Map<String, String> designs = new LinkedHashMap<>();
    Starter post = Starter.TOOL_POST;
    designs.put("post crushed", with(bare, "force = \"600 N\"", "force = \"90000 N\""));
    String hung = with(post, "bottoms_on_metal = true", "bottoms_on_metal = false");
    hung = with(hung, "hottest = \"30 °C\"", "hottest = \"50 °C\"");
    designs.put("post hung on thick adhesive", with(hung, "gap = \"0.08 mm\"", "gap = \"0.3 mm\""));
    designs.put("post on starved adhesive", with(post, "gap = \"0.08 mm\"", "gap = \"5 um\""));
    designs.put(
        "post on studs of unknown strength",
        with(post, "material = \"screw 12.9\"", "material = \"alumina\""));
    designs.put(
        "post with its balls below", with(post, "balls_on = \"holder\"", "balls_on = \"base\""));
    Starter bracket = Starter.SENSOR_MOUNT;
    String stand = with(Starter.CONE_VEE_FLAT, "root_width = \"1 mm\"", "root_width = \"5.4 mm\"");
    designs.put(
        "stand relieved too far", with(stand, "root_depth = \"0.5 mm\"", "root_depth = \"3 mm\""));
    designs.put(
        "bracket whose last seat is a cone",
        with(
            bracket,
            "kind = \"flat\"\npad_diameter = \"8 mm\"",
            "kind = \"cone\"\ncone_angle = \"90 deg\"\nmouth_diameter = \"5.5 mm\""));
    designs.put(
        "post in gothic grooves",
        with(
                post,
                "flank_angle = \"45 deg\"",
                "flank_angle = \"45 deg\"\nflank_radius = \"6.38 mm\"")
            .replace("kind = \"vee\"", "kind = \"gothic\""));
    return designs;
  }

  private static String with(Starter starter, String old, String other) {
    return with(starter.text(), old, other);
  }

  private static String with(String text, String old, String other) {
    assertThat(text).contains(old);
    return text.replace(old, other);
  }

  private static String without(Starter starter, String from, String to) {
    String text = starter.text();
    return text.substring(0, text.indexOf(from)) + text.substring(text.indexOf(to));
  }

  private static String told(Finding f) {
    return String.format(
        Locale.ROOT,
        "%s | %s | %s %s | %.5g %s %.5g %s | %s%n    %s%n    %s%n",
        f.judged(),
        f.check().words(),
        f.subject().kind(),
        f.subject().name(),
        f.value(),
        f.sense(),
        f.limit(),
        f.measure(),
        f.basis(),
        told(f.said()),
        told(f.advice()));
  }

  private static String told(Statement s) {
    StringBuilder told = new StringBuilder(s.key().name());
    for (Argument a : s.arguments()) {
      told.append(told.indexOf("(") < 0 ? "(" : "; ").append(told(a));
    }
    return told.append(s.arguments().isEmpty() ? "" : ")").toString();
  }

  private static String told(Argument a) {
    if (a instanceof Argument.Amount amount) {
      return String.format(Locale.ROOT, "%.4g %s", amount.si(), amount.measure());
    }
    if (a instanceof Argument.Name name) {
      return name.text();
    }
    if (a instanceof Argument.Term term) {
      return term.value().name();
    }
    return told(((Argument.Inner) a).statement());
  }

  @Test
  void whatACheckSaysOfGoodAndSpoiledDesigns() throws IOException {
    StringBuilder all = new StringBuilder();
    for (Map.Entry<String, String> d : designs().entrySet()) {
      all.append("== ").append(d.getKey()).append('\n');
      DesignFile file = DesignFile.read(d.getValue());
      if (file.design().isEmpty()) {
        file.problems().forEach(p -> all.append(p.oneLine("design.toml")).append('\n'));
        continue;
      }
      for (Finding f : CheckStudy.run(file.design().get()).findings()) {
        // what is well is told in full of one design only
        if (f.judged() != Judged.HOLDS || d.getKey().equals("post")) {
          all.append(told(f).replace("\r\n", "\n"));
        }
      }
    }
    if (Boolean.getBoolean("findings.write")) {
      Files.writeString(Path.of("src/test/resources/reseat/study", FILE), all);
    }
    try (InputStream in = FindingsGoldenTest.class.getResourceAsStream(FILE)) {
      assertThat(all.toString().lines())
          .as("what a check says; if the change is meant, run this test with -Dfindings.write=true")
          .containsExactlyElementsOf(
              new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList());
    }
  }
}
