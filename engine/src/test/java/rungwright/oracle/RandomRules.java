package rungwright.oracle;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Makes up lists of {@code when} alternatives: complete divisions of some topics, or single ones. */
final class RandomRules {
    private final Random random;

    RandomRules(Random random) {
        this.random = random;
    }

    /**
     * Divides the readings of some topics into so many maps at most, of which each reading meets exactly
     * one, unless
     * readings belong together in ways that topics do not know.
     */
    List<List<Crit>> division(List<Topic> topics, int most) {
        List<Map<String, Topic.Part>> leaves = new ArrayList<>();
        Map<String, Topic.Part> whole = new LinkedHashMap<>();
        topics.forEach(topic -> whole.put(topic.name(), topic.whole()));
        leaves.add(whole);
        for (int tries = 0; tries < most * 2 && leaves.size() < most; tries++) {
            Map<String, Topic.Part> leaf = leaves.remove(random.nextInt(leaves.size()));
            leaves.addAll(divided(leaf));
        }
        List<List<Crit>> maps = new ArrayList<>();
        for (Map<String, Topic.Part> leaf : leaves) {
            List<Crit> crits = new ArrayList<>();
            leaf.values().forEach(part -> crits.addAll(part.topic().crit(part, random)));
            maps.add(crits);
        }
        Collections.shuffle(maps, random);
        return maps;
    }

    private List<Map<String, Topic.Part>> divided(Map<String, Topic.Part> leaf) {
        List<Topic.Part> divisible = leaf.values().stream().filter(Topic.Part::divisible).toList();
        if (divisible.isEmpty()) {
            return List.of(leaf);
        }
        Topic.Part chosen = Topic.pick(divisible, random);
        List<Map<String, Topic.Part>> parts = new ArrayList<>();
        for (Topic.Part part : chosen.topic().divide(chosen, random)) {
            Map<String, Topic.Part> one = new LinkedHashMap<>(leaf);
            one.put(part.topic().name(), part);
            parts.add(one);
        }
        return parts;
    }

    /** One map of one or two criteria, or none where nothing can be asked. */
    List<Crit> some(List<Topic> topics) {
        List<Topic> chosen = new ArrayList<>(topics);
        Collections.shuffle(chosen, random);
        List<Crit> crits = new ArrayList<>();
        for (Topic topic : chosen.subList(0, Math.min(chosen.size(), 1 + random.nextInt(2)))) {
            Topic.Part whole = topic.whole();
            if (random.nextInt(3) == 0) {
                crits.addAll(topic.loose(random));
            } else if (whole.divisible()) {
                Topic.Part part = Topic.pick(topic.divide(whole, random), random);
                crits.addAll(topic.crit(part, random));
            }
        }
        return crits;
    }

    /** Deals maps out to so many rules at most, each at least one. */
    List<List<List<Crit>>> dealt(List<List<Crit>> maps, int rules) {
        List<List<List<Crit>>> hands = new ArrayList<>();
        for (int i = 0; i < maps.size(); i++) {
            if (hands.size() < rules) {
                hands.add(new ArrayList<>());
            }
            hands.get(i < rules ? i : random.nextInt(hands.size())).add(maps.get(i));
        }
        return hands;
    }
}
