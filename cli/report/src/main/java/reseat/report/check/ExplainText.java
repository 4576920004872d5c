package reseat.report.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import reseat.check.Finding;
import reseat.check.Measure;
import reseat.check.Said;
import reseat.design.AssumedValue;
import reseat.report.form.FigureText;
import reseat.report.form.Paragraph;
import reseat.study.SeatedCheck;

/** One figure of a check told in full: formula, inputs, source, and what of it is assumed. */
public final class ExplainText {

  /** Every figure that can be told, by the key by which it is asked for. */
  private static final Map<String, Function<Figures, Optional<Explained>>> FIGURES = figures();

  private ExplainText() {}

  /**
   * A figure in full.
   *
   * @param what what it is
   * @param value what was found, with its unit
   * @param formula how it is computed
   * @param inputs what goes into it, each with its value and where that comes from
   * @param source where the formula comes from
   * @param restsOn beginnings or parts of the keys on which it rests
   */
  record Explained(
      String what,
      String value,
      String formula,
      List<String> inputs,
      String source,
      List<String> restsOn) {}

  /** A result and how its numbers are written. */
  record Figures(SeatedCheck check, FigureText text) {}

  private static Map<String, Function<Figures, Optional<Explained>>> figures() {
    Map<String, Function<Figures, Optional<Explained>>> all = new LinkedHashMap<>();
    all.put("contact-force", f -> Optional.of(ExplainedContact.force(f)));
    all.put("approach", f -> Optional.of(ExplainedContact.approach(f)));
    all.put("peak-pressure", f -> Optional.of(ExplainedContact.pressure(f)));
    all.put("patch", f -> Optional.of(ExplainedContact.patch(f)));
    all.put("normal-stiffness", f -> Optional.of(ExplainedContact.stiffness(f)));
    all.put("lift-off", ExplainedUse::liftOff);
    all.put("repeatability", ExplainedUse::repeatability);
    all.put("seating-limit", ExplainedUse::seating);
    all.put("preload-band", ExplainedUse::preloadBand);
    all.put("natural-frequency", ExplainedUse::frequency);
    all.put("stud-stress", ExplainedUse::studStress);
    all.put("bond-use", ExplainedUse::bondUse);
    return all;
  }

  /**
   * Returns the keys.
   *
   * @return all figures that can be asked for
   */
  public static List<String> keys() {
    return List.copyOf(FIGURES.keySet());
  }

  /**
   * Tells a figure.
   *
   * @param check the check
   * @param key one of {@link #keys}
   * @param text how numbers are written
   * @return lines with their ends; empty if the design has no such figure
   * @throws IllegalArgumentException if there is no such key
   */
  public static Optional<String> of(SeatedCheck check, String key, FigureText text) {
    Function<Figures, Optional<Explained>> figure = FIGURES.get(key);
    if (figure == null) {
      throw new IllegalArgumentException("no figure " + key);
    }
    return figure.apply(new Figures(check, text)).map(e -> told(e, check, text));
  }

  private static String told(Explained e, SeatedCheck check, FigureText text) {
    StringBuilder out = new StringBuilder(800);
    out.append(
        Paragraph.of("", e.what() + ": " + e.value() + (e.value().endsWith(".") ? "" : ".")));
    out.append(Paragraph.of("  ", "Formula: " + e.formula() + "."));
    out.append("  Inputs:\n");
    for (String input : e.inputs()) {
      out.append(Paragraph.of("    ", input));
    }
    out.append(Paragraph.of("  ", "Source: " + e.source() + "."));
    List<AssumedValue> assumed = new ArrayList<>();
    for (AssumedValue a : check.stated().assumed()) {
      if (rests(e, a.key())) {
        assumed.add(a);
      }
    }
    if (assumed.isEmpty()) {
      out.append("  Assumed: nothing; the file states what it rests on.\n");
      return out.toString();
    }
    out.append("  Assumed:\n");
    for (String one : AssumedWords.of(assumed, text, true)) {
      out.append("    ").append(Paragraph.of("      ", one).stripLeading());
    }
    return out.toString();
  }

  private static boolean rests(Explained e, String key) {
    for (String part : e.restsOn()) {
      if (key.contains(part)) {
        return true;
      }
    }
    return false;
  }

  /** A limit with what kind of limit it is. */
  static String limit(Finding f, FigureText text) {
    return "limit "
        + (f.sense() == Finding.Sense.AT_MOST ? "at most " : "at least ")
        + text.of(f.measure(), f.limit())
        + ", "
        + LimitWords.kind(f.basis())
        + ": "
        + LimitWords.source(f.basis());
  }

  /** The worst finding that says something. */
  static Optional<Finding> saying(SeatedCheck check, Said said) {
    return check.findings().stream().filter(f -> f.said().key() == said).findFirst();
  }

  /** A factor in words. */
  static String factor(double value, FigureText text) {
    return Double.isInfinite(value) ? "never" : text.of(Measure.FACTOR, value, true);
  }
}
