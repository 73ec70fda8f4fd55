package rungwright.yaml;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.scanner.Scanner;
import org.yaml.snakeyaml.tokens.ScalarToken;
import org.yaml.snakeyaml.tokens.Token;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;

/**
 * The tokens of a text without what specs do not use: anchors, tags and directives are reported and taken
 * out, an alias becomes a scalar that is not read, and a key after {@code ?} becomes a common key. So one run
 * reports all of them, and the parser never fails over one.
 */
final class PlainTokens implements Scanner {
    private static final Set<Token.ID> CONTENT = EnumSet.of(Token.ID.Scalar, Token.ID.Alias, Token.ID.Anchor,
            Token.ID.BlockMappingStart, Token.ID.BlockSequenceStart, Token.ID.BlockEntry,
            Token.ID.FlowMappingStart, Token.ID.FlowSequenceStart);
    private static final Pattern NOT = Pattern.compile("!(?:=\\s*(?=[^\\s,}\\]])|\\s*(?=\\d))([^,}\\]]*).*");

    private final Scanner all;
    private final Source source;
    private final Findings findings;
    private final Deque<Token> ahead = new ArrayDeque<>();

    PlainTokens(Scanner all, Source source, Findings findings) {
        this.all = all;
        this.source = source;
        this.findings = findings;
    }

    @Override
    public boolean checkToken(Token.ID... choices) {
        Token.ID next = peekToken().getTokenId();
        return choices.length == 0 || Set.of(choices).contains(next);
    }

    @Override
    public boolean checkToken(Token.ID choice) {
        return peekToken().getTokenId() == choice;
    }

    @Override
    public Token peekToken() {
        while (ahead.isEmpty()) {
            all.peekToken();
            plain(all.getToken()).ifPresent(ahead::add);
        }
        return ahead.peek();
    }

    @Override
    public Token getToken() {
        peekToken();
        return ahead.remove();
    }

    @Override
    public void resetDocumentIndex() {
        all.resetDocumentIndex();
    }

    private Optional<Token> plain(Token token) {
        return switch (token.getTokenId()) {
            case Anchor -> dropped(anchor(token));
            case Directive -> dropped(directive(token));
            case Alias -> {
                findings.add(alias(token));
                yield Optional.of(unread(token));
            }
            case Tag -> {
                findings.add(tag(token));
                boolean isBeforeContent = CONTENT.contains(all.peekToken().getTokenId());
                yield isBeforeContent ? Optional.empty() : Optional.of(unread(token));
            }
            case Key -> {
                reportIfMarked(token);
                yield Optional.of(token);
            }
            default -> Optional.of(token);
        };
    }

    private Optional<Token> dropped(Finding finding) {
        findings.aside(finding);
        return Optional.empty();
    }

    /** A scalar that stands for something already reported. */
    private static Token unread(Token token) {
        String struck = Character.toString(Source.STRUCK);
        return new ScalarToken(struck, token.getStartMark(), token.getEndMark(), true);
    }

    private Finding anchor(Token token) {
        return feature(token, word(token) + " is an anchor, which specs do not use")
                .withHint("leave it out, and write what it marks again where it is needed");
    }

    private Finding alias(Token token) {
        return feature(token, word(token) + " is an alias, which specs do not use")
                .withHint("write out here what it stands for, or put a text that begins with `*` in quotes");
    }

    private Finding directive(Token token) {
        return feature(token, word(token) + " is a directive, which specs do not use")
                .withHint("leave the line out");
    }

    private Finding tag(Token token) {
        return feature(token, word(token) + " is a tag, which specs do not use")
                .withHint(tagHint(source.glimpse(place(token.getStartMark()))));
    }

    /** What to write instead of a tag: {@code not 12} for {@code !12}. */
    static String tagHint(String written) {
        Matcher not = NOT.matcher(written);
        return not.matches() ? "write `not " + Shown.text(not.group(1).strip()) + "`"
                : "leave it out, or put a text that begins with `!` in quotes";
    }

    /** A key token has no length of its own unless {@code ?} stands before the key. */
    private void reportIfMarked(Token token) {
        if (token.getStartMark().getIndex() != token.getEndMark().getIndex()) {
            findings.aside(feature(token, "a key after `?` is not used in specs")
                    .withHint("write `key: value` without the `?`, or put a text that has a `?` in quotes"));
        }
    }

    private String word(Token token) {
        return Shown.quoted(source.glimpse(place(token.getStartMark())).split("[\\s,\\]}]", 2)[0]);
    }

    private static Finding feature(Token token, String message) {
        return Finding.of(Code.YAML_FEATURE, place(token.getStartMark()), message);
    }

    /** A library's mark, which counts from 0, as a place. */
    static Place place(Mark mark) {
        return new Place(mark.getLine() + 1, mark.getColumn() + 1);
    }
}
