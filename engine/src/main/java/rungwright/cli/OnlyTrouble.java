package rungwright.cli;

import rungwright.replay.LogLine;
import rungwright.replay.ReplayListener;
import rungwright.replay.Traced;

/** Tells on only what is refused without being expected to be, and what cannot be read. */
record OnlyTrouble(ReplayListener to) implements ReplayListener {
    @Override
    public void decided(Traced traced) {
        if (traced.isBad()) {
            to.decided(traced);
        }
    }

    @Override
    public void unreadable(LogLine.Unreadable line) {
        to.unreadable(line);
    }
}
