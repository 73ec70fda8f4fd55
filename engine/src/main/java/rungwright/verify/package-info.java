/**
 * A second, small path that confirms a certificate of a spec's proof, without the first path's resolved
 * program and its sets of readings. Start with {@link rungwright.verify.Verifier} and {@link
 * rungwright.verify.Certificate}.
 */
package rungwright.verify;
