/**
 * Elementary functions that give the same bits on every engine: the JVM's own vary with processor
 * and version, and those of engines beside the JVM are partly wrong.
 */
package reseat.elementary;
