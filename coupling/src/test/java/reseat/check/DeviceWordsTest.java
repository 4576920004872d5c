package reseat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.designfile.DesignFile;
import reseat.designfile.Starter;
import reseat.equilibrium.PreloadBand;
import reseat.preload.DeviceCaution;
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
        design, PreloadBand.of(looked.standing(), looked.cases(), looked.limits()));
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
    Finding f = PreloadDeviceCheck.of(design, new PreloadBand(0.999, 1.001)).get(0);
    assertThat(f.judged()).isEqualTo(Judged.DECIDE);
    assertThat(f.value())
        .isCloseTo(magnets.scatter().halfRange() + magnets.accuracy().halfRange(), within(1e-12));
    assertThat(f.limit()).isBetween(0.0, 0.0011);
    Statement band = Looked.inner(f.said(), 3);
    assertThat(band.key()).isEqualTo(Said.BAND_TOO_NARROW);
    assertThat(Looked.amount(band, 0)).isCloseTo(0.999 * force, within(1e-9 * force));
    assertThat(PreloadDeviceCheck.of(design, new PreloadBand(0, 1.001)).get(0).judged())
        .isEqualTo(Judged.ADVICE);
  }
}
