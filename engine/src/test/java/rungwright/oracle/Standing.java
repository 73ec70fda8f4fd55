package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Where a trainee stands: everything that the interpreter remembers. Copied before each change. */
final class Standing {
    Person person;
    String status = "training";
    int stage;
    int rung;
    long entered;
    OptionalLong lastSession = OptionalLong.empty();
    long lastEvent;
    int here;
    int stoppedBy = -1;
    /** Sessions in a row met, by rule. */
    Map<String, Integer> rows = new TreeMap<>();
    /** Which of the last sessions here met a window's rule, by rule, latest last. */
    Map<String, List<Boolean>> windows = new TreeMap<>();
    /** The rung last held, by stage. */
    Map<Integer, Ladder.Rung> left = new TreeMap<>();
    Map<String, Frac> previous = new TreeMap<>();
    Set<String> ids = new TreeSet<>();

    Standing(Person person) {
        this.person = person;
    }

    Standing copy() {
        Standing other = new Standing(person);
        other.status = status;
        other.stage = stage;
        other.rung = rung;
        other.entered = entered;
        other.lastSession = lastSession;
        other.lastEvent = lastEvent;
        other.here = here;
        other.stoppedBy = stoppedBy;
        other.rows.putAll(rows);
        windows.forEach((rule, met) -> other.windows.put(rule, new ArrayList<>(met)));
        other.left.putAll(left);
        other.previous.putAll(previous);
        other.ids.addAll(ids);
        return other;
    }

    /** Begins again at a place, or at the same one: no sessions, no counts. */
    void startAgain(long day) {
        entered = day;
        here = 0;
        rows.clear();
        windows.clear();
    }
}
