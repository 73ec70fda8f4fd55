package rungwright.text;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rungwright.finding.Shown;

/** What a command says, in one line, when it was not understood or could not begin. */
public final class UsageText {
    private UsageText() {
    }

    /** A file that is not there. */
    public static String missing(String file) {
        return "there is no file " + Shown.quoted(file);
    }

    /** A folder where a file is meant. */
    public static String folder(String file) {
        return Shown.quoted(file) + " is a folder, not a file";
    }

    /** A folder that is not there, or is none. */
    public static String missingFolder(String folder) {
        return "there is no folder " + Shown.quoted(folder);
    }

    /** A folder that its owner keeps to himself, or that breaks off. */
    public static String unreadableFolder(String folder) {
        return "the folder " + Shown.quoted(folder) + " cannot be read";
    }

    /** A file that could not be written. */
    public static String unwritable(String file) {
        return "the file " + Shown.quoted(file) + " cannot be written";
    }

    /** Output that did not all get to where it was sent: the disk is full, say. */
    public static String outputLost() {
        return "the output could not all be written; what is there of it is not the whole";
    }

    /** A file that its owner keeps to himself. */
    public static String forbidden(String file) {
        return "you may not read the file " + Shown.quoted(file);
    }

    /** A file that breaks off. */
    public static String unreadable(String file) {
        return "the file " + Shown.quoted(file) + " cannot be read";
    }

    /** A text that cannot be laid out. */
    public static String noLayout(String file) {
        return Shown.whole(file) + ": is no YAML that can be laid out; `check` says why";
    }

    /** A text that is laid out in another way. */
    public static String otherLayout(String file) {
        return Shown.whole(file) + ": would change";
    }

    /** A file that is there already. */
    public static String isThere(String file) {
        return "the file " + Shown.quoted(file) + " is there already, and is not written over";
    }

    /** A certificate of several specs. */
    public static String certificateOfOne() {
        return "a certificate is of one spec";
    }

    /** A file that was not understood, and why. */
    public static String misread(String file, String why) {
        return "the file " + Shown.quoted(file) + " was not understood: " + why;
    }

    /** Two files that both are standard input. */
    public static String standardInputTwice() {
        return "`-` stands twice, and standard input can be read only once";
    }

    /** A command that does not exist, with the one that was perhaps meant. */
    public static String noCommand(String word, Optional<String> meant) {
        return "there is no command " + Shown.quoted(word) + didYouMean(meant);
    }

    /** An option that does not exist, with the one that was perhaps meant. */
    public static String noOption(String word, Optional<String> meant) {
        return "there is no option " + Shown.quoted(word) + didYouMean(meant);
    }

    /** No command at all. */
    public static String commandNeeded() {
        return "a command is needed";
    }

    /** A word too many. */
    public static String tooMuch(String word) {
        return Shown.quoted(word) + " is one word too many";
    }

    /** Arguments that make no sense for a reason already in words, on one line and without a capital. */
    public static String misunderstood(String reason) {
        String shown = Shown.whole(reason);
        return shown.substring(0, 1).toLowerCase(Locale.ROOT) + shown.substring(1);
    }

    /** Where to read on: {@code rungwright check --help} says more. */
    public static String seeHelp(String command) {
        return "`" + command + " --help` says more";
    }

    /** A day that is none. */
    public static String noDate(String word) {
        return Shown.quoted(word) + " is no day; write year, month and day, as in 2026-03-04";
    }

    /** A folder where one trainee's journal is meant. */
    public static String folderForAJournal(String file) {
        return Shown.quoted(file) + " is a folder; name one trainee's journal in it, as in "
                + Shown.quoted(file + (file.endsWith("/") ? "" : "/") + "alva.jsonl");
    }

    /** A name that no journal has; perhaps the two files stand the wrong way round. */
    public static String noJournalsName(String spec, String file) {
        return spec.endsWith(".jsonl") ? "the spec comes first, then the journal"
                : "a journal's file is named NAME.jsonl; write " + Shown.quoted(file + ".jsonl");
    }

    /** A folder that is not there. */
    public static String noFolder(String folder) {
        return "there is no folder " + Shown.quoted(folder) + " for the journal; make it first";
    }

    /** A journal that is not there. */
    public static String noJournal(String file) {
        return "there is no journal " + Shown.quoted(file)
                + "; `rungwright log SPEC JOURNAL enrol` begins one";
    }

    /** That something is to be said to be recorded. */
    public static String whatToLog() {
        return "say what to record: enrol, session, cleared, facts, move or correct, as in `session"
                + " reps=9,7,6`; on a terminal you are asked instead";
    }

    /** A fault of ours, and what to do about it. */
    public static String fault(String what, boolean traced) {
        return "this is a fault of rungwright, not of your files: " + Shown.text(what)
                + "; please report it to the project with the command and the files"
                + (traced ? "" : " (--trace shows where it happened)");
    }

    /** That a way through a program is drawn in one form alone. */
    public static String pathOnlyInSvg() {
        return "`--path` draws on a picture in svg; leave out `--format`";
    }

    /** That there is no stage to draw. */
    public static String nothingToDraw(String file) {
        return Shown.text(file) + ": there is no stage to draw; put the findings right first";
    }

    /** That nothing can be drawn as a way. */
    public static String noPath(String name) {
        return Shown.quoted(name) + " is neither a journal's file nor the code of a finding of this spec that"
                + " has a trainee to show";
    }

    /** That a picture goes over what Mermaid draws. */
    public static String tooLargeForMermaid() {
        return "the program is larger than Mermaid draws (50,000 characters, 500 edges); use svg or dot";
    }

    private static String didYouMean(Optional<String> meant) {
        return meant.map(word -> "; did you mean `" + word + "`?").orElse("");
    }

    /** A file to be written that is there already. */
    public static String alreadyThere(String file) {
        return "the file " + Shown.quoted(file) + " is there already, and is left as it is";
    }

    /** A test without cases. */
    public static String noCases() {
        return "name a file of cases, or let one be written with `--boundaries FILE`";
    }

    /** Folders of journals, or a folder and logs, where one thing is meant. */
    public static String oneFolder() {
        return "a report is of one folder of journals, or of logs; name a second one with `--against`";
    }

    /** A fact by which nobody can be grouped. */
    public static String noFact(String fact, List<String> facts) {
        return Shown.quoted(fact) + " is no fact of this program" + (facts.isEmpty() ? "; it has none"
                : "; it has " + Listed.and(facts.stream().map(Shown::quoted).toList()));
    }

    /** A fact with too many values. */
    public static String tooManyGroups(String fact, int groups, int most) {
        return Shown.quoted(fact) + " would make " + groups
                + " groups, each too small to say anything; at most "
                + most + " are shown";
    }

    /** Two ways of making groups at once. */
    public static String oneWayToGroup() {
        return "use one of `--group`, `--against` and `--against-spec`; each makes groups of its own";
    }
}
