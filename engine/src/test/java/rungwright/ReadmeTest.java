package rungwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.cli.Main;

/** What the README shows is what there is: its commands, its spec with the mistake and without, its Java. */
class ReadmeTest {
    private static final Path README = Path.of("..", "README.md");
    private static final List<String> IMPORTS = List.of("java.nio.file.*", "java.time.LocalDate",
            "java.util.*",
            "rungwright.program.*", "rungwright.step.*");

    /** The exit code and the output of a command, whose spec examples are looked for beside the engine. */
    private record Ran(int exit, String out) {
        static Ran of(InputStream in, String... arguments) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
            String[] moved = Arrays.stream(arguments)
                    .map(word -> word.replace("spec-examples/", "../spec-examples/")).toArray(String[]::new);
            int exit = Main.run(in, stream, stream, moved);
            return new Ran(exit, out.toString(StandardCharsets.UTF_8));
        }
    }

    private static List<String> blocks(String language) throws IOException {
        return Arrays.stream(Files.readString(README).split("```" + language + "\n")).skip(1)
                .map(part -> part.split("```")[0]).toList();
    }

    @Test
    void theFirstCommandReplaysTheDemoAsShown() throws IOException {
        String command = blocks("sh").get(0).lines().findFirst().orElseThrow();
        Ran ran = Ran.of(InputStream.nullInputStream(), command.replaceFirst("engine/rungwright ", "")
                .split(" "));
        assertEquals(0, ran.exit(), ran::out);
        String shown = Arrays.stream(Files.readString(README).split("```\n"))
                .filter(part -> part.startsWith("Alva"))
                .findFirst().orElseThrow();
        assertTrue(ran.out().startsWith(shown), ran::out);
    }

    @Test
    void theFirstSpecHasTheHoleThatIsShownAndTheLineClosesIt() throws IOException {
        String spec = blocks("yaml").get(0);
        Ran bad = check(spec);
        assertEquals(1, bad.exit());
        String shown = Arrays.stream(Files.readString(README).split("```\n"))
                .filter(part -> part.startsWith("dip.yaml:21:3")).findFirst().orElseThrow();
        assertEquals(shown, bad.out().replace("-:21:3", "dip.yaml:21:3").replace("-: not", "dip.yaml: not"));
        Ran good = check(spec.replace("    hold: { when: { reps: 5 to 11 } }\n", blocks("yaml").get(1)));
        assertEquals("-: proven: 2 stages, 7 rules, every state has one next step\n", good.out());
        assertEquals(0, good.exit());
    }

    private static Ran check(String spec) {
        return Ran.of(new ByteArrayInputStream(spec.getBytes(StandardCharsets.UTF_8)), "check", "-");
    }

    @Test
    void theJavaCompilesAndPrintsWhatIsSaid(@TempDir Path folder) throws IOException,
            ReflectiveOperationException {
        StringBuilder source = new StringBuilder();
        IMPORTS.forEach(name -> source.append("import ").append(name).append(";\n"));
        source.append("public class Embedded { public static void main(String[] none) throws Exception {\n")
                .append(blocks("java").get(0).replace("spec-examples/", "../spec-examples/")).append("} }\n");
        Path file = Files.writeString(folder.resolve("Embedded.java"), source.toString());
        assertEquals(0, ToolProvider.getSystemJavaCompiler().run(null, null, null, "-encoding", "UTF-8",
                "-cp", System.getProperty("java.class.path"), "-d", folder.toString(), file.toString()));
        assertTrue(printed(folder).startsWith("ADVANCE to assisted dip / 25 kg\n"));
    }

    private static String printed(Path folder) throws IOException, ReflectiveOperationException {
        PrintStream before = System.out;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (URLClassLoader loader = new URLClassLoader(new URL[] {folder.toUri().toURL()})) {
            System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
            loader.loadClass("Embedded").getMethod("main", String[].class).invoke(null,
                    (Object) new String[0]);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException(e.getCause());
        } finally {
            System.setOut(before);
        }
        return out.toString(StandardCharsets.UTF_8);
    }
}
