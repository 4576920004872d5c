/**
 * Results put into words, JSON and pages: a room per subject, each with its text, JSON and page
 * side by side. Nothing here computes, knows the option parser or touches a stream, so that the
 * command line, a page in a browser and a program that uses the library all say the same.
 */
package reseat.report;
