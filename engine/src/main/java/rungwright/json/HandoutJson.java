package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import rungwright.program.Program;

/** What the answering part of a handout reads: the program that decides, and the words for it. */
public final class HandoutJson {
    private HandoutJson() {
    }

    /**
     * The program as one line of JSON.
     *
     * @param says for each rule's label, when it speaks
     * @param doing for each stage, what is done, in phrases
     * @param said how what rules ask is said to people
     */
    public static String program(Program program, Map<String, String> says, List<List<String>> doing,
            Said said) {
        return text(Piece.object().with("decides", StepperJson.of(program, said)).with("says", texts(says))
                .with("stages", Piece.list(doing.stream()
                        .map(phrases -> (Piece) Piece.object().with("doing", Piece.texts(phrases))).toList()))
                .with("cautions", Piece.texts(program.outline().cautions())));
    }

    /** Phrases by key; one whose key has a dot stands in an object of its own: {@code kind.hold}. */
    public static String words(Map<String, String> words) {
        Piece.Filled all = Piece.object();
        Piece.Filled kinds = Piece.object();
        Piece.Filled refusals = Piece.object();
        words.forEach((key, phrase) -> {
            Piece.Filled into = key.startsWith("kind.") ? kinds : key.startsWith("refusal.") ? refusals : all;
            into.with(into == all ? key : key.substring(key.indexOf('.') + 1), Piece.text(phrase));
        });
        all.with("goal", Piece.text(words.get("goal.place")));
        return text(all.with("kinds", kinds).with("refusals", refusals));
    }

    private static Piece texts(Map<String, String> texts) {
        Piece.Filled object = Piece.object();
        texts.forEach((key, text) -> object.with(key, Piece.text(text)));
        return object;
    }

    private static String text(Piece piece) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonGenerator json = Form.generator(out)) {
            piece.to(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString(StandardCharsets.UTF_8);
    }
}
