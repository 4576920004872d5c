package reseat.report.form;

import reseat.design.BallMounting;
import reseat.design.StudMount;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.Seat;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;
import reseat.units.QuantityFormat;
import reseat.units.QuantityKind;
import reseat.units.UnitCatalog;

/** A seat in a few words, the included angle beside the flank angle. */
public final class SeatWords {

  private SeatWords() {}

  /**
   * Names the seat of a contact.
   *
   * @param contact name of the contact, for instance {@code front (left flank)}
   * @return the name without the flank
   */
  public static String seat(String contact) {
    int bracket = contact.lastIndexOf(" (");
    return bracket < 0 ? contact : contact.substring(0, bracket);
  }

  /**
   * Says how a ball is held.
   *
   * @param mounting how it is
   * @param figures how numbers are written
   * @return a few words; those of the mounting itself where there is no stud
   */
  public static String mounting(BallMounting mounting, FigureText figures) {
    return mounting.stud().map(m -> stud(m, figures)).orElse(mounting.description());
  }

  /**
   * Describes a ball stud.
   *
   * @param mount the stud with its bond and thread
   * @param figures how numbers are written
   * @return material, neck, length, bond and thread
   */
  public static String stud(StudMount mount, FigureText figures) {
    return mount.material().name()
        + " stud "
        + figures.dimension(mount.stud().neckDiameter())
        + ", standing out "
        + figures.dimension(mount.stud().stickOut())
        + mount.bond().map(b -> ", ball bonded with " + b.adhesive().name()).orElse("")
        + mount.thread().map(t -> ", thread " + t.limits().thread()).orElse("");
  }

  /** A seat with its sizes in both unit systems. */
  public static String of(Seat seat) {
    return of(seat, FigureText.BOTH);
  }

  /** A seat with its sizes in the units asked for. */
  public static String of(Seat seat, FigureText figures) {
    return seat.accept(
        new Seat.Visitor<String>() {
          @Override
          public String veeGroove(VeeGroove s) {
            return "vee groove, flanks at "
                + angle(s.leftAngle())
                + " ("
                + angle(Math.PI - s.leftAngle() - s.rightAngle())
                + " included)";
          }

          @Override
          public String gothicGroove(GothicGroove s) {
            return "gothic groove, flank radius "
                + figures.quantity(s.leftRadius(), QuantityKind.LENGTH);
          }

          @Override
          public String cylinderPair(CylinderPair s) {
            return "pins of "
                + figures.quantity(2 * s.leftRadius(), QuantityKind.LENGTH)
                + " spaced "
                + figures.quantity(s.spacing(), QuantityKind.LENGTH);
          }

          @Override
          public String trihedralSeat(TrihedralSeat s) {
            return "trihedral seat, flanks at " + angle(s.firstAngle());
          }

          @Override
          public String coneSeat(ConeSeat s) {
            return "cone, flank at "
                + angle(s.angle())
                + " ("
                + angle(Math.PI - 2 * s.angle())
                + " included)";
          }

          @Override
          public String flatSeat(FlatSeat s) {
            return "flat";
          }
        });
  }

  private static String angle(double radians) {
    return QuantityFormat.fixed(radians, UnitCatalog.DEGREE, 2);
  }
}
