package rungwright.step;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Maps by name, copied so that nobody can change them and their order stays. */
final class Texts {
    private Texts() {
    }

    static <V> Map<String, V> copy(Map<String, V> map) {
        return map.isEmpty() ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    static Map<String, List<String>> lists(Map<String, List<String>> map) {
        Map<String, List<String>> lists = new LinkedHashMap<>();
        map.forEach((name, items) -> lists.put(name, List.copyOf(items)));
        return Collections.unmodifiableMap(lists);
    }

    static List<Map<String, String>> rows(List<Map<String, String>> rows) {
        return rows.stream().map(Texts::copy).toList();
    }
}
