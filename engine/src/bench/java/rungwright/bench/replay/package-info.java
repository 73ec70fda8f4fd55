/**
 * How fast logs are replayed, beside their parsers alone. Start with {@link rungwright.bench.replay.Main} and
 * {@link rungwright.bench.replay.Reading}.
 */
package rungwright.bench.replay;
