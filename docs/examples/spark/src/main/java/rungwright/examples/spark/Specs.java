package rungwright.examples.spark;

import java.io.Serializable;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import rungwright.program.Checked;
import rungwright.program.Outline;
import rungwright.program.Program;

/**
 * The two versions of a spec as text, which is what is sent to the executors. Each of them proves a version
 * once and keeps the program for all of its tasks.
 */
record Specs(String old, String changed) implements Serializable {
    private static final Map<String, Program> PROVEN = new ConcurrentHashMap<>();

    /** The program of a version; refuses a spec that is not proven, with all that is wrong with it. */
    Program program(Version version) {
        return PROVEN.computeIfAbsent(version == Version.OLD ? old : changed, Specs::prove);
    }

    private static Program prove(String text) {
        Checked checked = Checked.read(text);
        return checked.program().orElseThrow(() -> new IllegalArgumentException(
                "the spec is not proven: " + checked.findings()));
    }

    /** The columns of a log that a version leaves out of account, since only the other one knows them. */
    Set<String> leftOut(Version version) {
        Set<String> names = new HashSet<>(names(program(version.other()).outline()));
        names.removeAll(names(program(version).outline()));
        return names;
    }

    private static List<String> names(Outline outline) {
        return Stream.of(outline.measures().stream().map(measure -> measure.name()),
                outline.facts().stream().map(fact -> fact.name()),
                outline.assessments().stream().map(measure -> measure.name())).flatMap(each -> each).toList();
    }
}
