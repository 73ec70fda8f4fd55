/** A program is a spec proven to have one next step everywhere; only this package can make one. */
package rungwright.program;
