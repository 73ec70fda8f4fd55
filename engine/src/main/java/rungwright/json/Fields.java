package rungwright.json;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;

/** The fields of one object, taken out by name; a field that nobody takes is refused with its name. */
final class Fields {
    private final String what;
    private final Map<String, Tree> left;
    private final List<String> known = new ArrayList<>();

    private Fields(String what, Map<String, Tree> fields) {
        this.what = what;
        this.left = new LinkedHashMap<>(fields);
    }

    /** The fields of an object; {@code what} names it in messages, as {@code state}. */
    static Fields of(Tree tree, String what) throws BadJsonException {
        if (tree.kind() != Tree.Kind.OBJECT) {
            throw new BadJsonException(one(what) + " is an object in braces");
        }
        return new Fields(what, tree.fields());
    }

    /** A thing with its article: {@code a state}, {@code an event}; what stands in back-ticks is a name. */
    private static String one(String what) {
        return (what.startsWith("`") ? "" : what.startsWith("e") ? "an " : "a ") + what;
    }

    /** Takes the number of the form, which is 1. */
    Fields form() throws BadJsonException {
        String form = text("form");
        if (!form.equals(Integer.toString(Form.NUMBER))) {
            throw new BadJsonException("form " + Shown.quoted(form) + " of " + one(what)
                    + " is not known; this is form "
                    + Form.NUMBER);
        }
        return this;
    }

    /** Takes a field, if it is there and not null. */
    Optional<Tree> find(String name) {
        known.add(name);
        return Optional.ofNullable(left.remove(name)).filter(tree -> tree.kind() != Tree.Kind.NULL);
    }

    /** Takes a field that must be there. */
    Tree need(String name) throws BadJsonException {
        return find(name).orElseThrow(() -> new BadJsonException(one(what) + " needs the field `" + name
                + "`"));
    }

    /** Takes a text, number or answer that must be there. */
    String text(String name) throws BadJsonException {
        return value(need(name), name);
    }

    /** Takes a text, number or answer, if it is there. */
    Optional<String> findText(String name) throws BadJsonException {
        Optional<Tree> tree = find(name);
        return tree.isPresent() ? Optional.of(value(tree.get(), name)) : Optional.empty();
    }

    /** Takes a whole number from 0 that must be there. */
    int number(String name) throws BadJsonException {
        String text = text(name);
        if (!text.matches("\\d{1,9}")) {
            throw new BadJsonException("`" + name + "` of " + one(what) + " is a whole number, not "
                    + Shown.quoted(text));
        }
        return Integer.parseInt(text);
    }

    /** Takes a whole number from 1 that must be there. */
    int count(String name) throws BadJsonException {
        int number = number(name);
        if (number == 0) {
            throw new BadJsonException("`" + name + "` of " + one(what) + " counts from 1");
        }
        return number;
    }

    /** Whether a field is there and not null; it is not taken. */
    boolean has(String name) {
        return left.containsKey(name) && left.get(name).kind() != Tree.Kind.NULL;
    }

    /** Takes an answer, true or false, that must be there. */
    boolean answer(String name) throws BadJsonException {
        return answer(need(name), name);
    }

    /** An answer: true or false. */
    static boolean answer(Tree tree, String name) throws BadJsonException {
        String word = value(tree, name);
        if (!word.equals("yes") && !word.equals("no")) {
            throw new BadJsonException("`" + name + "` is true or false, not " + Shown.quoted(word));
        }
        return word.equals("yes");
    }

    /** Takes a day that must be there. */
    LocalDate date(String name) throws BadJsonException {
        return day(text(name), name);
    }

    /** Takes a day, if it is there. */
    Optional<LocalDate> findDate(String name) throws BadJsonException {
        Optional<String> text = findText(name);
        return text.isPresent() ? Optional.of(day(text.get(), name)) : Optional.empty();
    }

    /** Takes an object of texts; an empty one where it is not there. */
    Map<String, String> texts(String name) throws BadJsonException {
        Map<String, String> texts = new LinkedHashMap<>();
        Optional<Tree> tree = find(name);
        if (tree.isPresent()) {
            for (Map.Entry<String, Tree> field : Fields.of(tree.get(), "`" + name + "`").left.entrySet()) {
                texts.put(field.getKey(), value(field.getValue(), field.getKey()));
            }
        }
        return texts;
    }

    /** Takes all that is left as readings by name; one that is null is a blank. */
    Map<String, String> readings() throws BadJsonException {
        Map<String, String> readings = new LinkedHashMap<>();
        for (Map.Entry<String, Tree> reading : rest().entrySet()) {
            if (reading.getValue().kind() != Tree.Kind.NULL) {
                readings.put(reading.getKey(), value(reading.getValue(), reading.getKey()));
            }
        }
        return readings;
    }

    /** Takes a list; an empty one where it is not there. */
    List<Tree> list(String name) throws BadJsonException {
        Optional<Tree> tree = find(name);
        if (tree.isPresent() && tree.get().kind() != Tree.Kind.LIST) {
            throw new BadJsonException("`" + name + "` of " + one(what) + " is a list");
        }
        return tree.map(Tree::items).orElse(List.of());
    }

    /** Takes all that is left, which may have any name. */
    Map<String, Tree> rest() {
        Map<String, Tree> rest = new LinkedHashMap<>(left);
        left.clear();
        return rest;
    }

    /** Refuses whatever is left. */
    void end() throws BadJsonException {
        if (!left.isEmpty()) {
            String name = left.keySet().iterator().next();
            throw new BadJsonException(Shown.quoted(name) + " is no field of " + one(what)
                    + Suggest.closest(name, known).map(word -> "; did you mean `" + word + "`?").orElse(""));
        }
    }

    /** The text of a value that is no list and no object. */
    static String value(Tree tree, String name) throws BadJsonException {
        if (tree.kind() != Tree.Kind.VALUE) {
            throw new BadJsonException(Shown.quoted(name) + " is a text, a number or an answer");
        }
        return tree.text();
    }

    private LocalDate day(String text, String name) throws BadJsonException {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new BadJsonException("`" + name + "` of " + one(what) + " is a date like 2026-03-02, not "
                    + Shown.quoted(text));
        }
    }
}
