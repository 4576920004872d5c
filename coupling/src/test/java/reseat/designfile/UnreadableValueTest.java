package reseat.designfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A value that cannot be read is told once, and does not make its key missing or unknown. */
class UnreadableValueTest {

  @Test
  void aMisspeltKindDoesNotMakeTheOtherKeysUnknown() {
    String text = Starter.PALLET.text().replaceFirst("kind = \"pins", "kind = \"pinz");
    assertThat(DesignFile.read(text).problems())
        .singleElement()
        .extracting(DesignProblem::message)
        .asString()
        .contains("did you mean \"pins\"?");
  }

  @ParameterizedTest
  @EnumSource(Starter.class)
  void oneValueWithoutQuotationMarksIsOneProblemOnItsLine(Starter starter) {
    List<String> lines = starter.text().lines().toList();
    int broken = 0;
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      int opening = line.indexOf("= \"");
      if (line.startsWith("#") || opening < 0) {
        continue;
      }
      int closing = line.indexOf('"', opening + 3);
      List<String> changed = new ArrayList<>(lines);
      changed.set(
          i, line.substring(0, opening + 2) + "?" + line.substring(opening + 3, closing) + "?");
      int number = i + 1;
      // Keys that lean on the lost value, such as the names of axes, may be doubted elsewhere.
      List<DesignProblem> here =
          DesignFile.read(String.join("\n", changed)).problems().stream()
              .filter(p -> p.line() == number)
              .toList();
      assertThat(here).as(changed.get(i)).hasSize(1);
      assertThat(here.get(0).column()).isEqualTo(opening + 3);
      assertThat(here.get(0).message()).startsWith("text stands between quotation marks");
      broken++;
    }
    assertThat(broken).isGreaterThan(10);
  }
}
