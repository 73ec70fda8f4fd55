package rungwright;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.Tree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** One Java file as the compiler's own parser sees it, so that the rules read code and not its looks. */
record Source(String path, String text, CompilationUnitTree unit, DocTrees trees) {
    /** Every Java file under a folder, in the order of their paths; a path starts below {@code root}. */
    static List<Source> under(Path root, String folder) {
        try (Stream<Path> files = Files.walk(root.resolve(folder))) {
            List<Held> held = new ArrayList<>();
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
                String path = root.relativize(file).toString().replace('\\', '/');
                held.add(new Held(path, Files.readString(file)));
            }
            return parse(held);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A file that exists only in memory, to show that a rule finds a fault planted in it. */
    static Source of(String path, String text) {
        return parse(List.of(new Held(path, text))).get(0);
    }

    private static List<Source> parse(List<Held> held) {
        DiagnosticCollector<JavaFileObject> complaints = new DiagnosticCollector<>();
        JavacTask task = (JavacTask) ToolProvider.getSystemJavaCompiler()
                .getTask(null, null, complaints, List.of("-proc:none"), null, held);
        DocTrees trees = DocTrees.instance(task);
        List<Source> sources = new ArrayList<>();
        try {
            for (CompilationUnitTree unit : task.parse()) {
                JavaFileObject file = unit.getSourceFile();
                String text = file.getCharContent(true).toString();
                sources.add(new Source(file.getName().substring(1), text, unit, trees));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (!complaints.getDiagnostics().isEmpty()) {
            throw new IllegalArgumentException(complaints.getDiagnostics().toString());
        }
        return List.copyOf(sources);
    }

    /** Whether the file is part of what is shipped, rather than of the tests. */
    boolean shipped() {
        return path.contains("src/main/java/");
    }

    boolean isModuleInfo() {
        return path.endsWith("module-info.java");
    }

    boolean isPackageInfo() {
        return path.endsWith("package-info.java");
    }

    /** The package after {@code rungwright.}, such as {@code region}; empty for the base package itself. */
    String chapter() {
        String name = unit.getPackageName() == null ? "" : unit.getPackageName().toString();
        return name.startsWith("rungwright.") ? name.substring("rungwright.".length()) : "";
    }

    /** The line on which a piece of code starts, from 1; its annotations are part of it. */
    long firstLine(Tree tree) {
        return lineMap().getLineNumber(trees.getSourcePositions().getStartPosition(unit, tree));
    }

    /** The number of lines that a piece of code stands on. */
    long lines(Tree tree) {
        long end = trees.getSourcePositions().getEndPosition(unit, tree);
        return lineMap().getLineNumber(end) - firstLine(tree) + 1;
    }

    private LineMap lineMap() {
        return unit.getLineMap();
    }

    String fault(long line, String what) {
        return path + ":" + line + ": " + what;
    }

    String fault(Tree tree, String what) {
        return fault(firstLine(tree), what);
    }

    /** A text with a path, in the form that the compiler reads. */
    private static final class Held extends SimpleJavaFileObject {
        private final String text;

        Held(String path, String text) {
            super(URI.create("held:///" + path), Kind.SOURCE);
            this.text = text;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
        }
    }
}
