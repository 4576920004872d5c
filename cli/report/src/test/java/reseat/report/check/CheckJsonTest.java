package reseat.report.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import reseat.remedy.Counsel;
import reseat.study.CheckResult;

class CheckJsonTest {

  /** Keys at the outermost level, which the writer indents by two blanks. */
  private static List<String> outerKeys(String json) {
    List<String> keys = new ArrayList<>();
    Matcher m = Pattern.compile("(?m)^ {2}\"([^\"]+)\":").matcher(json);
    while (m.find()) {
      keys.add(m.group(1));
    }
    return keys;
  }

  @Test
  void theOuterKeysAreTheSameWhateverCameOfTheCheck() {
    for (CheckResult result : CheckedDesigns.all()) {
      assertThat(outerKeys(CheckJson.of(result, Counsel.NONE)))
          .contains(
              "versions",
              "title",
              "holds",
              "verdict",
              "accepted",
              "constraint",
              "state",
              "contacts",
              "stiffness",
              "frequencies_Hz",
              "frequencies_sticking_Hz",
              "cases",
              "weakest_force",
              "preload_scatter",
              "preload_band",
              "seating",
              "findings",
              "remedies",
              "conflict",
              "uncured",
              "halving");
    }
  }

  @Test
  void everyPromisedKeyIsThereWithItsUnit() {
    String json = CheckJson.of(CheckedDesigns.failing(), Counsel.NONE);
    assertThat(json)
        .contains(
            "\"ball\"",
            "\"flank\"",
            "\"force_N\"",
            "\"approach_m\"",
            "\"semi_major_m\"",
            "\"semi_minor_m\"",
            "\"peak_pressure_Pa\"",
            "\"max_shear_Pa\"",
            "\"max_shear_depth_m\"",
            "\"normal_stiffness_N_per_m\"",
            "\"tangential_stiffness_N_per_m\"",
            "\"frictionless\"",
            "\"sticking\"",
            "\"at\"",
            "\"name\"",
            "\"tool_point_shift_m\"",
            "\"rotation_rad\"",
            "\"lift_off_factor\"",
            "\"limit_friction\"",
            "\"modes\"",
            "\"check\"",
            "\"value\"",
            "\"limit\"",
            "\"unit\"",
            "\"severity\"",
            "\"message\"");
  }

  @Test
  void aCaseThatLiftsOffHasNoShift() {
    String json = CheckJson.of(CheckedDesigns.failing(), Counsel.NONE);
    assertThat(json).contains("\"lifts_off\": true").contains("\"tool_point_shift_m\": null");
    assertThat(json).contains("\"state\": \"seated\"").contains("\"holds\": false");
  }

  @Test
  void whatDoesNotExistIsNullOrEmpty() {
    String free = CheckJson.of(CheckedDesigns.unconstrained(), Counsel.NONE);
    assertThat(free)
        .contains("\"state\": \"unconstrained\"")
        .contains("\"contacts\": []")
        .contains("\"stiffness\": null")
        .contains("\"condition\": null")
        .contains("\"weakest_motion\": \"sliding along y\"")
        .contains("\"weakest_motion_unique\": true");
    assertThat(CheckJson.of(CheckedDesigns.failing(), Counsel.NONE))
        .as("a symmetric post holds several motions alike")
        .contains("\"weakest_motion_unique\": false");
    assertThat(CheckJson.of(CheckedDesigns.unseated(), Counsel.NONE))
        .contains("\"state\": \"unseated\"");
  }
}
