package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Lays out maps, lists and texts as YAML: in blocks or in one line, with and without quotes. */
final class YamlLayout {
    private final Random random;

    YamlLayout(Random random) {
        this.random = random;
    }

    String text(Map<String, Object> top) {
        StringBuilder out = new StringBuilder();
        blockMap(top, 0, out);
        return out.toString();
    }

    private void blockMap(Map<?, ?> map, int indent, StringBuilder out) {
        map.forEach((key, node) -> {
            out.append(" ".repeat(indent)).append(key).append(':');
            node(node, indent + 2, out);
        });
    }

    /** What follows a key or a dash. */
    private void node(Object node, int indent, StringBuilder out) {
        if (node instanceof String || simple(node) && random.nextInt(3) > 0) {
            out.append(' ').append(flow(node, false)).append(random.nextInt(12) == 0 ? "   # as agreed" : "")
                    .append('\n');
        } else if (node instanceof Map<?, ?> map) {
            out.append('\n');
            blockMap(map, indent, out);
        } else if (node instanceof List<?> list) {
            out.append('\n');
            blockList(list, indent, out);
        }
    }

    private void blockList(List<?> list, int indent, StringBuilder out) {
        for (Object item : list) {
            out.append(" ".repeat(indent)).append('-');
            if (item instanceof Map<?, ?> map && random.nextBoolean()) {
                StringBuilder inner = new StringBuilder();
                blockMap(map, indent + 2, inner);
                out.append(' ').append(inner.substring(indent + 2));
            } else {
                node(item, indent + 2, out);
            }
        }
    }

    /** Whether a node is small enough for one line. */
    private static boolean simple(Object node) {
        return flow(node, String::valueOf).length() < 90;
    }

    private String flow(Object node, boolean inside) {
        return flow(node, text -> scalar(text, inside || !(node instanceof String)));
    }

    private static String flow(Object node, java.util.function.UnaryOperator<String> scalar) {
        List<String> parts = new ArrayList<>();
        if (node instanceof Map<?, ?> map) {
            map.forEach((key, value) -> parts.add(key + ": " + flow(value, scalar)));
            return "{ " + String.join(", ", parts) + " }";
        }
        if (node instanceof List<?> list) {
            list.forEach(item -> parts.add(flow(item, scalar)));
            return "[" + String.join(", ", parts) + "]";
        }
        return scalar.apply((String) node);
    }

    /** A text, in quotes where YAML needs them and now and then where it does not. */
    private String scalar(String text, boolean inside) {
        boolean needed = text.contains(": ") || text.contains(" #") || inside
                && text.matches(".*[,?\\[\\]{}].*");
        if (!needed && random.nextInt(8) > 0) {
            return text;
        }
        return random.nextBoolean() ? "\"" + text + "\"" : "'" + text.replace("'", "''") + "'";
    }
}
