package reseat.report.check;

import java.util.List;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.Verdict;
import reseat.report.form.FigureText;
import reseat.report.form.JsonWriter;

/** Findings for programs, under the key {@code findings}, and the verdict on them. */
public final class FindingsJson {

  private FindingsJson() {}

  /**
   * Writes {@code holds}, {@code verdict} and {@code accepted}.
   *
   * @param json where to, within an object
   * @param findings all findings
   */
  public static void verdict(JsonWriter json, List<Finding> findings) {
    Verdict verdict = Verdict.of(findings);
    json.key("holds").value(verdict == Verdict.HOLDS);
    json.key("verdict").value(VerdictWords.key(verdict));
    json.key("accepted")
        .value(findings.stream().filter(f -> f.judged() == Judged.ACCEPTED).count());
  }

  /**
   * Writes the findings.
   *
   * @param json where to, within an object
   * @param findings worst first
   */
  public static void write(JsonWriter json, List<Finding> findings) {
    json.key("findings").beginArray();
    for (Finding f : findings) {
      json.beginObject();
      json.key("check").value(f.check().words());
      json.key("severity").value(severity(f.judged()));
      json.key("judged").value(VerdictWords.word(f.judged()));
      json.key("where").value(f.subject().name());
      json.key("value").value(f.value());
      if (f.judged() == Judged.ADVICE) {
        if (f.limit() != 0) {
          json.key("compare_with").value(f.limit());
        }
        json.key("unit").value(f.measure().symbol());
      } else {
        json.key("limit").value(f.limit());
        json.key("unit").value(f.measure().symbol());
        json.key("sense").value(f.sense() == Finding.Sense.AT_MOST ? "at most" : "at least");
        json.key("margin").value(f.margin());
        json.key("limit_kind").value(LimitWords.kind(f.basis()));
        json.key("limit_source").value(LimitWords.source(f.basis()));
      }
      json.key("message").value(FindingWords.of(f.said(), FigureText.METRIC));
      json.key("advice").value(FindingWords.of(f.advice(), FigureText.METRIC));
      if (f.reason().isPresent()) {
        json.key("accepted_reason").value(f.reason().get());
      }
      json.end();
    }
    json.end();
  }

  private static String severity(Judged judged) {
    return switch (judged) {
      case FAILS -> "fail";
      case DECIDE, ACCEPTED -> "warning";
      case HOLDS -> "ok";
      case ADVICE -> "note";
    };
  }
}
