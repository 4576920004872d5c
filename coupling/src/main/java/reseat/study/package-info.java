/**
 * The runs: a design in, every result out.
 *
 * <p>A study calls the packages below it and puts their answers together; it holds no formula of
 * its own. Start reading at {@link reseat.study.CheckStudy}.
 */
package reseat.study;
