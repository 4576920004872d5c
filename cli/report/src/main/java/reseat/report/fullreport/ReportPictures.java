package reseat.report.fullreport;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import reseat.check.AllowedPreload;
import reseat.check.Measure;
import reseat.check.PreloadDeviceCheck;
import reseat.check.PreloadLineCheck;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.StiffnessCentre;
import reseat.plots.Picture;
import reseat.plots.chart.DeviceBand;
import reseat.plots.chart.PictureUnits;
import reseat.plots.drawing.BallStudSection;
import reseat.plots.drawing.DrawingUnits;
import reseat.plots.drawing.PlanView;
import reseat.plots.drawing.PolarLiftOff;
import reseat.plots.drawing.SeatSection;
import reseat.plots.drawing.SideView;
import reseat.preload.PreloadDevice;
import reseat.report.form.FigureText;
import reseat.report.form.PictureSet;
import reseat.report.form.SeatWords;
import reseat.report.form.UnitSystem;
import reseat.report.page.Page;
import reseat.space.Vec3;
import reseat.study.ReportStudy;
import reseat.study.SeatedCheck;

/** The pictures of a report by name, in the order of the page. */
public final class ReportPictures extends PictureSet {

  private ReportPictures() {}

  /**
   * Draws what the check alone gives.
   *
   * @param check the check of a coupling that stands
   * @param system unit system of their words and axes
   * @return its pictures
   */
  public static ReportPictures of(SeatedCheck check, UnitSystem system) {
    DrawingUnits units = drawing(system);
    ReportPictures pictures = new ReportPictures();
    pictures.add(
        PlanView.draw(
            check.design(),
            check.preloadLines().stream().map(PreloadLineCheck.Line::zone).toList(),
            List.of(
                new PlanView.Landmark(
                    "centre of stiffness",
                    StiffnessCentre.of(check.frictionless().stiffness().at(Vec3.ZERO)))),
            units));
    pictures.add(SideView.draw(check.design(), units));
    int number = 1;
    for (Support s : check.design().supports()) {
      List<Equilibrium.Contact> contacts = new ArrayList<>();
      for (Equilibrium.Contact c : check.standing().contacts()) {
        if (c.line().support().equals(s.name())) {
          contacts.add(c);
        }
      }
      pictures.add(SeatSection.draw("section-" + number, s, contacts, units));
      if (s.mounting().stud().isPresent() && number == 1) {
        pictures.add(BallStudSection.draw("section-stud", s, units));
      }
      number++;
    }
    if (!check.design().preloads().isEmpty()) {
      pictures.add(PolarLiftOff.of(check.design(), units));
    }
    pictures.addDevices(check, chart(system));
    return pictures;
  }

  /**
   * Draws everything.
   *
   * @param study all results
   * @param system unit system of their words and axes
   * @return its pictures
   */
  public static ReportPictures of(ReportStudy study, UnitSystem system) {
    ReportPictures pictures = of(study.check(), system);
    ReportCharts.of(study, chart(system)).forEach(pictures::add);
    return pictures;
  }

  /** The sections through the seats; a seat that is built and loaded like another is shown once. */
  public List<Page.Block> seats(SeatedCheck check) {
    List<Page.Block> shown = new ArrayList<>();
    Map<List<Object>, List<String>> alike = new LinkedHashMap<>();
    Map<List<Object>, Picture> first = new LinkedHashMap<>();
    int number = 1;
    for (Support s : check.design().supports()) {
      List<Object> built = new ArrayList<>();
      built.add(s.ball().diameter());
      built.add(SeatWords.of(s.seat()));
      for (Equilibrium.Contact c : check.standing().contacts()) {
        if (c.line().support().equals(s.name())) {
          built.add(FigureText.METRIC.of(Measure.FORCE, c.force()));
        }
      }
      alike.computeIfAbsent(built, b -> new ArrayList<>()).add(s.name());
      first.putIfAbsent(built, named("section-" + number).orElseThrow());
      number++;
    }
    first.forEach(
        (built, picture) -> {
          List<String> names = alike.get(built);
          String same =
              names.size() == 1
                  ? ""
                  : " The same at " + String.join(", ", names.subList(1, names.size())) + ".";
          shown.add(
              new Page.Drawing(
                  new Page.Figure(
                      picture.svgElement(), picture.title() + ". " + picture.caption() + same)));
        });
    return shown;
  }

  /** One picture for each preload device; devices that are equal are drawn once. */
  private void addDevices(SeatedCheck check, PictureUnits units) {
    Optional<AllowedPreload> allowed = check.preload().get();
    List<PreloadDevice> seen = new ArrayList<>();
    for (Preload p : check.design().preloads()) {
      Optional<PreloadDevice> device = p.modelled();
      if (device.isPresent() && !seen.contains(device.get())) {
        seen.add(device.get());
        DeviceBand.draw(
                "device-" + seen.size(),
                p.name(),
                device.get(),
                PreloadDeviceCheck.band(p, device.get(), allowed),
                units)
            .ifPresent(this::add);
      }
    }
  }
}
