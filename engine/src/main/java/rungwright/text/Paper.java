package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import rungwright.finding.Shown;

/** Lines of at most 80 columns for a terminal, written one after the other. */
final class Paper {
    static final int WIDEST = 80;

    private final Colours colours;
    private final List<String> lines = new ArrayList<>();

    Paper(Colours colours) {
        this.colours = colours;
    }

    /** A text that stands out. */
    Paper strong(String text) {
        Wrap.lines(Shown.whole(text), WIDEST).forEach(line -> lines.add(colours.strong(line)));
        return this;
    }

    /** A text. */
    Paper add(String text) {
        return add("", text);
    }

    /** A text behind a lead. */
    Paper add(String lead, String text) {
        lines.addAll(Wrap.after(lead, Shown.whole(text), WIDEST));
        return this;
    }

    /** Items under a heading, where there are any. */
    Paper items(String heading, List<String> items) {
        if (!items.isEmpty()) {
            add(heading);
            items.forEach(item -> add("- ", item));
        }
        return this;
    }

    /** Lines that are broken already. */
    Paper all(List<String> more) {
        lines.addAll(more);
        return this;
    }

    /** An empty line, where anything stands above it. */
    Paper gap() {
        if (!lines.isEmpty() && !lines.get(lines.size() - 1).isEmpty()) {
            lines.add("");
        }
        return this;
    }

    List<String> lines() {
        return List.copyOf(lines);
    }
}
