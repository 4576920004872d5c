/**
 * The runs: a design in, every result out.
 *
 * <p>A study calls the packages below it and puts their answers together; it holds no formula of
 * its own. Start reading at {@link reseat.study.CheckStudy}.
 *
 * <p>Public way in: a program that uses the library may use this package.
 */
package reseat.study;
