/**
 * Replays histories side by side on Apache Spark: begin with {@link rungwright.examples.spark.SideBySide}.
 */
package rungwright.examples.spark;
