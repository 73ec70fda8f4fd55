package rungwright.yaml;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.scanner.ScannerImpl;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;

/**
 * Parses a text into nodes, event by event, so that a part too deep or too wide is passed over instead of
 * built, and what stands before a mistake in the YAML is kept.
 */
final class TreeReader {
    /** So many levels below the deepest that is read, the rest of the text is not worth the parser's time. */
    private static final int MOST_PASSED_OVER = 200;

    private final Source source;
    private final Findings findings;
    private final Deque<OpenNode> open = new ArrayDeque<>();
    private Optional<Node> root = Optional.empty();
    private int documents;
    private int passedOver;

    private TreeReader(Source source, Findings findings) {
        this.source = source;
        this.findings = findings;
    }

    /**
     * What came of parsing.
     *
     * @param root the whole text, or as much of it as stands before the mistake; empty where there is nothing
     * @param mistake what the parser gave up at, if it did
     * @param whole whether the text was read to its end
     */
    record Tree(Optional<Node> root, Optional<Diagnosis> mistake, boolean whole) {
    }

    /** The nodes of a source; what specs do not use and what is too large is reported. */
    static Tree read(Source source, Findings findings) {
        return new TreeReader(source, findings).read();
    }

    private Tree read() {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(Integer.MAX_VALUE);
        // The scanner looks for the digits of an escape beyond the end of a text that has no last line end.
        StreamReader text = new StreamReader(source.text() + "\n");
        Parser parser = new ParserImpl(new PlainTokens(new ScannerImpl(text, options), source, findings));
        try {
            while (documents < 2 && passedOver < MOST_PASSED_OVER && !parser.checkEvent(Event.ID.StreamEnd)) {
                take(parser.getEvent());
            }
        } catch (MarkedYAMLException complaint) {
            return broken(Mistake.from(source, complaint));
        } catch (YAMLException complaint) {
            return broken(Mistake.at(source, text.getMark()));
        }
        boolean stopped = passedOver > 0;
        if (stopped) {
            abandon(0);
        }
        return new Tree(root, Optional.empty(), !stopped);
    }

    private Tree broken(Mistake mistake) {
        Diagnosis diagnosis = Diagnosis.of(mistake);
        abandon(diagnosis.finding().place().line());
        return new Tree(root, Optional.of(diagnosis), false);
    }

    private void take(Event event) {
        Place place = PlainTokens.place(event.getStartMark());
        switch (event.getEventId()) {
            case DocumentStart -> startDocument(place);
            case MappingStart, SequenceStart -> open((CollectionStartEvent) event, place);
            case MappingEnd, SequenceEnd -> close();
            case Scalar -> {
                if (passedOver == 0) {
                    put(scalar((ScalarEvent) event, place));
                }
            }
            case StreamStart, StreamEnd, DocumentEnd, Alias, Comment -> { }
        }
    }

    private void startDocument(Place place) {
        documents++;
        if (documents > 1) {
            findings.add(Finding.of(Code.YAML_FEATURE, place,
                    "a second document begins here, and there is only one in a file")
                    .withHint("leave out the `---`, or put what follows it in a file of its own"));
        }
    }

    private void open(CollectionStartEvent event, Place place) {
        if (passedOver > 0 || !open.isEmpty() && open.peek().isFull()) {
            passedOver++;
        } else if (open.size() == Limits.DEPTH) {
            findings.add(Finding.of(Code.TOO_LARGE, place,
                    "this lies more than " + Limits.DEPTH + " levels deep, which is too deep to be read"));
            put(new Node.Lost(place));
            passedOver = 1;
        } else {
            boolean isMap = event.getEventId() == Event.ID.MappingStart;
            open.push(new OpenNode(place, isMap, event.isFlow(), findings));
        }
    }

    private void close() {
        if (passedOver > 0) {
            passedOver--;
        } else {
            put(open.pop().close());
        }
    }

    private void put(Node node) {
        if (open.isEmpty()) {
            root = Optional.of(node);
        } else {
            open.peek().add(node);
        }
    }

    /**
     * Gives up what the mistake is in, a { } or [ ] or the last key of an indented map, and closes what is
     * around it with what it has.
     */
    private void abandon(int line) {
        passedOver = 0;
        root = Optional.empty();
        if (!open.isEmpty() && open.peek().isFlow()) {
            put(new Node.Lost(open.pop().place()));
        } else if (!open.isEmpty()) {
            open.peek().breakOff(line);
        }
        while (!open.isEmpty()) {
            put(open.pop().cut().close());
        }
    }

    private Node scalar(ScalarEvent event, Place place) {
        String value = event.getValue();
        if (value.indexOf(Source.STRUCK) >= 0) {
            return new Node.Lost(place);
        }
        Node.Style style = event.isPlain() ? Node.Style.PLAIN
                : event.isLiteral() || event.isFolded() ? Node.Style.BLOCK : Node.Style.QUOTED;
        value.codePoints().filter(point -> !isReadable(point)).findFirst()
                .ifPresent(point -> findings.add(invisible(value, point, place)));
        String written = style == Node.Style.BLOCK ? source.glimpse(place) : value;
        return new Node.Scalar(place, value, style, written);
    }

    private static boolean isReadable(int point) {
        return point == '\n' || point == '\t' || Shown.isPlain(point);
    }

    private static Finding invisible(String value, int point, Place place) {
        String mark = Shown.quoted(Character.toString(point));
        return Finding.of(Code.BAD_VALUE, place,
                Shown.quoted(value) + " holds the invisible character " + mark)
                .withHint("delete it, or type the text anew");
    }
}
