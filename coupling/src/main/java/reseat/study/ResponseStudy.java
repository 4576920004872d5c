package reseat.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.design.ToleranceKind;
import reseat.equilibrium.CouplingModel;
import reseat.interchange.Contributor;
import reseat.interchange.ToleranceModel;
import reseat.space.Vec3;

/**
 * How the tool point answers to one dimension of the parts, exactly.
 *
 * <p>The part is made with the deviation, the coupling is put to rest under preload and weight, and
 * the tool point's place is read: no linear theory.
 *
 * @param name name of the dimension
 * @param measure what is measured of it
 * @param limit its tolerance, m, rad or K
 * @param deviations deviations from the drawing, rising, m, rad or K
 * @param shifts shift of the tool point along the machine axes at each, m
 */
public record ResponseStudy(
    String name,
    ToleranceKind.Measure measure,
    double limit,
    List<Double> deviations,
    List<Vec3> shifts) {

  /** How many times the tolerance the curve reaches to each side. */
  private static final double REACH = 3;

  /** Points to each side of the drawing's value. */
  private static final int POINTS = 15;

  /** Copies the lists. */
  public ResponseStudy {
    deviations = List.copyOf(deviations);
    shifts = List.copyOf(shifts);
  }

  /**
   * Names the dimensions of a design that have tolerances.
   *
   * @param design the coupling
   * @return names in their fixed order
   */
  public static List<String> names(CouplingDesign design) {
    return ToleranceModel.of(design).contributors().stream().map(Contributor::name).toList();
  }

  /**
   * Varies one dimension.
   *
   * @param design the coupling
   * @param name name of the dimension
   * @return its curve; empty if the design has no such dimension
   */
  public static Optional<ResponseStudy> of(CouplingDesign design, String name) {
    ToleranceModel model = ToleranceModel.of(design);
    List<Contributor> contributors = model.contributors();
    for (int i = 0; i < contributors.size(); i++) {
      if (contributors.get(i).name().equals(name)) {
        return Optional.of(of(model, i));
      }
    }
    return Optional.empty();
  }

  private static ResponseStudy of(ToleranceModel model, int place) {
    Contributor c = model.contributors().get(place);
    Vec3 drawn = toolPoint(model.design());
    List<Double> deviations = new ArrayList<>();
    List<Vec3> shifts = new ArrayList<>();
    for (int k = -POINTS; k <= POINTS; k++) {
      double deviation = REACH * c.spread().limit() * k / POINTS;
      double[] all = new double[model.contributors().size()];
      all[place] = deviation;
      Vec3 shift = toolPoint(model.made(all)).minus(drawn);
      deviations.add(deviation);
      shifts.add(model.design().axes().of(shift));
    }
    return new ResponseStudy(c.name(), c.kind().measure(), c.spread().limit(), deviations, shifts);
  }

  private static Vec3 toolPoint(CouplingDesign made) {
    return CouplingModel.of(made).standing().holderInBase().apply(made.toolPoint());
  }
}
