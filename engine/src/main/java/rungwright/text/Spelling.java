package rungwright.text;

import java.util.List;
import java.util.Locale;
import rungwright.measure.Scale;
import rungwright.measure.Values;
import rungwright.measure.Words;

/** A value as somebody typed it, spelt as the program does: {@code Y} for {@code yes}, {@code 20 KG}. */
record Spelling(String typed) implements Values.Cases<String> {
    @Override
    public String scale(Scale scale) {
        return typed.toLowerCase(Locale.ROOT);
    }

    @Override
    public String words(Words words) {
        if (words.names().contains(typed)) {
            return typed;
        }
        List<String> alike = words.names().stream().filter(name -> name.equalsIgnoreCase(typed)
                || words.isYesOrNo() && name.substring(0, 1).equalsIgnoreCase(typed)).toList();
        return alike.size() == 1 ? alike.get(0) : typed;
    }
}
