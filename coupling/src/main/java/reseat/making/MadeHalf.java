package reseat.making;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.MachineAxis;
import reseat.design.Preload;
import reseat.design.StudMount;
import reseat.design.Support;
import reseat.design.ToleranceKind;
import reseat.elementary.Elementary;
import reseat.making.MadeDimension.Kind;
import reseat.space.Vec3;
import reseat.units.FilledText;

/**
 * One half of a coupling as its maker needs it: everything that has a place, in the maker's axes.
 *
 * <p>Heights are told from the plane of the ball centres, positive out of the worked face; the
 * origin is that of the coupling frame. Preloads are told for both halves, the tool point for the
 * moving one.
 *
 * @param view how the maker sees it
 * @param carriesBalls whether the balls are on this half; else the seats are
 * @param features what is made, support by support, then the tool point and lines of pull
 */
public record MadeHalf(MakerView view, boolean carriesBalls, List<MadeFeature> features) {

  private static final double NONE = Double.POSITIVE_INFINITY;

  /** Copies the list. */
  public MadeHalf {
    features = List.copyOf(features);
  }

  /**
   * Returns what is made of one half.
   *
   * @param design the coupling
   * @param half which half
   * @return the half in its maker's axes
   */
  public static MadeHalf of(CouplingDesign design, Half half) {
    MakerView view = new MakerView(half);
    StatedTolerances stated = new StatedTolerances(design);
    boolean balls = design.ballsOn() == half;
    List<MadeFeature> features = new ArrayList<>();
    for (Support s : design.supports()) {
      features.addAll(
          balls ? ballFeatures(s, view, stated) : new MadeSeat(s, view, stated).features());
    }
    if (half == Half.HOLDER) {
      features.add(toolPoint(design, view, stated));
    }
    for (Preload p : design.preloads()) {
      features.add(lineOfPull(p, view));
    }
    return new MadeHalf(view, balls, features);
  }

  /**
   * Returns the features of one kind.
   *
   * @param kind which kind
   * @return those features in order, possibly none
   */
  public List<MadeFeature> ofKind(MadeFeature.Kind kind) {
    return features.stream().filter(f -> f.kind() == kind).toList();
  }

  private static List<MadeFeature> ballFeatures(
      Support s, MakerView view, StatedTolerances stated) {
    List<MadeFeature> made = new ArrayList<>();
    made.add(
        new MadeFeature(
            MadeFeature.Kind.BALL,
            s.name(),
            view.turnedOver(s.ball().centre()),
            OptionalDouble.of(view.azimuth(s.seat().frame().axis())),
            stated.ofBall(s),
            List.of(
                new MadeDimension(
                    Kind.DIAMETER,
                    "",
                    s.ball().diameter(),
                    stated.of(ToleranceKind.BALL_DIAMETER, s))),
            "ball of " + s.ballMaterial().name()));
    s.mounting().stud().ifPresent(m -> made.add(studHole(s, m, view)));
    return made;
  }

  private static MadeFeature studHole(Support s, StudMount mount, MakerView view) {
    Vec3 axis = s.mounting().axis();
    Vec3 foot = s.ball().centre().minus(axis.times(mount.stud().stickOut()));
    List<MadeDimension> sizes = new ArrayList<>();
    sizes.add(new MadeDimension(Kind.STICK_OUT, "", mount.stud().stickOut(), NONE));
    sizes.add(new MadeDimension(Kind.NECK_DIAMETER, "", mount.stud().neckDiameter(), NONE));
    mount
        .thread()
        .ifPresent(
            t -> {
              double d = t.limits().thread().diameter();
              sizes.add(new MadeDimension(Kind.THREAD_DIAMETER, "", d, NONE));
              sizes.add(new MadeDimension(Kind.ENGAGEMENT, "", t.engagement(), NONE));
            });
    String thread = mount.thread().map(t -> "tapped " + t.limits().thread()).orElse("");
    return new MadeFeature(
        MadeFeature.Kind.STUD_HOLE,
        s.name(),
        view.turnedOver(foot),
        OptionalDouble.empty(),
        PlaceTolerance.UNSTATED,
        sizes,
        leaning(thread, axis, view));
  }

  private static MadeFeature lineOfPull(Preload p, MakerView view) {
    double down = p.direction().z();
    Vec3 through =
        Math.abs(down) < 0.1 ? p.at() : p.at().minus(p.direction().times(p.at().z() / down));
    Vec3 line = down < 0 ? p.direction().negated() : p.direction();
    return new MadeFeature(
        MadeFeature.Kind.LINE_OF_PULL,
        p.name(),
        view.turnedOver(through),
        OptionalDouble.empty(),
        PlaceTolerance.UNSTATED,
        List.of(),
        leaning(p.device(), view.mirrored() ? line.negated() : line, view));
  }

  private static MadeFeature toolPoint(
      CouplingDesign design, MakerView view, StatedTolerances stated) {
    List<MadeDimension> sizes = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      MachineAxis axis = design.axes().axis(i);
      sizes.add(
          new MadeDimension(
              Kind.MACHINE_COORDINATE,
              axis.name(),
              design.toolPoint().dot(axis.direction()),
              stated.of(ToleranceKind.TOOL_POINT, "", axis.name())));
    }
    return new MadeFeature(
        MadeFeature.Kind.TOOL_POINT,
        "tool point",
        view.turnedOver(design.toolPoint()),
        OptionalDouble.empty(),
        PlaceTolerance.UNSTATED,
        sizes,
        "");
  }

  /** Adds how far an axis leans from square to the face, if it does. */
  private static String leaning(String note, Vec3 axis, MakerView view) {
    double lean = Elementary.acos(Math.min(1, Math.abs(axis.unit().dot(view.outOfFace()))));
    Optional<String> words =
        lean < 1e-6
            ? Optional.empty()
            : Optional.of(
                FilledText.of(
                    "leans %.2f deg toward %.2f deg",
                    Elementary.toDegrees(lean), Elementary.toDegrees(view.azimuth(axis))));
    return words.map(w -> note.isEmpty() ? w : note + "; " + w).orElse(note);
  }
}
