/**
 * What the parts are made of: elastic constants of a body and of a pair, a catalog of materials and
 * of friction, every value with its source.
 *
 * <p>Values are SI inside. The two tables are tab-separated resources in trade units; each value
 * says whether its source was read or is recalled. May import {@link reseat.numerics}. Start
 * reading at {@link reseat.material.Material}.
 *
 * <p>Public way in: a program that uses the library may use this package.
 */
package reseat.material;
