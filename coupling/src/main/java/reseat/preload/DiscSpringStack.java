package reseat.preload;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import reseat.numerics.Bounds;
import reseat.units.PrintedNumber;

/**
 * Disc springs in a stack: packets of equal discs laid the same way (parallel) turned against each
 * other (series).
 *
 * <p>Discs in a packet add their forces, packets add their travels. Friction between nested discs
 * and at the edges holds back loading and unloading by a share {@code w} for each of the {@code n -
 * 1} nested faces and one for the edges, so the force may lie in the band {@code n F1/(1 + n w)} to
 * {@code n F1/(1 - n w)}; 2 to 3 % a face is usual (recalled from memory). The middle of that band
 * is nominal, its half width is scatter from one mounting to the next, together with what the
 * tolerance of the set deflection makes. Opening of the halves compresses the stack further; it is
 * reckoned no further than slack or flat.
 *
 * @param disc the disc
 * @param parallel discs in each packet, at least 1
 * @param series packets in the stack, at least 1
 * @param deflection compression of the whole stack from its free length, m
 * @param deflectionTolerance half range of the deflection from one mounting to the next, m
 * @param frictionPerFace share of force lost at each nested face
 * @param forceAccuracy relative half range of the maker's force
 * @param modulusPerKelvin relative change of Young's modulus, 1/K; about -2.5e-4 for steel
 */
public record DiscSpringStack(
    DiscSpring disc,
    int parallel,
    int series,
    double deflection,
    double deflectionTolerance,
    double frictionPerFace,
    double forceAccuracy,
    double modulusPerKelvin)
    implements PreloadDevice {

  /** Halvings of the travel when a deflection is sought: 1e-15 of it. */
  private static final int HALVINGS = 50;

  /** Usual share of force lost at each nested face, recalled from memory. */
  public static final double USUAL_FRICTION = 0.02;

  /**
   * Maker's tolerance on the force of a disc of 1.25 to 3 mm, +15 to -7.5 % (recalled from memory
   * of DIN EN 16983), as half range.
   */
  public static final double USUAL_ACCURACY = 0.11;

  /** Relative change of Young's modulus of spring steel, 1/K, recalled from memory. */
  public static final double STEEL_MODULUS_PER_KELVIN = -2.5e-4;

  /** Share of the travel above which the force rises faster than computed. */
  public static final double NEARLY_FLAT = 0.75;

  /** Share of the travel below which a disc rattles; common practice, no source. */
  public static final double HARDLY_COMPRESSED = 0.15;

  /** Checks the arrangement and that the stack is not compressed past flat. */
  public DiscSpringStack {
    Objects.requireNonNull(disc, "disc of a disc spring stack must be given, found null");
    if (parallel < 1 || series < 1) {
      throw new IllegalArgumentException(
          "disc spring stack: "
              + parallel
              + " in parallel and "
              + series
              + " in series, at least 1"
              + " of each is needed");
    }
    Bounds.positive("deflection of the disc spring stack", deflection, "m");
    Bounds.notNegative("tolerance of the deflection", deflectionTolerance, "m");
    Bounds.fromUpTo("friction share of each disc face", frictionPerFace, "", 0, 1.0 / parallel);
    Bounds.fromUpTo("relative accuracy of the disc force", forceAccuracy, "", 0, 1);
    double flat = series * disc.flatTravel();
    if (!(deflection <= flat)) {
      throw new IllegalArgumentException(
          "disc spring stack is compressed by "
              + PrintedNumber.shortest(deflection)
              + " m: it is flat at "
              + PrintedNumber.shortest(flat)
              + " m; use more discs in series or less deflection");
    }
  }

  /**
   * A stack with usual friction, accuracy and spring steel.
   *
   * @param disc the disc
   * @param parallel discs in each packet
   * @param series packets in the stack
   * @param deflection compression of the whole stack, m
   * @param deflectionTolerance half range of the deflection from one mounting to the next, m
   * @return the stack
   */
  public static DiscSpringStack of(
      DiscSpring disc, int parallel, int series, double deflection, double deflectionTolerance) {
    return new DiscSpringStack(
        disc,
        parallel,
        series,
        deflection,
        deflectionTolerance,
        USUAL_FRICTION,
        USUAL_ACCURACY,
        STEEL_MODULUS_PER_KELVIN);
  }

  @Override
  public double force(double opening) {
    double flat = series * disc.flatTravel();
    return forceWithoutFriction(Math.max(0, Math.min(flat, deflection + opening)));
  }

  /**
   * Force while the stack is being compressed further.
   *
   * @return force, N
   */
  public double loadingForce() {
    return nominalForce() / (1 - parallel * frictionPerFace);
  }

  /**
   * Force while the stack is being let out.
   *
   * @return force, N
   */
  public double unloadingForce() {
    return nominalForce() / (1 + parallel * frictionPerFace);
  }

  @Override
  public double axialStiffness() {
    return parallel * disc.stiffness(travel()) / series;
  }

  @Override
  public ForceScatter scatter() {
    double friction = (loadingForce() - unloadingForce()) / (2 * nominalForce());
    double setting = Math.abs(axialStiffness()) * deflectionTolerance / nominalForce();
    return ForceScatter.uniform(
        Math.min(0.999, friction + setting),
        "friction of the disc faces plus tolerance of the deflection, added");
  }

  @Override
  public ForceScatter accuracy() {
    return ForceScatter.uniform(forceAccuracy, "stated accuracy of the disc force");
  }

  @Override
  public double relativeChangePerKelvin() {
    return modulusPerKelvin;
  }

  @Override
  public double storedEnergy() {
    return parallel * series * disc.energy(travel());
  }

  /**
   * Share of the travel to flat that is used.
   *
   * @return travel over flat travel, 0 to 1
   */
  public double usedTravel() {
    return travel() / disc.flatTravel();
  }

  @Override
  public List<DeviceCaution> cautions() {
    List<DeviceCaution> found = new ArrayList<>();
    found.add(DeviceCaution.STORED_SPRING_ENERGY);
    if (disc.snapsThrough()) {
      found.add(DeviceCaution.SNAPS_THROUGH);
    }
    if (usedTravel() > NEARLY_FLAT) {
      found.add(DeviceCaution.NEARLY_FLAT);
    }
    if (usedTravel() < HARDLY_COMPRESSED) {
      found.add(DeviceCaution.HARDLY_COMPRESSED);
    }
    return List.copyOf(found);
  }

  @Override
  public Optional<CautionFigure> figureOf(DeviceCaution caution) {
    return switch (caution) {
      case SNAPS_THROUGH ->
          Optional.of(
              CautionFigure.atMost(
                  disc.flatTravel() / disc.thickness(), DiscSpring.SNAP_THROUGH_RATIO));
      case NEARLY_FLAT -> Optional.of(CautionFigure.atMost(usedTravel(), NEARLY_FLAT));
      case HARDLY_COMPRESSED -> Optional.of(CautionFigure.atLeast(usedTravel(), HARDLY_COMPRESSED));
      default -> Optional.empty();
    };
  }

  @Override
  public Optional<Double> mostForce() {
    return Optional.of(forceWithoutFriction(series * disc.risingTravel()));
  }

  /** The deflection on the rising part of the curve. Convergence: 1e-12 of the travel. */
  @Override
  public Optional<BenchSetting> settingFor(double wanted) {
    Optional<Double> found = deflectionFor(wanted);
    return found.isEmpty()
        ? Optional.empty()
        : Optional.of(new BenchSetting(BenchSetting.Kind.DEFLECTION, found.get()));
  }

  @Override
  public Optional<DiscSpringStack> setTo(double wanted) {
    Optional<Double> found = deflectionFor(wanted);
    return found.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new DiscSpringStack(
                disc,
                parallel,
                series,
                found.get(),
                deflectionTolerance,
                frictionPerFace,
                forceAccuracy,
                modulusPerKelvin));
  }

  @Override
  public <T> T accept(Visitor<T> visitor) {
    return visitor.discSpringStack(this);
  }

  private Optional<Double> deflectionFor(double wanted) {
    double top = series * disc.risingTravel();
    double strongest = forceWithoutFriction(top);
    if (!(wanted > 0 && wanted <= strongest)) {
      return Optional.empty();
    }
    if (wanted == strongest) {
      return Optional.of(top);
    }
    // halving: the force rises all the way, and a library's solver costs 15 ms at the first start
    double low = 0;
    double high = top;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (forceWithoutFriction(middle) < wanted) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Optional.of((low + high) / 2);
  }

  private double forceWithoutFriction(double stackDeflection) {
    return parallel * disc.force(stackDeflection / series);
  }

  private double travel() {
    return deflection / series;
  }
}
