package rungwright.cli;

import java.util.Optional;
import rungwright.trial.Heard;

/** A bar on the terminal for work that is counted in pieces. */
final class WorkBar implements Heard {
    private final Console console;
    private Optional<Progress> bar = Optional.empty();
    private long before;

    WorkBar(Console console) {
        this.console = console;
    }

    @Override
    public void of(long done, long all) {
        if (bar.isEmpty()) {
            bar = Optional.of(new Progress(console.err(), console.notesOnTerminal(), all, System::nanoTime));
        }
        bar.get().add(done - before);
        before = done;
    }

    /** Takes the bar off the terminal; the next work begins another. */
    void clear() {
        bar.ifPresent(Progress::clear);
        bar = Optional.empty();
        before = 0;
    }
}
