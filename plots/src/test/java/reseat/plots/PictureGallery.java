package reseat.plots;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import reseat.design.CouplingDesign;
import reseat.design.Support;
import reseat.plots.drawing.BallStudSection;
import reseat.plots.drawing.DrawingUnits;
import reseat.plots.drawing.PlanView;
import reseat.plots.drawing.PolarLiftOff;
import reseat.plots.drawing.SeatSection;
import reseat.plots.drawing.SideView;
import reseat.space.Vec3;

/** Every kind of picture, drawn from the example designs; the main method puts them into files. */
public final class PictureGallery {

  private PictureGallery() {}

  /** Pictures of all kinds. */
  public static List<Picture> all() {
    List<Picture> all = new ArrayList<>(ofMarks());
    all.addAll(ChartExamples.withBitmaps());
    return all;
  }

  /** Pictures that a browser can draw too, which knows nothing of Java's graphics classes. */
  static List<Picture> ofMarks() {
    List<Picture> all = new ArrayList<>();
    for (CouplingDesign d : ExampleDesigns.all()) {
      all.add(
          PlanView.draw(
              d,
              ExampleDesigns.zones(d),
              List.of(new PlanView.Landmark("centre of stiffness", new Vec3(0.004, 0.003, 0))),
              DrawingUnits.BOTH));
    }
    for (CouplingDesign d : ExampleDesigns.all()) {
      all.add(SideView.draw(d, DrawingUnits.BOTH));
      for (int i = 0; i < d.supports().size(); i++) {
        Support s = d.supports().get(i);
        String name = "seat-" + s.name().replace(' ', '-');
        all.add(SeatSection.draw(name, s, ExampleDesigns.contacts(d, i), DrawingUnits.BOTH));
      }
    }
    for (CouplingDesign d : ExampleDesigns.all()) {
      all.add(PolarLiftOff.of(d, DrawingUnits.BOTH));
    }
    all.addAll(ChartExamples.ofMarks());
    all.add(BallStudSection.draw("stud-bonded", ExampleDesigns.bondedStud(), DrawingUnits.BOTH));
    all.add(BallStudSection.draw("stud-sleeve", ExampleDesigns.sleevedStud(), DrawingUnits.BOTH));
    CouplingDesign gothic = ExampleDesigns.gothicPost();
    all.add(
        SeatSection.draw(
            "seat-gothic",
            gothic.supports().get(0),
            ExampleDesigns.contacts(gothic, 0),
            DrawingUnits.BOTH));
    all.addAll(MountExamples.all());
    return all;
  }

  /** Writes every picture as SVG and PNG into a directory. */
  public static void main(String[] args) throws IOException {
    Path dir = Path.of(args[0]);
    Files.createDirectories(dir);
    int i = 0;
    for (Picture p : all()) {
      String file = String.format("%02d-%s", i++, p.name());
      Files.write(dir.resolve(file + ".svg"), p.svg());
      Files.write(dir.resolve(file + ".png"), p.png(1.5));
    }
  }
}
