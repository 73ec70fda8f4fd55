package rungwright.text;

import rungwright.measure.Scale;
import rungwright.measure.Values;
import rungwright.measure.Words;

/** A value as somebody may type it in a language: yes and no are ours, numbers have a point as in a spec. */
record Typed(Wording wording, String value) implements Values.Cases<String> {
    @Override
    public String scale(Scale scale) {
        return value;
    }

    @Override
    public String words(Words words) {
        return words.isYesOrNo() ? wording.rules().say("phrase." + value) : value;
    }
}
