/**
 * Reads a design file: TOML in which every quantity is a text with its unit.
 *
 * <p>{@link reseat.designfile.DesignFile#read} gives a design with warnings, or every problem of
 * the file at once. {@link reseat.designfile.Section} is the typed view of a table on which the
 * readers of the parts ({@code SupportReader}, {@code LoadReader} and so on) stand: it gathers
 * problems with line and column, knows which keys were asked for, and reports the others. {@link
 * reseat.designfile.Plausibility} looks at the finished design for slips of unit.
 *
 * <p>{@link reseat.designfile.AlterableDesign} reads a file with other values for any of its keys,
 * again and again, and writes the user's text with them.
 *
 * <p>Nothing above this package ever sees a file, a unit text or a key.
 *
 * <p>Public way in: a program that uses the library may use this package.
 */
package reseat.designfile;
