package rungwright.step;

/** What is done about an event, once it is known which kind it is. */
@FunctionalInterface
interface Deed {
    /** The decision, unless the event is refused. */
    Decision decide() throws Refused;
}
