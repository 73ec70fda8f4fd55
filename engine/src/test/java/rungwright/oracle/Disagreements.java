package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;

/** What the engine and the oracle say differently, with the spec that shows it; the first few are printed. */
final class Disagreements {
    private static final int SHOWN = 3;
    private final List<String> found = new ArrayList<>();
    private String seed = "";
    private String spec = "";

    /** Goes on to the spec of another seed. */
    void about(long nextSeed, String yaml) {
        seed = "seed " + nextSeed;
        spec = yaml;
    }

    /** Notes two answers that ought to be equal. */
    void compare(String what, Object oracle, Object engine) {
        if (!oracle.equals(engine)) {
            note(what + ": the oracle says " + oracle + ", the engine says " + engine);
        }
    }

    void note(String what) {
        found.add(seed + ": " + what);
        if (found.size() <= SHOWN) {
            found.set(found.size() - 1, found.get(found.size() - 1) + "\n" + spec);
        }
    }

    List<String> all() {
        return found;
    }

    boolean none() {
        return found.isEmpty();
    }

    @Override
    public String toString() {
        return found.size() + " disagreements\n" + String.join("\n",
                found.subList(0, Math.min(40, found.size())));
    }
}
