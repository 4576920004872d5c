package reseat.designfile;

import java.util.Map;
import java.util.Optional;
import reseat.space.Vec3;

/** Directions written as a signed axis of the coupling frame. */
final class SignedAxis {

  static final String ALLOWED =
      "\"+x\", \"-x\", \"+y\", \"-y\", \"+z\", \"-z\" or three plain numbers such as [0, 0, -1]";

  private static final Map<String, Vec3> AXES =
      Map.of(
          "+x", Vec3.X,
          "x", Vec3.X,
          "-x", Vec3.X.negated(),
          "+y", Vec3.Y,
          "y", Vec3.Y,
          "-y", Vec3.Y.negated(),
          "+z", Vec3.Z,
          "z", Vec3.Z,
          "-z", Vec3.Z.negated());

  private SignedAxis() {}

  static Optional<Vec3> of(String text) {
    return Optional.ofNullable(AXES.get(text.strip()));
  }
}
