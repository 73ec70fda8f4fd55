package rungwright;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Java of the page on embedding is one program, and prints what stands under each of its parts. */
class EmbeddingTest {
    private static final Path PAGE = Path.of("..", "docs", "embedding.md");
    private static final Pattern BLOCK = Pattern.compile("```(java|text)\n(.*?)```", Pattern.DOTALL);
    private static final String MARK = "=====";

    /** A part of the page's program and what the page says that it prints. */
    private static final class Part {
        final String java;
        String printed = "";

        Part(String java) {
            this.java = java;
        }

        boolean is(String beginning) {
            return java.contains(beginning);
        }
    }

    private static List<Part> parts() throws IOException {
        List<Part> parts = new ArrayList<>();
        Matcher blocks = BLOCK.matcher(Files.readString(PAGE));
        while (blocks.find()) {
            if (blocks.group(1).equals("java")) {
                parts.add(new Part(blocks.group(2)));
            } else {
                parts.get(parts.size() - 1).printed = blocks.group(2);
            }
        }
        return parts;
    }

    private static String source(List<Part> parts) {
        StringBuilder imports = new StringBuilder();
        StringBuilder types = new StringBuilder();
        StringBuilder statements = new StringBuilder();
        for (Part part : parts) {
            if (part.is("import java.")) {
                imports.append(part.java);
            } else if (part.is("final class ")) {
                types.append(part.java.replace("final class ", "static final class "));
            } else {
                statements.append(part.java.replace("spec-examples/", "../spec-examples/"));
            }
            statements.append("System.out.println(\"" + MARK + "\");\n");
        }
        return imports + "public class Page {\n" + types
                + "public static void main(String[] none) throws Exception {\n" + statements + "} }\n";
    }

    @Test
    void thePageIsAProgramThatPrintsWhatItSays(@TempDir Path folder) throws IOException,
            ReflectiveOperationException {
        List<Part> parts = parts();
        Path file = Files.writeString(folder.resolve("Page.java"), source(parts));
        assertEquals(0, ToolProvider.getSystemJavaCompiler().run(null, null, null, "-Xlint:all", "-Werror",
                "-proc:none", "-encoding", "UTF-8", "-cp", System.getProperty("java.class.path"), "-d",
                folder.toString(), file.toString()));
        String[] printed = printed(folder).split(MARK + "\n", -1);
        assertEquals(parts.size() + 1, printed.length);
        for (int part = 0; part < parts.size(); part++) {
            assertEquals(parts.get(part).printed, printed[part], parts.get(part).java);
        }
    }

    private static String printed(Path folder) throws IOException, ReflectiveOperationException {
        PrintStream before = System.out;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (URLClassLoader loader = new URLClassLoader(new URL[] {folder.toUri().toURL()})) {
            System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
            loader.loadClass("Page").getMethod("main", String[].class).invoke(null, (Object) new String[0]);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException(e.getCause());
        } finally {
            System.setOut(before);
        }
        return out.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }
}
