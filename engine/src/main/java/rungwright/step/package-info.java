/** One event in, one decision out, with its reasons. */
package rungwright.step;
