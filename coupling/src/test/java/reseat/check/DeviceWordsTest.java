package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.preload.CautionFigure;
import reseat.preload.DeviceCaution;
import reseat.preload.DiscSpring;
import reseat.preload.DiscSpringStack;
import reseat.preload.PreloadDevice;

/** What is said of each kind of preload device: its setting, its scatter, what it stores. */
class DeviceWordsTest {

  private static final String POST = Starter.TOOL_POST.text();
  private static final String HEAD = POST.substring(0, POST.indexOf("[[preload]]"));
  private static final String TAIL = POST.substring(POST.indexOf("[holder]"));

  private static CouplingDesign pulledBy(String device) {
    DesignFile f = DesignFile.read(HEAD + "[[preload]]\ndevice = { " + device + " }\n" + TAIL);
    assertThat(f.problems()).isEmpty();
    return f.design().orElseThrow();
  }

  private static List<Finding> said(CouplingDesign design) {
    Looked looked = Looked.at(design);
    return PreloadDeviceCheck.of(
        design,
        new StandingCoupling(looked.standing(), List.of(), Depth.STATICS).allowedPreload(),
        true);
  }

  private static List<Statement> stores(String device) {
    return said(pulledBy(device)).stream()
        .map(Finding::said)
        .filter(s -> s.key() == Said.DEVICE_CAUTION && Looked.amount(s, 2) > 0)
        .toList();
  }

  private static void tells(List<Statement> stored, DeviceCaution caution) {
    assertThat(stored)
        .singleElement()
        .satisfies(s -> assertThat(Looked.term(s, 1)).isEqualTo(caution));
  }

  @Test
  void aWeightStoresItsFall() {
    // 10 kg times 9.80665 m/s2 times 0.1 m: 9.8 J
    List<Statement> fall = stores("kind = \"weight\", mass = \"10 kg\", drop = \"0.1 m\"");
    tells(fall, DeviceCaution.FALLING_WEIGHT);
    assertThat(Looked.amount(fall.get(0), 2)).isCloseTo(9.80665, within(1e-9));
    assertThat(stores("kind = \"weight\", mass = \"10 kg\", drop = \"0 mm\"")).isEmpty();
  }

  @Test
  void aSpringStoresHalfItsForceTimesItsTravel() {
    // 6.4534505 N/mm over 10 mm: 0.3227 J
    List<Statement> spring =
        stores(
            "kind = \"spring\", wire = \"2 mm\", mean_diameter = \"16 mm\", active_coils = 6,"
                + " free_length = \"50 mm\", deflection = \"10 mm\", deflection_tolerance ="
                + " \"0.1 mm\", shear_strength = \"700 MPa\"");
    tells(spring, DeviceCaution.STORED_SPRING_ENERGY);
    assertThat(Looked.amount(spring.get(0), 2)).isCloseTo(0.3227, within(1e-4));
  }

  @Test
  void whatIsStoredIsSaidOfTheCautionThatHurts() {
    tells(
        stores(
            "kind = \"magnets\", opposite = \"equal magnet\", diameter = \"10 mm\", length ="
                + " \"5 mm\", remanence_tesla = 1.2, gap = \"0.5 mm\", gap_tolerance ="
                + " \"0.02 mm\""),
        DeviceCaution.MAGNET_PINCH);
    tells(
        stores(
            "kind = \"air-cylinder\", bore = \"20 mm\", pressure = \"0.5 MPa\","
                + " pressure_scatter = \"2 %\", seal_friction = \"3 N\", stroke = \"20 mm\""),
        DeviceCaution.PRESSURE_LOSS);
  }

  @Test
  void theScatterOfMountsAndThatOfDevicesAddAgainstTheBand() {
    CouplingDesign design =
        pulledBy(
            "kind = \"magnets\", opposite = \"equal magnet\", diameter = \"10 mm\", length ="
                + " \"5 mm\", remanence_tesla = 1.2, gap = \"0.5 mm\", gap_tolerance ="
                + " \"0.05 mm\"");
    PreloadDevice magnets = design.preloads().get(0).modelled().orElseThrow();
    double force = magnets.nominalForce();
    assertThat(magnets.scatter().halfRange()).isPositive();
    assertThat(magnets.accuracy().halfRange()).isPositive();
    Finding f = PreloadDeviceCheck.of(design, allowed(design, 0.999, 1.001), true).get(0);
    assertThat(f.judged()).isEqualTo(Judged.DECIDE);
    assertThat(f.value())
        .isCloseTo(magnets.scatter().halfRange() + magnets.accuracy().halfRange(), within(1e-12));
    assertThat(f.limit()).isBetween(0.0, 0.0011);
    Statement band = Looked.inner(f.said(), 3);
    assertThat(band.key()).isEqualTo(Said.BAND_TOO_NARROW);
    assertThat(Looked.amount(band, 0)).isCloseTo(0.999 * force, within(1e-9 * force));
    assertThat(PreloadDeviceCheck.of(design, allowed(design, 0, 1.001), true).get(0).judged())
        .isEqualTo(Judged.ADVICE);
  }

  private static Optional<AllowedPreload> allowed(
      CouplingDesign design, double least, double most) {
    double force = design.preloads().get(0).force();
    AllowedPreload.End low = new AllowedPreload.End(least * force, "lift-off", "");
    AllowedPreload.End high = new AllowedPreload.End(most * force, "contact pressure", "");
    return Optional.of(new AllowedPreload(force, low, high, low, high, 0));
  }

  private static List<Finding> sprung(String strength, double least, double most) {
    CouplingDesign design =
        pulledBy(
            "kind = \"spring\", wire = \"2 mm\", mean_diameter = \"16 mm\", active_coils = 6,"
                + " free_length = \"50 mm\", deflection = \"10 mm\", deflection_tolerance ="
                + " \"0.1 mm\", shear_strength = \""
                + strength
                + '"');
    return PreloadDeviceCheck.of(design, allowed(design, least, most), true);
  }

  @Test
  void aBandThatTheDeviceCannotReachFails() {
    // 6.4534505 N/mm; solid at 50 mm less 8 coils of 2 mm: 34 mm, 219.4 N
    Finding setting = sprung("900 MPa", 4, 10).get(0);
    assertThat(setting.judged()).isEqualTo(Judged.FAILS);
    assertThat(setting.basis()).isEqualTo(LimitBasis.MECHANICS);
    assertThat(setting.value()).isCloseTo(6453.4505 * 0.034, within(0.05));
    assertThat(setting.limit()).isGreaterThan(4 * 64.5);
    assertThat(Looked.inner(setting.said(), 3).key()).isEqualTo(Said.BAND_OUT_OF_REACH);
    Finding within = sprung("900 MPa", 0.5, 10).get(0);
    assertThat(within.judged()).isEqualTo(Judged.ADVICE);
    Statement aim = Looked.inner(within.said(), 3);
    assertThat(aim.key()).isEqualTo(Said.BAND_AIM);
    assertThat(Looked.inner(aim, 3).key()).isEqualTo(Said.ALL_IT_GIVES);
  }

  @Test
  void anOverstressedSpringIsUpForDecisionWithItsStress() {
    // Wahl: C = 8, 1.184; 8 F D/(pi d^3) = 328.7 MPa: 389.2 MPa
    Finding over =
        sprung("300 MPa", 0.5, 10).stream()
            .filter(f -> f.judged() == Judged.DECIDE)
            .findFirst()
            .orElseThrow();
    assertThat(Looked.term(over.said(), 1)).isEqualTo(DeviceCaution.OVERSTRESSED);
    assertThat(over.measure()).isEqualTo(Measure.PRESSURE);
    assertThat(over.value()).isCloseTo(389.2e6, within(0.2e6));
    assertThat(over.limit()).isEqualTo(300e6);
    assertThat(sprung("400 MPa", 0.5, 10)).allMatch(f -> f.judged() == Judged.ADVICE);
  }

  @Test
  void aDiscNearlyFlatHardlyPressedOrTooHighIsUpForDecisionWithItsFigure() {
    DiscSpring disc = DiscSpring.ofSteel(20e-3, 10.2e-3, 1.1e-3, 1.55e-3);
    double flat = 4 * disc.flatTravel();
    for (double used : new double[] {0.1, 0.5, 0.8}) {
      DiscSpringStack stack = DiscSpringStack.of(disc, 1, 4, used * flat, 0);
      List<Double> figures =
          stack.cautions().stream()
              .flatMap(c -> stack.figureOf(c).stream())
              .map(CautionFigure::value)
              .toList();
      assertThat(figures).hasSize(used == 0.5 ? 0 : 1);
      figures.forEach(v -> assertThat(v).isCloseTo(used, within(1e-12)));
    }
    DiscSpring high = DiscSpring.ofSteel(20e-3, 10.2e-3, 0.4e-3, 1.1e-3);
    DiscSpringStack snapping = DiscSpringStack.of(high, 1, 1, 0.3e-3, 0);
    CautionFigure figure = snapping.figureOf(DeviceCaution.SNAPS_THROUGH).orElseThrow();
    assertThat(figure.value()).isCloseTo(1.75, within(1e-12));
    assertThat(figure.limit()).isCloseTo(Math.sqrt(2), within(1e-12));
  }
}
