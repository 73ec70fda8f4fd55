package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.verify.Certificate;
import rungwright.verify.Certificate.Block;
import rungwright.verify.Certificate.Decider;
import rungwright.verify.Certificate.Part;
import rungwright.verify.Certificate.Run;
import rungwright.verify.Certificate.Side;

/**
 * A certificate as JSON of form 1, a box a line: {@code {"box":[[12,60],[0,3]],"rule":"Less help","line":77,
 * "column":14}}; a box without a rule is nobody's. It says of itself what can be confirmed and what is taken
 * over.
 */
public final class CertificateJson {
    /** What {@code verify} confirms of every certificate. */
    private static final List<String> CONFIRMED = List.of(
            "the axes are those of the measures, facts and counts, and every cut is one that a rule names",
            "the boxes of a part share no position and are as many positions as there are",
            "each box with a rule lies inside one way for the rule to hold, and touches no rule that outranks"
                    + " it, has another outcome, or speaks before it",
            "in each box without a rule there is no trainee and session at all");

    /** What {@code verify} does not look at. */
    private static final List<String> TAKEN_OVER = List.of(
            "that the YAML text means what the reader makes of it",
            "that every target is there: rungs, stages, moves from an end rung",
            "what an outcome is, beyond the words of its keys",
            "that stages can be reached and left, and all other warnings and notes");

    private CertificateJson() {
    }

    /** Writes one document and ends it with a newline; the stream stays open. */
    public static void write(OutputStream out, Certificate certificate) throws IOException {
        try (JsonGenerator json = Form.generator(out)) {
            json.writeStartObject();
            json.writeNumberField("form", Form.NUMBER);
            json.writeStringField("program", certificate.program());
            json.writeStringField("version", certificate.version());
            texts(json, "confirmed", CONFIRMED);
            texts(json, "taken over", TAKEN_OVER);
            json.writeArrayFieldStart("parts");
            for (Part part : certificate.parts()) {
                write(json, part);
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private static void write(JsonGenerator json, Part part) throws IOException {
        json.writeRaw('\n');
        json.writeStartObject();
        json.writeStringField("part", part.name());
        json.writeArrayFieldStart("axes");
        for (Side side : part.axes()) {
            json.writeStartObject();
            json.writeStringField("of", side.of());
            json.writeStringField("take", side.take());
            json.writeStringField("against", side.against());
            json.writeNumberField("least", side.least());
            json.writeNumberField("count", side.count());
            texts(json, "cuts", side.cuts());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("boxes");
        for (Block block : part.boxes()) {
            write(json, block);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void write(JsonGenerator json, Block block) throws IOException {
        json.writeRaw('\n');
        json.writeStartObject();
        json.writeArrayFieldStart("box");
        for (Run run : block.box()) {
            json.writeArray(new long[] {run.first(), run.last()}, 0, 2);
        }
        json.writeEndArray();
        if (block.rule().isPresent()) {
            json.writeStringField("rule", block.rule().get().name());
            json.writeNumberField("line", block.rule().get().line());
            json.writeNumberField("column", block.rule().get().column());
        }
        json.writeEndObject();
    }

    private static void texts(JsonGenerator json, String name, List<String> texts) throws IOException {
        json.writeArrayFieldStart(name);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    /** Reads one document; what no certificate has is refused with its name. */
    public static Certificate read(String json) throws BadJsonException {
        Fields fields = Fields.of(Tree.read(json), "certificate").form();
        String program = fields.text("program");
        String version = fields.text("version");
        if (!texts(fields, "confirmed").equals(CONFIRMED)
                || !texts(fields, "taken over").equals(TAKEN_OVER)) {
            throw new BadJsonException("the certificate claims something else than those of form 1");
        }
        List<Part> parts = new ArrayList<>();
        for (Tree part : items(fields, "parts")) {
            parts.add(part(Fields.of(part, "part")));
        }
        fields.end();
        return new Certificate(program, version, parts);
    }

    private static Part part(Fields fields) throws BadJsonException {
        String name = fields.text("part");
        List<Side> axes = new ArrayList<>();
        for (Tree tree : items(fields, "axes")) {
            Fields axis = Fields.of(tree, "axis");
            axes.add(new Side(axis.text("of"), axis.text("take"), axis.text("against"),
                    whole(axis.text("least")), whole(axis.text("count")), texts(axis, "cuts")));
            axis.end();
        }
        List<Block> boxes = new ArrayList<>();
        for (Tree tree : items(fields, "boxes")) {
            boxes.add(block(Fields.of(tree, "box")));
        }
        fields.end();
        return new Part(name, axes, boxes);
    }

    private static Block block(Fields fields) throws BadJsonException {
        List<Run> runs = new ArrayList<>();
        for (Tree run : items(fields, "box")) {
            if (run.items().size() != 2) {
                throw new BadJsonException("a box has two numbers for each axis");
            }
            runs.add(new Run(whole(Fields.value(run.items().get(0), "box")),
                    whole(Fields.value(run.items().get(1), "box"))));
        }
        Optional<String> rule = fields.findText("rule");
        Optional<Decider> decider = rule.isPresent()
                ? Optional.of(new Decider(rule.get(), fields.count("line"), fields.count("column")))
                : Optional.empty();
        fields.end();
        return new Block(decider, runs);
    }

    private static List<String> texts(Fields fields, String name) throws BadJsonException {
        List<String> texts = new ArrayList<>();
        for (Tree text : items(fields, name)) {
            texts.add(Fields.value(text, name));
        }
        return texts;
    }

    private static List<Tree> items(Fields fields, String name) throws BadJsonException {
        if (!fields.has(name)) {
            throw new BadJsonException("a list is missing: `" + name + "`");
        }
        return fields.list(name);
    }

    private static long whole(String text) throws BadJsonException {
        if (!text.matches("\\d{1,9}")) {
            throw new BadJsonException(Shown.quoted(text) + " is no whole number of a certificate");
        }
        return Long.parseLong(text);
    }
}
