package rungwright.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwright.finding.Shown;

/**
 * A JSON value whose numbers are still the text that they were written as, so that {@code 8.10} stays exact.
 *
 * @param kind what it is
 * @param text of a text, a number ({@code 8.10}) or an answer ({@code yes}, {@code no})
 * @param items of a list
 * @param fields of an object, in the order of the text
 */
record Tree(Kind kind, String text, List<Tree> items, Map<String, Tree> fields) {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
    private static final int DEEPEST = 20;

    /** What a value is. */
    enum Kind {
        /** A text, a number or an answer. */
        VALUE,
        /** A list. */
        LIST,
        /** An object. */
        OBJECT,
        /** Nothing. */
        NULL
    }

    /** The value written in a text that holds one value and nothing else. */
    static Tree read(String json) throws BadJsonException {
        try (JsonParser parser = FACTORY.createParser(json)) {
            if (parser.nextToken() == null) {
                throw new BadJsonException("there is nothing where JSON is meant");
            }
            Tree tree = value(parser, 0);
            if (parser.nextToken() != null) {
                throw new BadJsonException(place(parser.currentLocation())
                        + "there is more after the end of the value");
            }
            return tree;
        } catch (JsonProcessingException e) {
            throw new BadJsonException(place(e.getLocation()) + "this is not JSON ("
                    + Shown.text(e.getOriginalMessage())
                    + ")");
        } catch (IOException e) {
            throw new BadJsonException("the text cannot be read");
        }
    }

    private static Tree value(JsonParser parser, int depth) throws IOException, BadJsonException {
        if (depth > DEEPEST) {
            throw new BadJsonException(place(parser.currentLocation())
                    + "lists and objects stand too deep in one another");
        }
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> object(parser, depth);
            case START_ARRAY -> list(parser, depth);
            case VALUE_NULL -> new Tree(Kind.NULL, "", List.of(), Map.of());
            case VALUE_TRUE -> text("yes");
            case VALUE_FALSE -> text("no");
            default -> text(whole(parser.getText(), parser));
        };
    }

    /** The text, unless an escape in it is half a character, which cannot be written again. */
    private static String whole(String text, JsonParser parser) throws BadJsonException {
        for (int i = 0; i < text.length(); i++) {
            boolean pair = i + 1 < text.length() && Character.isSurrogatePair(text.charAt(i), text.charAt(i
                    + 1));
            if (!pair && Character.isSurrogate(text.charAt(i))) {
                throw new BadJsonException(place(parser.currentLocation()) + "half a character stands in "
                        + Shown.quoted(text));
            }
            i += pair ? 1 : 0;
        }
        return text;
    }

    private static Tree text(String text) {
        return new Tree(Kind.VALUE, text, List.of(), Map.of());
    }

    private static Tree list(JsonParser parser, int depth) throws IOException, BadJsonException {
        List<Tree> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(parser, depth + 1));
        }
        return new Tree(Kind.LIST, "", items, Map.of());
    }

    private static Tree object(JsonParser parser, int depth) throws IOException, BadJsonException {
        Map<String, Tree> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = whole(parser.currentName(), parser);
            parser.nextToken();
            fields.put(name, value(parser, depth + 1));
        }
        return new Tree(Kind.OBJECT, "", List.of(), fields);
    }

    private static String place(JsonLocation at) {
        return at == null ? "" : "line " + at.getLineNr() + ", column " + at.getColumnNr() + ": ";
    }
}
