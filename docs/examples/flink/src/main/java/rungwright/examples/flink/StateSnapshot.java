package rungwright.examples.flink;

import java.io.IOException;
import org.apache.flink.api.common.typeutils.TypeSerializer;
import org.apache.flink.api.common.typeutils.TypeSerializerSchemaCompatibility;
import org.apache.flink.api.common.typeutils.TypeSerializerSnapshot;
import org.apache.flink.core.memory.DataInputView;
import org.apache.flink.core.memory.DataOutputView;
import rungwright.step.State;

/**
 * What a savepoint says of how its states were written: the number of the JSON's form. Another form comes
 * with another number, and a serializer for each that is still read.
 */
public final class StateSnapshot implements TypeSerializerSnapshot<State> {
    /** The number in {@code "form":1}. */
    private static final int FORM = 1;

    @Override
    public int getCurrentVersion() {
        return FORM;
    }

    @Override
    public void writeSnapshot(DataOutputView out) {
        // The form's number, which Flink writes, says it all.
    }

    @Override
    public void readSnapshot(int form, DataInputView in, ClassLoader classes) throws IOException {
        if (form != FORM) {
            throw new IOException("the savepoint has states of form " + form + ", and this job reads form "
                    + FORM);
        }
    }

    @Override
    public TypeSerializer<State> restoreSerializer() {
        return new StateSerializer();
    }

    @Override
    public TypeSerializerSchemaCompatibility<State> resolveSchemaCompatibility(
            TypeSerializerSnapshot<State> older) {
        return older instanceof StateSnapshot ? TypeSerializerSchemaCompatibility.compatibleAsIs()
                : TypeSerializerSchemaCompatibility.incompatible();
    }
}
