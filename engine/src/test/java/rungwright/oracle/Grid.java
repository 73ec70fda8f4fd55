package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;

/**
 * The values that a thing can take, least first. Names and yes or no count as their position: no is 0, yes
 * is 1, and the
 * first of the names is 0.
 *
 * @param words the names, empty for numbers
 * @param unit the unit of the numbers, empty for none
 */
record Grid(List<Frac> values, List<String> words, String unit) {
    static final Grid YES_OR_NO = new Grid(List.of(Frac.ZERO, Frac.ONE), List.of("no", "yes"), "");

    static Grid numbers(String from, String to, String by, String unit) {
        List<Frac> values = new ArrayList<>();
        for (Frac v = Frac.of(from); v.compareTo(Frac.of(to)) <= 0; v = v.plus(Frac.of(by))) {
            values.add(v);
        }
        return new Grid(List.copyOf(values), List.of(), unit);
    }

    static Grid names(String... words) {
        List<Frac> values = new ArrayList<>();
        for (int i = 0; i < words.length; i++) {
            values.add(Frac.of(i));
        }
        return new Grid(List.copyOf(values), List.of(words), "");
    }

    boolean numeric() {
        return words.isEmpty();
    }

    Frac least() {
        return values.get(0);
    }

    Frac greatest() {
        return values.get(values.size() - 1);
    }

    Frac step() {
        return values.size() < 2 ? Frac.ONE : values.get(1).minus(values.get(0));
    }

    /** A value as a coach writes it, without its unit. */
    String show(Frac value) {
        return numeric() ? value.text() : words.get(value.top().intValueExact());
    }
}
