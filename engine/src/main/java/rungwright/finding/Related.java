package rungwright.finding;

/** Another place that a finding speaks of, and what is there. */
public record Related(Place place, String message) {
}
