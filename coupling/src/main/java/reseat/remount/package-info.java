/**
 * Tool changes: how well the holder comes back.
 *
 * <p>{@link reseat.remount.RemountSimulation} mounts the holder again and again with random
 * friction, preload, approach, temperature and film, following each mount from the last slide to
 * the full preload; {@link reseat.remount.RemountScatter} is what comes out, {@link
 * reseat.remount.CauseShares} says why. {@link reseat.remount.FrictionBound} gives the closed upper
 * scales that a handbook would.
 *
 * <p>Mechanics: quasi-static, rigid bodies, Hertz contacts, Coulomb friction with Mindlin's no-slip
 * stiffness up to the slip limit, balls on rigid or elastic mountings. Not in the model: partial
 * slip inside a patch, wear, creep, impact, plates that bend.
 */
package reseat.remount;
