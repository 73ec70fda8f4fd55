package rungwright.step;

/**
 * A trainee in a state, and what happens to them next.
 *
 * @param state one that can be stored
 * @param session a session on a day after it
 */
public record Scene(State state, Event.Session session) {
}
