package reseat.report.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.plots.Picture;
import reseat.plots.chart.AxisQuantity;
import reseat.plots.chart.ParetoChart;
import reseat.report.form.PictureSet;
import reseat.report.form.UnitSystem;
import reseat.search.Candidate;
import reseat.search.CandidateCheck;
import reseat.search.Merits;
import reseat.search.SizingSpace;
import reseat.search.SizingStudy;

/** Candidates by repeatability and stiffness, and those that none beats in both. */
public final class SizePicture {

  private SizePicture() {}

  /**
   * Draws the picture.
   *
   * @param study the search
   * @param system unit system of its axes
   * @return the picture; empty if no candidate holds
   */
  public static Optional<Picture> of(SizingStudy study, UnitSystem system) {
    if (study.sample().isEmpty()) {
      return Optional.empty();
    }
    SizingSpace space = study.plan().space();
    boolean share = space.file().unaltered().design().map(CandidateCheck::targets).orElse(false);
    AxisQuantity first =
        share
            ? new AxisQuantity("scatter of tool changes, bound", "% of target", 0.01)
            : PictureSet.chart(system)
                .of(AxisQuantity.micrometres("scatter of tool changes, bound"));
    AxisQuantity second =
        PictureSet.chart(system)
            .of(new AxisQuantity("least stiffness at the tool point", "N/µm", 1e6));
    double[] xs = study.sample().stream().mapToDouble(c -> merits(c).repeatability()).toArray();
    double[] ys = study.sample().stream().mapToDouble(c -> merits(c).stiffness()).toArray();
    List<ParetoChart.Best> best = new ArrayList<>();
    study
        .winner()
        .ifPresent(
            w -> {
              Merits m = w.judgement().merits().orElseThrow();
              best.add(
                  new ParetoChart.Best(
                      study.refined().isPresent() ? "R" : "1", m.repeatability(), m.stiffness()));
            });
    for (Candidate c : front(study.pareto())) {
      Merits m = merits(c);
      best.add(new ParetoChart.Best("no. " + c.number(), m.repeatability(), m.stiffness()));
    }
    double least = study.plan().wish().leastStiffness();
    return Optional.of(
        ParetoChart.draw(
            first,
            second,
            xs,
            ys,
            best,
            new ParetoChart.Limits(
                Double.POSITIVE_INFINITY, least > 0 ? least : Double.POSITIVE_INFINITY),
            true));
  }

  private static Merits merits(Candidate c) {
    return c.judgement().merits().orElseThrow();
  }

  /** Those of the set that no other beats in the two qualities of the picture alone. */
  private static List<Candidate> front(List<Candidate> all) {
    List<Candidate> front = new ArrayList<>();
    for (Candidate c : all) {
      Merits m = merits(c);
      boolean beaten = false;
      for (Candidate o : all) {
        Merits n = merits(o);
        beaten |=
            n.repeatability() <= m.repeatability()
                && n.stiffness() >= m.stiffness()
                && (n.repeatability() < m.repeatability() || n.stiffness() > m.stiffness());
      }
      if (!beaten) {
        front.add(c);
      }
    }
    return front;
  }
}
