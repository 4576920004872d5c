package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.ballmount.BondCaution;
import reseat.ballmount.BondJoint;
import reseat.ballmount.ThreadStrength;
import reseat.design.CheckKind;
import reseat.design.CouplingDesign;
import reseat.design.StudMount;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.CouplingStiffness;
import reseat.equilibrium.CouplingStiffness.Bound;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.PreloadBand;
import reseat.preload.BenchSetting;
import reseat.preload.DeviceCaution;

/** Studs, bonds, threads and preload devices of the tool post, as a check judges them. */
class BallMountChecksTest {

  private static final String POST = Starter.TOOL_POST.text();

  private static CouplingDesign design(String... changes) {
    String text = POST;
    for (int i = 0; i < changes.length; i += 2) {
      assertThat(text).contains(changes[i]);
      text = text.replace(changes[i], changes[i + 1]);
    }
    DesignFile f = DesignFile.read(text);
    assertThat(f.problems()).noneMatch(p -> p.message().contains("ERROR"));
    return f.design().orElseThrow();
  }

  private static List<Finding> findings(CouplingDesign d) {
    Equilibrium standing = CouplingModel.of(d).standing();
    List<CaseResponse> cases =
        CaseResponse.all(standing, CouplingStiffness.of(standing, Bound.STICKING));
    List<Finding> all = new ArrayList<>(BallMountChecks.of(standing, cases));
    all.addAll(PreloadDeviceCheck.of(d, allowed(standing), true));
    return all;
  }

  private static Optional<AllowedPreload> allowed(Equilibrium standing) {
    return new StandingCoupling(standing, List.of(), Depth.STATICS).allowedPreload();
  }

  private static Finding one(List<Finding> all, CheckKind check) {
    return all.stream().filter(f -> f.check() == check).findFirst().orElseThrow();
  }

  @Test
  void aThirdOfThePreloadPressesEachStud() {
    CouplingDesign d = design();
    Equilibrium standing = CouplingModel.of(d).standing();
    double pull = 0;
    for (int b = 0; b < 3; b++) {
      StudLoads loads = StudLoads.of(standing, List.of(), b);
      pull += loads.sustained().pull();
      assertThat(loads.sustained().lateral()).isLessThan(10);
    }
    // preload 600 N and weight 14 N press the studs into the holder
    assertThat(pull).isCloseTo(-614, within(0.1));
  }

  @Test
  void theStudsOfThePostHoldAndAreToldOnce() {
    List<Finding> all = findings(design());
    for (CheckKind check : List.of(CheckKind.BALL_STUD, CheckKind.BOND, CheckKind.STUD_THREAD)) {
      Finding f = one(all, check);
      assertThat(f.judged()).as("%s", f.said()).isEqualTo(Judged.HOLDS);
      assertThat(all.stream().filter(g -> g.check() == check)).hasSize(1);
    }
    assertThat(one(all, CheckKind.HEIGHT_SETTING).judged()).isEqualTo(Judged.ADVICE);
    Statement device = one(all, CheckKind.PRELOAD_DEVICE).said();
    assertThat(device.key()).isEqualTo(Said.DEVICE_SETTING);
    assertThat(Looked.term(Looked.inner(device, 2), 0)).isEqualTo(BenchSetting.Kind.DEFLECTION);
    assertThat(Looked.inner(device, 3).key()).isEqualTo(Said.BAND_AIM);
    Finding stored =
        all.stream().filter(f -> f.said().key() == Said.DEVICE_CAUTION).findFirst().orElseThrow();
    assertThat(stored.judged()).isEqualTo(Judged.ADVICE);
    assertThat(Looked.term(stored.said(), 1)).isEqualTo(DeviceCaution.STORED_SPRING_ENERGY);
    assertThat(Looked.amount(stored.said(), 2)).isCloseTo(0.37, within(0.005));
  }

  @Test
  void aBentNeckIsFound() {
    List<Finding> all =
        findings(
            design(
                "neck_diameter = \"0.312 in\"",
                "neck_diameter = \"1.5 mm\"",
                "height = \"-300 N\"",
                "X = \"-160 N\""));
    Finding f = one(all, CheckKind.BALL_STUD);
    assertThat(f.judged()).isEqualTo(Judged.FAILS);
    assertThat(f.advice().isEmpty()).as("remedies are tried in the whole check").isTrue();
  }

  @Test
  void aBallHungOnWarmAdhesiveIsWarnedOf() {
    List<Finding> all =
        findings(
            design(
                "bottoms_on_metal = true",
                "bottoms_on_metal = false",
                "hottest = \"30 °C\"",
                "hottest = \"50 °C\"",
                "gap = \"0.08 mm\"",
                "gap = \"0.3 mm\""));
    assertThat(caution(all, BondCaution.HANGS_ON_ADHESIVE).judged()).isEqualTo(Judged.ADVICE);
    assertThat(caution(all, BondCaution.WARM).judged()).isEqualTo(Judged.ADVICE);
    Finding thick = caution(all, BondCaution.GAP_THICK);
    assertThat(thick.judged()).isEqualTo(Judged.DECIDE);
    assertThat(thick.value()).isCloseTo(0.3e-3, within(1e-12));
    assertThat(thick.limit()).isEqualTo(BondJoint.THICK_GAP);
  }

  private static Finding caution(List<Finding> all, BondCaution caution) {
    return all.stream()
        .filter(f -> f.said().key() == Said.BOND_CAUTION && Looked.term(f.said(), 1) == caution)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void anOvertightenedNutStripsTheNamedPart() {
    List<Finding> all =
        findings(
            design(
                "torque = \"8 N·m\"",
                "torque = \"60 N·m\"",
                "body_material = \"1045\"",
                "body_material = \"6061-T6\"",
                "engagement = \"0.4 in\"",
                "engagement = \"0.12 in\""));
    Finding f = one(all, CheckKind.STUD_THREAD);
    assertThat(f.judged()).isEqualTo(Judged.FAILS);
    assertThat(Looked.term(f.said(), 3)).isEqualTo(ThreadStrength.Weakest.NUT_STRIPS);
    assertThat(f.limit()).as("the force itself").isEqualTo(Looked.amount(f.said(), 4));
  }

  @Test
  void aLooseNutLeavesThePlay() {
    Finding f =
        one(
            findings(design("torque = \"8 N·m\"", "torque = \"0.1 N·m\"")),
            CheckKind.HEIGHT_SETTING);
    assertThat(f.judged()).isEqualTo(Judged.FAILS);
    assertThat(f.said().key()).isEqualTo(Said.NUT_TOO_LOOSE);
  }

  @Test
  void anUnknownStrengthIsSaidSo() {
    List<Finding> all = findings(design("body_material = \"1045\"", "body_material = \"A2\""));
    assertThat(one(all, CheckKind.STUD_THREAD).judged()).isEqualTo(Judged.ADVICE);
  }

  @Test
  void theBandOfThePreloadIsWhereItsOwnEndsHold() {
    CouplingDesign d = design();
    Equilibrium standing = CouplingModel.of(d).standing();
    PreloadBand band = allowed(standing).orElseThrow().scales();
    assertThat(band.least()).isBetween(0.0, 1.0);
    assertThat(band.most()).isGreaterThan(1);
    // at the lower end one load case has just its factor, at the upper one contact just its limit
    CouplingDesign low = Looked.withPreload(d, band.least() * 600);
    Equilibrium atLow = CouplingModel.of(low).standing();
    List<CaseResponse> casesAtLow =
        CaseResponse.all(atLow, CouplingStiffness.of(atLow, Bound.STICKING));
    double tightest =
        casesAtLow.stream()
            .mapToDouble(c -> c.liftOff().factor() / c.wantedFactor(d.targets().liftOffFactor()))
            .min()
            .orElseThrow();
    assertThat(tightest).isCloseTo(1, within(0.01));
  }

  @Test
  void aScrewIsTooLooseForANarrowBand() {
    int from = POST.indexOf("[preload.device]");
    String device = POST.substring(from, POST.indexOf("[holder]"));
    List<Finding> all =
        findings(
            design(
                device,
                """
                [preload.device]
                kind = "screw"
                thread = "5/16-24"
                nut_factor = 0.2
                grip_length = "40 mm"
                material = "screw 8.8"
                method = "by feel"

                """,
                "scatter = \"2 %\"",
                "",
                "force = { height = \"-300 N\" }",
                "force = { height = \"-500 N\" }"));
    Finding f = one(all, CheckKind.PRELOAD_DEVICE);
    assertThat(f.judged()).isEqualTo(Judged.DECIDE);
    assertThat(Looked.inner(f.said(), 3).key()).isEqualTo(Said.BAND_TOO_NARROW);
    assertThat(f.value()).isGreaterThan(f.limit());
    assertThat(all)
        .filteredOn(g -> g.said().key() == Said.DEVICE_CAUTION)
        .anyMatch(g -> Looked.term(g.said(), 1) == DeviceCaution.TORQUE_IS_LOOSE);
  }

  @Test
  void studsMakeThePostSofterThanRigidBalls() {
    CouplingDesign d = design();
    StudMount stud = d.supports().get(0).mounting().stud().orElseThrow();
    Equilibrium standing = CouplingModel.of(d).standing();
    double contact = 1 / standing.contacts().get(0).normalStiffness();
    double give = stud.compliance().lateral();
    assertThat(give / (give + contact)).isBetween(0.2, 0.7);
  }
}
