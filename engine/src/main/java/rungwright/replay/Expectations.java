package rungwright.replay;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import rungwright.program.Outline;

/** What the plain sessions of a log expect, each read once; as many different ones as there is room for. */
public final class Expectations {
    private static final int MOST = 4096;
    private static final int NONE = -1;

    private final LogNames names;
    private final Map<String, Integer> known = new HashMap<>();
    // One thread adds to it while another looks at what it has been told of.
    private final List<Expected> all = new CopyOnWriteArrayList<>();

    /** Those of logs of a program. */
    public Expectations(Outline outline) {
        this(LogNames.of(outline));
    }

    Expectations(LogNames names) {
        this.names = names;
    }

    /** The number, from 1, of what is so written; under 0 where only the long way can read it. */
    public int number(String kind, String at) {
        String both = kind + '\n' + at;
        Integer number = known.get(both);
        if (number == null) {
            number = read(kind, at);
            if (known.size() < MOST) {
                known.put(both, number);
            }
        }
        return number;
    }

    private int read(String kind, String at) {
        if (ExpectedCells.trouble(kind, at, names).isPresent() || kind.isEmpty() && at.isEmpty()
                || all.size() == MOST) {
            return NONE;
        }
        all.add(ExpectedCells.read(kind, at).orElseThrow());
        return all.size();
    }

    /** The one of that number. */
    Expected get(int number) {
        return all.get(number - 1);
    }
}
