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
    List<Candidate> worst = new ArrayList<>();
    for (int k = 0; k < TURNS; k++) {
      turned(design, load, 2 * Math.PI / 3 * k / TURNS, worst);
    }
    List<SelfSeating.Path> paths = new ArrayList<>();
    for (Candidate c : worst) {
      paths.add(c.path());
    }
    return paths;
  }

  /**
   * The way of one last stage that stalls at the least friction of those looked at. Mutable: found
   * by comparing where ways stall, for all else of a way takes long.
   */
  private static final class Candidate {
    private final String support;
    private final boolean ring;
    private SelfSeating seating;
    private double[] rates;
    private double stalls = Double.POSITIVE_INFINITY;

    private Candidate(String support, boolean ring) {
      this.support = support;
      this.ring = ring;
    }

    private void compare(SelfSeating other, double[] otherRates) {
      double limit = other.stallBelow(otherRates, stalls);
      if (limit < stalls) {
        seating = other;
        rates = otherRates.clone();
        stalls = limit;
      }
    }

    private SelfSeating.Path path() {
      SelfSeating.Path p = seating.path(rates);
      return ring
          ? new SelfSeating.Path(
              List.of(support + " (ring)"),
              support,
              p.limitFriction(),
              p.tipFriction(),
              p.restFriction())
          : p;
    }
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

  private static void turned(
      CouplingDesign design, Wrench load, double turn, List<Candidate> worst) {
    List<Support> supports = new ArrayList<>();
    for (Support s : design.supports()) {
      supports.add(s.seat() instanceof ConeSeat cone ? s.withSeat(cone.withThirdsTurned(turn)) : s);
    }
    ContactLines lines = ContactLines.nominal(design.toBuilder().supports(supports).build());
    SelfSeating seating = new SelfSeating(lines, load);
    int stage = 0;
    for (int i = 0; i < N; i++) {
      ContactLines.Line line = lines.lines().get(i);
      if (stage == worst.size()) {
        worst.add(new Candidate(line.support(), line.ring()));
      }
      Candidate candidate = worst.get(stage++);
      double[] rates = new double[N];
      if (!line.ring()) {
        rates[i] = 1;
        candidate.compare(seating, rates);
        continue;
      }
      for (int touching = 0; touching < 3; touching++) {
        for (int k = 0; k < 3; k++) {
          rates[i + k] = k == touching ? 0 : 0.5;
        }
        candidate.compare(seating, rates);
      }
      i += 2;
    }
  }
}
