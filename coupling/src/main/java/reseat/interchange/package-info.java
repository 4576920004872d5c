/**
 * Several holders on one post: what tolerances do to the tool point.
 *
 * <p>Three words are kept apart. <em>Repeatability</em> is how well one holder comes back to where
 * it was; it is a matter of friction, preload and dirt and is computed elsewhere. <em>
 * Interchangeability</em> is how alike different holders stand on one post: the errors of the
 * holders alone, because the post's errors are common to all of them. <em>Accuracy</em> is where a
 * holder stands against the drawing, errors of the post included.
 *
 * <p>Start at {@link reseat.interchange.ToleranceModel}, which lists every dimension that may be
 * wrong as a {@link reseat.interchange.Contributor}. {@link reseat.interchange.Sensitivity} says
 * what each does to the tool point, {@link reseat.interchange.LinearStack} adds them up, and {@link
 * reseat.interchange.InterchangeSimulation} draws whole holders and solves their exact geometry and
 * equilibrium. {@link reseat.interchange.InterchangeScatter} puts the three words beside each
 * other, {@link reseat.interchange.OffsetPrediction} predicts the offsets of measured holders, and
 * {@link reseat.interchange.ToleranceAdvice} and {@link reseat.interchange.TighteningGain} say
 * which tolerance to spend money on.
 *
 * <p>Displacements are those of the tool point in base axes, or in machine axes where that is said,
 * m; rotations are of the holder, about the same axes, rad. Imports {@code units}, {@code csv},
 * {@code space}, {@code numerics}, {@code material}, {@code contact}, {@code seat}, {@code design}
 * and {@code equilibrium}.
 */
package reseat.interchange;
