package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import reseat.design.BallMounting;
import reseat.design.CouplingDesign;
import reseat.design.Holder;
import reseat.design.LoadCase;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.material.ElasticConstants;
import reseat.material.Material;
import reseat.numerics.Distribution;
import reseat.seat.Ball;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GrooveExtent;
import reseat.seat.Seat;
import reseat.seat.SeatFrame;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.space.Vec3;
import reseat.space.Wrench;

/** Three invented couplings with sizes as a shop would choose them. */
public final class WorkedExamples {

  static final double UNLIMITED = Double.POSITIVE_INFINITY;
  private static final Material STEEL = TestCouplings.STEEL;

  private WorkedExamples() {}

  public static Vec3 mm(double x, double y, double z) {
    return new Vec3(1e-3 * x, 1e-3 * y, 1e-3 * z);
  }

  public static LoadCase load(String name, Vec3 force, Vec3 at) {
    return new LoadCase(name, Wrench.ofForce(force, at));
  }

  public static Preload pull(String name, double newton, Vec3 at) {
    return new Preload(
        name,
        newton,
        Vec3.Z.negated(),
        at,
        Distribution.NONE,
        Distribution.NONE,
        Distribution.NONE,
        "plain force");
  }

  private static Support steel(String name, Ball ball, Seat seat) {
    return new Support(name, ball, STEEL, seat, STEEL, UNLIMITED, BallMounting.rigid());
  }

  /**
   * Quick-change post of a small facing lathe: 1/2 in balls on a 69.85 mm circle in three radial 90
   * deg vees, 600 N in the middle; the tool points along +x.
   *
   * @param azimuthsDeg where the balls are: 0, 120, 240 has a ball toward the tool, 60, 180, 300 an
   *     edge of the triangle
   */
  public static CouplingDesign toolPost(double... azimuthsDeg) {
    List<Support> supports = new ArrayList<>();
    for (double a : azimuthsDeg) {
      double azimuth = Math.toRadians(a);
      Vec3 centre = Vec3.atAzimuth(azimuth).times(0.034925);
      Seat vee =
          VeeGroove.forBall(
              SeatFrame.level(centre, azimuth),
              0.00635,
              Math.toRadians(45),
              new GrooveExtent(0.01049, 0.01905, 0.001524, 0.002));
      supports.add(
          steel(String.format(Locale.ROOT, "%.0f deg", a), new Ball(centre, 0.00635), vee));
    }
    Vec3 tip = mm(47, 0, 15.2);
    return CouplingDesign.builder()
        .supports(supports)
        .preloads(List.of(pull("drawbolt", 600, Vec3.ZERO)))
        .holder(new Holder(14 / CouplingDesign.STANDARD_GRAVITY, mm(10, 0, 20), Vec3.ZERO))
        .toolPoint(tip)
        .cases(
            List.of(
                load("finish", new Vec3(-6, -4, -12), tip),
                load("rough", new Vec3(-30, -25, -70), tip),
                load("crash", new Vec3(0, 0, -400), tip)))
        .build();
  }

  /** Pallet of a grinding fixture: 20 mm balls in pairs of 10 mm pins along the bisectors. */
  public static CouplingDesign pallet() {
    Vec3[] centres = {mm(-80, -60, 0), mm(80, -60, 0), mm(0, 90, 0)};
    double[] axes = {30.96, 149.04, -90};
    String[] names = {"left", "right", "rear"};
    List<Support> supports = new ArrayList<>();
    List<Preload> preloads = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      Seat pins =
          CylinderPair.forBall(
              SeatFrame.level(centres[i], Math.toRadians(axes[i])),
              0.010,
              0.005,
              0.021213,
              0.032,
              UNLIMITED);
      supports.add(steel(names[i], new Ball(centres[i], 0.010), pins));
      preloads.add(pull("spring " + names[i], 400, centres[i]));
    }
    Vec3 corner = mm(95, 95, 60);
    return CouplingDesign.builder()
        .supports(supports)
        .preloads(preloads)
        .holder(new Holder(12, mm(5, 8, 45), Vec3.ZERO))
        .toolPoint(mm(70, 50, 60))
        .cases(
            List.of(
                load("grind", new Vec3(0, -30, -60), mm(70, 50, 60)),
                load("corner strike", new Vec3(0, -150, -900), corner)))
        .build();
  }

  /** Bracket of a sensor on a wall: 6 mm balls in cube corner, vee and flat, three magnets. */
  public static CouplingDesign sensorBracket() {
    double r = 0.003;
    Vec3 vee = mm(60, 0, 0);
    Vec3 flat = mm(25, 45, 0);
    double cube = Math.atan(Math.sqrt(2));
    List<Support> supports =
        List.of(
            stainless(
                "trihedral",
                new Ball(Vec3.ZERO, r),
                TrihedralSeat.forBall(
                    SeatFrame.level(Vec3.ZERO, Math.PI / 2), r, cube, UNLIMITED, 0)),
            stainless(
                "vee",
                new Ball(vee, r),
                VeeGroove.forBall(
                    SeatFrame.level(vee, 0), r, Math.toRadians(45), GrooveExtent.unlimited())),
            stainless(
                "flat", new Ball(flat, r), FlatSeat.forBall(SeatFrame.level(flat, 0), r, 0.01)));
    return CouplingDesign.builder()
        .supports(supports)
        .preloads(
            List.of(
                pull("magnet 1", 28, mm(12, 8, 0)),
                pull("magnet 2", 28, mm(48, 8, 0)),
                pull("magnet 3", 28, mm(27, 34, 0))))
        .holder(new Holder(0.42, mm(28, 16, 18), Vec3.ZERO))
        .gravity(Vec3.Y.negated())
        .toolPoint(mm(28, 16, 30))
        .cases(List.of(load("handling 3 g", new Vec3(0, 0, 12.4), mm(28, 16, 18))))
        .build();
  }

  private static Support stainless(String name, Ball ball, Seat seat) {
    Material m = new Material("hardened stainless", new ElasticConstants(200e9, 0.28));
    return new Support(name, ball, m, seat, m, UNLIMITED, BallMounting.rigid());
  }
}
