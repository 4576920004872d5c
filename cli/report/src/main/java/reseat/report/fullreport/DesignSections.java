package reseat.report.fullreport;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.check.Finding;
import reseat.check.Judged;
import reseat.check.Measure;
import reseat.design.AssumedValue;
import reseat.design.CouplingDesign;
import reseat.design.Half;
import reseat.design.LoadCase;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.report.check.FindingWords;
import reseat.report.check.LimitWords;
import reseat.report.check.VerdictWords;
import reseat.report.form.FigureText;
import reseat.report.form.SeatWords;
import reseat.report.page.Page;
import reseat.space.Vec3;
import reseat.study.CheckResult;
import reseat.units.FilledText;

/** The parts of a page that tell what was asked: inputs, and every check with its limit. */
public final class DesignSections {

  private DesignSections() {}

  public static Page.Section inputs(CouplingDesign d, PageFigures f) {
    List<Page.Row> rows = new ArrayList<>();
    rows.add(Page.Row.of("balls are carried by", d.ballsOn() == Half.HOLDER ? "holder" : "base"));
    rows.add(Page.Row.of("tool point (x, y, z)", f.point(d.toolPoint())));
    rows.add(
        Page.Row.of("mean distance of the balls from their middle", f.length(d.couplingRadius())));
    rows.add(
        Page.Row.of(
            "holder with tool",
            FilledText.of(
                "%s at %s",
                f.text().of(Measure.MASS, d.holder().mass()), f.point(d.holder().centreOfMass()))));
    rows.add(
        Page.Row.of(
            "friction",
            FilledText.of(
                "%.2f to %.2f, computed with %.2f (%s)",
                d.friction().low(),
                d.friction().high(),
                d.friction().nominal(),
                d.friction().source())));
    for (int k = 0; k < 3; k++) {
      rows.add(
          Page.Row.of(
              "machine axis " + d.axes().axis(k).name(),
              "along " + direction(d.axes().axis(k).direction())));
    }
    for (Preload p : d.preloads()) {
      rows.add(
          Page.Row.of(
              p.name(),
              f.force(p.force())
                  + " along "
                  + direction(p.direction())
                  + " through "
                  + f.point(p.at())
                  + ", scatter ±"
                  + FigureText.percent(p.forceSpread().limit())
                  + (p.device().isEmpty() ? "" : " (" + p.device() + ")")));
    }
    for (LoadCase c : d.cases()) {
      rows.add(
          Page.Row.of(
              "load case " + c.name(),
              f.force(c.load().force().norm())
                  + " along "
                  + direction(c.load().force())
                  + " at "
                  + f.point(c.load().at())));
    }
    List<Page.Row> supports = new ArrayList<>();
    for (Support s : d.supports()) {
      supports.add(
          Page.Row.of(
              s.name(),
              f.point(s.ball().centre()),
              f.length(s.ball().diameter()),
              s.ballMaterial().name(),
              SeatWords.of(s.seat(), f.text()),
              s.seatMaterial().name(),
              SeatWords.mounting(s.mounting(), f.text())));
    }
    return new Page.Section(
        "inputs",
        "What was designed",
        List.of(
            new Page.Table("Inputs, coupling frame", List.of("input", "value"), rows),
            new Page.Table(
                "Balls and seats",
                List.of(
                    "support",
                    "ball centre",
                    "ball diameter",
                    "ball",
                    "seat",
                    "seat of",
                    "ball sits on"),
                supports)));
  }

  private static String direction(Vec3 v) {
    if (v.norm() == 0) {
      return "no direction";
    }
    Vec3 u = v.unit();
    String[] names = {"x", "y", "z"};
    for (int k = 0; k < 3; k++) {
      if (Math.abs(Math.abs(u.component(k)) - 1) < 1e-9) {
        return (u.component(k) < 0 ? "-" : "+") + names[k];
      }
    }
    return FilledText.of("(%.2f, %.2f, %.2f)", u.x(), u.y(), u.z());
  }

  /** Every value that the file leaves to a default, with its source. */
  static Optional<Page.Section> assumed(CheckResult check, FigureText text) {
    List<Page.Row> rows = new ArrayList<>();
    for (AssumedValue a : check.stated().assumed()) {
      String value =
          a.kind().isEmpty()
              ? a.words()
              : text.quantity(a.value(), a.kind().get())
                  + (a.words().isEmpty() ? "" : ", " + a.words());
      rows.add(Page.Row.of(a.key(), value, a.source()));
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Page.Section(
                "assumptions",
                "Assumptions",
                List.of(
                    new Page.Table(
                        "Write the key into the design file to state the value",
                        List.of("key", "assumed", "source"),
                        rows))));
  }

  public static Page.Section checks(CheckResult check, PageFigures f) {
    FigureText text = f.text();
    Map<List<String>, List<Finding>> equal = new LinkedHashMap<>();
    for (Finding one : check.findings()) {
      List<String> read =
          List.of(
              one.check().words(),
              VerdictWords.word(one.judged()),
              text.of(one.measure(), one.value(), true),
              limit(one, text),
              told(one) ? "told at the top" : said(one, text));
      equal.computeIfAbsent(read, r -> new ArrayList<>()).add(one);
    }
    List<Page.Row> rows = new ArrayList<>();
    equal.forEach(
        (read, of) -> {
          List<String> where = of.stream().map(o -> o.subject().name()).toList();
          rows.add(
              new Page.Row(
                  List.of(
                      read.get(0),
                      read.get(1),
                      EqualRows.seats(where),
                      read.get(2),
                      read.get(3),
                      read.get(4)),
                  tone(of.get(0).judged())));
        });
    return new Page.Section(
        "checks",
        "Every check",
        List.of(
            new Page.Table(
                "Worst first",
                List.of("check", "result", "where", "value", "limit", "remark"),
                rows)));
  }

  /** Whether a finding stands on the first screen: what does not simply hold. */
  static boolean told(Finding f) {
    return f.judged() == Judged.FAILS
        || f.judged() == Judged.DECIDE
        || f.judged() == Judged.ACCEPTED;
  }

  /** A finding in words, with its advice. */
  private static String said(Finding f, FigureText text) {
    String said = FindingWords.of(f.said(), text);
    return f.advice().isEmpty() ? said : said + " " + FindingWords.of(f.advice(), text);
  }

  private static String limit(Finding f, FigureText text) {
    if (f.judged() == Judged.ADVICE) {
      return "-";
    }
    return (f.sense() == Finding.Sense.AT_MOST ? "at most " : "at least ")
        + text.of(f.measure(), f.limit())
        + " ("
        + LimitWords.kind(f.basis())
        + ": "
        + LimitWords.source(f.basis())
        + ")";
  }

  public static Page.Tone tone(Judged judged) {
    return switch (judged) {
      case FAILS -> Page.Tone.BAD;
      case DECIDE, ACCEPTED -> Page.Tone.CAREFUL;
      case ADVICE -> Page.Tone.NOTE;
      case HOLDS -> Page.Tone.PLAIN;
    };
  }
}
