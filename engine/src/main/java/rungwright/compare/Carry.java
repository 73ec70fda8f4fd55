package rungwright.compare;

import rungwright.step.Event;
import rungwright.step.State;

/**
 * What carries one person over to the new version.
 *
 * @param from their state under the old version; a stage that has another name now stands in it under that
 *     name
 * @param event the event that does so
 */
public record Carry(State from, Event.NewVersion event) {
}
