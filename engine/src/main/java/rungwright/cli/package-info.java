/** Arguments in, exit code out; no thinking. */
package rungwright.cli;
