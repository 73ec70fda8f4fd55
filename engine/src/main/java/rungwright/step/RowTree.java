package rungwright.step;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodType;

/**
 * A list of rules as a tree of questions "is this reading under that number", made of method handles: the JVM
 * compiles it as if somebody had written the questions down as ifs.
 */
final class RowTree {
    /** That of a list which has none; it finds {@link RowDeed#NONE} everywhere. */
    static final RowTree NONE = new RowTree(RowTreeGrowth.found(RowDeed.NONE));

    private final MethodHandle find;

    /** Of a handle that takes a row and gives a deed. */
    RowTree(MethodHandle find) {
        this.find = find.asType(MethodType.methodType(long.class, long[].class));
    }

    boolean isThere() {
        return this != NONE;
    }

    /** What is found for a row; {@link RowDeed#NONE} where it lacks a reading that it must have. */
    long deed(long[] row) {
        try {
            return (long) find.invokeExact(row);
        } catch (RuntimeException | Error e) {
            throw e;
        } catch (Throwable e) {
            throw new IllegalStateException("a question of ours throws nothing of this kind", e);
        }
    }
}
