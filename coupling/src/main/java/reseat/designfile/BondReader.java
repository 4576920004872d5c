package reseat.designfile;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import reseat.ballmount.Adhesive;
import reseat.ballmount.BondDerating;
import reseat.ballmount.BondJoint;
import reseat.material.ElasticConstants;
import reseat.units.QuantityKind;

/** Reads the adhesive joint of a ball. */
final class BondReader {

  private enum Kind {
    SLEEVE,
    CONE,
    FLAT
  }

  private static final Map<String, Kind> KINDS = kinds();
  private static final Map<String, Adhesive> ADHESIVES = adhesives();

  private BondReader() {}

  private static Map<String, Kind> kinds() {
    Map<String, Kind> words = new LinkedHashMap<>();
    words.put("sleeve", Kind.SLEEVE);
    words.put("cone", Kind.CONE);
    words.put("flat", Kind.FLAT);
    return words;
  }

  private static Map<String, Adhesive> adhesives() {
    Map<String, Adhesive> words = new LinkedHashMap<>();
    words.put("epoxy", Adhesive.EPOXY);
    words.put("anaerobic", Adhesive.ANAEROBIC);
    return words;
  }

  /**
   * Reads a bond.
   *
   * @param s its table
   * @return the joint, unless something is wrong
   */
  static Optional<BondJoint> read(Section s) {
    Kind kind = s.requiredChoice("kind", KINDS).orElse(Kind.FLAT);
    double area;
    double lean;
    double rim;
    if (kind == Kind.SLEEVE) {
      rim = s.positive("diameter", QuantityKind.LENGTH, 6e-3);
      area = Math.PI * rim * s.positive("length", QuantityKind.LENGTH, 8e-3);
      lean = Math.PI / 2;
    } else {
      rim = s.positive("rim_diameter", QuantityKind.LENGTH, 8e-3);
      area = s.positive("area", QuantityKind.AREA, 50e-6);
      lean = 0;
      if (kind == Kind.CONE) {
        lean = Math.PI / 2 - s.positive("cone_angle", QuantityKind.ANGLE, Math.PI / 2) / 2;
        if (!(lean > 0)) {
          s.error("cone_angle", "is the included angle of the conical bottom, below 180 deg");
          lean = 0;
        }
      }
    }
    double gap = s.positive("gap", QuantityKind.LENGTH, 0.08e-3);
    double fillet = s.quantity("fillet", QuantityKind.LENGTH, 0);
    if (!s.has("bottoms_on_metal")) {
      s.error(
          "bottoms_on_metal",
          "is missing; write true if ball and stud touch metal to metal, false if the adhesive"
              + " keeps them apart");
    }
    boolean bottoms = s.flag("bottoms_on_metal", true);
    double hottest = s.required("hottest", QuantityKind.TEMPERATURE, 293.15);
    Adhesive adhesive = adhesive(s);
    double peak = s.ratio("peak_share", BondDerating.USUAL.peakShare());
    double sustained = s.ratio("sustained_share", BondDerating.USUAL.sustainedShare());
    s.close();
    try {
      BondDerating derating =
          new BondDerating(peak, sustained, BondDerating.USUAL.softeningRange());
      return Optional.of(
          new BondJoint(area, lean, rim, gap, fillet, bottoms, adhesive, derating, hottest));
    } catch (IllegalArgumentException e) {
      return s.refused(e);
    }
  }

  private static Adhesive adhesive(Section s) {
    if (!s.isTable("adhesive")) {
      return s.requiredChoice("adhesive", ADHESIVES).orElse(Adhesive.EPOXY);
    }
    Section t = s.child("adhesive").orElseThrow();
    String name = t.requiredText("name", "adhesive");
    double shear = t.positive("shear_strength", QuantityKind.PRESSURE, 18e6);
    double tensile = t.positive("tensile_strength", QuantityKind.PRESSURE, 30e6);
    double modulus = t.positive("youngs_modulus", QuantityKind.PRESSURE, 2.7e9);
    double poisson = t.ratio("poisson_ratio", Adhesive.EPOXY.elasticity().poisson());
    double softens = t.required("softens_at", QuantityKind.TEMPERATURE, 328.15);
    double shrinks = t.ratio("cure_shrinkage", Adhesive.EPOXY.cureShrinkage());
    String basis = t.text("source", "given in the file");
    t.close();
    try {
      ElasticConstants elastic = new ElasticConstants(modulus, poisson);
      return new Adhesive(name, shear, tensile, elastic, softens, shrinks, basis);
    } catch (IllegalArgumentException e) {
      t.refused(e);
      return Adhesive.EPOXY;
    }
  }
}
