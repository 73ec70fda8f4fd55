package rungwright.text;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import rungwright.measure.Scale;
import rungwright.measure.Values;
import rungwright.measure.Words;

/** A value as somebody typed it, spelt as the program does: {@code Y} or {@code ja} for
 * {@code yes}, {@code 20 KG}. */
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
        if (words.isYesOrNo()) {
            return Arrays.stream(Language.values()).flatMap(language -> words.names().stream()
                    .filter(name -> isShort(language.words("rules").say("phrase." + name)))).findFirst()
                    .orElse(typed);
        }
        List<String> alike = words.names().stream().filter(name -> name.equalsIgnoreCase(typed))
                .toList();
        return alike.size() == 1 ? alike.get(0) : typed;
    }

    /** Whether what was typed is a word or its first letter. */
    private boolean isShort(String word) {
        return word.equalsIgnoreCase(typed) || word.substring(0, 1).equalsIgnoreCase(typed);
    }
}
