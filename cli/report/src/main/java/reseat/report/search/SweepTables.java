package reseat.report.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import reseat.check.Finding;
import reseat.csv.PlainCell;
import reseat.report.check.FindingWords;
import reseat.report.check.VerdictWords;
import reseat.report.form.FigureText;
import reseat.report.form.JsonWriter;
import reseat.report.form.UnitSystem;
import reseat.study.OutputValue;
import reseat.study.SweepAxis;
import reseat.study.SweepPoint;
import reseat.study.SweepStudy;

/** A sweep for programs: as JSON, and as a table of comma-separated values; both in SI. */
public final class SweepTables {

  private SweepTables() {}

  /**
   * Writes a sweep as JSON.
   *
   * @param study what came of it
   * @param title title of the design
   * @return a whole JSON text
   */
  public static String json(SweepStudy study, String title) {
    JsonWriter json = new JsonWriter().beginDocument();
    json.key("title").value(title);
    json.key("verdict").value(VerdictWords.key(study.best()));
    json.key("mounts").value(study.plan().mounts());
    json.key("seed").value(study.plan().seed());
    json.key("keys").beginArray();
    for (SweepAxis axis : study.plan().axes()) {
      json.beginObject();
      json.key("key").value(axis.key().path());
      json.key("values").beginArray();
      axis.values().forEach(json::value);
      json.end();
      json.key("values_si").row(axis.numbers().stream().mapToDouble(v -> v).toArray());
      json.end();
    }
    json.end();
    json.key("outputs").beginArray();
    for (OutputColumn c : SweepUnits.columns(study, UnitSystem.METRIC)) {
      json.beginObject();
      json.key("output").value(c.output().name());
      json.key("what").value(c.output().words());
      json.key("unit").value(c.si());
      json.end();
    }
    json.end();
    json.key("points").beginArray();
    study.points().forEach(p -> point(json, p));
    return json.end().end().finish();
  }

  private static void point(JsonWriter json, SweepPoint p) {
    json.beginObject();
    json.key("values").beginArray();
    p.values().forEach(json::value);
    json.end();
    json.key("state").value(state(p));
    json.key("outputs").beginArray();
    for (Optional<OutputValue> v : p.outputs()) {
      if (v.isEmpty()) {
        json.none();
      } else {
        json.beginObject();
        json.key("value").value(v.get().value());
        json.key("limit").value(v.get().limit());
        json.key("sense").value(sense(v.get()));
        json.key("holds").value(v.get().holds());
        json.end();
      }
    }
    json.end();
    json.key("failing").beginArray();
    for (Finding f : p.failing()) {
      json.beginObject();
      json.key("check").value(f.check().words());
      json.key("where").value(f.subject().name());
      json.key("margin").value(f.margin());
      json.key("message").value(FindingWords.of(f.said(), FigureText.METRIC));
      json.end();
    }
    json.end();
    json.key("reason").value(FindingWords.of(p.reason(), FigureText.METRIC));
    json.end();
  }

  private static String sense(OutputValue v) {
    return v.sense() == Finding.Sense.AT_MOST ? "at most" : "at least";
  }

  private static String state(SweepPoint p) {
    return p.state().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * Writes a sweep as a table: the values as typed and in SI, every output with its limit, the
   * verdict and what binds.
   *
   * @param study what came of it
   * @return comma-separated values by RFC 4180, a line feed after each line
   */
  public static String csv(SweepStudy study) {
    List<Object> heads = new ArrayList<>();
    for (SweepAxis axis : study.plan().axes()) {
      heads.add(axis.key().path());
      if (!axis.numbers().isEmpty()) {
        heads.add(axis.key().path() + " [SI]");
      }
    }
    for (OutputColumn c : SweepUnits.columns(study, UnitSystem.METRIC)) {
      heads.add(c.output().name() + " [" + c.si() + "]");
      heads.add("limit of " + c.output().name() + " [" + c.si() + "]");
    }
    heads.add("state");
    heads.add("binding");
    StringBuilder text = new StringBuilder();
    CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator("\n").get();
    try (CSVPrinter printer = new CSVPrinter(text, format)) {
      printer.printRecord(PlainCell.row(heads));
      for (int i = 0; i < study.points().size(); i++) {
        printer.printRecord(PlainCell.row(row(study, i)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static List<Object> row(SweepStudy study, int number) {
    SweepPoint p = study.points().get(number);
    List<Object> row = new ArrayList<>();
    int rest = number;
    int block = study.points().size();
    for (int a = 0; a < study.plan().axes().size(); a++) {
      SweepAxis axis = study.plan().axes().get(a);
      block /= axis.values().size();
      row.add(p.values().get(a));
      if (!axis.numbers().isEmpty()) {
        row.add(axis.numbers().get(rest / block));
      }
      rest %= block;
    }
    for (Optional<OutputValue> v : p.outputs()) {
      row.add(v.map(OutputValue::value).filter(Double::isFinite).map(Object::toString).orElse(""));
      row.add(v.map(OutputValue::limit).filter(Double::isFinite).map(Object::toString).orElse(""));
    }
    row.add(state(p));
    row.add(SweepText.binding(p, FigureText.METRIC));
    return row;
  }
}
