package reseat.report.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.plots.Picture;
import reseat.plots.chart.AxisQuantity;
import reseat.plots.chart.ControlChart;
import reseat.plots.chart.HistogramChart;
import reseat.plots.chart.MeasuredCloud;
import reseat.plots.chart.SeriesChart;
import reseat.readings.ColumnAnalysis;
import reseat.readings.Drift;
import reseat.readings.Repeatability;
import reseat.report.form.PictureSet;
import reseat.report.form.PictureWords;
import reseat.space.Vec3;
import reseat.study.PredictionStudy;
import reseat.units.QuantityKind;

/** The pictures of a remount series by name, in the order of the page. */
public final class ReadingsPictures extends PictureSet {

  private static final double NONE = Double.POSITIVE_INFINITY;

  /** Mounts below which a histogram or a cloud shows nothing. */
  private static final int LEAST = 8;

  /** Axes whose planes are drawn; more would make more planes than anybody looks at. */
  private static final int MOST_AXES = 3;

  /** Readings beyond which a control chart is a black band. */
  private static final int MOST_CONTROLLED = 5000;

  /** Points that a cloud is drawn from. */
  private static final int MOST_POINTS = 20_000;

  private final ReadingsReport report;
  private final List<ColumnAnalysis> columns;
  private final PictureWords words;

  private ReadingsPictures(ReadingsReport report) {
    this.report = report;
    this.columns = report.analysis().columns();
    this.words = new PictureWords(columns.stream().map(c -> c.column().name()).toList());
  }

  /**
   * Draws everything that a series gives.
   *
   * @param report what is reported
   * @return its pictures
   */
  public static ReadingsPictures of(ReadingsReport report) {
    ReadingsPictures pictures = new ReadingsPictures(report);
    pictures.add(pictures.series());
    pictures.planes();
    for (ColumnAnalysis c : pictures.columns) {
      pictures.histogram(c).ifPresent(pictures::add);
      pictures.control(c).ifPresent(pictures::add);
    }
    return pictures;
  }

  private static AxisQuantity quantity(ColumnAnalysis c, String name) {
    return new AxisQuantity(name, c.column().unit().symbol(), c.column().unit().toSi(1));
  }

  private Picture series() {
    List<SeriesChart.Column> drawn = new ArrayList<>();
    boolean settled = report.analysis().hasSettled() && report.analysis().wearIn() > 0;
    for (ColumnAnalysis c : columns) {
      Optional<reseat.readings.ControlChart> chart = c.chart();
      Optional<Drift> drift = c.holders().isPresent() ? Optional.empty() : c.drift();
      Optional<Drift> trend = drift.filter(Drift::hasDirection);
      int counted = report.analysis().series().mounts() - report.analysis().wearIn();
      drawn.add(
          new SeriesChart.Column(
              quantity(c, c.column().name()),
              boxed(c.column().values()),
              chart.map(reseat.readings.ControlChart::lowerLimit).orElse(NONE),
              chart.map(reseat.readings.ControlChart::upperLimit).orElse(NONE),
              settled ? report.analysis().wearIn() + 1 : 0,
              trend.map(d -> d.line().at(1)).orElse(NONE),
              trend.map(d -> d.line().at(counted)).orElse(NONE)));
    }
    return SeriesChart.draw(drawn, "control limits, from the settled mounts");
  }

  private static List<Double> boxed(double[] values) {
    return java.util.Arrays.stream(values).boxed().toList();
  }

  private Optional<Picture> histogram(ColumnAnalysis c) {
    List<Double> deviations = c.deviations();
    if (deviations.size() < LEAST) {
      return Optional.empty();
    }
    String name = "histogram-" + words.of(c.column().name());
    if (c.holders().isPresent()) {
      return Optional.of(
          HistogramChart.draw(
              name,
              quantity(c, c.column().name() + " less its holder's mean"),
              deviations.stream().mapToDouble(v -> v).toArray(),
              HistogramChart.Marked.NOTHING));
    }
    double mean = c.settled().map(Repeatability::mean).orElse(0.0);
    Optional<Double> half = c.toleranceFactor().map(k -> k * c.scatter().s());
    HistogramChart.Marked marked =
        half.map(
                h ->
                    new HistogramChart.Marked(
                        mean - h,
                        mean + h,
                        ReadingsRemarks.percent(report.analysis().options().share())
                            + " of all mounts, with "
                            + ReadingsRemarks.percent(report.analysis().options().confidence())
                            + " confidence"))
            .orElse(HistogramChart.Marked.NOTHING);
    return Optional.of(
        HistogramChart.draw(
            name,
            quantity(c, c.column().name()),
            deviations.stream().mapToDouble(v -> v + mean).toArray(),
            marked));
  }

  private void planes() {
    List<ColumnAnalysis> axes = new ArrayList<>();
    Optional<PredictionStudy> study = report.predictions().stream().findFirst();
    for (ColumnAnalysis c : columns) {
      boolean wanted = study.map(s -> s.axes().contains(c.column().name())).orElse(true);
      if (wanted && c.column().quantity() == QuantityKind.LENGTH) {
        axes.add(c);
      }
    }
    if (axes.size() > MOST_AXES) {
      return;
    }
    for (int i = 0; i < axes.size(); i++) {
      for (int j = i + 1; j < axes.size(); j++) {
        plane(axes.get(i), axes.get(j), study).ifPresent(this::add);
      }
    }
  }

  private Optional<Picture> plane(
      ColumnAnalysis first, ColumnAnalysis second, Optional<PredictionStudy> study) {
    List<Double> x = first.deviations();
    List<Double> y = second.deviations();
    if (x.size() < LEAST || first.scatter().s() == 0 || second.scatter().s() == 0) {
      return Optional.empty();
    }
    int shown = Math.min(MOST_POINTS, x.size());
    String a = first.column().name();
    String b = second.column().name();
    return Optional.of(
        MeasuredCloud.draw(
            "plane-" + words.of(a) + "-" + words.of(b),
            a,
            b,
            new MeasuredCloud.Cloud(x.subList(0, shown), y.subList(0, shown)),
            study
                .filter(s -> s.positions().size() > 2)
                .map(s -> new MeasuredCloud.Cloud(along(s, a), along(s, b)))
                .orElse(MeasuredCloud.Cloud.NONE)));
  }

  private static List<Double> along(PredictionStudy study, String axis) {
    int place = study.places().get(study.axes().indexOf(axis));
    return study.positions().stream().map((Vec3 p) -> p.component(place)).toList();
  }

  private Optional<Picture> control(ColumnAnalysis c) {
    Optional<reseat.readings.ControlChart> chart =
        Optional.ofNullable(report.later().get(c.column().name())).or(c::chart);
    return chart
        .filter(k -> k.readings().size() <= MOST_CONTROLLED)
        .map(
            k -> {
              List<Integer> runs = new ArrayList<>();
              for (reseat.readings.ControlChart.Signal s : k.signals()) {
                if (s.rule() != reseat.readings.ControlChart.Rule.OUT_OF_LIMITS) {
                  runs.add(s.index());
                }
              }
              return ControlChart.draw(
                  "control-" + words.of(c.column().name()),
                  quantity(c, c.column().name()),
                  k.readings(),
                  new ControlChart.Control(k.mean(), k.lowerLimit(), k.upperLimit()),
                  new ControlChart.Life(k.baseline(), runs.stream().distinct().toList()));
            });
  }
}
