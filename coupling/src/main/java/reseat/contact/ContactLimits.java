package reseat.contact;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.material.Material;
import reseat.material.MaterialProperty;
import reseat.material.MaterialValue;
import reseat.material.Provenance;

/**
 * The peak pressures at which either body of a contact is harmed.
 *
 * <ul>
 *   <li><em>First yield</em>, ductile bodies: p0 = Y/(2 max shear/p0), shear under the true ellipse
 *       at the body's own Poisson's ratio, after Tresca. Plastic flow begins below the surface; the
 *       seat is still far from a visible dent.
 *   <li><em>Static brinelling</em>, steel of 58 HRC and harder only: 4200 MPa, the static limit of
 *       ISO 76:2006 for ball bearings (an extract was read). It leaves a set of a ten-thousandth of
 *       the ball diameter, 1.27 um for a 12.7 mm ball, which is more than most couplings may lose:
 *       a limit against damage, not one for precision.
 *   <li><em>Edge crack</em>, brittle bodies: tension at the edge of the ellipse reaches the
 *       flexural or else the tensile strength. On the safe side, see {@link EdgeTension}.
 *   <li><em>Crushing</em>, brittle bodies: half the compressive strength, an engineering judgement
 *       without a source (0.5 to 0.7 is common).
 * </ul>
 *
 * <p>A body of which the catalog knows no strength has no limit here and is listed in {@link
 * #unrated()}; that is not the same as being safe.
 */
public final class ContactLimits {

  /** Static limit for hardened steel, Pa; ISO 76:2006, ball bearings. */
  public static final double STATIC_BRINELLING_PRESSURE = 4200e6;

  /** Permanent set of ball and seat together at that limit, over the ball diameter; ISO 76:2006. */
  public static final double STATIC_BRINELLING_SET = 1e-4;

  /** Least hardness for that limit, HRC; ISO 76:2006. */
  public static final double STATIC_BRINELLING_HARDNESS = 58;

  /** Part of the compressive strength taken as the crushing limit; judgement, no source. */
  public static final double CRUSHING_PART = 0.5;

  /** Which body of the pair. */
  public enum Body {
    /** The first of the elastic pair. */
    FIRST,
    /** The second. */
    SECOND
  }

  /** Kind of harm. */
  public enum Kind {
    /** Plastic flow begins below the surface of a ductile body. */
    FIRST_YIELD,
    /** Hardened steel takes a lasting dent of 1e-4 of the ball diameter. */
    STATIC_BRINELLING,
    /** A brittle body may crack at the edge of the patch. */
    EDGE_CRACK,
    /** A brittle body may be crushed. */
    CRUSHING
  }

  /**
   * One limit.
   *
   * @param kind kind of harm
   * @param body which body
   * @param material its material
   * @param peakPressure p0 at which it begins, Pa
   * @param provenance how far the strength behind it can be trusted
   * @param source where the strength comes from
   */
  public record Limit(
      Kind kind,
      Body body,
      Material material,
      double peakPressure,
      Provenance provenance,
      String source)
      implements Comparable<Limit> {

    /** Orders limits by pressure, the lowest first; unequal limits may compare as equal. */
    @Override
    public int compareTo(Limit other) {
      return Double.compare(peakPressure, other.peakPressure);
    }
  }

  private final BallContact contact;
  private final SubsurfaceStress firstStress;
  private final SubsurfaceStress secondStress;
  private final List<Limit> limits;
  private final List<Material> unrated;

  private ContactLimits(BallContact contact, Material first, Material second) {
    this.contact = contact;
    double aspect = contact.aspect();
    firstStress = SubsurfaceStress.of(aspect, first.elastic().poisson());
    secondStress =
        second.elastic().poisson() == first.elastic().poisson()
            ? firstStress
            : SubsurfaceStress.of(aspect, second.elastic().poisson());
    List<Limit> found = new ArrayList<>();
    List<Material> without = new ArrayList<>();
    for (Body body : Body.values()) {
      Material material = body == Body.FIRST ? first : second;
      int before = found.size();
      if (material.brittle()) {
        addBrittle(found, body, material);
      } else {
        addDuctile(found, body, material);
      }
      if (found.size() == before && !without.contains(material)) {
        without.add(material);
      }
    }
    Collections.sort(found);
    limits = List.copyOf(found);
    unrated = List.copyOf(without);
  }

  /**
   * Returns the limits of a contact.
   *
   * @param contact the contact
   * @param first material of the first body of its elastic pair
   * @param second material of the second body
   * @return the limits
   * @throws IllegalArgumentException if the contact was made with other elastic constants
   */
  public static ContactLimits of(BallContact contact, Material first, Material second) {
    if (!contact.elasticity().first().equals(first.elastic())
        || !contact.elasticity().second().equals(second.elastic())) {
      throw new IllegalArgumentException(
          "the contact was made with other elastic constants than those of "
              + first.name()
              + " and "
              + second.name());
    }
    return new ContactLimits(contact, first, second);
  }

  /**
   * Returns all limits.
   *
   * @return the limits, lowest first
   */
  public List<Limit> limits() {
    return limits;
  }

  /**
   * Returns the limit that is reached first.
   *
   * @return the lowest, if either body has one
   */
  public Optional<Limit> governing() {
    return limits.isEmpty() ? Optional.empty() : Optional.of(limits.get(0));
  }

  /**
   * Returns the materials for which no strength is known.
   *
   * @return the materials without any limit
   */
  public List<Material> unrated() {
    return unrated;
  }

  /**
   * Returns the stresses under the contact in one body.
   *
   * @param body which body
   * @return stresses over the peak pressure
   */
  public SubsurfaceStress subsurface(Body body) {
    return body == Body.FIRST ? firstStress : secondStress;
  }

  /**
   * Returns the greatest shear stress in one body.
   *
   * @param body which body
   * @param force compression, zero or more, N
   * @return shear stress, Pa
   */
  public double maxShear(Body body, double force) {
    return subsurface(body).maxShear() * contact.peakPressure(force);
  }

  /**
   * Returns the depth of the greatest shear stress in one body.
   *
   * @param body which body
   * @param force compression, zero or more, N
   * @return depth below the surface, m
   */
  public double maxShearDepth(Body body, double force) {
    return subsurface(body).maxShearDepth() * contact.semiMinor(force);
  }

  private void addDuctile(List<Limit> found, Body body, Material material) {
    Optional<MaterialValue> flow = material.flowStrength();
    if (flow.isPresent()) {
      double pressure = flow.get().nominal() * subsurface(body).firstYieldTresca();
      found.add(limit(Kind.FIRST_YIELD, body, material, pressure, flow.get()));
    }
    OptionalDouble hardness = material.nominal(MaterialProperty.ROCKWELL_C);
    if (material.family().equals("steel")
        && hardness.isPresent()
        && hardness.getAsDouble() >= STATIC_BRINELLING_HARDNESS) {
      found.add(
          new Limit(
              Kind.STATIC_BRINELLING,
              body,
              material,
              STATIC_BRINELLING_PRESSURE,
              Provenance.SEEN,
              "ISO 76:2006, static limit of ball bearings"));
    }
  }

  private void addBrittle(List<Limit> found, Body body, Material material) {
    Optional<MaterialValue> surface = material.surfaceStrength();
    if (surface.isPresent()) {
      EdgeTension edge = EdgeTension.of(contact.aspect(), material.elastic().poisson());
      double pressure = surface.get().nominal() / edge.greatest();
      found.add(limit(Kind.EDGE_CRACK, body, material, pressure, surface.get()));
    }
    Optional<MaterialValue> crushing = material.value(MaterialProperty.COMPRESSIVE_STRENGTH);
    if (crushing.isPresent()) {
      double pressure = CRUSHING_PART * crushing.get().nominal();
      found.add(limit(Kind.CRUSHING, body, material, pressure, crushing.get()));
    }
  }

  private static Limit limit(
      Kind kind, Body body, Material material, double pressure, MaterialValue strength) {
    return new Limit(kind, body, material, pressure, strength.provenance(), strength.source());
  }
}
