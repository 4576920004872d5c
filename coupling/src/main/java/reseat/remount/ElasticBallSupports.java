package reseat.remount;

import java.util.Arrays;
import reseat.design.CouplingDesign;
import reseat.design.Support;

/**
 * All balls of a coupling on their mountings, where these are not rigid.
 *
 * <p>Storage is reused; not for use by several threads.
 */
final class ElasticBallSupports {

  private static final int N = 6;

  private final ElasticBallSupport[] balls;

  private ElasticBallSupports(ElasticBallSupport[] balls) {
    this.balls = balls;
  }

  /**
   * Takes the mountings of a design.
   *
   * @param design the coupling
   * @return the balls at rest on their mountings; null if every mounting is rigid
   */
  static ElasticBallSupports of(CouplingDesign design) {
    if (design.supports().stream().allMatch(s -> s.mounting().isRigid())) {
      return null;
    }
    ElasticBallSupport[] balls = new ElasticBallSupport[design.supports().size()];
    int contact = 0;
    for (int b = 0; b < balls.length; b++) {
      Support s = design.supports().get(b);
      int[] contacts = new int[s.seat().contacts()];
      for (int i = 0; i < contacts.length; i++) {
        contacts[i] = contact++;
      }
      balls[b] = new ElasticBallSupport(s.mounting(), contacts);
    }
    return new ElasticBallSupports(balls);
  }

  /** Number of values that tell all motions. */
  int size() {
    return N * balls.length;
  }

  void reset() {
    for (ElasticBallSupport ball : balls) {
      Arrays.fill(ball.motion, 0);
      Arrays.fill(ball.held, 0);
    }
  }

  /** Makes the present motions those to go on from. */
  void accept() {
    for (ElasticBallSupport ball : balls) {
      System.arraycopy(ball.motion, 0, ball.held, 0, N);
    }
  }

  /** Goes back to the motions last accepted. */
  void restore() {
    for (ElasticBallSupport ball : balls) {
      System.arraycopy(ball.held, 0, ball.motion, 0, N);
    }
  }

  /** Adds the shift of a ball to its centre, ball half's axes. */
  void addShift(int ball, double[] centre) {
    for (int k = 0; k < 3; k++) {
      centre[k] += balls[ball].motion[k];
    }
  }

  /** Takes all motions since the last accepted state into the seat half's axes. */
  void computeMotions(ToolChangeState s) {
    for (ElasticBallSupport ball : balls) {
      ball.computeMotion(s);
    }
  }

  /** Displacement of a contact by the motions last taken, seat half's axes. */
  void copyDisplacement(int contact, ToolChangeState s, double[] out) {
    balls[s.geometry.ballOf(contact)].copyDisplacement(contact, s, out);
  }

  /** Moves all balls by a guess, its values starting at an index. */
  void add(double[] guess, int from) {
    for (int b = 0; b < balls.length; b++) {
      for (int k = 0; k < N; k++) {
        balls[b].motion[k] += guess[from + N * b + k];
      }
    }
  }

  /** Writes the motions since an earlier state, starting at an index. */
  void copyMotion(double[] earlier, double[] out, int from) {
    for (int b = 0; b < balls.length; b++) {
      for (int k = 0; k < N; k++) {
        out[from + N * b + k] = balls[b].motion[k] - earlier[N * b + k];
      }
    }
  }

  /** Writes all motions. */
  void copyTo(double[] out) {
    for (int b = 0; b < balls.length; b++) {
      System.arraycopy(balls[b].motion, 0, out, N * b, N);
    }
  }

  /** Sets every motion to what the present forces make of it. */
  void follow(ToolChangeState s) {
    for (ElasticBallSupport ball : balls) {
      ball.computeMisfit(s);
      ball.follow();
    }
  }

  /** Finds the greatest shift that is missing under the present forces, m. */
  double computeMisfit(ToolChangeState s) {
    double most = 0;
    for (ElasticBallSupport ball : balls) {
      most = Math.max(most, ball.computeMisfit(s));
    }
    return most;
  }

  /** Adds all contacts to the equations of the half; false if a mounting has no answer. */
  boolean assemble(ToolChangeState s, double[] perPoint, double[] half) {
    Arrays.fill(half, 0);
    for (ElasticBallSupport ball : balls) {
      if (!ball.assemble(s, perPoint, half)) {
        return false;
      }
    }
    return true;
  }

  /** Adds what the missing motions make of the load on the half. */
  void addMisfit(ToolChangeState s, double[] residual) {
    for (ElasticBallSupport ball : balls) {
      ball.addMisfit(s, residual);
    }
  }

  /** Moves all balls along with part of a step of the half. */
  void advance(ToolChangeState s, double[] step, double part) {
    for (ElasticBallSupport ball : balls) {
      ball.advance(s, step, part);
    }
  }
}
