package rungwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.trial.Cases;
import rungwright.trial.CasesRun;

/** What build servers read of a test run is well formed, has the shape they know, and counts right. */
class JunitXmlTest {
    private static final Program PROGRAM = Checked.read("""
            program: Plank
            version: 1
            goal: One minute
            cautions: [Stop where it hurts.]
            measures: { hold: { values: 0 to 120 s }, pain: { values: 0 to 10, if not logged: 0 } }
            stop: { when: { pain: at least 6 }, say: See a doctor., once cleared: same place }
            stages:
              plank: { advance: { when: { hold: at least 60 s } }, hold: otherwise }
            """).program().orElseThrow();

    private static CasesRun run(String name, String expect) {
        String cases = "cases: [ { name: " + name + ", sessions: [ { hold: 60 } ], expect: [" + expect
                + "] } ]";
        return CasesRun.of(PROGRAM, "a & \"b\" <c>.yaml", Cases.read(PROGRAM, cases));
    }

    private static Element suites(CasesRun... runs) throws ParserConfigurationException, SAXException,
            IOException {
        byte[] bytes = JunitXml.of(List.of(runs)).getBytes(StandardCharsets.UTF_8);
        Document read = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(bytes));
        return read.getDocumentElement();
    }

    private static List<Element> children(Element parent) {
        List<Element> found = new ArrayList<>();
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                found.add(element);
            }
        }
        return found;
    }

    @Test
    void suitesHoldCasesAndCasesHoldFailures() throws ParserConfigurationException, SAXException,
            IOException {
        Element suites = suites(run("Good", "reached"), run("Bad", "hold"));
        assertEquals("testsuites", suites.getTagName());
        assertEquals("2", suites.getAttribute("tests"));
        assertEquals("1", suites.getAttribute("failures"));
        assertEquals("0", suites.getAttribute("errors"));
        Element bad = children(suites).get(1);
        assertEquals("testsuite", bad.getTagName());
        assertEquals("1", bad.getAttribute("failures"));
        Element testcase = children(bad).get(0);
        assertEquals("testcase", testcase.getTagName());
        assertEquals("Bad", testcase.getAttribute("name"));
        Element failure = children(testcase).get(0);
        assertEquals("failure", failure.getTagName());
        assertTrue(failure.getAttribute("message").startsWith("expected hold, decided reached"),
                () -> failure.getAttribute("message"));
        assertTrue(failure.getTextContent().contains("session 1 on 2026-01-05 (line 1)"),
                failure::getTextContent);
        assertEquals(List.of(), children(children(children(suites).get(0)).get(0)));
    }

    @Test
    void onlyElementsAndAttributesThatServersKnowAreWritten() throws ParserConfigurationException,
            SAXException, IOException {
        Element suites = suites(run("Bad", "hold"), run("Worse", "holt"));
        everyElement(suites, Set.of("testsuites", "testsuite", "testcase", "failure", "error"),
                Set.of("name", "tests", "failures", "errors", "skipped", "classname", "message", "type"));
    }

    private static void everyElement(Element element, Set<String> names, Set<String> attributes) {
        assertTrue(names.contains(element.getTagName()), element::getTagName);
        for (int i = 0; i < element.getAttributes().getLength(); i++) {
            String attribute = element.getAttributes().item(i).getNodeName();
            assertTrue(attributes.contains(attribute), attribute);
        }
        children(element).forEach(child -> everyElement(child, names, attributes));
    }

    @Test
    void aFileThatCannotBeReadIsAnError() throws ParserConfigurationException, SAXException, IOException {
        Element suite = children(suites(run("Worse", "holt"))).get(0);
        assertEquals("1", suite.getAttribute("errors"));
        assertEquals("1", suite.getAttribute("tests"));
        assertTrue(children(children(suite).get(0)).get(0).getTextContent().contains("[unknown-name]"));
    }

    @Test
    void hostileNamesStayNames() throws ParserConfigurationException, SAXException, IOException {
        String name = "\"<b>&amp;]]>\\x1b[31m \\u202e \ud83e\udd38 ' --><testcase/>\"";
        Element suites = suites(run(name, "hold"));
        Element suite = children(suites).get(0);
        assertEquals("a & \"b\" <c>.yaml", suite.getAttribute("name"));
        // The characters that cannot be seen are an error as well, and the case runs all the same.
        assertEquals(2, children(suite).size());
        Element testcase = children(suite).get(1);
        assertEquals("<b>&amp;]]>\\u001b[31m \\u202e \ud83e\udd38 ' --><testcase/>",
                testcase.getAttribute("name"));
    }
}
