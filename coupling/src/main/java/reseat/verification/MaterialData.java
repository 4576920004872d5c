package reseat.verification;

import reseat.contact.ContactLimits;
import reseat.material.MaterialCatalog;
import reseat.material.MaterialProperty;
import reseat.verification.Topic.Gatherer;

/** Values of the catalog against the sheets they were taken from, and the bearing limit. */
final class MaterialData {

  private MaterialData() {}

  static Topic topic() {
    Gatherer all = new Gatherer();
    String sheets = "bearing-steel data sheets";
    all.from(sheets + ": 29.5 Mpsi, converted", Standing.SEEN, 5e-5)
        .add(
            "CV-092",
            "52100: Young's modulus",
            203.395,
            "GPa",
            () -> bearingSteel(MaterialProperty.MODULUS) / 1e9);
    all.from(sheets + ": 0.283 lb/in3, converted; another sheet 7810", Standing.SEEN, 4e-3)
        .add(
            "CV-093",
            "52100: density",
            7833,
            "kg/m3",
            () -> bearingSteel(MaterialProperty.DENSITY));
    all.from(sheets + ": 325 000 psi, converted", Standing.SEEN, 1e-4)
        .add(
            "CV-094",
            "52100: tensile strength",
            2240.8,
            "MPa",
            () -> bearingSteel(MaterialProperty.TENSILE_STRENGTH) / 1e6);
    all.from("ISO 76:2006, ball bearings", Standing.SEEN, 1e-12)
        .add(
            "CV-095",
            "static limit of hardened steel",
            4200,
            "MPa",
            () -> ContactLimits.STATIC_BRINELLING_PRESSURE / 1e6)
        .add(
            "CV-096",
            "12.7 mm ball: permanent set at that limit",
            1.27,
            "um",
            () -> ContactLimits.STATIC_BRINELLING_SET * 12.7e-3 * 1e6);
    return all.topic("Materials");
  }

  private static double bearingSteel(MaterialProperty property) {
    return MaterialCatalog.standard().find("52100").orElseThrow().nominal(property).orElseThrow();
  }
}
