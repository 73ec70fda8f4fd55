/** What can be wrong with a spec, and where in its text. */
package rungwright.finding;
