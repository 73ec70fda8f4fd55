package rungwright.step;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Things in an order, found by their name. */
final class Index<T> {
    static final int NONE = -1;

    private final List<T> things;
    private final List<String> names;
    private final Map<String, Integer> numbers = new HashMap<>();

    Index(List<T> things, Function<T, String> name) {
        this.things = List.copyOf(things);
        this.names = things.stream().map(name).toList();
        for (int i = 0; i < names.size(); i++) {
            numbers.put(names.get(i), i);
        }
    }

    List<T> all() {
        return things;
    }

    List<String> names() {
        return names;
    }

    int size() {
        return things.size();
    }

    T get(int number) {
        return things.get(number);
    }

    /** The number of the one so named, or {@link #NONE}. */
    int number(String name) {
        return numbers.getOrDefault(name, NONE);
    }

    /** The number of one of these. */
    int of(T thing) {
        int number = things.indexOf(thing);
        if (number < 0) {
            throw new IllegalArgumentException(thing + " is not one of " + names);
        }
        return number;
    }
}
