package reseat.report.fullreport;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.AllowedPreload;
import reseat.check.PreloadDeviceCheck;
import reseat.check.PreloadLineCheck;
import reseat.design.Preload;
import reseat.design.Support;
import reseat.equilibrium.Equilibrium;
import reseat.equilibrium.StiffnessCentre;
import reseat.plots.chart.DeviceBand;
import reseat.plots.drawing.BallStudSection;
import reseat.plots.drawing.PlanView;
import reseat.plots.drawing.PolarLiftOff;
import reseat.plots.drawing.SeatSection;
import reseat.plots.drawing.SideView;
import reseat.preload.PreloadDevice;
import reseat.report.form.PictureSet;
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
   * @return its pictures
   */
  public static ReportPictures of(SeatedCheck check) {
    ReportPictures pictures = new ReportPictures();
    pictures.add(
        PlanView.draw(
            check.design(),
            check.preloadLines().stream().map(PreloadLineCheck.Line::zone).toList(),
            List.of(
                new PlanView.Landmark(
                    "centre of stiffness",
                    StiffnessCentre.of(check.frictionless().stiffness().at(Vec3.ZERO))))));
    pictures.add(SideView.draw(check.design()));
    int number = 1;
    for (Support s : check.design().supports()) {
      List<Equilibrium.Contact> contacts = new ArrayList<>();
      for (Equilibrium.Contact c : check.standing().contacts()) {
        if (c.line().support().equals(s.name())) {
          contacts.add(c);
        }
      }
      pictures.add(SeatSection.draw("section-" + number, s, contacts));
      if (s.mounting().stud().isPresent() && number == 1) {
        pictures.add(BallStudSection.draw("section-stud", s));
      }
      number++;
    }
    if (!check.design().preloads().isEmpty()) {
      pictures.add(PolarLiftOff.of(check.design()));
    }
    pictures.addDevices(check);
    return pictures;
  }

  /**
   * Draws everything.
   *
   * @param study all results
   * @return its pictures
   */
  public static ReportPictures of(ReportStudy study) {
    ReportPictures pictures = of(study.check());
    ReportCharts.of(study).forEach(pictures::add);
    return pictures;
  }

  /** One picture for each preload device; devices that are equal are drawn once. */
  private void addDevices(SeatedCheck check) {
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
                PreloadDeviceCheck.band(p, device.get(), allowed))
            .ifPresent(this::add);
      }
    }
  }
}
