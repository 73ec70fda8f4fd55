package rungwright;

import com.sun.source.tree.ExportsTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.PackageTree;
import com.sun.source.tree.PrimitiveTypeTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import javax.lang.model.element.Modifier;
import javax.lang.model.type.TypeKind;

/** Which package may name what: the packages above it, and at most one library. */
final class LayoutRules {
    /** The way of the data: a package uses only those before it. */
    static final List<String> ORDER = List.of(
            "measure", "finding", "region", "spec", "yaml", "criteria", "verify", "program", "step", "replay",
            "journal", "compare", "trial", "forecast", "json", "text", "page", "cli");

    /**
     * What a package must not use though it stands above it: the second path of the proof has its own sets.
     */
    static final Map<String, Set<String>> APART = Map.of("criteria", Set.of("region"), "verify",
            Set.of("region"));

    private static final Map<String, String> LIBRARIES = new TreeMap<>(Map.of(
            "org.yaml.", "yaml", "com.fasterxml.", "json", "picocli.", "cli", "de.siegmar.", "replay"));
    private static final Set<String> CONSOLE = Set.of("System.out", "System.err", "java.lang.System.out",
            "java.lang.System.err");
    private static final Set<String> INEXACT_NAMES = Set.of("Double", "Float", "doubleValue", "floatValue",
            "parseDouble", "parseFloat", "DoubleStream");
    private static final Set<String> INEXACT_CALLS = Set.of("Math.sqrt", "Math.pow", "Math.log", "Math.log10",
            "Math.exp", "Math.ceil", "Math.floor", "Math.cbrt", "Math.random");
    private static final Set<String> INEXACT_PACKAGES = Set.of("forecast", "text");

    private LayoutRules() {
    }

    /** Everything in one shipped file that the layout forbids, each with its line. */
    static List<String> faults(Source source) {
        if (source.isModuleInfo()) {
            return List.of();
        }
        Set<String> faults = new TreeSet<>();
        if (!ORDER.contains(source.chapter())) {
            faults.add(source.fault(1, "package `" + source.chapter() + "` is not in the table"));
        }
        new Names(source, faults).scan(source.unit(), null);
        return List.copyOf(faults);
    }

    /** Packages with something public that the module keeps back; {@code cli} alone should be. */
    static List<String> missingExports(List<Source> shipped) {
        Set<String> exported = new TreeSet<>();
        Set<String> open = new TreeSet<>();
        for (Source source : shipped) {
            if (source.isModuleInfo()) {
                source.unit().getModule().getDirectives().stream()
                        .filter(d -> d.getKind() == Tree.Kind.EXPORTS)
                        .forEach(d -> exported.add(((ExportsTree) d).getPackageName().toString()));
            } else if (hasPublicType(source) && !source.chapter().equals("cli")) {
                open.add("rungwright." + source.chapter());
            }
        }
        List<String> faults = new ArrayList<>();
        open.stream().filter(p -> !exported.contains(p)).forEach(p -> faults.add("no exports " + p));
        exported.stream().filter(p -> !open.contains(p)).forEach(p -> faults.add("exports " + p));
        return faults;
    }

    private static boolean hasPublicType(Source source) {
        return source.unit().getTypeDecls().stream()
                .anyMatch(t -> JavadocRules.modifiers(t).contains(Modifier.PUBLIC));
    }

    /** Reads every name in a file but those of its own package line. */
    private static final class Names extends TreeScanner<Void, Void> {
        private final Source source;
        private final Set<String> faults;

        Names(Source source, Set<String> faults) {
            this.source = source;
            this.faults = faults;
        }

        @Override
        public Void visitPackage(PackageTree node, Void nothing) {
            return null;
        }

        @Override
        public Void visitMemberSelect(MemberSelectTree node, Void nothing) {
            String name = node.toString();
            if (name.startsWith("rungwright.")) {
                checkOrder(node, name.split("\\.")[1]);
                return null;
            }
            LIBRARIES.forEach((prefix, owner) -> checkLibrary(node, name, prefix, owner));
            if (CONSOLE.contains(name) && !source.chapter().equals("cli")) {
                faults.add(source.fault(node, name + " outside `cli`"));
            }
            if (INEXACT_NAMES.contains(node.getIdentifier().toString()) || INEXACT_CALLS.contains(name)) {
                inexact(node);
            }
            return super.visitMemberSelect(node, nothing);
        }

        private void checkOrder(Tree node, String used) {
            int own = ORDER.indexOf(source.chapter());
            boolean apart = APART.getOrDefault(source.chapter(), Set.of()).contains(used);
            if (!used.equals(source.chapter()) && (apart || ORDER.indexOf(used) > own)) {
                faults.add(source.fault(node, "`" + source.chapter() + "` must not use `" + used + "`"));
            }
        }

        private void checkLibrary(Tree node, String name, String prefix, String owner) {
            if ((name + ".").startsWith(prefix) && !source.chapter().equals(owner)) {
                faults.add(source.fault(node, prefix + "* outside `" + owner + "`"));
            }
        }

        @Override
        public Void visitIdentifier(IdentifierTree node, Void nothing) {
            if (INEXACT_NAMES.contains(node.getName().toString())) {
                inexact(node);
            }
            return null;
        }

        @Override
        public Void visitPrimitiveType(PrimitiveTypeTree node, Void nothing) {
            TypeKind kind = node.getPrimitiveTypeKind();
            if (kind == TypeKind.DOUBLE || kind == TypeKind.FLOAT) {
                inexact(node);
            }
            return null;
        }

        @Override
        public Void visitLiteral(LiteralTree node, Void nothing) {
            if (node.getKind() == Tree.Kind.DOUBLE_LITERAL || node.getKind() == Tree.Kind.FLOAT_LITERAL) {
                inexact(node);
            }
            return null;
        }

        private void inexact(Tree node) {
            if (!INEXACT_PACKAGES.contains(source.chapter())) {
                faults.add(source.fault(node, "`" + node + "` is not exact"));
            }
        }
    }
}
