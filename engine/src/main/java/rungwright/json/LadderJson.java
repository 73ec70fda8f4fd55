package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import rungwright.program.Facts;
import rungwright.program.Ladder;
import rungwright.program.LimitWords;
import rungwright.program.Rung;

/**
 * A stage's ladder, easiest rung first: {@code "ladder":["wall","table"]}, {@code {"from":"15 kg",…}} or
 * {@code {"each of":"bands",…}}; nothing for a stage without one.
 */
final class LadderJson {
    private LadderJson() {
    }

    static void write(JsonGenerator json, Ladder ladder) throws IOException {
        if (!ladder.equals(Ladder.SINGLE)) {
            json.writeFieldName("ladder");
            ladder.match(new Forms(json)).write();
        }
    }

    /** How a ladder is written. */
    private interface Writing {
        void write() throws IOException;
    }

    /** One writing for each kind. */
    private record Forms(JsonGenerator json) implements Ladder.Cases<Writing> {
        @Override
        public Writing named(Ladder.Named ladder) {
            return () -> names(ladder.rungs(Facts.NONE));
        }

        @Override
        public Writing amounts(Ladder.Amounts ladder) {
            return () -> names(ladder.rungs(Facts.NONE));
        }

        @Override
        public Writing run(Ladder.Run ladder) {
            return () -> {
                json.writeStartObject();
                json.writeStringField("from", ladder.unit().show(ladder.start()));
                json.writeStringField("to", ladder.end().match(new LimitWords(ladder.unit())));
                json.writeStringField("by", ladder.unit().show(ladder.step()));
                json.writeEndObject();
            };
        }

        @Override
        public Writing eachOf(Ladder.EachOf ladder) {
            return () -> {
                json.writeStartObject();
                json.writeStringField("each of", ladder.list().name());
                json.writeBooleanField("together first", ladder.together());
                if (ladder.then().isPresent()) {
                    json.writeStringField("then", ladder.then().get());
                }
                json.writeEndObject();
            };
        }

        private void names(List<Rung> rungs) throws IOException {
            json.writeStartArray();
            for (Rung rung : rungs) {
                json.writeString(rung.name());
            }
            json.writeEndArray();
        }
    }
}
