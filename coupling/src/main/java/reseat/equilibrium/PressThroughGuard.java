package reseat.equilibrium;

/**
 * On which side of its seat each ball is.
 *
 * <p>Gaps alone do not tell a ball on top of two pins from one below them: both touch. But two
 * flanks of one ball turn their normals to the other side of the plane of their generators when the
 * ball goes through between them, and the product of the two normals changes its sign. Allocates
 * nothing after construction.
 */
final class PressThroughGuard {

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
        int a = 3 * i;
        double along =
            cross(normals, a + 1, a + 2) * cross(nominal, a + 1, a + 2)
                + cross(normals, a + 2, a) * cross(nominal, a + 2, a)
                + cross(normals, a, a + 1) * cross(nominal, a, a + 1);
        if (along < 0) {
          return true;
        }
      }
    }
    return false;
  }

  /** One component of the product of a contact's normal and the next one's. */
  private static double cross(double[] n, int p, int q) {
    return n[p] * n[q + 3] - n[q] * n[p + 3];
  }
}
