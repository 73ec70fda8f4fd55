package rungwright.measure;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalLong;

/**
 * Named values in the order in which they were written, least first; {@code no} comes before {@code yes}.
 *
 * <p>{@code Words.of(List.of("open", "hooked", "full"))} has {@code hooked} at position 1.
 */
public record Words(List<String> names) implements Values {
    /** The values of a question that is answered with yes or no. */
    public static final Words YES_OR_NO = new Words(List.of("no", "yes"));

    /** Refuses an empty list and a name that stands twice. */
    public Words {
        names = List.copyOf(names);
        if (names.isEmpty() || new HashSet<>(names).size() < names.size()) {
            throw new IllegalArgumentException("names must be there and differ, were " + names);
        }
    }

    /** The names, least first. */
    public static Words of(List<String> names) {
        return new Words(names);
    }

    /** Whether these are the two answers no and yes. */
    public boolean isYesOrNo() {
        return equals(YES_OR_NO);
    }

    /** Of few names only, since thousands of rules may ask about thousands of names. */
    @Override
    public int hashCode() {
        return 31 * names.size() + names.get(0).hashCode();
    }

    @Override
    public long count() {
        return names.size();
    }

    @Override
    public String show(long position) {
        return names.get(Math.toIntExact(position));
    }

    @Override
    public OptionalLong read(String text) {
        int index = names.indexOf(text.strip());
        return index < 0 ? OptionalLong.empty() : OptionalLong.of(index);
    }

    @Override
    public Unit unit() {
        return Unit.NONE;
    }

    @Override
    public Ratio base(long position) {
        return Ratio.of(position);
    }

    @Override
    public boolean isNumeric() {
        return false;
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.words(this);
    }
}
