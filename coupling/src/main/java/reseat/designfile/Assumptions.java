package reseat.designfile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import reseat.design.AssumedValue;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.design.Preload;
import reseat.design.RemountConditions;
import reseat.design.Support;
import reseat.design.Targets;
import reseat.material.Material;
import reseat.material.MaterialProperty;
import reseat.numerics.Distribution;
import reseat.toml.TomlValue;
import reseat.units.PrintedNumber;
import reseat.units.QuantityKind;

/** Lists what a design file leaves to a default on which results rest. */
final class Assumptions {

  private static final String PRACTICE = "common practice, no source";
  private static final String NOT_STATED = "not stated";

  private final TomlValue.Table root;
  private final List<AssumedValue> found = new ArrayList<>();
  private final Set<String> materials = new HashSet<>();

  Assumptions(TomlValue.Table root) {
    this.root = root;
    if (root.entries().get("material") != null) {
      for (int i = 1; stated("material[" + i + "]"); i++) {
        if (find("material[" + i + "].name") instanceof TomlValue.Text name) {
          materials.add(name.text());
        }
      }
    }
  }

  /**
   * Lists the defaults of a coupling.
   *
   * @param d the design
   * @param root the document it was read from
   * @return what was assumed, most telling tables first
   */
  static List<AssumedValue> of(CouplingDesign d, TomlValue.Table root) {
    Assumptions a = new Assumptions(root);
    a.supports(d);
    a.friction(d);
    a.remount(d.remount());
    for (int i = 0; i < d.preloads().size(); i++) {
      a.preload(d.preloads().get(i), "preload[" + (i + 1) + "].");
    }
    a.targets(d.targets());
    a.loads(d);
    return List.copyOf(a.found);
  }

  List<AssumedValue> found() {
    return found;
  }

  private TomlValue find(String path) {
    try {
      return KeyPath.of(path).find(root);
    } catch (IllegalArgumentException e) {
      return null; // a list without that many tables
    }
  }

  boolean stated(String path) {
    return find(path) != null;
  }

  void words(String key, String words, String source) {
    if (!stated(key)) {
      found.add(AssumedValue.of(key, words, source));
    }
  }

  void value(String key, double value, QuantityKind kind, String words, String source) {
    if (!stated(key)) {
      found.add(AssumedValue.of(key, value, kind, words, source));
    }
  }

  private void spread(String key, Distribution spread, QuantityKind kind, String source) {
    String shape = spread.shape().name().toLowerCase(Locale.ROOT);
    value(key, spread.limit(), kind, "to either side, " + shape, source);
  }

  private void supports(CouplingDesign d) {
    boolean layout = stated("layout");
    int differing = layout ? 1 : d.supports().size();
    for (int i = 0; i < differing; i++) {
      Support s = d.supports().get(i);
      String prefix = layout ? "layout." : "support[" + (i + 1) + "].";
      String rigid = "rigid";
      words(prefix + "mounting", rigid, "not described, so the ball is taken to stand rigidly");
      if (stated(prefix + "mounting") && s.mounting().stud().isEmpty()) {
        words(prefix + "mounting.axial_stiffness", rigid, NOT_STATED);
        words(prefix + "mounting.lateral_stiffness", rigid, NOT_STATED);
      }
      material(prefix + "ball.material", s.ballMaterial());
      MountAssumptions.of(s.mounting().stud(), prefix + "mounting.", this);
    }
    for (int i = 0; i < d.supports().size(); i++) {
      for (String seat : layout ? SEATS : EACH) {
        String prefix = layout ? "layout." : "support[" + (i + 1) + "].";
        String key = prefix + seat + ".material";
        Material m = d.supports().get(i).seatMaterial();
        if (find(key) instanceof TomlValue.Text name && m.name().equals(name.text())) {
          material(key, m);
        }
      }
    }
  }

  private static final List<String> SEATS = List.of("groove", "trihedral", "cone", "flat");
  private static final List<String> EACH = List.of("seat");

  /** A material of the catalog, told once. */
  void material(String key, Material m) {
    if (materials.add(m.name())) {
      double modulus = m.elastic().modulus();
      String source = m.value(MaterialProperty.MODULUS).orElseThrow().source();
      String words = "modulus of " + m.name() + ", as its strength from the catalog";
      found.add(AssumedValue.of(key, modulus, QuantityKind.PRESSURE, words, source));
    }
  }

  private void friction(CouplingDesign d) {
    if (stated("friction.nominal")) {
      return;
    }
    String words =
        "from "
            + PrintedNumber.shortest(d.friction().low())
            + " to "
            + PrintedNumber.shortest(d.friction().high())
            + ", "
            + (find("friction.surface") instanceof TomlValue.Text t ? t.text() : "oiled");
    found.add(
        new AssumedValue(
            stated("friction.surface") ? "friction.nominal" : "friction.surface",
            PrintedNumber.shortest(d.friction().nominal()) + ", " + words,
            d.friction().nominal(),
            Optional.empty(),
            d.friction().source()));
  }

  private void remount(RemountConditions r) {
    spread("remount.temperature_scatter", r.temperature(), KELVIN, PRACTICE);
    spread("remount.friction_scatter", r.friction(), QuantityKind.RATIO, PRACTICE);
    spread("remount.film_scatter", r.film(), QuantityKind.LENGTH, PRACTICE);
    value("remount.seating_force", r.seatingForce(), QuantityKind.FORCE, "by hand", PRACTICE);
    String steel = "as of steel";
    value("remount.holder_expansion", r.holderExpansion(), QuantityKind.EXPANSION, steel, PRACTICE);
  }

  private static final QuantityKind KELVIN = QuantityKind.TEMPERATURE_DIFFERENCE;

  private void preload(Preload p, String table) {
    if (p.modelled().isPresent()) {
      String basis = p.modelled().get().scatter().basis();
      spread(table + "scatter", p.forceSpread(), QuantityKind.RATIO, basis);
      MountAssumptions.device(p.modelled().get(), table + "device.", this);
    }
    spread(table + "line_wander", p.lineSpread(), QuantityKind.LENGTH, NOT_STATED);
    spread(table + "direction_wander", p.tiltSpread(), QuantityKind.ANGLE, NOT_STATED);
    words(table + "at", "through the origin", NOT_STATED);
    words(table + "direction", "-z", NOT_STATED);
  }

  private void targets(Targets t) {
    words("targets.coverage", t.coverage().written() + ": " + t.coverage().words(), PRACTICE);
    if (!stated("targets.lift_off_factor")) {
      String factor = PrintedNumber.shortest(t.liftOffFactor()) + " times the load";
      found.add(AssumedValue.of("targets.lift_off_factor", factor, PRACTICE));
    }
    String words = "of the pressure at which the weaker body first yields";
    value("targets.pressure_share", t.pressureShare(), QuantityKind.RATIO, words, PRACTICE);
  }

  private void loads(CouplingDesign d) {
    words("machine.gravity", "-z", NOT_STATED);
    words("holder.centre_of_mass", "at the origin", NOT_STATED);
    for (int i = 0; i < d.cases().size(); i++) {
      LoadCase c = d.cases().get(i);
      String table = "load_case[" + (i + 1) + "].";
      words(table + "must", "stay seated", NOT_STATED);
      if (c.demand() == LoadCase.Demand.SURVIVE) {
        String factor =
            "survive: " + PrintedNumber.shortest(LoadCase.SURVIVAL_FACTOR) + " times the load";
        found.add(AssumedValue.of(table + "must", factor, PRACTICE));
      }
    }
  }
}
