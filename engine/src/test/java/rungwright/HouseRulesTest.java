package rungwright;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Every house rule finds the fault that it is there to find, on its line, and leaves good code alone. */
class HouseRulesTest {
    @Test
    void aPackageFurtherDownMustNotBeNamed() {
        assertFaults(LayoutRules.faults(inRegion("import rungwright.step.Decision;\n")),
                "2: `region` must not use `step`");
        assertFaults(LayoutRules.faults(inRegion("class A {\n Object o = rungwright.cli.Main.class;\n}\n")),
                "3: `region` must not use `cli`");
        assertFaults(LayoutRules.faults(inRegion("import static rungwright.measure.Unit.KG;\n")));
    }

    @Test
    void aPackageOutsideTheTableIsFound() {
        assertFaults(LayoutRules.faults(shipped("package rungwright.extras;\n")),
                "1: package `extras` is not in the table");
    }

    @Test
    void aLibraryOutsideItsPackageIsFound() {
        assertFaults(LayoutRules.faults(inRegion("import org.yaml.snakeyaml.Yaml;\n")),
                "2: org.yaml.* outside `yaml`");
        assertFaults(LayoutRules.faults(inRegion("import com.fasterxml.jackson.core.JsonFactory;\n")),
                "2: com.fasterxml.* outside `json`");
        assertFaults(LayoutRules.faults(inRegion("import picocli.CommandLine;\n")),
                "2: picocli.* outside `cli`");
        assertFaults(LayoutRules.faults(inRegion("import de.siegmar.fastcsv.reader.CsvReader;\n")),
                "2: de.siegmar.* outside `replay`");
        assertFaults(LayoutRules.faults(shipped("package rungwright.cli;\nimport picocli.CommandLine;\n")));
    }

    @Test
    void theConsoleOutsideTheCommandLineIsFound() {
        assertFaults(LayoutRules.faults(inRegion("class A {\n void a() { System.out.println(); }\n}\n")),
                "3: System.out outside `cli`");
        assertFaults(LayoutRules.faults(inRegion("import static java.lang.System.err;\n")),
                "2: java.lang.System.err outside `cli`");
    }

    @Test
    void inexactNumbersAreFound() {
        assertFaults(LayoutRules.faults(inRegion("class A {\n double a;\n float[] b;\n}\n")),
                "3: `double` is not exact", "4: `float` is not exact");
        assertFaults(LayoutRules.faults(inRegion("class A {\n long a = (long) (1.5f * 2);\n}\n")),
                "3: `1.5F` is not exact");
        assertFaults(LayoutRules.faults(inRegion("class A {\n Object a = Math.sqrt(2);\n}\n")),
                "3: `Math.sqrt` is not exact");
        assertFaults(LayoutRules.faults(shipped("package rungwright.text;\nclass A {\n double a;\n}\n")));
    }

    @Test
    void aPackageThatTheModuleKeepsBackIsFound() {
        Source module = Source.of("module-info.java", "module m { exports rungwright.step; }\n");
        Source region = inRegion("public class A {}\n");
        Source hidden = shipped("package rungwright.measure;\nclass A {}\n");
        assertEquals(List.of("no exports rungwright.region", "exports rungwright.step"),
                LayoutRules.missingExports(List.of(module, region, hidden)));
    }

    @Test
    void aLongFileAWideLineATabAndAMissingNewlineAreFound() {
        assertFaults(TextRules.faults(shipped("// a\n".repeat(301))), "301: 301 lines, at most 300");
        assertFaults(TextRules.faults(shipped("// " + "w".repeat(108) + "\n")),
                "1: 111 columns, at most 110");
        assertFaults(TextRules.faults(shipped("// " + "w".repeat(107) + "\n")));
        assertFaults(TextRules.faults(shipped("\tclass A {}\n")), "1: a tab");
        assertFaults(TextRules.faults(shipped("class A {}")), "1: ends otherwise than with one newline");
        assertFaults(TextRules.faults(shipped("class A {}\n\n")), "2: ends otherwise than with one newline");
    }

    @Test
    void whatIsLeftUnfinishedIsFound() {
        assertFaults(TextRules.faults(shipped("// TO" + "DO later\n")), "1: `TO" + "DO`");
        assertFaults(TextRules.faults(tested("@Disa" + "bled class A {}\n")), "1: `@Disa" + "bled`");
        String refusal = "class A { Object a = new Unsupported" + "OperationException(); }\n";
        assertFaults(TextRules.faults(shipped(refusal)), "1: a call without an answer");
        assertFaults(TextRules.faults(tested(refusal)));
    }

    @Test
    void aLongMethodIsFoundAndAShortOneIsNot() {
        assertFaults(CodeRules.faults(
                inRegion("class A {\n void a() {\n" + " b();\n".repeat(34) + " }\n}\n")),
                "3: a: 36 lines, at most 35");
        assertFaults(CodeRules.faults(
                inRegion("class A {\n void a() {\n" + " b();\n".repeat(33) + " }\n}\n")));
    }

    @Test
    void wildcardsEmptyNamesAndCatchAllsAreFound() {
        assertFaults(CodeRules.faults(inRegion("import java.util.*;\n")), "2: a wildcard import");
        assertFaults(CodeRules.faults(shipped("package rungwright.util;\n")),
                "1: `util` in a name says nothing");
        assertFaults(CodeRules.faults(inRegion("class RuleHelper {}\n")),
                "2: `Helper` in a name says nothing");
        String body = "class A {\n void a() {\n try { b(); }\n catch (%s e) { c(); }\n }\n}\n";
        assertFaults(CodeRules.faults(inRegion(body.formatted("Exception"))), "5: catches everything");
        assertFaults(CodeRules.faults(inRegion(body.formatted("Error | Throwable"))),
                "5: catches everything");
        assertFaults(CodeRules.faults(inRegion(body.formatted("IllegalStateException"))));
    }

    @Test
    void onlyTheCallOfAHandleAloneMayCatchAll() {
        String body = "class A {\n void a() {\n try { %s }\n catch (Throwable e) { c(); }\n }\n}\n";
        assertFaults(CodeRules.faults(inRegion(body.formatted("h.invokeExact(b);"))));
        assertFaults(CodeRules.faults(inRegion(body.formatted("d(); h.invokeExact(b);"))),
                "5: catches everything");
    }

    @Test
    void aChainOfQuestionsForATypeIsFound() {
        String body = "class A {\n boolean a(Object o, Object p) {\n"
                + " return o instanceof B\n || %s instanceof C;\n }\n}\n";
        assertFaults(CodeRules.faults(inRegion(body.formatted("o"))),
                "5: `o` is asked twice what it is: use match");
        assertFaults(CodeRules.faults(inRegion(body.formatted("p"))));
    }

    @Test
    void silentPublicCodeIsFound() {
        assertFaults(JavadocRules.faults(inRegion("public class A {\n public void b() {}\n}\n")),
                "2: A says nothing about itself", "3: A.b says nothing about itself");
        assertFaults(JavadocRules.faults(inRegion("/** I. */\npublic interface I {\n int size();\n"
                + " class C {}\n}\n")),
                "4: I.size says nothing about itself", "5: C says nothing about itself");
        assertFaults(JavadocRules.faults(packageInfo("package rungwright.region;\n")),
                "1: package rungwright.region says nothing about itself");
    }

    @Test
    void codeThatSaysNothingNewMayBeSilent() {
        assertFaults(JavadocRules.faults(inRegion("class A {\n public void b() {}\n}\n")));
        assertFaults(JavadocRules.faults(inRegion("/** R. */\npublic record R(int n) {\n public R {}\n"
                + " public int n() { return n; }\n @Override\n public int hashCode() { return n; }\n}\n")));
        assertFaults(JavadocRules.faults(inRegion("/** E. */\npublic enum E { ONE, TWO }\n")));
        assertFaults(JavadocRules.faults(packageInfo("/** Sets. */\npackage rungwright.region;\n")));
    }

    private static Source shipped(String text) {
        return Source.of("src/main/java/A.java", text);
    }

    private static Source inRegion(String text) {
        return shipped("package rungwright.region;\n" + text);
    }

    private static Source tested(String text) {
        return Source.of("src/test/java/A.java", text);
    }

    private static Source packageInfo(String text) {
        return Source.of("src/main/java/package-info.java", text);
    }

    private static void assertFaults(List<String> found, String... expected) {
        List<String> places = found.stream().map(f -> f.substring(f.indexOf(':') + 1)).toList();
        assertEquals(List.of(expected), places);
    }
}
