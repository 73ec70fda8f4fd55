package rungwright.yaml;

import java.util.Optional;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import rungwright.finding.Place;

/**
 * What the parser complained of, and the source around it. Its wording only tells which mistake it is; none
 * of it is shown.
 *
 * @param problem the parser's complaint
 * @param context what it was reading, or the empty text
 * @param place where it gave up
 * @param start where what it was reading began; {@code place} where it does not say
 */
record Mistake(Source source, String problem, String context, Place place, Place start) {
    /** A mistake of which the parser says no more than how far it has read. */
    static Mistake at(Source source, Mark mark) {
        Place place = within(source, mark);
        return new Mistake(source, "", "", place, place);
    }

    static Mistake from(Source source, MarkedYAMLException complaint) {
        Place place = within(source, complaint.getProblemMark());
        Place start = Optional.ofNullable(complaint.getContextMark()).map(PlainTokens::place).orElse(place);
        String context = Optional.ofNullable(complaint.getContext()).orElse("");
        String problem = Optional.ofNullable(complaint.getProblem()).orElse("");
        return new Mistake(source, problem, context, place, start);
    }

    /** A mark as a place of the source; the parser's text has one line more. */
    private static Place within(Source source, Mark mark) {
        Place end = source.place(source.size());
        Place place = PlainTokens.place(mark);
        return place.compareTo(end) < 0 ? place : end;
    }

    /** Whether the complaint begins with some words. */
    boolean says(String words) {
        return problem.startsWith(words);
    }

    /** The line where the parser gave up, as far as that place. */
    String before() {
        return source.before(place);
    }

    /** The line where the parser gave up, from that place on. */
    String rest() {
        return source.from(place);
    }

    /** Whether the parser gave up at the first thing of a line. */
    boolean isFirstOfLine() {
        return before().isBlank();
    }

    /** The last line above that is neither blank nor a comment, counted from 1; 0 where there is none. */
    int lineAbove() {
        return lineAbove(Math.min(place.line(), source.lines()));
    }

    /** The last line above another one that is neither blank nor a comment; 0 where there is none. */
    int lineAbove(int line) {
        int number = line - 1;
        while (number > 0 && isEmpty(source.line(number))) {
            number--;
        }
        return number;
    }

    /** A hint to begin a line like another one. */
    String likeLine(int number) {
        return "begin it in column " + indentation(source.line(number)) + ", like line " + number;
    }

    /** The column of the first character of a line. */
    static int indentation(String line) {
        return line.length() - line.stripLeading().length() + 1;
    }

    private static boolean isEmpty(String line) {
        return line.isBlank() || line.stripLeading().startsWith("#");
    }
}
