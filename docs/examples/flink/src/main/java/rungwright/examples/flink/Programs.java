package rungwright.examples.flink;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import rungwright.program.Checked;
import rungwright.program.Program;

/** Specs travel as text; each JVM proves each of them once. */
final class Programs {
    private static final Map<String, Program> PROVEN = new ConcurrentHashMap<>();

    private Programs() {
    }

    /** The program of a spec; refuses one that is not proven, with all that is wrong with it. */
    static Program of(String spec) {
        return PROVEN.computeIfAbsent(spec, text -> {
            Checked checked = Checked.read(text);
            return checked.program().orElseThrow(() -> new IllegalArgumentException(
                    "the spec is not proven: " + checked.findings()));
        });
    }
}
