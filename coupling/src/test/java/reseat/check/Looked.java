package reseat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.contact.ContactLimits;
import reseat.design.CouplingDesign;
import reseat.design.LoadCase;
import reseat.design.Preload;
import reseat.design.StudMount;
import reseat.design.StudThread;
import reseat.design.Support;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.Equilibrium;
import reseat.material.Material;
import reseat.material.MaterialCatalog;
import reseat.numerics.Distribution;

/** A design with the results that checks look at. */
record Looked(Equilibrium standing, List<CaseResponse> cases) {

  static Looked at(CouplingDesign design) {
    Equilibrium standing = CouplingModel.of(design).standing();
    return new Looked(
        standing,
        CaseResponse.all(
            standing, CouplingStiffness.of(standing, CouplingStiffness.Bound.STICKING)));
  }

  List<ContactLimits> limits() {
    List<ContactLimits> limits = new ArrayList<>();
    for (Equilibrium.Contact c : standing.contacts()) {
      Support s = standing.model().design().supports().get(c.line().ballIndex());
      limits.add(ContactLimits.of(c.hertz(), s.ballMaterial(), s.seatMaterial()));
    }
    return limits;
  }

  static Material material(String name) {
    return MaterialCatalog.standard().find(name).orElseThrow();
  }

  static CouplingDesign of(CouplingDesign design, String ball, String seat, double caseDepth) {
    return design.toBuilder()
        .supports(
            design.supports().stream()
                .map(
                    s ->
                        new Support(
                            s.name(),
                            s.ball(),
                            material(ball),
                            s.seat(),
                            material(seat),
                            caseDepth,
                            s.mounting()))
                .toList())
        .build();
  }

  static CouplingDesign withPreload(CouplingDesign design, double newton) {
    return design.toBuilder()
        .preloads(
            design.preloads().stream()
                .map(p -> p.withForce(newton / design.preloads().size()))
                .toList())
        .build();
  }

  /** The preload with another scatter of its force and another wander of its line. */
  static Preload loose(Preload p, Distribution force, Distribution line) {
    return new Preload(
        p.name(), p.force(), p.direction(), p.at(), force, line, Distribution.NONE, p.device());
  }

  /** The stud of a ball of the tool post. */
  static StudMount postStud() {
    CouplingDesign post = DesignFile.read(Starter.TOOL_POST.text()).design().orElseThrow();
    return post.supports().get(0).mounting().stud().orElseThrow();
  }

  /** The thread at a friction, without the nut that locks it. */
  static StudThread withoutNut(StudThread t, double friction) {
    return new StudThread(
        t.limits(), t.engagement(), t.screw(), t.body(), friction, Optional.empty());
  }

  static CouplingDesign demanding(CouplingDesign design, LoadCase.Demand demand) {
    return design.toBuilder()
        .cases(design.cases().stream().map(c -> new LoadCase(c.name(), c.load(), demand)).toList())
        .build();
  }

  static Finding about(List<Finding> findings, String where) {
    return findings.stream()
        .filter(f -> f.subject().name().equals(where))
        .findFirst()
        .orElseThrow();
  }

  /** The n-th argument of a statement, an amount, SI. */
  static double amount(Statement statement, int n) {
    return ((Argument.Amount) statement.arguments().get(n)).si();
  }

  /** The n-th argument of a statement, a name. */
  static String name(Statement statement, int n) {
    return ((Argument.Name) statement.arguments().get(n)).text();
  }

  /** The n-th argument of a statement, a word of the program. */
  static Enum<?> term(Statement statement, int n) {
    return ((Argument.Term) statement.arguments().get(n)).value();
  }

  /** The n-th argument of a statement, a statement. */
  static Statement inner(Statement statement, int n) {
    return ((Argument.Inner) statement.arguments().get(n)).statement();
  }
}
