package rungwright.examples.flink;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.flink.api.common.typeutils.TypeSerializer;
import org.apache.flink.api.common.typeutils.TypeSerializerSnapshot;
import org.apache.flink.core.memory.DataInputView;
import org.apache.flink.core.memory.DataOutputView;
import rungwright.json.BadJsonException;
import rungwright.json.StateJson;
import rungwright.step.State;

/**
 * Keeps a {@link State} as the engine's JSON of form 1, its length before it. A savepoint so outlives both
 * Flink's idea of a Java object and the engine's own classes.
 */
public final class StateSerializer extends TypeSerializer<State> {
    private static final long serialVersionUID = 1;

    @Override
    public void serialize(State state, DataOutputView target) throws IOException {
        write(StateJson.text(state).getBytes(StandardCharsets.UTF_8), target);
    }

    @Override
    public State deserialize(DataInputView source) throws IOException {
        try {
            return StateJson.read(new String(read(source), StandardCharsets.UTF_8));
        } catch (BadJsonException e) {
            throw new IOException("no state: " + e.getMessage(), e);
        }
    }

    @Override
    public State deserialize(State reuse, DataInputView source) throws IOException {
        return deserialize(source);
    }

    @Override
    public void copy(DataInputView source, DataOutputView target) throws IOException {
        write(read(source), target);
    }

    private static void write(byte[] json, DataOutputView target) throws IOException {
        target.writeInt(json.length);
        target.write(json);
    }

    private static byte[] read(DataInputView source) throws IOException {
        byte[] json = new byte[source.readInt()];
        source.readFully(json);
        return json;
    }

    /** A state never changes, so it is its own copy. */
    @Override
    public State copy(State from) {
        return from;
    }

    @Override
    public State copy(State from, State reuse) {
        return from;
    }

    @Override
    public boolean isImmutableType() {
        return true;
    }

    /** Nothing is kept between two states, so one serializer serves all threads. */
    @Override
    public TypeSerializer<State> duplicate() {
        return this;
    }

    /** Nobody stands anywhere before they are enrolled. */
    @Override
    public State createInstance() {
        return null;
    }

    @Override
    public int getLength() {
        return -1;
    }

    @Override
    public TypeSerializerSnapshot<State> snapshotConfiguration() {
        return new StateSnapshot();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof StateSerializer;
    }

    @Override
    public int hashCode() {
        return StateSerializer.class.hashCode();
    }
}
