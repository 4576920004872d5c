package reseat.report.fullreport;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import reseat.design.CouplingDesign;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.preload.MagnetPair;
import reseat.report.page.Page;

/**
 * The last parts of a page: what the model leaves out, sources, cautions for what the design has.
 */
public final class ClosingSections {

  private ClosingSections() {}

  public static List<Page.Section> of(CouplingDesign d) {
    return List.of(
        section(
            "model",
            "What the model leaves out",
            "Bodies are rigid but for the contacts and the ball mountings that were described.",
            "Contacts follow Hertz: smooth half-spaces, patches small against the ball, elastic. A"
                + " check says where that is strained.",
            "Contact forces under load are those without friction; stiffness is given in two bounds.",
            "In a simulated tool change friction is Coulomb's with Mindlin's stiffness until it slips;"
                + " partial slip inside a patch, wear and creep are left out.",
            "Scatter is what the design file says it is; a default is common practice, no source."),
        section(
            "sources",
            "Where the formulas come from",
            "Elliptical contact: Hertz's theory through complete elliptic integrals, checked against"
                + " printed coefficients and quadrature.",
            "Tangential stiffness and partial slip: Mindlin 1949, Mindlin and Deresiewicz 1953 (from"
                + " memory, checked by computation).",
            "Static limit of hardened steel: ISO 76:2006 (extract read). First yield: from the"
                + " subsurface shear of the true ellipse.",
            "Budget: form of JCGM 100:2008 (from memory).",
            "Every printed value that the program reproduces: reseat verify. Materials with the source"
                + " of every number: reseat materials NAME."),
        new Page.Section("cautions", "Cautions", List.of(new Page.Points(cautions(d)))),
        section(
            "not-covered",
            "What is not covered",
            "Bending of plates, bolted joints and the modes of a whole post or machine: a general"
                + " finite-element program or a measurement answers those.",
            "Interference of parts: look at the drawing or a solid model.",
            "True scatter of friction: only remounting the real parts and reading a gauge shows it"
                + " (reseat readings)."));
  }

  /** Cautions for what the design has, and for all couplings. */
  private static List<String> cautions(CouplingDesign d) {
    boolean magnets = false;
    boolean others = false;
    for (Preload p : d.preloads()) {
      boolean magnet =
          p.modelled().map(MagnetPair.class::isInstance).orElse(false)
              || p.device().toLowerCase(Locale.ROOT).contains("magnet");
      magnets |= magnet;
      others |= !magnet;
    }
    boolean bonded = false;
    for (Support s : d.supports()) {
      bonded |= s.mounting().stud().flatMap(m -> m.bond()).isPresent();
    }
    List<String> told = new ArrayList<>();
    if (others) {
      told.add(
          "Springs and tightened screws store energy: let the preload off in steps, with nothing in"
              + " the way of the parts.");
    }
    if (magnets) {
      told.add(
          "Magnets pinch when they come together and can pull steel chips and tools; keep them away"
              + " from medical implants.");
    }
    if (bonded) {
      told.add(
          "Bonded balls can let go, more so when warm or wet or under lasting load: guard what would"
              + " fall or fly, and prove the bond before trusting it.");
    }
    told.add(
        "A crash load can throw the holder off its seats. This page is no approval: where people"
            + " can be hurt, local codes and licensed practice decide.");
    return told;
  }

  private static Page.Section section(String id, String title, String... points) {
    return new Page.Section(id, title, List.of(new Page.Points(List.of(points))));
  }
}
