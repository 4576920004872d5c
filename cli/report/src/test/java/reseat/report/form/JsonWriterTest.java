package reseat.report.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import reseat.space.Vec3;

class JsonWriterTest {

  @Test
  void objectsAndArraysAreIndentedInTheOrderGiven() {
    String text =
        new JsonWriter()
            .beginObject()
            .key("mounts")
            .value(10_000_000_000L)
            .key("none")
            .beginArray()
            .end()
            .key("causes")
            .beginArray()
            .beginObject()
            .key("name")
            .value("friction")
            .end()
            .end()
            .key("seated")
            .value(true)
            .key("shift_m")
            .value(new Vec3(1e-9, 0, -2.5))
            .end()
            .finish();
    assertThat(text)
        .isEqualTo(
            """
            {
              "mounts": 10000000000,
              "none": [],
              "causes": [
                {
                  "name": "friction"
                }
              ],
              "seated": true,
              "shift_m": [1.0E-9, 0.0, -2.5]
            }
            """);
  }

  @Test
  void aNumberReadBackIsTheSameNumber() {
    for (double x : new double[] {0.1, 1.0 / 3, 123456789.12345679, Double.MIN_VALUE, -1e300}) {
      String text = new JsonWriter().value(x).finish();
      assertThat(Double.parseDouble(text)).isEqualTo(x);
    }
    assertThat(new JsonWriter().value(-0.0).finish()).isEqualTo("0.0\n");
  }

  @Test
  void whatIsNotANumberIsRefusedAndNoLimitIsNull() {
    assertThatThrownBy(() -> new JsonWriter().value(Double.NaN)).hasMessageContaining("NaN");
    assertThat(new JsonWriter().value(Double.POSITIVE_INFINITY).finish()).isEqualTo("null\n");
  }

  @Test
  void lettersThatJsonReservesAreEscaped() {
    assertThat(new JsonWriter().value("1/2\" \\ \n \t \u0001 µ").finish())
        .isEqualTo("\"1/2\\\" \\\\ \\n \\t \\u0001 µ\"\n");
  }

  @Test
  void anUnfinishedTextIsRefused() {
    JsonWriter json = new JsonWriter().beginObject();
    assertThatThrownBy(json::finish).hasMessageContaining("still open");
  }
}
