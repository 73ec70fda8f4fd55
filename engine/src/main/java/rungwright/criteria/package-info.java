/**
 * What the criteria of a spec ask, read a second time and plainly, as ranges of exact numbers, and what one
 * session can hold: for confirming a certificate, and without a part in the first proof. Start with {@link
 * rungwright.criteria.Names} and {@link rungwright.criteria.Phrases}.
 */
package rungwright.criteria;
