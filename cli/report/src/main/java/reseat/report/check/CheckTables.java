package reseat.report.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import reseat.budget.BudgetLine;
import reseat.csv.PlainCell;
import reseat.design.CouplingDesign;
import reseat.equilibrium.CaseResponse;
import reseat.equilibrium.Equilibrium;
import reseat.space.Vec3;
import reseat.study.DesignCurve;
import reseat.study.ReportStudy;

/** The numbers of a report as CSV, in SI units with the unit in the head. */
public final class CheckTables {

  private CheckTables() {}

  /**
   * Makes the tables.
   *
   * @param study all results
   * @return content by file name
   */
  public static Map<String, byte[]> of(ReportStudy study) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    CouplingDesign d = study.check().design();
    List<List<Object>> contacts = new ArrayList<>();
    for (Equilibrium.Contact c : study.check().standing().contacts()) {
      contacts.add(
          List.of(
              c.line().support(),
              c.line().flank(),
              c.force(),
              c.approach(),
              c.semiMajor(),
              c.semiMinor(),
              c.peakPressure(),
              c.normalStiffness()));
    }
    files.put(
        "contacts.csv",
        csv(
            contacts,
            "support",
            "flank",
            "force_N",
            "approach_m",
            "semi_major_m",
            "semi_minor_m",
            "peak_pressure_Pa",
            "normal_stiffness_N_per_m"));
    List<List<Object>> cases = new ArrayList<>();
    for (CaseResponse c : study.check().cases()) {
      List<Object> row = new ArrayList<>();
      row.add(c.loadCase().name());
      row.add(Double.isInfinite(c.liftOff().factor()) ? "" : c.liftOff().factor());
      addVector(row, d.axes().of(c.motion().shift()));
      addVector(row, d.axes().of(c.stickingMotion().shift()));
      cases.add(row);
    }
    files.put(
        "cases.csv",
        csv(
            cases,
            heads(d, List.of("case", "lift_off_factor"), "sliding_shift", "sticking_shift")));
    List<List<Object>> budget = new ArrayList<>();
    for (BudgetLine l : study.budget().lines()) {
      List<Object> row = new ArrayList<>();
      row.add(l.source());
      row.add(l.nature() == BudgetLine.Nature.RANDOM ? "random" : "systematic");
      row.add(l.input() == 0 ? "" : l.input());
      row.add(l.unit());
      row.add(l.shape());
      addVector(row, l.contribution());
      budget.add(row);
    }
    files.put(
        "budget.csv",
        csv(
            budget,
            heads(
                d,
                List.of("source", "nature", "standard_uncertainty", "unit", "shape"),
                "contribution")));
    files.put("preload-curve.csv", curve(d, study.overPreload(), "preload_N"));
    files.put("ball-curve.csv", curve(d, study.overBalls(), "ball_diameter_m"));
    return files;
  }

  private static byte[] curve(CouplingDesign d, DesignCurve curve, String input) {
    List<List<Object>> rows = new ArrayList<>();
    for (DesignCurve.Point p : curve.points()) {
      List<Object> row = new ArrayList<>();
      row.add(p.value());
      row.add(p.peakPressure());
      row.add(p.pressureShare());
      row.add(p.sink());
      addVector(row, p.stiffness());
      p.scatter().ifPresentOrElse(s -> addVector(row, s), () -> row.addAll(List.of("", "", "")));
      rows.add(row);
    }
    List<String> heads =
        new ArrayList<>(List.of(input, "peak_pressure_Pa", "pressure_share", "sink_m"));
    for (int k = 0; k < 3; k++) {
      heads.add("stiffness_" + d.axes().axis(k).name() + "_N_per_m");
    }
    for (int k = 0; k < 3; k++) {
      heads.add("scatter_sd_" + d.axes().axis(k).name() + "_m");
    }
    return csv(rows, heads.toArray(new String[0]));
  }

  private static String[] heads(CouplingDesign d, List<String> first, String... vectors) {
    List<String> heads = new ArrayList<>(first);
    for (String vector : vectors) {
      for (int k = 0; k < 3; k++) {
        heads.add(vector + "_" + d.axes().axis(k).name() + "_m");
      }
    }
    return heads.toArray(new String[0]);
  }

  private static void addVector(List<Object> row, Vec3 v) {
    row.add(v.x());
    row.add(v.y());
    row.add(v.z());
  }

  private static byte[] csv(List<List<Object>> rows, String... heads) {
    StringBuilder text = new StringBuilder();
    CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator("\n").get();
    try (CSVPrinter printer = new CSVPrinter(text, format)) {
      printer.printRecord(PlainCell.row(List.of(heads)));
      for (List<Object> row : rows) {
        printer.printRecord(PlainCell.row(row));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
