package reseat.report.fullreport;

import java.util.ArrayList;
import java.util.List;
import reseat.check.Finding;
import reseat.check.Judged;
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
import reseat.report.form.Shown;
import reseat.report.page.Page;
import reseat.space.Vec3;
import reseat.study.CheckResult;
import reseat.units.FilledText;
import reseat.units.QuantityFormat;
import reseat.units.UnitCatalog;

/** The parts of a page that tell what was asked: inputs, and every check with its limit. */
public final class DesignSections {

  private DesignSections() {}

  public static Page.Section inputs(CouplingDesign d) {
    List<Page.Row> rows = new ArrayList<>();
    rows.add(Page.Row.of("balls are carried by", d.ballsOn() == Half.HOLDER ? "holder" : "base"));
    rows.add(Page.Row.of("tool point (x, y, z)", Shown.point(d.toolPoint())));
    rows.add(
        Page.Row.of(
            "mean distance of the balls from their middle", Shown.length(d.couplingRadius())));
    rows.add(
        Page.Row.of(
            "holder with tool",
            FilledText.of(
                "%s kg at %s",
                QuantityFormat.significantNumber(d.holder().mass(), UnitCatalog.KG, 3),
                Shown.point(d.holder().centreOfMass()))));
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
              Shown.force(p.force())
                  + " along "
                  + direction(p.direction())
                  + " through "
                  + Shown.point(p.at())
                  + ", scatter ± "
                  + Shown.percent(p.forceSpread().limit())
                  + (p.device().isEmpty() ? "" : " (" + p.device() + ")")));
    }
    for (LoadCase c : d.cases()) {
      rows.add(
          Page.Row.of(
              "load case " + c.name(),
              Shown.force(c.load().force().norm())
                  + " along "
                  + direction(c.load().force())
                  + " at "
                  + Shown.point(c.load().at())));
    }
    List<Page.Row> supports = new ArrayList<>();
    for (Support s : d.supports()) {
      supports.add(
          Page.Row.of(
              s.name(),
              Shown.point(s.ball().centre()),
              Shown.length(s.ball().diameter()),
              s.ballMaterial().name(),
              SeatWords.of(s.seat()),
              s.seatMaterial().name(),
              s.mounting().description()));
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

  public static Page.Section checks(CheckResult check) {
    List<Page.Row> rows = new ArrayList<>();
    for (Finding f : check.findings()) {
      rows.add(
          new Page.Row(
              List.of(
                  f.check().words(),
                  VerdictWords.word(f.judged()),
                  f.subject().name(),
                  FigureText.BOTH.of(f.measure(), f.value(), true),
                  limit(f),
                  said(f)),
              tone(f.judged())));
    }
    return new Page.Section(
        "checks",
        "Every check",
        List.of(
            new Page.Table(
                "Worst first",
                List.of(
                    "check",
                    "result",
                    "where",
                    "value",
                    "limit",
                    "what was found, and what to change"),
                rows)));
  }

  /** A finding in words, with its advice. */
  public static String said(Finding f) {
    String said = FindingWords.of(f.said(), FigureText.BOTH);
    return f.advice().isEmpty() ? said : said + " " + FindingWords.of(f.advice(), FigureText.BOTH);
  }

  private static String limit(Finding f) {
    if (f.judged() == Judged.ADVICE) {
      return "-";
    }
    return (f.sense() == Finding.Sense.AT_MOST ? "at most " : "at least ")
        + FigureText.BOTH.of(f.measure(), f.limit())
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
