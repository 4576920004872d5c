package reseat.report.fullreport;

import java.util.ArrayList;
import java.util.List;
import reseat.report.check.AssumedWords;
import reseat.report.form.FigureText;
import reseat.report.page.Page;
import reseat.study.CheckResult;

/** The parts of a page that are the same for every design: assumptions, sources, cautions. */
public final class ClosingSections {

  private ClosingSections() {}

  public static List<Page.Section> all(CheckResult check) {
    List<String> assumed = new ArrayList<>();
    for (String told : AssumedWords.all(check, FigureText.BOTH)) {
      assumed.add("Not stated in the file: " + told + ".");
    }
    assumed.addAll(MODEL);
    List<Page.Section> all = new ArrayList<>();
    all.add(section("assumptions", "What was assumed", assumed.toArray(String[]::new)));
    all.addAll(OTHERS);
    return all;
  }

  private static final List<String> MODEL =
      List.of(
            "Bodies are rigid but for the contacts and the ball mountings that were described.",
            "Contacts follow Hertz: smooth half-spaces, patches small against the ball, elastic. A"
                + " check says where that is strained.",
            "Contact forces under load are those without friction; stiffness is given in two bounds.",
            "In a simulated tool change friction is Coulomb's with Mindlin's stiffness until it slips;"
                + " partial slip inside a patch, wear and creep are left out.",
            "Scatter is what the design file says it is; a default is common practice, no source.");

  private static final List<Page.Section> OTHERS =
      List.of(
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
        section(
            "cautions",
            "Cautions",
            "Springs and tightened screws store energy: let the preload off in steps, with nothing in"
                + " the way of the parts.",
            "Magnets pinch when they come together and can pull steel chips and tools; keep them away"
                + " from medical implants.",
            "Bonded balls can let go, more so when warm or wet or under lasting load: guard what would"
                + " fall or fly, and prove the bond before trusting it.",
            "A crash load can throw the holder off its seats. This page is no approval: where people"
                + " can be hurt, local codes and licensed practice decide."),
        section(
            "not-covered",
            "What is not covered",
            "Bending of plates, bolted joints and the modes of a whole post or machine: a general"
                + " finite-element program or a measurement answers those.",
            "Interference of parts: look at the drawing or a solid model.",
            "True scatter of friction: only remounting the real parts and reading a gauge shows it"
                + " (reseat readings)."));

  private static Page.Section section(String id, String title, String... points) {
    return new Page.Section(id, title, List.of(new Page.Points(List.of(points))));
  }
}
