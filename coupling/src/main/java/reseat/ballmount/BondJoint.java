package reseat.ballmount;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import reseat.elementary.Elementary;
import reseat.numerics.Bounds;
import reseat.units.FilledText;
import reseat.units.PrintedNumber;

/**
 * An adhesive joint between a ball and its stud: a thin layer on a surface of revolution whose
 * normal leans from the axis by an angle gamma.
 *
 * <p>A drilled ball on a turned boss has gamma = 90° (the layer is a sleeve), a ball on a flat has
 * gamma = 0, a ball on a conical bottom lies between. With area A, gap t, shear modulus G and
 * constrained modulus M of the layer:
 *
 * <pre>
 *   axial    k = (A/t) (M cos² gamma + G sin² gamma)
 *   lateral  k = (A/2t) (M sin² gamma + G (1 + cos² gamma))
 *   axial load:   normal F cos gamma / A,  shear F sin gamma / A
 *   lateral load: u = F/k;  normal M u sin gamma / t,  shear G u / t at their worst places
 * </pre>
 *
 * <p>Stresses are means over the layer: peaks at its ends are covered by the derating, which refers
 * to mean stress of a test piece. A fillet counts as half its leg along the outer rim, by
 * judgement. Compression through a ball that bottoms on metal goes through the metal and does not
 * load the layer.
 *
 * @param area bonded area without fillet, m²
 * @param lean angle gamma between the layer's normal and the axis, rad, 0 to pi/2
 * @param rimDiameter diameter of the outer rim, m
 * @param gap thickness of the layer, m
 * @param filletLeg leg of the fillet along the rim, m; zero without
 * @param bottomsOnMetal whether ball and stud touch
 * @param adhesive the adhesive
 * @param derating from test strength to design strength
 * @param temperature highest service temperature, K
 */
public record BondJoint(
    double area,
    double lean,
    double rimDiameter,
    double gap,
    double filletLeg,
    boolean bottomsOnMetal,
    Adhesive adhesive,
    BondDerating derating,
    double temperature) {

  /** Gap below which a joint may be starved of adhesive, m; common practice. */
  public static final double STARVED_GAP = 0.05e-3;

  /** Gap above which a layer is soft and weak, m; common practice. */
  public static final double THICK_GAP = 0.2e-3;

  /** Load on the joint. */
  public record Load(double pull, double lateral) {

    /**
     * A load on the ball.
     *
     * @param pull force along the axis that would draw the ball off, N; negative presses it on
     * @param lateral force across the axis, N; the sign does not matter
     */
    public Load {
      if (!Double.isFinite(pull) || !Double.isFinite(lateral)) {
        throw new IllegalArgumentException(
            "load on the bond is "
                + PrintedNumber.shortest(pull)
                + " N along and "
                + PrintedNumber.shortest(lateral)
                + " N across: not finite");
      }
    }
  }

  /** Checks the geometry. */
  public BondJoint {
    Objects.requireNonNull(adhesive, "adhesive of a bond joint must be given, found null");
    Objects.requireNonNull(derating, "derating of a bond joint must be given, found null");
    Bounds.positive("bonded area", area, "m^2");
    Bounds.fromUpTo("lean of the bonded surface", lean, "rad", 0, Elementary.nextUp(Math.PI / 2));
    Bounds.positive("rim diameter of the bond", rimDiameter, "m");
    Bounds.positive("gap of the bond", gap, "m");
    Bounds.notNegative("fillet of the bond", filletLeg, "m");
    Bounds.positive("service temperature of the bond", temperature, "K");
    if (!(gap < rimDiameter / 4)) {
      throw new IllegalArgumentException(
          FilledText.of(
              "gap of the bond is %.4g mm on a rim of %.4g mm: a thin layer is assumed; check the"
                  + " unit",
              gap * 1e3, rimDiameter * 1e3));
    }
  }

  /**
   * A drilled ball on a turned boss, or a stud glued into a hole.
   *
   * @param diameter diameter of the boss, m
   * @param length bonded length, m
   * @param gap radial gap, m
   * @param bottomsOnMetal whether the boss bottoms in the hole
   * @param adhesive the adhesive
   * @param temperature highest service temperature, K
   * @return the joint, without fillet
   */
  public static BondJoint sleeve(
      double diameter,
      double length,
      double gap,
      boolean bottomsOnMetal,
      Adhesive adhesive,
      double temperature) {
    return new BondJoint(
        Math.PI * diameter * length,
        Math.PI / 2,
        diameter,
        gap,
        0,
        bottomsOnMetal,
        adhesive,
        BondDerating.USUAL,
        temperature);
  }

  /**
   * A ball on a conical or flat bottom, held by a ring of adhesive.
   *
   * @param area bonded area, m²
   * @param lean angle between the normal of the bonded surface and the axis, rad; zero for a flat
   * @param rimDiameter diameter of the outer rim, m
   * @param gap mean gap, m
   * @param bottomsOnMetal whether the ball touches the bottom
   * @param adhesive the adhesive
   * @param temperature highest service temperature, K
   * @return the joint, without fillet
   */
  public static BondJoint ring(
      double area,
      double lean,
      double rimDiameter,
      double gap,
      boolean bottomsOnMetal,
      Adhesive adhesive,
      double temperature) {
    return new BondJoint(
        area, lean, rimDiameter, gap, 0, bottomsOnMetal, adhesive, BondDerating.USUAL, temperature);
  }

  /**
   * Area that carries, half the fillet's leg included.
   *
   * @return area, m²
   */
  public double carryingArea() {
    return area + Math.PI * rimDiameter * filletLeg / 2;
  }

  /**
   * Axial force that breaks a fresh test piece of this area at room temperature.
   *
   * @return force, N, no derating
   */
  public double testStrength() {
    double normal = Elementary.cos(lean) / adhesive.tensileStrength();
    double shear = Elementary.sin(lean) / adhesive.shearStrength();
    return carryingArea() / Elementary.hypot(normal, shear);
  }

  /**
   * Axial stiffness of the layer; with metal touching it holds for pulling only.
   *
   * @return stiffness, N/m
   */
  public double axialStiffness() {
    double c = Elementary.cos(lean);
    double s = Elementary.sin(lean);
    return carryingArea()
        / gap
        * (adhesive.constrainedModulus() * c * c + adhesive.elasticity().shearModulus() * s * s);
  }

  /**
   * Lateral stiffness of the layer.
   *
   * @return stiffness, N/m
   */
  public double lateralStiffness() {
    double c = Elementary.cos(lean);
    double s = Elementary.sin(lean);
    return carryingArea()
        / (2 * gap)
        * (adhesive.constrainedModulus() * s * s
            + adhesive.elasticity().shearModulus() * (1 + c * c));
  }

  /**
   * How far the ball gives in the layer, along and across the axis. Tilt is left out.
   *
   * @return compliances at the ball centre
   */
  public StudCompliance compliance() {
    return new StudCompliance(1 / axialStiffness(), 1 / lateralStiffness(), 0, 0, 0);
  }

  /**
   * How far the ball may be drawn in when the adhesive cures: the layer can shrink only across its
   * thickness. Nothing if the ball bottoms on metal.
   *
   * @return movement across the layer, m
   */
  public double cureMovement() {
    return bottomsOnMetal ? 0 : gap * adhesive.cureShrinkage();
  }

  /**
   * Share of the design strength a load uses, shear and tension combined as the root of the sum of
   * squares; above 1 it is too much.
   *
   * @param load the load
   * @param sustained true for a load that stays, false for one that comes and goes
   * @return use of the design strength
   */
  public double use(Load load, boolean sustained) {
    double share =
        (sustained ? derating.sustainedShare() : derating.peakShare())
            * derating.temperatureShare(adhesive, temperature);
    double tension = Math.max(0, normalStress(load));
    return Elementary.hypot(
            tension / adhesive.tensileStrength(), shearStress(load) / adhesive.shearStrength())
        / share;
  }

  /**
   * Greatest normal stress in the layer.
   *
   * @param load the load
   * @return stress, Pa; tension positive
   */
  public double normalStress(Load load) {
    double u = Math.abs(load.lateral()) / lateralStiffness();
    return axialCarried(load) * Elementary.cos(lean) / carryingArea()
        + adhesive.constrainedModulus() * u * Elementary.sin(lean) / gap;
  }

  /**
   * Greatest shear stress in the layer, axial and lateral shares added.
   *
   * @param load the load
   * @return stress, Pa
   */
  public double shearStress(Load load) {
    double u = Math.abs(load.lateral()) / lateralStiffness();
    return Math.abs(axialCarried(load)) * Elementary.sin(lean) / carryingArea()
        + adhesive.elasticity().shearModulus() * u / gap;
  }

  /**
   * What may go wrong.
   *
   * @param sustained load that stays, such as the preload
   * @param peak largest load that comes and goes
   * @return cautions, none if there is nothing to say
   */
  public List<BondCaution> cautions(Load sustained, Load peak) {
    List<BondCaution> found = new ArrayList<>();
    if (!bottomsOnMetal) {
      found.add(BondCaution.HANGS_ON_ADHESIVE);
    }
    if (gap < STARVED_GAP) {
      found.add(BondCaution.GAP_STARVED);
    }
    if (gap > THICK_GAP) {
      found.add(BondCaution.GAP_THICK);
    }
    if (derating.temperatureShare(adhesive, temperature) < 1) {
      found.add(BondCaution.WARM);
    }
    if (use(sustained, true) > 1) {
      found.add(BondCaution.CREEPS);
    }
    if (use(peak, false) > 1) {
      found.add(BondCaution.BREAKS);
    }
    return List.copyOf(found);
  }

  private double axialCarried(Load load) {
    return bottomsOnMetal ? Math.max(0, load.pull()) : load.pull();
  }
}
