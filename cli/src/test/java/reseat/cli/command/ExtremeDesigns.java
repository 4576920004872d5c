package reseat.cli.command;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Designs at the edge of what mechanics can answer, made from the examples by altering keys. */
final class ExtremeDesigns {

  /** A design file that asks for the impossible or nearly so. */
  record Extreme(String name, String example, String text) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static final String POST = "tool-post.toml";
  private static final String PALLET = "pallet.toml";
  private static final String CONE = "cone-vee-flat.toml";
  private static final String SENSOR = "sensor-mount.toml";

  private final List<Extreme> all = new ArrayList<>();

  private ExtremeDesigns() {}

  /** Every one of them. */
  static List<Extreme> all() throws IOException {
    ExtremeDesigns designs = new ExtremeDesigns();
    designs.layouts();
    designs.contacts();
    designs.forces();
    designs.frictions();
    designs.places();
    designs.spreads();
    return List.copyOf(designs.all);
  }

  private void layouts() throws IOException {
    add("three parallel vees", POST, "kind = \"vee\" ", "axis = \"0 deg\"\nkind = \"vee\" ");
    add("vees parallel but for a second of arc", PALLET, axes("0 deg", "1 arcsec", "-1 arcsec"));
    add("vees parallel but for a microradian", PALLET, axes("0 deg", "1 urad", "0 deg"));
    add("vees along the circle, free to turn", PALLET, axes("126.87 deg", "53.13 deg", "0 deg"));
    add("vees a minute short of turning freely", PALLET, axes("126.88 deg", "53.13 deg", "0 deg"));
    for (String flank : new String[] {"0.001 deg", "1 deg", "89 deg", "89.999 deg", "90 deg"}) {
      String both = "flank_angle = \"" + flank + "\"";
      add("flanks at " + flank, POST, first("flank_angle = \"45 deg\"", both));
      add("cone and vee with flanks at " + flank, CONE, cone(both));
    }
    for (String size : new String[] {"0.5 in", "0.51 in", "1 um", "900 m"}) {
      add("a ball circle of " + size, POST, key("circle_diameter", size));
    }
    add(
        "balls in one line",
        PALLET,
        all -> all.replace("\"90 mm\", \"0 mm\"", "\"-60 mm\", \"0 mm\""));
    add(
        "balls nearly in one line",
        PALLET,
        all -> all.replace("\"90 mm\", \"0 mm\"", "\"-59.999 mm\", \"0 mm\""));
    add("two balls in one place", PALLET, all -> all.replace("[\"80 mm\"", "[\"-80 mm\""));
    add(
        "pins so far apart that the ball nearly falls through",
        PALLET,
        key("spacing", "29.9999 mm"));
    add("pins that touch each other", PALLET, key("spacing", "10 mm"));
  }

  private void contacts() throws IOException {
    for (String radius :
        new String[] {"0.2501 in", "0.250001 in", "0.25000001 in", "0.25 in", "9 m"}) {
      add("hollow flanks of radius " + radius, POST, gothic(radius));
    }
    add("one ball far smaller", PALLET, first("diameter = \"20 mm\"", "diameter = \"0.2 mm\""));
    add("one ball far larger", PALLET, first("diameter = \"20 mm\"", "diameter = \"200 mm\""));
    add("pins of a hair", PALLET, key("pin_diameter", "0.01 mm"));
    add(
        "balls of a micrometre",
        SENSOR,
        all -> all.replace("diameter = \"6 mm\"", "diameter = \"1 um\""));
    add(
        "balls of a metre",
        SENSOR,
        all -> all.replace("diameter = \"6 mm\"", "diameter = \"1 m\""));
    for (String modulus : new String[] {"1 kPa", "1 MPa", "10000 GPa"}) {
      for (String ratio : new String[] {"0.499", "0"}) {
        add("seats of modulus " + modulus + ", ratio " + ratio, POST, softSeats(modulus, ratio));
      }
    }
    add("a seat that yields at once", POST, softSeats("200 GPa", "0.3", "1 Pa"));
    add("a seat that never yields", POST, softSeats("200 GPa", "0.3", "1e5 GPa"));
    add("a stud like a needle", POST, key("neck_diameter", "0.01 mm"));
    add("a stud of ten metres", POST, key("stick_out", "10 m"));
    add("a stud that hardly sticks out", POST, key("stick_out", "1 um"));
    add("a bond as thick as an atom", POST, key("gap", "0.1 nm"));
    add("mountings as soft as a feather", CONE, mounting("1e-6 N/mm"));
    add("mountings as hard as nothing is", CONE, mounting("1e9 N/um"));
  }

  private void forces() throws IOException {
    for (String force : new String[] {"0 N", "1e-12 N", "1 mN", "1e6 N", "1e12 N"}) {
      add("a preload of " + force, POST, noDevice(key("force", force)));
      add("preloads of " + force, PALLET, all -> all.replace("\"400 N\"", "\"" + force + "\""));
    }
    add("a preload that pushes out", POST, key("direction", "+z"));
    add("a preload along the coupling plane", POST, key("direction", "+x"));
    add("a preload beside the balls", CONE, first("[\"4 mm\", \"0 mm\"", "[\"40 mm\", \"0 mm\""));
    add("a preload through one ball", CONE, first("[\"4 mm\", \"0 mm\"", "[\"35 mm\", \"0 mm\""));
    add("a preload a kilometre away", CONE, first("[\"4 mm\", \"0 mm\"", "[\"999 m\", \"0 mm\""));
    add("no mass", PALLET, key("mass", "0 kg"));
    add("a mass of a hair", PALLET, key("mass", "1e-9 g"));
    add("a mass of a ship", PALLET, key("mass", "1e8 kg"));
    add("no radius of gyration", PALLET, all -> all.replaceAll("radii_of_gyration.*", ""));
    add(
        "radii of gyration of an atom",
        PALLET,
        all ->
            all.replaceAll(
                "radii_of_gyration.*", "radii_of_gyration = [\"0.1 nm\", \"0.1 nm\", \"0.1 nm\"]"));
    add(
        "neither preload nor mass",
        PALLET,
        all -> all.replace("12 kg", "0 kg").replace("400 N", "0 N"));
    add(
        "no load at all",
        CONE,
        all -> all.replace("-2 N", "0 N").replace("1 N\"", "0 N\"").replace("3 N", "0 N"));
    add("loads of a breath", CONE, all -> all.replace("-2 N", "1e-15 N").replace("1 N\"", "0 N\""));
    add("loads of a press", CONE, all -> all.replace("-2 N", "-1e9 N"));
    add(
        "a load that is a pure couple",
        CONE,
        all ->
            all.replace(
                "force = { front = \"-2 N\", side = \"1 N\" }",
                "moment = [\"0 N·m\", \"0 N·m\", \"1 N·m\"]"));
    add("gravity across", POST, key("gravity", "+y"));
  }

  private void frictions() throws IOException {
    for (String mu : new String[] {"0", "1e-9", "0.3", "0.31", "0.4", "1", "10", "1e6"}) {
      add("friction " + mu, POST, friction(mu));
      add("friction " + mu + " of a cone", CONE, friction(mu));
    }
    add(
        "friction from none to full",
        PALLET,
        all -> all.replace("surface = \"oiled\"", "low = 0\nnominal = 0.1\nhigh = 1"));
  }

  private void places() throws IOException {
    add(
        "the tool point in a ball",
        POST,
        key(
            "at = [\"47.0 mm\", \"0 mm\", \"15.2 mm\"]",
            "",
            "[\"34.925 mm\", \"0 mm\", \"0 mm\"]"));
    add(
        "the tool point in a contact",
        PALLET,
        key("at = [\"70 mm\", \"50 mm\", \"60 mm\"]", "", "[\"0 mm\", \"90 mm\", \"-10 mm\"]"));
    add(
        "the tool point in the middle",
        POST,
        key("at = [\"47.0 mm\", \"0 mm\", \"15.2 mm\"]", "", "[\"0 mm\", \"0 mm\", \"0 mm\"]"));
    add(
        "the tool point a kilometre away",
        POST,
        key("at = [\"47.0 mm\", \"0 mm\", \"15.2 mm\"]", "", "[\"999 m\", \"0 mm\", \"0 mm\"]"));
    add(
        "the mass a kilometre away",
        CONE,
        key(
            "centre_of_mass = [\"0 mm\", \"0 mm\", \"30 mm\"]",
            "",
            "[\"0 mm\", \"0 mm\", \"999 m\"]"));
  }

  private void spreads() throws IOException {
    UnaryOperator<String> still =
        all ->
            all.replaceAll("scatter = \"[^\"]*\"", "scatter = \"0 %\"")
                .replaceAll("friction_scatter.*", "friction_scatter = \"0 %\"")
                .replaceAll("temperature_scatter.*", "temperature_scatter = \"0 K\"")
                .replaceAll("film_scatter.*", "film_scatter = \"0 nm\"")
                .replaceAll("line_wander.*", "");
    add("nothing scatters", CONE, still);
    add(
        "nothing scatters and friction is none",
        CONE,
        all -> friction("0").apply(still.apply(all)));
    add("friction that scatters by nearly all of itself", CONE, key("friction_scatter", "99.9 %"));
    add("a preload that scatters by nearly all of itself", CONE, key("scatter", "99.9 %"));
    add("a preload that scatters tenfold", CONE, key("scatter", "1000 %"));
    add("a line of pull that wanders a metre", CONE, key("line_wander", "1 m"));
    add("a holder a thousand kelvin warmer", CONE, key("temperature_scatter", "1000 K"));
    add("dirt of a millimetre", CONE, key("film_scatter", "1 mm"));
    add("targets of nothing", CONE, all -> all.replace("1 um\"", "1e-15 m\""));
    add(
        "tolerances of nothing",
        CONE,
        all ->
            all.replaceAll("= \"15 um\"", "= \"0 um\"")
                .replace("= \"5 um\"", "= \"0 um\"")
                .replace("= \"2 um\"", "= \"0 um\"")
                .replace("= \"6 arcmin\"", "= \"0 arcmin\"")
                .replace("\"20 um\"", "\"0 um\"")
                .replace("ball_grade = \"G10\"", ""));
    add("tolerances of two millimetres", CONE, all -> all.replaceAll("= \"15 um\"", "= \"10 mm\""));
    add(
        "tolerances of forty degrees",
        CONE,
        key("flank_angle = \"6 arcmin\"", "flank_angle", "\"40 deg\""));
    add("no seating force", CONE, key("seating_force", "0 N"));
    add("a seating force above the preload", CONE, key("seating_force", "1 kN"));
    add("one step of loading", CONE, first("seating_force =", "ramp_steps = 1\nseating_force ="));
  }

  private static UnaryOperator<String> key(String name, String value) {
    return all -> {
      Matcher m = Pattern.compile("(?m)^(" + name + " = )\"[^\"]*\"").matcher(all);
      return m.find() ? m.replaceAll("$1\"" + Matcher.quoteReplacement(value) + "\"") : all;
    };
  }

  private static UnaryOperator<String> key(String line, String name, String value) {
    String left = line.substring(0, line.indexOf('=') + 2);
    return all -> all.replace(line, (name.isEmpty() ? left : name + " = ") + value);
  }

  private static UnaryOperator<String> first(String what, String by) {
    return all -> all.replaceFirst(Pattern.quote(what), Matcher.quoteReplacement(by));
  }

  private static UnaryOperator<String> axes(String first, String second, String third) {
    return all ->
        all.replace("\"30.96 deg\"", "\"" + first + "\"")
            .replace("\"149.04 deg\"", "\"" + second + "\"")
            .replace("\"-90 deg\"", "\"" + third + "\"");
  }

  private static UnaryOperator<String> gothic(String radius) {
    return all ->
        all.replace("kind = \"vee\" ", "flank_radius = \"" + radius + "\"\nkind = \"gothic\" ");
  }

  private static UnaryOperator<String> cone(String flank) {
    return all ->
        first("flank_angle = \"45 deg\"", flank)
            .apply(all.replace("cone_angle = \"90 deg\"", flank));
  }

  private static UnaryOperator<String> softSeats(String modulus, String ratio) {
    return softSeats(modulus, ratio, "10 MPa");
  }

  private static UnaryOperator<String> softSeats(String modulus, String ratio, String yield) {
    return all ->
        all.replace("material = \"A2\"", "material = \"odd stuff\"")
            + "\n[[material]]\nname = \"odd stuff\"\nyoungs_modulus = \""
            + modulus
            + "\"\npoisson_ratio = "
            + ratio
            + "\nyield_strength = \""
            + yield
            + "\"\n";
  }

  private static UnaryOperator<String> mounting(String stiffness) {
    return all ->
        all.replace(
            "[layout.cone]",
            "[layout.mounting]\naxial_stiffness = \""
                + stiffness
                + "\"\nlateral_stiffness = \""
                + stiffness
                + "\"\n\n[layout.cone]");
  }

  private static UnaryOperator<String> friction(String mu) {
    return all -> all.replace("surface = \"oiled\"", "nominal = " + mu);
  }

  /** Without the table of the device, which knows what force it can give. */
  private static UnaryOperator<String> noDevice(UnaryOperator<String> then) {
    return all ->
        then.apply(
            all.replaceAll("(?s)\\[preload\\.device\\].*?(?=\n\\[holder\\])", "")
                .replace("force = {", "force={"));
  }

  private void add(String name, String example, String old, String by) throws IOException {
    add(name, example, all -> all.replace(old, by));
  }

  private void add(String name, String example, UnaryOperator<String> change) throws IOException {
    String text = Files.readString(SpoiledRun.EXAMPLES.resolve(example));
    String changed = change.apply(text);
    if (changed.equals(text)) {
      throw new IllegalStateException("changes nothing: " + name);
    }
    all.add(new Extreme(name, example, changed));
  }
}
