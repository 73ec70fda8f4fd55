package rungwright.spec;

import rungwright.finding.Place;

/**
 * A scalar of the spec just as it stands in the source, with its place. Quotes are already off and never
 * change a meaning; a time such as {@code 1:30} or a word such as {@code no} is still text here.
 */
public record Text(String value, Place place) {
}
