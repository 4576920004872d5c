package reseat.equilibrium;

/**
 * On which side of its seat each ball is.
 *
 * <p>Gaps alone do not tell a ball on top of two pins from one below them: both touch. But two
 * flanks of one ball turn their normals to the other side of the plane of their generators when the
 * ball goes through between them, and the product of the two normals changes its sign. Allocates
 * nothing after construction.
 */
final class SeatSide {

  private static final int N = 6;

  private final double[] nominal = new double[3 * N];

  /**
   * Remembers the side on which all balls are now.
   *
   * @param normals unit normals of six contacts, 3 values each
   */
  void remember(double[] normals) {
    System.arraycopy(normals, 0, nominal, 0, 3 * N);
  }

  /**
   * Says whether a ball has gone to the other side.
   *
   * @param geometry which contact belongs to which ball
   * @param normals unit normals of six contacts now
   * @return true if any has
   */
  boolean left(ContactGeometry geometry, double[] normals) {
    for (int i = 0; i + 1 < N; i++) {
      if (geometry.ballOf[i] == geometry.ballOf[i + 1]) {
        double along = 0;
        for (int k = 0; k < 3; k++) {
          along += crossOfPair(normals, i, k) * crossOfPair(nominal, i, k);
        }
        if (along < 0) {
          return true;
        }
      }
    }
    return false;
  }

  /** Component k of the product of the normals of contacts i and i + 1. */
  private static double crossOfPair(double[] n, int i, int k) {
    int a = 3 * i;
    int b = a + 3;
    int p = (k + 1) % 3;
    int q = (k + 2) % 3;
    return n[a + p] * n[b + q] - n[a + q] * n[b + p];
  }
}
