package reseat.making;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import reseat.elementary.Elementary;
import reseat.seat.ConeSeat;
import reseat.seat.CylinderPair;
import reseat.seat.FlatSeat;
import reseat.seat.GothicGroove;
import reseat.seat.Seat;
import reseat.seat.TrihedralSeat;
import reseat.seat.VeeGroove;

/**
 * The face that a seat is cut into: as high over the seat's reference point as its mouth is wide.
 *
 * <p>With flanks at angles a_k to the coupling plane the face of a vee groove of mouth width W lies
 * W/(sum of cot a_k) over the line where the flanks meet, that of a trihedral seat with a circle of
 * diameter D inscribed in its mouth (3 D/2)/(sum of cot a_k) over its apex, that of a cone of mouth
 * D as much, D/2 tan a. Width and depth of a seat are so one error, not two: a groove that is wider
 * by w at the right angle is deeper by w {@code perMouth}.
 *
 * @param height height of the face over the reference point, m
 * @param perMouth change of that height with the width or diameter of the mouth
 * @param perFlankAngle change with each flank's angle at the same mouth, m/rad; zero where flanks
 *     are not plane
 */
public record MouthFace(double height, double perMouth, List<Double> perFlankAngle) {

  /** Copies the list. */
  public MouthFace {
    perFlankAngle = List.copyOf(perFlankAngle);
  }

  /**
   * Finds the face.
   *
   * @param seat the seat
   * @return the face; empty if the seat has no mouth or its width is not stated
   */
  public static Optional<MouthFace> of(Seat seat) {
    return seat.accept(
        new Seat.Visitor<Optional<MouthFace>>() {
          @Override
          public Optional<MouthFace> veeGroove(VeeGroove s) {
            return plane(s.extent().mouthWidth(), s.leftAngle(), s.rightAngle());
          }

          @Override
          public Optional<MouthFace> trihedralSeat(TrihedralSeat s) {
            double reach = 1.5 * s.mouthDiameter();
            return plane(reach, s.firstAngle(), s.secondAngle(), s.thirdAngle())
                .map(f -> new MouthFace(f.height(), 1.5 * f.perMouth(), f.perFlankAngle()));
          }

          @Override
          public Optional<MouthFace> coneSeat(ConeSeat s) {
            return plane(1.5 * s.mouthDiameter(), s.angle(), s.angle(), s.angle())
                .map(f -> new MouthFace(f.height(), 1.5 * f.perMouth(), f.perFlankAngle()));
          }

          @Override
          public Optional<MouthFace> gothicGroove(GothicGroove s) {
            double reach = s.axisOffset() + s.extent().mouthWidth() / 2;
            double radius = (s.leftRadius() + s.rightRadius()) / 2;
            if (!(reach < radius)) {
              return Optional.empty();
            }
            double drop = Math.sqrt(radius * radius - reach * reach);
            return Optional.of(
                new MouthFace(s.axisHeight() - drop, reach / (2 * drop), List.of(0.0, 0.0)));
          }

          @Override
          public Optional<MouthFace> cylinderPair(CylinderPair s) {
            return Optional.empty();
          }

          @Override
          public Optional<MouthFace> flatSeat(FlatSeat s) {
            return Optional.empty();
          }
        });
  }

  private static Optional<MouthFace> plane(double reach, double... angles) {
    if (!Double.isFinite(reach)) {
      return Optional.empty();
    }
    double cotangents = 0;
    for (double a : angles) {
      cotangents += 1 / Elementary.tan(a);
    }
    Double[] perAngle = Collections.nCopies(angles.length, 0.0).toArray(new Double[0]);
    for (int k = 0; k < angles.length; k++) {
      double sine = Elementary.sin(angles[k]);
      perAngle[k] = reach / (cotangents * cotangents * sine * sine);
    }
    return Optional.of(new MouthFace(reach / cotangents, 1 / cotangents, List.of(perAngle)));
  }
}
