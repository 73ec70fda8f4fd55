package rungwright.yaml;

import java.util.Optional;

/**
 * A text as nodes. A mistake in the YAML is reported and, where it can be told what it spoils, struck out and
 * the rest read again, so that one run shows the next one too.
 *
 * @param root the whole text; of a broken one, what stands before the mistake
 * @param broken whether a mistake was left that hides the rest of the text
 */
record YamlText(Optional<Node> root, boolean broken) {
    private static final int MOST_REPAIRS = 20;

    /** The nodes of a text. */
    static YamlText read(String text, Findings findings) {
        Source source = Source.of(text, findings);
        boolean guessed = false;
        for (int repairs = 0;; repairs++) {
            Findings ofTree = new Findings();
            TreeReader.Tree tree = TreeReader.read(source, ofTree);
            if (tree.mistake().isEmpty()) {
                findings.addAll(ofTree);
                return new YamlText(tree.root(), !tree.whole());
            }
            Diagnosis diagnosis = tree.mistake().get();
            if (!guessed) {
                findings.add(diagnosis.finding());
            }
            if (guessed || repairs == MOST_REPAIRS || diagnosis.repaired().isEmpty()) {
                findings.addAll(ofTree);
                return new YamlText(tree.root(), true);
            }
            source = diagnosis.repaired().get();
            guessed = diagnosis.isGuess();
        }
    }
}
