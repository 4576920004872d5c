package reseat.designfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.design.KeepClear;
import reseat.design.ShopFloor;
import reseat.units.Quantity;
import reseat.units.QuantityKind;
import reseat.units.QuantityText;

/** What the file says of the shop: gauges, places to keep clear, units it is written in. */
class ShopReaderTest {

  @TempDir Path folder;

  private static DesignFile read(String from, String to) {
    return DesignFile.read(Starter.TOOL_POST.text().replace(from, to));
  }

  private static List<String> messages(DesignFile file) {
    return file.problems().stream().map(p -> p.key() + ": " + p.message()).toList();
  }

  @Test
  void gaugesAndPlacesAreRead() {
    ShopFloor shop =
        read("pins = [\"5/16 in\"]", "pins = [\"8 mm\", \"3/8 in\"]").design().orElseThrow().shop();
    assertThat(shop.gaugeBalls()).containsExactly(12.7e-3);
    assertThat(shop.gaugePins()).containsExactly(8e-3, 9.525e-3);
    KeepClear shank = shop.keepClear().get(0);
    assertThat(shank.name()).contains("drawbolt");
    assertThat(shank.at().z()).isEqualTo(-12e-3);
    assertThat(shank.gap().orElseThrow()).isEqualTo(0.5e-3);
  }

  @Test
  void whatIsWrongIsNamed() {
    assertThat(messages(read("balls = [\"1/2 in\"]", "balls = [\"-1/2 in\"]")).toString())
        .contains("gauge.balls")
        .contains("above zero");
    assertThat(messages(read("balls = [\"1/2 in\"]", "balls = \"1/2 in\"")).toString())
        .contains("gauge.balls")
        .contains("a list of lengths");
    assertThat(messages(read("balls = [\"1/2 in\"]", "balls = [12.7]")).toString())
        .contains("gauge.balls")
        .contains("no unit");
    assertThat(messages(read("balls = [\"1/2 in\"]", "ball = [\"1/2 in\"]")).toString())
        .contains("did you mean \"balls\"?");
    assertThat(messages(read("gap = \"0.5 mm\"", "gap = \"-0.5 mm\"")).toString())
        .contains("gap of drawbolt shank in its hole");
    assertThat(messages(read("at = [\"0 mm\", \"0 mm\", \"-12 mm\"]", "")).toString())
        .contains("keep_clear[1].at")
        .contains("is missing");
  }

  @Test
  void unitsThatPrevailAreThoseOfMostLengths() {
    assertThat(inInches("1 mm", "1/2 in", "20 uin")).isTrue();
    assertThat(inInches("1 mm", "2 um", "1/2 in")).isFalse();
    assertThat(inInches("1 mm", "1/2 in")).as("metric where neither prevails").isFalse();
    assertThat(read(" mm\"", " mm\"").inInches()).isFalse();
    assertThat(read("mm\"", "in\"").inInches()).as("no design").isFalse();
  }

  private static boolean inInches(String... lengths) {
    Map<String, Written> written = new LinkedHashMap<>();
    for (String text : lengths) {
      Quantity q = QuantityText.require(text, QuantityKind.LENGTH);
      written.put(text, new Written(text, q, 1, 1));
    }
    Quantity force = QuantityText.require("3 lbf", QuantityKind.FORCE);
    written.put("force", new Written("force", force, 1, 1));
    return PrevailingUnits.inch(written);
  }

  @Test
  void aFileOnOneBallMountIsToldFromACoupling() throws IOException {
    Path file = folder.resolve("some.toml");
    Files.writeString(file, Starter.BALL_MOUNT.text());
    assertThat(BallMountFile.isOne(file)).isTrue();
    Files.writeString(file, Starter.PALLET.text());
    assertThat(BallMountFile.isOne(file)).isFalse();
  }
}
