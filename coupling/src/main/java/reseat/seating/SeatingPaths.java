package reseat.seating;

import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.equilibrium.ContactLines;
import reseat.seat.ConeSeat;
import reseat.space.Wrench;

/**
 * The last stages of the slide home of a design, contact by contact.
 *
 * <p>A ball that is off the axis of a cone touches it at one place and slides straight down from
 * there; that is one stage for the whole ring, the worst of all places that may touch. The thirds
 * that tell the ring are turned all round for it, and the worst is told of every other stage too.
 */
public final class SeatingPaths {

  private static final int N = 6;

  /** Places round a third of a ring that are tried. */
  private static final int TURNS = 12;

  private SeatingPaths() {}

  /**
   * Finds the friction at which each last stage stalls.
   *
   * @param design the coupling, six contacts
   * @param load load on the holder while it slides
   * @return one path per contact, in their order, but one for a ring
   * @throws ArithmeticException if the contacts do not constrain the holder
   */
  public static List<SelfSeating.Path> byContact(CouplingDesign design, Wrench load) {
    if (!hasRing(design)) {
      return new SelfSeating(ContactLines.nominal(design), load).oneOpenByContact();
    }
    List<SelfSeating.Path> worst = List.of();
    for (int k = 0; k < TURNS; k++) {
      worst = worse(worst, turned(design, load, 2 * Math.PI / 3 * k / TURNS));
    }
    return worst;
  }

  /**
   * Finds the friction at which each last stage stalls, the worst first.
   *
   * @param design the coupling, six contacts
   * @param load load on the holder while it slides
   * @return the paths of {@link #byContact}, sorted
   */
  public static List<SelfSeating.Path> lastStages(CouplingDesign design, Wrench load) {
    return SelfSeating.sorted(new ArrayList<>(byContact(design, load)));
  }

  private static boolean hasRing(CouplingDesign design) {
    for (Support s : design.supports()) {
      if (s.seat().isRing()) {
        return true;
      }
    }
    return false;
  }

  private static List<SelfSeating.Path> worse(List<SelfSeating.Path> a, List<SelfSeating.Path> b) {
    if (a.isEmpty()) {
      return b;
    }
    List<SelfSeating.Path> worse = new ArrayList<>();
    for (int i = 0; i < a.size(); i++) {
      worse.add(SelfSeating.worse(a.get(i), b.get(i)));
    }
    return worse;
  }

  private static List<SelfSeating.Path> turned(CouplingDesign design, Wrench load, double turn) {
    List<Support> supports = new ArrayList<>();
    for (Support s : design.supports()) {
      supports.add(s.seat() instanceof ConeSeat cone ? s.withSeat(cone.withThirdsTurned(turn)) : s);
    }
    ContactLines lines = ContactLines.nominal(design.toBuilder().supports(supports).build());
    SelfSeating seating = new SelfSeating(lines, load);
    List<SelfSeating.Path> paths = new ArrayList<>();
    for (int i = 0; i < N; i++) {
      double[] rates = new double[N];
      if (!lines.lines().get(i).ring()) {
        rates[i] = 1;
        paths.add(seating.path(rates));
        continue;
      }
      SelfSeating.Path worst = null;
      for (int touching = 0; touching < 3; touching++) {
        for (int k = 0; k < 3; k++) {
          rates[i + k] = k == touching ? 0 : 0.5;
        }
        worst = SelfSeating.worse(worst, seating.path(rates));
      }
      String support = lines.lines().get(i).support();
      paths.add(
          new SelfSeating.Path(
              List.of(support + " (ring)"),
              support,
              worst.limitFriction(),
              worst.tipFriction(),
              worst.restFriction()));
      i += 2;
    }
    return paths;
  }
}
