package rungwright.replay;

/** Whoever is told of a replay as it goes. */
public interface ReplayListener {
    /** One more decision, in the order of the log. */
    void decided(Traced traced);

    /** Something in the log that cannot be read. */
    void unreadable(LogLine.Unreadable line);
}
