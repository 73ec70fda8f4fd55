package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Related;
import rungwright.finding.Severity;

/**
 * What {@code check} found, as SARIF 2.1.0, which code hosts and editors read: a rule for each code, a result
 * for each finding, with its related places, and its hint and witness among the properties.
 */
public final class CheckSarif {
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final JsonGenerator json;
    private final Function<Finding, String> words;
    private String file = "";
    private String[] lines = {};

    private CheckSarif(JsonGenerator json, Function<Finding, String> words) {
        this.json = json;
        this.words = words;
    }

    /** A spec that was checked, with its text. */
    public record Source(CheckedSpec spec, String text) {
    }

    /**
     * Writes one document and ends it with a newline; the stream stays open.
     *
     * @param words a finding in words for people
     * @param version that of rungwright
     */
    public static void write(OutputStream out, List<Source> specs, Function<Finding, String> words,
            String version) throws IOException {
        try (JsonGenerator json = Form.generator(out)) {
            new CheckSarif(json, words).log(specs, version);
            json.writeRaw('\n');
        }
    }

    private void log(List<Source> specs, String version) throws IOException {
        json.writeStartObject();
        json.writeStringField("$schema", "https://json.schemastore.org/sarif-2.1.0.json");
        json.writeStringField("version", "2.1.0");
        json.writeArrayFieldStart("runs");
        json.writeStartObject();
        tool(version);
        // Our columns count characters, those of SARIF here halves of the rare ones.
        json.writeStringField("columnKind", "utf16CodeUnits");
        json.writeArrayFieldStart("results");
        for (Source source : specs) {
            file = uri(source.spec().file());
            lines = source.text().replaceFirst("^" + BYTE_ORDER_MARK, "").split("\r\n|\r|\n", -1);
            for (Finding finding : source.spec().findings()) {
                result(finding);
            }
        }
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndArray();
        json.writeEndObject();
    }

    private void tool(String version) throws IOException {
        json.writeObjectFieldStart("tool");
        json.writeObjectFieldStart("driver");
        json.writeStringField("name", "rungwright");
        json.writeStringField("version", version);
        json.writeArrayFieldStart("rules");
        for (Code code : Code.values()) {
            json.writeStartObject();
            json.writeStringField("id", code.word());
            text("help", "What it means, and how to put it right: docs/findings/" + code.word() + ".md");
            json.writeObjectFieldStart("defaultConfiguration");
            json.writeStringField("level", level(code.usual()));
            json.writeEndObject();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndObject();
    }

    private void result(Finding finding) throws IOException {
        json.writeStartObject();
        json.writeStringField("ruleId", finding.code().word());
        json.writeNumberField("ruleIndex", finding.code().ordinal());
        json.writeStringField("level", level(finding.severity()));
        text("message", words.apply(finding));
        json.writeArrayFieldStart("locations");
        json.writeStartObject();
        physical(finding.place());
        json.writeEndObject();
        json.writeEndArray();
        json.writeArrayFieldStart("relatedLocations");
        for (int number = 0; number < finding.related().size(); number++) {
            related(number + 1, finding.related().get(number));
        }
        json.writeEndArray();
        json.writeObjectFieldStart("properties");
        if (!finding.hint().isEmpty()) {
            json.writeStringField("hint", finding.hint());
        }
        if (finding.witness().isPresent()) {
            json.writeFieldName("witness");
            new WitnessJson(json).write(finding.witness().get());
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private void related(int number, Related related) throws IOException {
        json.writeStartObject();
        json.writeNumberField("id", number);
        physical(related.place());
        text("message", related.message());
        json.writeEndObject();
    }

    private void physical(Place place) throws IOException {
        json.writeObjectFieldStart("physicalLocation");
        json.writeObjectFieldStart("artifactLocation");
        json.writeStringField("uri", file);
        json.writeEndObject();
        json.writeObjectFieldStart("region");
        json.writeNumberField("startLine", place.line());
        json.writeNumberField("startColumn", column(place));
        json.writeEndObject();
        json.writeEndObject();
    }

    /** The column in UTF-16: a character beyond the first 65,536 counts as two. */
    private int column(Place place) {
        String line = place.line() <= lines.length ? lines[place.line() - 1] : "";
        int before = Math.min(place.column() - 1, line.codePointCount(0, line.length()));
        return line.offsetByCodePoints(0, before) + place.column() - before;
    }

    private void text(String key, String text) throws IOException {
        json.writeObjectFieldStart(key);
        json.writeStringField("text", text);
        json.writeEndObject();
    }

    private static String level(Severity severity) {
        return severity.name().toLowerCase(Locale.ROOT);
    }

    /**
     * The file as a reference: relative as it was named, or absolute; standard input has a name of its own.
     */
    private static String uri(String file) {
        if (file.equals("-")) {
            return "standard-input";
        }
        try {
            return Path.of(file).isAbsolute() ? Path.of(file).toUri().toASCIIString()
                    : new URI(null, null, file.replace('\\', '/'), null).toASCIIString();
        } catch (URISyntaxException e) {
            throw new IllegalArgumentException("no reference can be made of " + file, e);
        }
    }
}
