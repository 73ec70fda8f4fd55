/**
 * A slow, obvious second reading of the spec language, which shares nothing with the main code: small
 * worlds, a writer of
 * their YAML, a random generator, an event-by-event interpreter and a brute-force search for holes. Start
 * with
 * {@link rungwright.oracle.Toy} and {@link rungwright.oracle.BruteForce}.
 */
package rungwright.oracle;
