package rungwright.examples.flink;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.flink.api.common.typeutils.TypeSerializerSnapshot;
import org.apache.flink.core.memory.DataInputDeserializer;
import org.apache.flink.core.memory.DataOutputSerializer;
import org.junit.jupiter.api.Test;
import rungwright.step.State;

class StateSerializerTest {
    private static final Path SPEC = Path.of("../../../spec-examples/first-bar-dip/program.yaml");

    private final StateSerializer serializer = new StateSerializer();

    @Test
    void readsBackTheStatesThatItWroteOneBehindTheOther() throws Exception {
        List<State> states = states();
        DataOutputSerializer out = new DataOutputSerializer(64);
        for (State state : states) {
            serializer.serialize(state, out);
        }

        DataInputDeserializer in = new DataInputDeserializer(out.getCopyOfBuffer());
        for (State state : states) {
            assertEquals(state, serializer.deserialize(in));
        }
        assertEquals(0, in.available());
        assertTrue(states.stream().anyMatch(state -> !state.tallies().isEmpty()),
                "some are in the middle of a row");
    }

    @Test
    void copiesAStateWithoutReadingIt() throws Exception {
        DataOutputSerializer out = new DataOutputSerializer(64);
        serializer.serialize(states().get(0), out);
        DataOutputSerializer copy = new DataOutputSerializer(64);

        serializer.copy(new DataInputDeserializer(out.getCopyOfBuffer()), copy);

        assertArrayEquals(out.getCopyOfBuffer(), copy.getCopyOfBuffer());
    }

    @Test
    void itsSnapshotGivesTheSerializerBack() throws IOException {
        DataOutputSerializer out = new DataOutputSerializer(64);
        TypeSerializerSnapshot.writeVersionedSnapshot(out, serializer.snapshotConfiguration());

        TypeSerializerSnapshot<State> read = TypeSerializerSnapshot.readVersionedSnapshot(
                new DataInputDeserializer(out.getCopyOfBuffer()), getClass().getClassLoader());

        assertEquals(serializer, read.restoreSerializer());
        assertTrue(serializer.snapshotConfiguration().resolveSchemaCompatibility(read).isCompatibleAsIs());
    }

    @Test
    void statesOfAnotherFormAreRefused() {
        DataInputDeserializer nothing = new DataInputDeserializer(new byte[0]);

        IOException refused = assertThrows(IOException.class,
                () -> new StateSnapshot().readSnapshot(2, nothing, getClass().getClassLoader()));

        assertEquals("the savepoint has states of form 2, and this job reads form 1", refused.getMessage());
    }

    private static List<State> states() throws Exception {
        return new Straight().run(Files.readString(SPEC), new Winter(200, 9, 7).lines()).states();
    }
}
