package reseat.interchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.design.Tolerance;
import reseat.design.ToleranceKind;
import reseat.seat.ConeSeat;
import reseat.units.FilledText;

/**
 * The tolerances of a design spelt out: one contributor for each error that is drawn on its own.
 *
 * <p>Contributors stand in a fixed order: by kind as {@link ToleranceKind} lists them, within a
 * kind the shared ones first, then support by support and flank by flank. A tolerance of zero makes
 * no contributor. Shared diameters are shared among balls, or pins, of one nominal size.
 */
public final class ToleranceModel {

  private final CouplingDesign design;
  private final DeviationLayout layout;
  private final List<Contributor> contributors;

  private ToleranceModel(
      CouplingDesign design, DeviationLayout layout, List<Contributor> contributors) {
    this.design = design;
    this.layout = layout;
    this.contributors = List.copyOf(contributors);
  }

  /**
   * Spells out the tolerances of a design.
   *
   * @param design the coupling with its tolerances
   * @return the model; without contributors if the design states no tolerances
   */
  public static ToleranceModel of(CouplingDesign design) {
    DeviationLayout layout = new DeviationLayout(design);
    List<Contributor> found = new ArrayList<>();
    for (ToleranceKind kind : ToleranceKind.values()) {
      List<Integer> places = placesOf(kind, design, layout);
      found.addAll(shared(kind, places, design, layout));
      for (int place : places) {
        DeviationLayout.Dimension d = layout.at(place);
        int[] together = together(design, d, place);
        governing(design, d, false)
            .filter(t -> t.spread().limit() > 0 && together.length > 0)
            .ifPresent(
                t ->
                    found.add(
                        new Contributor(
                            name(design, d),
                            kind,
                            Owner.of(kind, design.ballsOn()),
                            t.spread(),
                            together)));
      }
    }
    return new ToleranceModel(design, layout, found);
  }

  /** A dimension alone; the angle of a cone is one for its whole ring, told at the first third. */
  private static int[] together(CouplingDesign design, DeviationLayout.Dimension d, int place) {
    if (!angleOfCone(design, d)) {
      return new int[] {place};
    }
    return d.part().equals(ConeSeat.THIRDS.get(0))
        ? new int[] {place, place + 1, place + 2}
        : new int[0];
  }

  private static boolean angleOfCone(CouplingDesign design, DeviationLayout.Dimension d) {
    return d.kind() == ToleranceKind.FLANK_ANGLE
        && design.supports().get(d.support()).seat().isRing();
  }

  private static List<Integer> placesOf(
      ToleranceKind kind, CouplingDesign design, DeviationLayout layout) {
    List<Integer> places = new ArrayList<>();
    for (int i = layout.first(kind); i < layout.size() && layout.at(i).kind() == kind; i++) {
      DeviationLayout.Dimension d = layout.at(i);
      if (d.support() < 0
          || kind.partsOf(design.supports().get(d.support()).seat()).contains(d.part())) {
        places.add(i);
      }
    }
    return places;
  }

  private static Optional<Tolerance> governing(
      CouplingDesign design, DeviationLayout.Dimension d, boolean shared) {
    String support = d.support() < 0 ? "" : design.supports().get(d.support()).name();
    return design.tolerances().governing(d.kind(), support, d.part(), shared);
  }

  /** Puts together the dimensions that depart together. */
  private static List<Contributor> shared(
      ToleranceKind kind, List<Integer> places, CouplingDesign design, DeviationLayout layout) {
    Map<String, List<Integer>> groups = new LinkedHashMap<>();
    Map<String, Tolerance> governs = new LinkedHashMap<>();
    for (int place : places) {
      Tolerance t = governing(design, layout.at(place), true).orElse(null);
      if (t != null && t.spread().limit() > 0) {
        String name =
            "shared "
                + (t.support().isEmpty() ? "" : t.support() + " ")
                + (t.part().isEmpty() ? "" : t.part() + " ")
                + kind.words()
                + lot(design, layout.at(place));
        groups.computeIfAbsent(name, n -> new ArrayList<>()).add(place);
        governs.put(name, t);
      }
    }
    List<Contributor> found = new ArrayList<>();
    groups.forEach(
        (name, members) ->
            found.add(
                new Contributor(
                    name,
                    kind,
                    Owner.of(kind, design.ballsOn()),
                    governs.get(name).spread(),
                    members.stream().mapToInt(Integer::intValue).toArray())));
    return found;
  }

  /** The nominal size, where balls or pins come in lots. */
  private static String lot(CouplingDesign design, DeviationLayout.Dimension d) {
    double diameter;
    if (d.kind() == ToleranceKind.BALL_DIAMETER) {
      diameter = design.supports().get(d.support()).ball().diameter();
    } else if (d.kind() == ToleranceKind.PIN_DIAMETER) {
      diameter =
          design.supports().get(d.support()).seat().flanks().stream()
              .filter(f -> f.name().equals(d.part()))
              .mapToDouble(f -> 2 * f.signedRadius()) // a pin is convex
              .sum();
    } else {
      return "";
    }
    return FilledText.of(" (%.4f mm)", 1e3 * diameter);
  }

  private static String name(CouplingDesign design, DeviationLayout.Dimension d) {
    if (d.support() < 0) {
      return (d.kind().words() + " " + d.part()).strip();
    }
    Support s = design.supports().get(d.support());
    String part = d.part().isEmpty() || angleOfCone(design, d) ? "" : d.part() + " ";
    return s.name() + " " + part + d.kind().words();
  }

  /**
   * Returns the coupling as drawn.
   *
   * @return the design
   */
  public CouplingDesign design() {
    return design;
  }

  /**
   * Returns the independent errors.
   *
   * @return contributors in their fixed order
   */
  public List<Contributor> contributors() {
    return contributors;
  }

  /**
   * Returns the coupling as made, exactly.
   *
   * @param deviations one deviation per contributor, in their order, m, rad or K
   * @return a design whose parts depart from the drawing by the deviations; its tolerances, load,
   *     names and axes are those of this model's design
   * @throws IllegalArgumentException if the number of deviations is not that of the contributors,
   *     or a part cannot be made so
   */
  public CouplingDesign made(double... deviations) {
    return DeviatedDesign.of(design, layout, state(deviations));
  }

  /** Adds up the deviations of all contributors, dimension by dimension. */
  double[] state(double... deviations) {
    if (deviations.length != contributors.size()) {
      throw new IllegalArgumentException(
          "one deviation per contributor is wanted, "
              + contributors.size()
              + ", found "
              + deviations.length);
    }
    double[] state = new double[layout.size()];
    for (int k = 0; k < deviations.length; k++) {
      contributors.get(k).add(deviations[k], state);
    }
    return state;
  }

  DeviationLayout layout() {
    return layout;
  }
}
