package reseat.report.ballmount;

import reseat.plots.drawing.BallStudSection;
import reseat.plots.drawing.PivotSection;
import reseat.report.form.PictureSet;
import reseat.report.form.UnitSystem;
import reseat.study.BallMountResult;

/** The pictures of one ball mount by name. */
public final class BallMountPictures extends PictureSet {

  private BallMountPictures() {}

  /**
   * Draws what a mount has: its stud, and the seat that its ball turns in.
   *
   * @param result everything about the mount
   * @param system unit system of their words
   * @return its pictures
   */
  public static BallMountPictures of(BallMountResult result, UnitSystem system) {
    BallMountPictures pictures = new BallMountPictures();
    pictures.add(
        BallStudSection.draw(
            "section-stud",
            "of this mount",
            result.design().mount(),
            result.design().ballRadius(),
            drawing(system)));
    result
        .pivot()
        .ifPresent(
            p ->
                pictures.add(
                    PivotSection.draw(
                        "section-seat", p.duty(), result.design().ballMaterial(), p.force(), drawing(system))));
    return pictures;
  }
}
