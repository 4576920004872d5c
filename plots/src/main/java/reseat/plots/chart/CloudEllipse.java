package reseat.plots.chart;

import reseat.elementary.Elementary;
import reseat.numerics.RunningCovariance;
import reseat.space.Vec3;

/** Mean, spread and principal axes of a cloud, in the unit of its coordinates. */
final class CloudEllipse {
  /** Radius of a normal cloud in two dimensions that holds 95 %, over sigma: sqrt(-2 ln 0.05). */
  static final double HOLDS_95 = Math.sqrt(-2 * Elementary.log(0.05));

  final double meanX;
  final double meanY;
  final double sdX;
  final double sdY;
  final double correlation;
  final double major;
  final double minor;
  final double turn;

  private CloudEllipse(double meanX, double meanY, double varX, double varY, double cov) {
    this.meanX = meanX;
    this.meanY = meanY;
    sdX = Math.sqrt(varX);
    sdY = Math.sqrt(varY);
    correlation = sdX * sdY == 0 ? 0 : cov / (sdX * sdY);
    double half = Elementary.hypot((varX - varY) / 2, cov);
    double middle = (varX + varY) / 2;
    major = Math.sqrt(middle + half);
    minor = Math.sqrt(Math.max(0, middle - half));
    turn = 0.5 * Elementary.atan2(2 * cov, varX - varY);
  }

  static CloudEllipse of(double[] xs, double[] ys) {
    RunningCovariance c = new RunningCovariance();
    for (int i = 0; i < xs.length; i++) {
      c.add(new Vec3(xs[i], ys[i], 0));
    }
    Vec3 mean = c.mean();
    return new CloudEllipse(
        mean.x(), mean.y(), c.covariance(0, 0), c.covariance(1, 1), c.covariance(0, 1));
  }

  double[][] outline(double times) {
    int n = 90;
    double[][] points = new double[2][n + 1];
    for (int i = 0; i <= n; i++) {
      double t = 2 * Math.PI * i / n;
      double a = times * major * Elementary.cos(t);
      double b = times * minor * Elementary.sin(t);
      points[0][i] = meanX + a * Elementary.cos(turn) - b * Elementary.sin(turn);
      points[1][i] = meanY + a * Elementary.sin(turn) + b * Elementary.cos(turn);
    }
    return points;
  }
}
