package reseat.repeatability;

/** What one cause adds to the scatter: covariance of six motions, and their fourth cumulants. */
final class CausePart {

  private static final int N = 6;

  final double[] covariance = new double[N * N];
  final double[] fourth = new double[N];

  /** Adds a deviation of a given effect per standard deviation and of a given shape. */
  void add(double[] effect, double kurtosis) {
    for (int i = 0; i < N; i++) {
      for (int j = 0; j < N; j++) {
        covariance[N * i + j] += effect[i] * effect[j];
      }
      double square = effect[i] * effect[i];
      fourth[i] += kurtosis * square * square;
    }
  }

  /** Adds the ways home of an {@link ApproachMemory}, each with the motion that it leaves. */
  void addWays(double[][] ways) {
    double[] mean = new double[N];
    for (int w = 0; w < ways.length; w++) {
      for (int k = 0; k < N; k++) {
        mean[k] += ApproachMemory.chance(w) * ways[w][k];
      }
    }
    double[] own = new double[N * N];
    for (int w = 0; w < ways.length; w++) {
      double chance = ApproachMemory.chance(w);
      for (int i = 0; i < N; i++) {
        double a = ways[w][i] - mean[i];
        for (int j = 0; j < N; j++) {
          own[N * i + j] += chance * a * (ways[w][j] - mean[j]);
        }
        fourth[i] += chance * a * a * a * a;
      }
    }
    for (int i = 0; i < N; i++) {
      fourth[i] -= 3 * own[(N + 1) * i] * own[(N + 1) * i];
    }
    for (int k = 0; k < N * N; k++) {
      covariance[k] += own[k];
    }
  }

  void add(CausePart other) {
    for (int k = 0; k < N * N; k++) {
      covariance[k] += other.covariance[k];
    }
    for (int k = 0; k < N; k++) {
      fourth[k] += other.fourth[k];
    }
  }

  double kurtosis(int k) {
    double variance = covariance[(N + 1) * k];
    return variance > 0 ? fourth[k] / (variance * variance) : 0;
  }
}
