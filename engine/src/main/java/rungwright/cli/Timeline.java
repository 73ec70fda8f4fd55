package rungwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import rungwright.finding.Shown;
import rungwright.replay.LogLine;
import rungwright.replay.ReplayListener;
import rungwright.replay.Traced;
import rungwright.text.ReplayText;

/**
 * Prints a replay under each trainee's name. Up to so many lines are held back, so that a log in which
 * trainees take turns is still a timeline a trainee; a longer log is printed as it goes.
 */
final class Timeline implements ReplayListener {
    /** How many lines are held back. */
    static final int MOST_HELD = 50_000;

    private final Consumer<String> lines;
    private final Map<String, List<String>> held = new LinkedHashMap<>();
    private int count;
    private boolean passing;
    private String latest = "";
    private Optional<String> log = Optional.empty();

    Timeline(Consumer<String> lines) {
        this.lines = lines;
    }

    /** One of several logs begins, which its places are to be told with. */
    void begin(String name) {
        log = Optional.of(name);
    }

    @Override
    public void decided(Traced traced) {
        add(traced.trainee(), ReplayText.lines(traced, log));
    }

    @Override
    public void unreadable(LogLine.Unreadable line) {
        add(line.trainee().orElse(""), List.of(ReplayText.line(line, log)));
    }

    /** Prints what is still held back. */
    void flush() {
        held.forEach(this::print);
        held.clear();
    }

    private void add(String trainee, List<String> more) {
        count += more.size();
        if (passing) {
            print(trainee, more);
            return;
        }
        held.computeIfAbsent(trainee, key -> new ArrayList<>()).addAll(more);
        if (count > MOST_HELD) {
            flush();
            passing = true;
        }
    }

    private void print(String trainee, List<String> more) {
        if (!trainee.equals(latest) && !trainee.isEmpty()) {
            lines.accept(Shown.text(trainee));
            latest = trainee;
        }
        more.forEach(lines);
    }
}
