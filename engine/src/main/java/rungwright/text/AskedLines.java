package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rungwright.measure.BuiltIn;
import rungwright.program.Outline;
import rungwright.spec.Spec;

/** What a program asks of a trainee, a line each: so that nobody has to guess what a name in a rule means. */
public final class AskedLines {
    private final Outline outline;
    private final AskedText asked;

    /** In a language. */
    public AskedLines(Outline outline, Language language) {
        this(outline, Wording.of(outline, language), language.words("show"));
    }

    AskedLines(Outline outline, Wording wording, Words words) {
        this.outline = outline;
        this.asked = new AskedText(wording, words);
    }

    /** What is known about a trainee: {@code bands: a list of at most 6, each 4 to 60 kg by 0.5 kg}. */
    public List<String> facts() {
        return outline.facts().stream().map(asked::of).toList();
    }

    /** What placement asks: {@code support test: 0 to 180 s. Longest straight-arm support on the bars}. */
    public List<String> assessments() {
        return outline.assessments().stream().map(asked::of).toList();
    }

    /** What each session has: what is logged, what is worked out, and what rules ask of what is counted. */
    public List<String> sessions(Spec spec) {
        List<String> lines = new ArrayList<>(outline.measures().stream().map(asked::of).toList());
        outline.workedOut().forEach(measure -> lines.add(asked.of(measure, spec)));
        Stream.of(BuiltIn.values()).filter(this::isAsked).map(asked::of).forEach(lines::add);
        return lines;
    }

    private boolean isAsked(BuiltIn counted) {
        return outline.axes().stream().anyMatch(axis -> axis.quantity().name().equals(counted.word()));
    }
}
