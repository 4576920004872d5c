package reseat.ballmount;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import reseat.elementary.Elementary;
import reseat.numerics.Bounds;
import reseat.space.Vec3;

/**
 * Three adjusting screws that carry a plate, and what to turn so that indicators at three stations
 * read what they should.
 *
 * <p>Screws and stations have places in the coupling plane (x, y; z is ignored); heights count
 * along +z, and an indicator reads positive when the plate is high under it. For the small moves in
 * question the plate is a plane, {@code z = a + b x + c y}: the three wanted changes give the
 * plane, the plane gives the travel of each screw. The ball is taken to lift the plate by the
 * travel of its screw.
 *
 * @param thread the thread of all three screws
 * @param clockwise what one clockwise turn, seen from the screw head, does to the plate
 * @param screws places of the three screws, m
 * @param stations places of the three indicators, m
 */
public record AdjustingScrews(
    ScrewThread thread, Clockwise clockwise, List<Vec3> screws, List<Vec3> stations) {

  /** Turn that a hand sets reliably either way, rad: two degrees, common practice, no source. */
  public static final double HAND_RESOLUTION = ThreadDuty.HAND_RESOLUTION;

  private static final double SMALLEST_SPREAD = 1e-3;

  /** Effect of a clockwise turn with a right-hand thread; a left-hand thread reverses it. */
  public enum Clockwise {
    /** Driving the screw in raises the plate at that screw. */
    RAISES(1),
    /** Driving the screw in lowers the plate at that screw. */
    LOWERS(-1);

    private final int sign;

    Clockwise(int sign) {
      this.sign = sign;
    }
  }

  /** Which way to turn, seen from the head of the screw. */
  public enum Turn {
    /** With the hands of the clock. */
    CLOCKWISE,
    /** Against the hands of the clock. */
    COUNTERCLOCKWISE,
    /** Leave it alone. */
    NONE
  }

  /**
   * One screw to turn, and what to expect when it has been turned after those before it.
   *
   * @param screw number of the screw, 1 to 3, in the order given
   * @param rise rise of the plate at the screw, m; negative lowers
   * @param turn which way
   * @param degrees how far, degrees, not negative
   * @param clockMinutes how far in sixtieths of a turn, not negative
   * @param readingsAfter expected indicator readings after this step, m, in the order of the
   *     stations
   * @param withinHandResolution true if the turn is smaller than a hand can set
   */
  public record Step(
      int screw,
      double rise,
      Turn turn,
      double degrees,
      double clockMinutes,
      List<Double> readingsAfter,
      boolean withinHandResolution) {

    /** Copies the readings. */
    public Step {
      Objects.requireNonNull(turn, "turn of a step must be given, found null");
      Objects.requireNonNull(readingsAfter, "readings after of a step must be given, found null");
      readingsAfter = List.copyOf(readingsAfter);
    }
  }

  /** Checks that three screws and three stations each span a plane. */
  public AdjustingScrews {
    Objects.requireNonNull(thread, "thread of adjusting screws must be given, found null");
    Objects.requireNonNull(clockwise, "clockwise of adjusting screws must be given, found null");
    Objects.requireNonNull(screws, "screws of adjusting screws must be given, found null");
    Objects.requireNonNull(stations, "stations of adjusting screws must be given, found null");
    screws = List.copyOf(screws);
    stations = List.copyOf(stations);
    spanPlane("adjusting screws", screws);
    spanPlane("indicator stations", stations);
  }

  /**
   * What to turn.
   *
   * @param readings indicator readings, m, in the order of the stations
   * @param wanted readings wanted, m, in the same order; zeros level the plate to the indicators
   * @return one step for each screw, in order
   */
  public List<Step> steps(List<Double> readings, List<Double> wanted) {
    three("indicator readings", readings);
    three("wanted readings", wanted);
    double[] change = new double[3];
    for (int i = 0; i < 3; i++) {
      change[i] = wanted.get(i) - readings.get(i);
    }
    double[] now = {readings.get(0), readings.get(1), readings.get(2)};
    List<Step> steps = new ArrayList<>();
    for (int s = 0; s < 3; s++) {
      double rise = 0;
      for (int i = 0; i < 3; i++) {
        rise += share(stations, i, screws.get(s)) * change[i];
      }
      for (int i = 0; i < 3; i++) {
        now[i] += share(screws, s, stations.get(i)) * rise;
      }
      steps.add(step(s, rise, List.of(now[0], now[1], now[2])));
    }
    return List.copyOf(steps);
  }

  /**
   * What an error of one hand turn at every screw may leave at the indicators: the largest sum of
   * the three influences at any station.
   *
   * @param handResolution turn that may be wrong either way at each screw, rad
   * @return half range of the reading at the worst station, m
   */
  public double readingUncertainty(double handResolution) {
    Bounds.positive("smallest turn by hand", handResolution, "rad");
    double worst = 0;
    for (Vec3 station : stations) {
      double sum = 0;
      for (int s = 0; s < 3; s++) {
        sum += Math.abs(share(screws, s, station));
      }
      worst = Math.max(worst, sum * thread.travelPerRadian() * handResolution);
    }
    return worst;
  }

  /**
   * How much an error of one indicator is magnified into the travel of a screw; large when the
   * stations stand close together compared with the screws.
   *
   * @return largest ratio of screw travel to the error of one reading
   */
  public double magnification() {
    double worst = 0;
    for (Vec3 screw : screws) {
      for (int i = 0; i < 3; i++) {
        worst = Math.max(worst, Math.abs(share(stations, i, screw)));
      }
    }
    return worst;
  }

  private Step step(int s, double rise, List<Double> after) {
    double turns = rise / thread.pitch() * clockwise.sign * thread.hand().advanceClockwise();
    double degrees = Math.abs(turns) * 360;
    Turn way = turns > 0 ? Turn.CLOCKWISE : turns < 0 ? Turn.COUNTERCLOCKWISE : Turn.NONE;
    boolean tooFine = degrees > 0 && Elementary.toRadians(degrees) < HAND_RESOLUTION;
    return new Step(s + 1, rise, way, degrees, Math.abs(turns) * 60, after, tooFine);
  }

  /**
   * Height at a place for unit height at one of three points and zero at the other two: the
   * barycentric coordinate of the place.
   */
  private static double share(List<Vec3> points, int i, Vec3 place) {
    Vec3 own = points.get(i);
    Vec3 next = points.get((i + 1) % 3);
    Vec3 last = points.get((i + 2) % 3);
    return area(place, next, last) / area(own, next, last);
  }

  private static double area(Vec3 a, Vec3 b, Vec3 c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (c.x() - a.x()) * (b.y() - a.y());
  }

  private static void spanPlane(String what, List<Vec3> points) {
    if (points.size() != 3) {
      throw new IllegalArgumentException(
          what + ": " + points.size() + " are given, three are needed");
    }
    double longest = 0;
    for (int i = 0; i < 3; i++) {
      Vec3 a = points.get(i);
      Vec3 b = points.get((i + 1) % 3);
      longest = Math.max(longest, Elementary.hypot(a.x() - b.x(), a.y() - b.y()));
    }
    double height = Math.abs(area(points.get(0), points.get(1), points.get(2))) / longest;
    if (!(height > SMALLEST_SPREAD * longest)) {
      throw new IllegalArgumentException(
          what + " lie on one line: three that span a triangle are needed to set a plane");
    }
  }

  private static void three(String what, List<Double> values) {
    if (values.size() != 3 || !values.stream().allMatch(Double::isFinite)) {
      throw new IllegalArgumentException(
          what + ": three finite values are needed, found " + values);
    }
  }
}
