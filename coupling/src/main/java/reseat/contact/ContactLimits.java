package reseat.contact;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import reseat.material.FrictionCatalog;
import reseat.material.Material;
import reseat.material.MaterialProperty;
import reseat.material.MaterialValue;
import reseat.material.Provenance;
import reseat.material.SurfaceState;

/**
 * The peak pressures at which either body of a contact is harmed.
 *
 * <ul>
 *   <li><em>First yield</em>, ductile bodies: p0 = Y/(2 max shear/p0), shear under the true ellipse
 *       at the body's own Poisson's ratio, after Tresca. Nothing yields below it; what a higher
 *       pressure leaves behind, {@link #dent} tells.
 *   <li><em>Static brinelling</em>, only where both bodies are bearing or tool steel of 58 HRC and
 *       harder, and the hard layer of the seat is deep enough: 4200 MPa, the static limit of ISO
 *       76:2006 for ball bearings (an extract was read). It leaves a set of a ten-thousandth of the
 *       ball diameter: a limit against damage, not one for precision.
 *   <li><em>Flow of brittle bodies</em> below the surface: the same shear against a third of the
 *       Vickers hardness, or the compressive yield strength if it is known.
 *   <li><em>Ring crack</em>, brittle bodies of known toughness: {@link RingCrack}, at the oiled
 *       friction of the pair and the depth of flaws that the body's finish leaves.
 *   <li><em>Edge crack</em>, brittle bodies of unknown toughness: tension at the edge of the
 *       sliding patch reaches the flexural or else the tensile strength of a bar; on the safe side.
 * </ul>
 *
 * <p>A uniaxial crushing strength is no limit: under a patch the material is held on all sides. A
 * body of which the catalog knows no strength has no limit here and is listed in {@link
 * #unrated()}; that is not the same as being safe.
 */
public final class ContactLimits {

  /** Static limit for hardened steel, Pa; ISO 76:2006, ball bearings. */
  public static final double STATIC_BRINELLING_PRESSURE = 4200e6;

  /** Permanent set of ball and seat together at that limit, over the ball diameter; ISO 76:2006. */
  public static final double STATIC_BRINELLING_SET = 1e-4;

  /** Least hardness for that limit, HRC; ISO 76:2006. */
  public static final double STATIC_BRINELLING_HARDNESS = 58;

  /**
   * Depth of a hard layer over that of the greatest shear at which the layer carries the pressure
   * alone; common practice, no source.
   */
  public static final double CASE_FACTOR = 3;

  /** Deepest scratch on a ball of grade 10 or finer, and on a lapped seat, m; judgement. */
  public static final double BALL_FLAW = 2e-6;

  /** Deepest scratch on a ground seat, m; judgement. */
  public static final double SEAT_FLAW = 5e-6;

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
    /** A brittle body begins to flow below the surface. */
    FLOW_BRITTLE,
    /** A ring crack may run in a brittle body from a flaw beside the patch. */
    RING_CRACK,
    /** A brittle body of unknown toughness may crack at the edge of the patch. */
    EDGE_CRACK;

    /**
     * Says whether it is flow below the surface, which leaves a dent and no crack.
     *
     * @return true for first yield and for flow of brittle bodies
     */
    public boolean isFlow() {
      return this == FIRST_YIELD || this == FLOW_BRITTLE;
    }
  }

  /** What a force leaves behind on the bodies, mildest first. */
  public enum Surface {
    /** No mark. */
    ELASTIC,
    /** A little settling at the first mount, nothing to be seen. */
    SETTLES,
    /** A dent; usable after work-in. */
    DENTS,
    /** A dent like a Brinell ball's. */
    DENTS_FULLY,
    /** A crack may run from a flaw. */
    MAY_CRACK,
    /** A crack runs. */
    CRACKS
  }

  /**
   * One limit.
   *
   * @param kind kind of harm
   * @param body which body
   * @param material its material
   * @param peakPressure p0 at which it begins, Pa
   * @param breaks p0 at which it surely breaks the body, Pa; infinite where it never does
   * @param flaw depth of the surface flaws that it was found for, m; zero where none counts
   * @param provenance how far the strength behind it can be trusted
   * @param source where the strength comes from
   */
  public record Limit(
      Kind kind,
      Body body,
      Material material,
      double peakPressure,
      double breaks,
      double flaw,
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
  private final Material first;
  private final Material second;
  private final double friction;
  private final SubsurfaceStress firstStress;
  private final SubsurfaceStress secondStress;
  private final List<Limit> limits;
  private final List<Material> unrated;
  private final double caseDepth;
  private DentedContact dented;

  private ContactLimits(BallContact contact, Material first, Material second, double caseDepth) {
    this.contact = contact;
    this.first = first;
    this.second = second;
    this.caseDepth = caseDepth;
    friction =
        first.brittle() || second.brittle()
            ? FrictionCatalog.standard().between(first, second, SurfaceState.OILED).nominal()
            : 0;
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
   * Returns the limits of a contact between bodies that are hard right through.
   *
   * @param contact the contact
   * @param first material of the first body of its elastic pair, the ball
   * @param second material of the second body, the seat
   * @return the limits
   * @throws IllegalArgumentException if the contact was made with other elastic constants
   */
  public static ContactLimits of(BallContact contact, Material first, Material second) {
    return of(contact, first, second, Double.POSITIVE_INFINITY);
  }

  /**
   * Returns the limits of a contact.
   *
   * @param contact the contact
   * @param first material of the first body of its elastic pair, the ball
   * @param second material of the second body, the seat
   * @param caseDepth depth of the hard layer of the seat, m; infinite if hard right through
   * @return the limits
   * @throws IllegalArgumentException if the contact was made with other elastic constants
   */
  public static ContactLimits of(
      BallContact contact, Material first, Material second, double caseDepth) {
    if (!contact.elasticity().first().equals(first.elastic())
        || !contact.elasticity().second().equals(second.elastic())) {
      throw new IllegalArgumentException(
          "the contact was made with other elastic constants than those of "
              + first.name()
              + " and "
              + second.name());
    }
    return new ContactLimits(contact, first, second, caseDepth);
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

  /**
   * Returns the coefficient of friction that cracks at the sliding edge were judged with.
   *
   * @return expected oiled value of the pair; zero where no body is brittle
   */
  public double friction() {
    return friction;
  }

  /**
   * Returns the limit beyond which a body flows first.
   *
   * @return the lowest of the limits of flow, if either body has one
   */
  public Optional<Limit> flow() {
    return limits.stream().filter(l -> l.kind().isFlow()).findFirst();
  }

  /**
   * Returns what the greatest force ever leaves behind.
   *
   * @param greatest that force, N
   * @return the dent; empty if nothing flows, no strength is known, or the contact is a ring, for
   *     which there is no law
   */
  public Optional<Dent> dent(double greatest) {
    Optional<Limit> flows = flow();
    if (flows.isEmpty()
        || !(greatest > 0 && contact.peakPressure(greatest) > flows.get().peakPressure())) {
      return Optional.empty();
    }
    return contact.accept(
        new BallContact.Visitor<>() {
          @Override
          public Optional<Dent> point(EllipticContact point) {
            return Optional.of(dented(point, flows.get()).under(greatest));
          }

          @Override
          public Optional<Dent> ringThird(RingThird third) {
            return Optional.empty();
          }
        });
  }

  /**
   * Returns the depth of a surface flaw from which a ring crack would run.
   *
   * @param limit a limit of ring crack of this contact
   * @param peakPressure p0, above zero, Pa
   * @return depth by the tension at the sliding edge, m
   * @throws IllegalArgumentException if the limit is of another kind
   */
  public double runningFlaw(Limit limit, double peakPressure) {
    if (limit.kind() != Kind.RING_CRACK) {
      throw new IllegalArgumentException("a limit of ring crack is wanted, found " + limit.kind());
    }
    double tension =
        RingCrack.slidingTension(contact.aspect(), limit.material().elastic().poisson(), friction);
    return RingCrack.runningFlaw(
        limit.material().nominal(MaterialProperty.TOUGHNESS).orElseThrow(), tension * peakPressure);
  }

  /**
   * Returns the state of the surfaces.
   *
   * @param greatest greatest force ever on the contact, N
   * @return the worst of both bodies; elastic where no strength is known
   */
  public Surface surface(double greatest) {
    double pressure = greatest > 0 ? contact.peakPressure(greatest) : 0;
    Surface worst = Surface.ELASTIC;
    for (Limit limit : limits) {
      if (pressure > limit.breaks()) {
        return Surface.CRACKS;
      }
      if (pressure > limit.peakPressure()
          && !limit.kind().isFlow()
          && limit.kind() != Kind.STATIC_BRINELLING) {
        worst = Surface.MAY_CRACK;
      }
    }
    Optional<Limit> flows = flow();
    if (worst != Surface.ELASTIC || flows.isEmpty()) {
      return worst;
    }
    Optional<Dent> dent = dent(greatest);
    if (dent.isPresent()) {
      return switch (dent.get().state()) {
        case ELASTIC -> Surface.ELASTIC;
        case SETTLES -> Surface.SETTLES;
        case DENTS -> Surface.DENTS;
        case DENTS_FULLY -> Surface.DENTS_FULLY;
      };
    }
    double ratio = pressure / flows.get().peakPressure();
    return ratio <= 1
        ? Surface.ELASTIC
        : ratio <= DentedContact.SHAKEDOWN ? Surface.SETTLES : Surface.DENTS;
  }

  private DentedContact dented(EllipticContact point, Limit flows) {
    if (dented == null) {
      Material material = flows.material();
      double strength =
          material.brittle()
              ? material.brittleFlow().orElseThrow()
              : material.dentStrength().orElseThrow().nominal();
      dented =
          DentedContact.of(point, strength, material.elastic().poisson(), flows.peakPressure());
    }
    return dented;
  }

  private void addDuctile(List<Limit> found, Body body, Material material) {
    Optional<MaterialValue> flow = material.pressedStrength();
    if (flow.isPresent()) {
      double pressure = flow.get().nominal() * subsurface(body).firstYieldTresca();
      found.add(
          limit(Kind.FIRST_YIELD, body, material, pressure, Double.POSITIVE_INFINITY, flow.get()));
    }
    if (isHard(first) && isHard(second) && caseCarries()) {
      found.add(
          new Limit(
              Kind.STATIC_BRINELLING,
              body,
              material,
              STATIC_BRINELLING_PRESSURE,
              Double.POSITIVE_INFINITY,
              0,
              Provenance.SEEN,
              "ISO 76:2006, static limit of ball bearings"));
    }
  }

  private static boolean isHard(Material material) {
    OptionalDouble hardness = material.nominal(MaterialProperty.ROCKWELL_C);
    return !material.brittle()
        && material.family().equals("steel")
        && hardness.isPresent()
        && hardness.getAsDouble() >= STATIC_BRINELLING_HARDNESS;
  }

  /** Whether the hard layer of the seat is deep enough for the static limit. */
  private boolean caseCarries() {
    return Double.isInfinite(caseDepth)
        || caseDepth
            >= CASE_FACTOR
                * maxShearDepth(
                    Body.SECOND, contact.forceAtPeakPressure(STATIC_BRINELLING_PRESSURE));
  }

  private void addBrittle(List<Limit> found, Body body, Material material) {
    OptionalDouble flow = material.brittleFlow();
    Optional<MaterialValue> hardness = material.value(MaterialProperty.VICKERS_HARDNESS);
    if (flow.isPresent()) {
      found.add(
          limit(
              Kind.FLOW_BRITTLE,
              body,
              material,
              flow.getAsDouble() * subsurface(body).firstYieldTresca(),
              // the mean pressure reaches the hardness
              hardness.isPresent() ? 1.5 * hardness.get().nominal() : Double.POSITIVE_INFINITY,
              material.value(MaterialProperty.COMPRESSIVE_YIELD).orElseGet(hardness::orElseThrow)));
    }
    Optional<MaterialValue> toughness = material.value(MaterialProperty.TOUGHNESS);
    Optional<MaterialValue> surface = material.surfaceStrength();
    double poisson = material.elastic().poisson();
    if (toughness.isPresent()) {
      RingCrack ring = RingCrack.of(contact, poisson, friction, toughness.get().nominal());
      double flaw =
          material
              .nominal(MaterialProperty.FLAW_DEPTH)
              .orElse(body == Body.FIRST ? BALL_FLAW : SEAT_FLAW);
      double pressure = ring.limit(flaw);
      found.add(
          new Limit(
              Kind.RING_CRACK,
              body,
              material,
              pressure,
              Math.max(pressure, ring.polished()),
              flaw,
              toughness.get().provenance(),
              toughness.get().source()));
    } else if (surface.isPresent()) {
      double pressure =
          surface.get().nominal() / RingCrack.slidingTension(contact.aspect(), poisson, friction);
      found.add(limit(Kind.EDGE_CRACK, body, material, pressure, 2 * pressure, surface.get()));
    }
  }

  private static Limit limit(
      Kind kind,
      Body body,
      Material material,
      double pressure,
      double breaks,
      MaterialValue strength) {
    return new Limit(
        kind, body, material, pressure, breaks, 0, strength.provenance(), strength.source());
  }
}
