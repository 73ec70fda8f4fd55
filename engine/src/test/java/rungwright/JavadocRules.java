package rungwright;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.lang.model.element.Modifier;

/** Whatever a reader of the library can call says what it is or gives. */
final class JavadocRules extends TreePathScanner<Void, Void> {
    private static final Set<Tree.Kind> OPEN_INSIDE = Set.of(Tree.Kind.INTERFACE, Tree.Kind.ANNOTATION_TYPE);

    private final Source source;
    private final List<String> faults = new ArrayList<>();

    private JavadocRules(Source source) {
        this.source = source;
    }

    static List<String> faults(Source source) {
        JavadocRules rules = new JavadocRules(source);
        if (source.isPackageInfo()) {
            rules.checkPackage();
        } else if (!source.isModuleInfo()) {
            rules.scan(source.unit(), null);
        }
        return List.copyOf(rules.faults);
    }

    static Set<Modifier> modifiers(Tree type) {
        return type instanceof ClassTree declared ? declared.getModifiers().getFlags() : Set.of();
    }

    private void checkPackage() {
        TreePath path = new TreePath(new TreePath(source.unit()), source.unit().getPackage());
        require(path, "package " + source.unit().getPackageName());
    }

    private void require(TreePath path, String name) {
        String comment = source.trees().getDocComment(path);
        if (comment == null || comment.isBlank()) {
            faults.add(source.fault(path.getLeaf(), name + " says nothing about itself"));
        }
    }

    @Override
    public Void visitClass(ClassTree node, Void nothing) {
        if (!isOpen(node.getModifiers())) {
            return null;
        }
        require(getCurrentPath(), node.getSimpleName().toString());
        return super.visitClass(node, nothing);
    }

    @Override
    public Void visitMethod(MethodTree node, Void nothing) {
        if (isOpen(node.getModifiers()) && !isPlain(node)) {
            require(getCurrentPath(), enclosing().getSimpleName() + "." + node.getName());
        }
        return null;
    }

    private boolean isOpen(ModifiersTree modifiers) {
        if (modifiers.getFlags().contains(Modifier.PUBLIC)) {
            return true;
        }
        boolean nested = getCurrentPath().getParentPath().getLeaf() != source.unit();
        return nested && OPEN_INSIDE.contains(enclosing().getKind())
                && !modifiers.getFlags().contains(Modifier.PRIVATE);
    }

    // A type nested in a type, and every method, hang directly below the type that holds them.
    private ClassTree enclosing() {
        return (ClassTree) getCurrentPath().getParentPath().getLeaf();
    }

    /** An overriding method, a record's own parts, and the two halves of a match say nothing new. */
    private boolean isPlain(MethodTree node) {
        boolean overrides = node.getModifiers().getAnnotations().stream()
                .anyMatch(a -> a.getAnnotationType().toString().equals("Override"));
        boolean match = node.getName().contentEquals("match")
                || enclosing().getSimpleName().contentEquals("Cases");
        return overrides || match || isPartOfARecord(node);
    }

    private boolean isPartOfARecord(MethodTree node) {
        if (enclosing().getKind() != Tree.Kind.RECORD) {
            return false;
        }
        boolean accessor = node.getParameters().isEmpty() && enclosing().getMembers().stream()
                .anyMatch(m -> m instanceof VariableTree part
                        && part.getName().equals(node.getName()));
        return accessor || node.getReturnType() == null;
    }
}
