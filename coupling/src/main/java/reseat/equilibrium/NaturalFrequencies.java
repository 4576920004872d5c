package reseat.equilibrium;

import java.util.ArrayList;
import java.util.List;
import reseat.design.Holder;
import reseat.numerics.GeneralizedEigen;
import reseat.space.Matrix6;

/**
 * Natural frequencies of the holder as a rigid body on its contacts.
 *
 * <p>The post, the plates and the mounting of the post on the machine are taken as rigid, so the
 * true first mode of the machine is lower.
 *
 * @param hertz frequencies, lowest first, Hz: six if the holder's inertia is stated, else three for
 *     its mass alone gathered in its centre
 * @param withInertia whether rotational inertia was counted
 */
public record NaturalFrequencies(List<Double> hertz, boolean withInertia) {

  /** Copies the list. */
  public NaturalFrequencies {
    hertz = List.copyOf(hertz);
  }

  /**
   * Finds the frequencies.
   *
   * @param stiffness stiffness of the coupling
   * @param holder mass, its place and inertia
   * @return the frequencies; none if the holder has no mass
   */
  public static NaturalFrequencies of(CouplingStiffness stiffness, Holder holder) {
    if (holder.mass() == 0) {
      return new NaturalFrequencies(List.of(), false);
    }
    GeneralizedEigen modes;
    if (holder.hasInertia()) {
      Matrix6 k = stiffness.at(holder.centreOfMass());
      double[] m = new double[36];
      for (int i = 0; i < 3; i++) {
        double r = holder.gyration().component(i);
        m[7 * i] = holder.mass();
        m[7 * (i + 3)] = holder.mass() * r * r;
      }
      modes = GeneralizedEigen.of(k.toArray(), m, 6);
    } else {
      double m = holder.mass();
      double[] k = Matrix3.inverse(stiffness.pointCompliance(holder.centreOfMass()));
      modes = GeneralizedEigen.of(k, new double[] {m, 0, 0, 0, m, 0, 0, 0, m}, 3);
    }
    List<Double> found = new ArrayList<>();
    for (int i = 0; i < modes.size(); i++) {
      found.add(modes.frequency(i));
    }
    return new NaturalFrequencies(found, holder.hasInertia());
  }
}
