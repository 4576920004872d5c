/**
 * What the parts are made of: elastic constants of a body and of a pair.
 *
 * <p>Everything is SI. May import {@link reseat.numerics}.
 */
package reseat.material;
