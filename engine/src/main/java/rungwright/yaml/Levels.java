package rungwright.yaml;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.tokens.Token;

/** How deep each token of a text stands, and how far that is from the left in the canonical layout. */
final class Levels {
    private static final int STEP = 2;

    private final Deque<Level> open = new ArrayDeque<>();
    private int flows;
    private boolean key;
    private boolean isKey;

    /**
     * A map or list without brackets.
     *
     * @param implied whether its items stand no deeper than the key that it belongs to
     */
    private record Level(boolean map, int indent, int oldColumn, boolean implied) {
    }

    /** Takes note of a token, which comes next in the text. */
    void take(Token token) {
        int column = token.getStartMark().getColumn();
        switch (token.getTokenId()) {
            case BlockMappingStart -> open.push(new Level(true, inner(), column, false));
            case BlockSequenceStart -> open.push(new Level(false, inner(), column, false));
            case BlockEnd -> {
                leaveImplied();
                open.pop();
            }
            case BlockEntry -> {
                if (open.peek().map()) {
                    open.push(new Level(false, inner(), column, true));
                }
            }
            case Key -> {
                if (flows == 0) {
                    leaveImplied();
                }
            }
            case FlowMappingStart, FlowSequenceStart -> flows++;
            case FlowMappingEnd, FlowSequenceEnd -> flows--;
            default -> { }
        }
        isKey = key && flows == 0 && isPrinted(token);
        key = token.getTokenId() == Token.ID.Key || key && !isPrinted(token);
    }

    private void leaveImplied() {
        if (!open.isEmpty() && open.peek().implied()) {
            open.pop();
        }
    }

    private int inner() {
        return open.isEmpty() ? 0 : open.peek().indent() + STEP;
    }

    /** How far from the left a line stands that begins with the token taken last. */
    int indent(Token token) {
        Token.ID kind = token.getTokenId();
        if (open.isEmpty()) {
            return 0;
        }
        boolean opens = kind == Token.ID.FlowMappingStart || kind == Token.ID.FlowSequenceStart;
        int depth = opens ? flows - 1 : flows;
        boolean own = depth == 0 && (kind == Token.ID.BlockEntry || isKey);
        return open.peek().indent() + (own ? 0 : STEP * Math.max(1, depth));
    }

    /** By how much the map or list around the token moves to the right. */
    int shift() {
        return open.isEmpty() ? 0 : open.peek().indent() - open.peek().oldColumn();
    }

    /** Whether a token stands in the text, and does not just tell that something begins or ends. */
    static boolean isPrinted(Token token) {
        return switch (token.getTokenId()) {
            case BlockMappingStart, BlockSequenceStart, BlockEnd, StreamStart, StreamEnd -> false;
            default -> token.getEndMark().getIndex() > token.getStartMark().getIndex();
        };
    }

    /** What stands between two tokens of a line. */
    static String space(Token before, Token next) {
        Token.ID left = before.getTokenId();
        Token.ID right = next.getTokenId();
        boolean empty = left == Token.ID.FlowMappingStart && right == Token.ID.FlowMappingEnd;
        boolean close = left == Token.ID.FlowSequenceStart && right != Token.ID.FlowMappingStart
                || right == Token.ID.FlowSequenceEnd && left != Token.ID.FlowMappingEnd
                || right == Token.ID.FlowEntry || right == Token.ID.Value;
        return empty || close ? "" : " ";
    }

    /** What a text holds, comments and layout aside. */
    static List<String> events(String text) {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(Integer.MAX_VALUE);
        ParserImpl parser = new ParserImpl(new StreamReader(text + "\n"), options);
        List<String> events = new ArrayList<>();
        while (!parser.checkEvent(Event.ID.StreamEnd)) {
            Event event = parser.getEvent();
            events.add(event.getEventId() + (event instanceof ScalarEvent scalar
                    ? scalar.getScalarStyle() + scalar.getValue() : ""));
        }
        return events;
    }
}
