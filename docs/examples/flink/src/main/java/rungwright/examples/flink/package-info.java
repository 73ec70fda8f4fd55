/** Decides live sessions on Apache Flink: begin with {@link rungwright.examples.flink.LiveSessions}. */
package rungwright.examples.flink;
