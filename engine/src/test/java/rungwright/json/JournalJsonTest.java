package rungwright.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import rungwright.finding.Shown;
import rungwright.journal.Entry;
import rungwright.journal.UnreadableEntryException;

/** Every kind of entry is read back as it was written; what is none is refused in words. */
class JournalJsonTest {
    private static final String TOLD = "\"told\":{\"program\":\"First bar dip\",\"version\":\"3\","
            + "\"fingerprint\":\"0f3a\",\"decision\":\"hold\",\"at\":{\"stage\":0,\"stage name\":\"assisted"
            + " dip\",\"rung\":2,\"rung name\":\"25 kg\"},\"status\":\"training\"}";
    private static final String SESSION = "{\"form\":1,\"entry\":4,\"logged by\":\"Ida\",\"session\":1,"
            + "\"event\":\"session\",\"date\":\"2026-03-04\",\"readings\":{\"pace\":\"4\"},"
            + "\"sets\":[{\"reps\":\"9\"}]," + TOLD + "}";
    private static final String WITHDRAWN = "{\"form\":1,\"entry\":5,\"event\":\"correction\","
            + "\"date\":\"2026-03-05\",\"corrects\":4," + TOLD + "}";

    @Property
    void entries(@ForAll long seed) throws UnreadableEntryException {
        Entry entry = new Making(seed).entry();
        String text = JournalJson.FORM.write(entry);
        assertEquals(entry, JournalJson.FORM.read(text));
        assertFalse(text.codePoints().anyMatch(point -> !Shown.isPlain(point)), text);
    }

    @Example
    void aLineIsWrittenAsDocumented() throws UnreadableEntryException {
        for (String line : new String[] {SESSION, WITHDRAWN}) {
            assertEquals(line, JournalJson.FORM.write(JournalJson.FORM.read(line)));
        }
    }

    @Example
    void whatIsWrongIsSaidByName() {
        refused(SESSION.replace("logged by", "loged by"),
                "`loged by` is no field of a journal entry; did you mean `logged by`?");
        refused(SESSION.replace("\"form\":1", "\"form\":2"),
                "form `2` of a journal entry is not known; this is form 1");
        refused(SESSION.replace("\"session\":1,", ""),
                "a session has a number of its day, all else has none");
        refused(SESSION.replace("\"hold\"", "\"wait\""), "`wait` is no decision");
        refused(WITHDRAWN.replace("\"corrects\":4", "\"corrects\":5"), "entry 5 cannot correct entry 5");
        refused(WITHDRAWN.replace("correction", "move"), "a `move` corrects nothing");
        refused(SESSION.replace("\"event\":\"session\"", "\"event\":\"correction\""),
                "`correction` is no event; write one of enrol, session, clearance, facts, move, new version");
        refused(SESSION.replace(",\"status\"", ",\"mood\""), "a decision told needs the field `status`");
        refused("[]", "a journal entry is an object in braces");
    }

    private static void refused(String line, String message) {
        assertEquals(message, assertThrows(UnreadableEntryException.class,
                () -> JournalJson.FORM.read(line)).getMessage());
    }
}
