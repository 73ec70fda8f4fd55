package rungwright;

import com.sun.source.tree.CatchTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.ImportTree;
import com.sun.source.tree.InstanceOfTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.PackageTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TryTree;
import com.sun.source.tree.UnionTypeTree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** How code is written: short methods, honest names, no catch-all. */
final class CodeRules extends TreeScanner<Void, Void> {
    static final int MOST_METHOD_LINES = 35;

    private static final Set<String> EMPTY_WORDS =
            Set.of("util", "utils", "common", "impl", "helper", "helpers", "manager", "managers");
    private static final Set<String> CATCH_ALL =
            Set.of("Exception", "Throwable", "java.lang.Exception", "java.lang.Throwable");

    private final Source source;
    private final List<String> faults = new ArrayList<>();
    // How often each expression was asked for its type in the method at hand.
    private Map<String, Integer> asked = new TreeMap<>();

    private CodeRules(Source source) {
        this.source = source;
    }

    static List<String> faults(Source source) {
        CodeRules rules = new CodeRules(source);
        rules.scan(source.unit(), null);
        return List.copyOf(rules.faults);
    }

    @Override
    public Void visitPackage(PackageTree node, Void nothing) {
        for (String word : node.getPackageName().toString().split("\\.")) {
            checkWord(node, word);
        }
        return null;
    }

    @Override
    public Void visitImport(ImportTree node, Void nothing) {
        if (node.getQualifiedIdentifier().toString().endsWith(".*")) {
            faults.add(source.fault(node, "a wildcard import"));
        }
        return null;
    }

    @Override
    public Void visitClass(ClassTree node, Void nothing) {
        for (String word : node.getSimpleName().toString().split("(?<=[a-z0-9])(?=[A-Z])")) {
            checkWord(node, word);
        }
        return super.visitClass(node, nothing);
    }

    private void checkWord(Tree node, String word) {
        if (EMPTY_WORDS.contains(word.toLowerCase(Locale.ROOT))) {
            faults.add(source.fault(node, "`" + word + "` in a name says nothing"));
        }
    }

    @Override
    public Void visitMethod(MethodTree node, Void nothing) {
        long lines = source.lines(node);
        if (lines > MOST_METHOD_LINES) {
            String name = node.getName().toString();
            faults.add(source.fault(node, name + ": " + lines + " lines, at most " + MOST_METHOD_LINES));
        }
        Map<String, Integer> outer = asked;
        asked = new TreeMap<>();
        super.visitMethod(node, nothing);
        asked = outer;
        return null;
    }

    @Override
    public Void visitInstanceOf(InstanceOfTree node, Void nothing) {
        String expression = node.getExpression().toString();
        if (source.shipped() && asked.merge(expression, 1, Integer::sum) == 2) {
            faults.add(source.fault(node, "`" + expression + "` is asked twice what it is: use match"));
        }
        return super.visitInstanceOf(node, nothing);
    }

    /** Looks at the catches of a try; one call of a method handle declares that it may throw anything. */
    @Override
    public Void visitTry(TryTree node, Void nothing) {
        boolean isHandle = node.getBlock().getStatements().size() == 1
                && node.getBlock().toString().contains(".invokeExact(");
        if (!isHandle) {
            node.getCatches().forEach(this::checkCatch);
        }
        return super.visitTry(node, nothing);
    }

    private void checkCatch(CatchTree node) {
        Tree type = node.getParameter().getType();
        List<? extends Tree> types = type.getKind() == Tree.Kind.UNION_TYPE
                ? ((UnionTypeTree) type).getTypeAlternatives()
                : List.of(type);
        if (types.stream().anyMatch(t -> CATCH_ALL.contains(t.toString()))) {
            faults.add(source.fault(node, "catches everything"));
        }
    }
}
