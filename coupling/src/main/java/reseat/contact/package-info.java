/**
 * One contact between two smooth elastic bodies: how far it sinks, how stiff it is in every
 * direction, what it does to the material.
 *
 * <p>Theory of Hertz for the general ellipse, exact through complete elliptic integrals; of Cerruti
 * and Mindlin for tangential load; Boussinesq for the stresses below the surface. Assumed
 * throughout: smooth, dry-clean surfaces, linear elasticity, each body a half-space seen from the
 * contact patch ({@link reseat.contact.HalfSpaceWarning} says when that is strained). Semi-axes
 * {@code a >= b}; the major axis lies along the smaller relative curvature. Compression positive,
 * except in stresses, where tension is positive as in every text on strength.
 *
 * <p>May import {@link reseat.space}, {@link reseat.numerics}, {@link reseat.material}. Start
 * reading at {@link reseat.contact.EllipticContact}.
 */
package reseat.contact;
