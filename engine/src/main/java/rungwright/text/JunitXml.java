package rungwright.text;

import java.util.List;
import rungwright.finding.Finding;
import rungwright.finding.Shown;
import rungwright.trial.CaseRun;
import rungwright.trial.CasesRun;
import rungwright.trial.Failure;

/**
 * The cases of some files as the XML in which build servers read test results: a {@code testsuite} a file, a
 * {@code testcase} a case, in it a {@code failure} where the case failed. What is wrong with a file is an
 * {@code error} of a case named {@code reading}.
 */
public final class JunitXml {
    private final StringBuilder xml = new StringBuilder();

    private JunitXml() {
    }

    /** The whole document, with a line end after it. */
    public static String of(List<CasesRun> runs) {
        JunitXml writer = new JunitXml();
        writer.xml.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<testsuites name=\"rungwright\"");
        writer.counts(runs);
        writer.xml.append(">\n");
        runs.forEach(writer::suite);
        return writer.xml.append("</testsuites>\n").toString();
    }

    private void counts(List<CasesRun> runs) {
        attribute("tests", runs.stream().mapToLong(run -> run.runs().size() + errors(run)).sum());
        attribute("failures", runs.stream().mapToLong(CasesRun::failed).sum());
        attribute("errors", runs.stream().mapToLong(JunitXml::errors).sum());
    }

    private static long errors(CasesRun run) {
        return run.findings().isEmpty() ? 0 : 1;
    }

    private void suite(CasesRun run) {
        xml.append("  <testsuite");
        attribute("name", run.file());
        counts(List.of(run));
        attribute("skipped", 0);
        xml.append(">\n");
        if (!run.findings().isEmpty()) {
            begin("reading", run.file());
            outcome("error", run.findings().get(0).message(), "unreadable",
                    run.findings().stream().map(JunitXml::line).toList());
        }
        run.runs().forEach(one -> testcase(run.file(), one));
        xml.append("  </testsuite>\n");
    }

    private static String line(Finding finding) {
        return finding.place().line() + ":" + finding.place().column() + ": " + finding.message() + " ["
                + finding.code().word() + "]";
    }

    private void testcase(String file, CaseRun run) {
        begin(run.ran().name(), file);
        if (run.failure().isEmpty()) {
            xml.setLength(xml.length() - ">\n".length());
            xml.append("/>\n");
        } else {
            Failure failure = run.failure().get();
            outcome("failure", "expected " + failure.expected() + ", decided "
                    + TrialText.decided(failure.decision()), "other decision", TrialText.of(run, failure));
        }
    }

    private void begin(String name, String file) {
        xml.append("    <testcase");
        attribute("name", name);
        attribute("classname", file);
        xml.append(">\n");
    }

    private void outcome(String element, String message, String type, List<String> lines) {
        xml.append("      <").append(element);
        attribute("message", message);
        attribute("type", type);
        xml.append(">");
        lines.forEach(line -> xml.append(escaped(line)).append('\n'));
        xml.append("</").append(element).append(">\n    </testcase>\n");
    }

    private void attribute(String name, long value) {
        attribute(name, Long.toString(value));
    }

    private void attribute(String name, String value) {
        xml.append(' ').append(name).append("=\"").append(escaped(value)).append('"');
    }

    /** A text on one line without what XML cannot hold: control characters stand as escapes of ours. */
    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        Shown.whole(text).codePoints().forEach(point -> {
            switch (point) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case 0xFFFE, 0xFFFF -> escaped.append('?');
                default -> escaped.appendCodePoint(point);
            }
        });
        return escaped.toString();
    }
}
