package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import reseat.contact.EllipticContact;
import reseat.contact.RelativeCurvature;
import reseat.contact.RingContact;
import reseat.design.CouplingDesign;
import reseat.design.StudMount;
import reseat.design.StudThread;
import reseat.design.Support;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.Equilibrium;
import reseat.material.MaterialCatalog;
import reseat.mount.BondJoint;
import reseat.seat.ConeSeat;

/** Where a stud, its bond, its thread and a ring of contact pass from well to worse. */
class MountThresholdsTest {

  private static final StudMount MOUNT = Looked.postStud();
  private static final StudThread THREAD = MOUNT.thread().orElseThrow();

  private static StudLoads bears(double pull, double lateral) {
    BondJoint.Load idle = new BondJoint.Load(0, 0);
    return new StudLoads(
        idle, List.of(new StudLoads.Peak("hit", new BondJoint.Load(pull, lateral))));
  }

  private static void passes(
      DoubleFunction<Finding> at, double force, Severity before, Severity after) {
    assertThat(at.apply(0.999 * force).severity()).isEqualTo(before);
    assertThat(at.apply(1.001 * force).severity()).isEqualTo(after);
  }

  @Test
  void aStudIsFairToHalfItsStrengthAndFailsAboveIt() {
    DoubleFunction<Finding> at = side -> StudStressCheck.of("front", MOUNT, bears(0, side));
    // bending stress goes with the force across
    double yields = 100 * at.apply(100).limit() / at.apply(100).value();
    passes(at, 0.5 * yields, Severity.OK, Severity.WARNING);
    passes(at, yields, Severity.WARNING, Severity.FAIL);
    assertThat(at.apply(100).message()).contains("the stud of front", "under hit");
    assertThat(at.apply(0.4 * yields).advice()).isEmpty();
    assertThat(at.apply(0.6 * yields).advice()).isNotBlank();
  }

  @Test
  void aBondIsFairToHalfItsDesignStrengthAndFailsAboveIt() {
    BondJoint bond = MOUNT.bond().orElseThrow();
    DoubleFunction<Finding> at = side -> BondCheck.of("front", bond, bears(0, side)).get(0);
    double breaks = 100 / at.apply(100).value();
    passes(at, 0.5 * breaks, Severity.OK, Severity.WARNING);
    passes(at, breaks, Severity.WARNING, Severity.FAIL);
    assertThat(at.apply(breaks).message()).contains("under hit");
    StudLoads stays = new StudLoads(new BondJoint.Load(0, 100), List.of());
    Finding creep = BondCheck.of("front", bond, stays).get(0);
    assertThat(creep.message()).contains("under the load that stays, creep counted");
    // what stays is allowed less than what strikes, in the proportion of the two shares
    assertThat(creep.value() / at.apply(100).value())
        .isCloseTo(bond.derating().peakShare() / bond.derating().sustainedShare(), within(1e-9));
  }

  @Test
  void aThreadBearsTwiceItsLoadOrIsWarnedOf() {
    StudThread loose = Looked.withoutNut(THREAD, 0.15);
    double capacity = loose.strength().orElseThrow().capacity();
    DoubleFunction<Finding> at = pull -> ThreadCheck.of("front", loose, bears(pull, 0));
    passes(at, capacity / 2, Severity.OK, Severity.WARNING);
    passes(at, capacity, Severity.WARNING, Severity.FAIL);
    assertThat(at.apply(-1.001 * capacity).severity())
        .as("pressed as pulled")
        .isEqualTo(Severity.FAIL);
    assertThat(at.apply(100).value()).isEqualTo(capacity);
    assertThat(at.apply(100).limit()).isEqualTo(200);
    assertThat(at.apply(100).advice()).isEmpty();
    assertThat(at.apply(capacity).advice()).isNotBlank();
  }

  @Test
  void aDeepThreadBreaksTheScrewAndIsToldOtherwiseThanAShallowOne() {
    StudThread deep =
        new StudThread(
            THREAD.limits(), 0.05, THREAD.screw(), THREAD.body(), 0.15, Optional.empty());
    Finding f = ThreadCheck.of("front", deep, bears(1e6, 0));
    assertThat(f.message()).contains("where the screw breaks");
    assertThat(f.advice()).startsWith("Tighten the lock nut less, or take a larger");
    StudThread soft =
        new StudThread(
            THREAD.limits(),
            0.003,
            MaterialCatalog.standard().find("6061-T6").orElseThrow(),
            MaterialCatalog.standard().find("1045").orElseThrow(),
            0.15,
            Optional.empty());
    assertThat(ThreadCheck.of("front", soft, bears(1e6, 0)).message())
        .contains("where the threads of the screw strip");
  }

  @Test
  void aSlipperyThreadWithoutANutDoesNotHoldItself() {
    double limit = THREAD.limits().thread().selfLockingFriction();
    DoubleFunction<Finding> at =
        mu -> ThreadCheck.of("front", Looked.withoutNut(THREAD, mu), bears(10, 0));
    assertThat(at.apply(0.99 * limit).severity()).isEqualTo(Severity.FAIL);
    assertThat(at.apply(0.99 * limit).message()).contains("does not hold itself");
    assertThat(at.apply(1.01 * limit).severity()).isEqualTo(Severity.OK);
    // a nut holds it however slippery it is
    StudThread nut =
        new StudThread(
            THREAD.limits(),
            THREAD.engagement(),
            THREAD.screw(),
            THREAD.body(),
            0.001,
            THREAD.lockNut());
    assertThat(ThreadCheck.of("front", nut, bears(10, 0)).message()).doesNotContain("hold itself");
  }

  @Test
  void aNutTakesUpThePlayWhenItPullsHarderThanTheLoadPresses() {
    double clamp = THREAD.lockNut().orElseThrow().clampForce();
    DoubleFunction<Finding> at =
        push -> LockNutCheck.of("front", THREAD, push, Double.POSITIVE_INFINITY).get(0);
    assertThat(at.apply(0.99 * clamp).severity()).isEqualTo(Severity.NOTE);
    Finding slack = at.apply(1.01 * clamp);
    assertThat(slack.severity()).isEqualTo(Severity.WARNING);
    assertThat(slack.advice()).isEqualTo("Tighten the nut more.");
    assertThat(LockNutCheck.of("front", THREAD, 0, Double.POSITIVE_INFINITY)).hasSize(1);
  }

  @Test
  void aHeightToleranceIsHeldAgainstTheNutAndAgainstTheHand() {
    double play = LockNutCheck.of("front", THREAD, 0, 1).get(0).value();
    DoubleFunction<Finding> nut = t -> LockNutCheck.of("front", THREAD, 0, t).get(0);
    assertThat(nut.apply(1.01 * play).severity()).isEqualTo(Severity.OK);
    assertThat(nut.apply(1.01 * play).advice()).isEmpty();
    assertThat(nut.apply(0.99 * play).severity()).isEqualTo(Severity.WARNING);
    assertThat(nut.apply(0.99 * play).advice()).startsWith("Set, lock, read");
    assertThat(nut.apply(0.99 * play).limit()).isEqualTo(0.99 * play);
    // 40 threads to the inch, 2 deg of a turn: 3.53 um
    double step = 0.0254 / 40 * 2 / 360;
    DoubleFunction<Finding> hand = t -> LockNutCheck.of("front", THREAD, 0, t).get(1);
    assertThat(hand.apply(1).value()).isCloseTo(step, within(1e-12));
    assertThat(hand.apply(1.01 * step).severity()).isEqualTo(Severity.OK);
    assertThat(hand.apply(1.01 * step).advice()).isEmpty();
    assertThat(hand.apply(0.99 * step).severity()).isEqualTo(Severity.WARNING);
    assertThat(hand.apply(0.99 * step).advice()).startsWith("Take a finer pitch");
  }

  @Test
  void aRingOfContactIsToldTheSinkThatRoundnessMustStayUnder() {
    CouplingDesign stand = DesignFile.read(Starter.CONE_VEE_FLAT.text()).design().orElseThrow();
    Equilibrium standing = CouplingModel.of(stand).standing();
    List<Finding> found = RingContactCheck.of(standing);
    assertThat(found).hasSize(1);
    Finding ring = found.get(0);
    assertThat(ring.severity()).isEqualTo(Severity.WARNING);
    assertThat(ring.where()).isEqualTo(stand.supports().get(0).name());
    double least = Double.POSITIVE_INFINITY;
    double greatest = 0;
    double mean = 0;
    for (Equilibrium.Contact c : standing.contacts().subList(0, 3)) {
      least = Math.min(least, c.leastForce());
      greatest = Math.max(greatest, c.greatestForce());
      mean += c.force() / 3;
    }
    // the same sink and pressure from a whole ring that is pressed evenly: its axial force is the
    // sum of three thirds, each of which leans by the flank angle
    ConeSeat cone = (ConeSeat) stand.supports().get(0).seat();
    double radius = stand.supports().get(0).ball().radius();
    var pair = standing.contacts().get(0).hertz().elasticity();
    RingContact whole = RingContact.of(radius, cone.angle(), pair);
    double lean = Math.cos(cone.angle());
    assertThat(ring.message())
        .contains(
            Measure.PRESSURE.show(whole.peakPressure(3 * greatest * lean)),
            Measure.PRESSURE.show(
                EllipticContact.of(RelativeCurvature.ballOnPlane(radius), pair)
                    .peakPressure(mean)));
    assertThat(ring.value())
        .isCloseTo(standing.contacts().get(0).hertz().approach(least), within(1e-15));
    assertThat(ring.value()).isPositive();
    // the same cone told last
    List<Support> last = new ArrayList<>(stand.supports().subList(1, 3));
    last.add(stand.supports().get(0));
    Finding same =
        RingContactCheck.of(CouplingModel.of(stand.toBuilder().supports(last).build()).standing())
            .get(0);
    assertThat(same.where()).isEqualTo(ring.where());
    assertThat(same.value()).isCloseTo(ring.value(), within(1e-6 * ring.value()));
    // no cone, nothing to tell
    assertThat(
            RingContactCheck.of(
                CouplingModel.of(
                        DesignFile.read(Starter.SENSOR_MOUNT.text()).design().orElseThrow())
                    .standing()))
        .isEmpty();
  }
}
