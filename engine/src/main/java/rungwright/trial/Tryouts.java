package rungwright.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungwright.program.Program;
import rungwright.region.Axis;
import rungwright.region.Edge;
import rungwright.spec.RuleKind;

/**
 * Everything that cases can try of one program, and how each thing is brought about.
 *
 * <p>Make it once for a program: the values next to the edges of worked-out measures are looked for here.
 */
public final class Tryouts {
    private static final int MOST_CELLS = 500;

    private final Program program;
    private final List<Scene> scenes;
    private final List<Item> items;
    private final Bringing bringing;

    private Tryouts(Program program, List<Scene> scenes, List<Item> items) {
        this.program = program;
        this.scenes = scenes;
        this.items = items;
        this.bringing = new Bringing(program, scenes);
    }

    /** All that can be tried of a program. */
    public static Tryouts of(Program program) {
        List<Scene> scenes = Scene.of(program);
        List<Item> items = new ArrayList<>();
        for (Item item : Items.of(program.outline())) {
            boolean open = item.exact().filter(exact -> exact.value().isEmpty()).isPresent();
            items.add(open ? closest(item, scenes) : item);
        }
        List<Scene> finer = scenes.stream().map(scene -> finer(scene, items)).toList();
        return new Tryouts(program, finer, items);
    }

    private static Item closest(Item item, List<Scene> scenes) {
        return scenes.stream().filter(scene -> scene.has(item.rule()))
                .flatMap(scene -> new Closest(scene, item).find().stream()).findFirst()
                .map(item::withValue).orElse(item);
    }

    /** The scene with every value that an item asks for as a class of its own. */
    private static Scene finer(Scene scene, List<Item> items) {
        Lattice lattice = scene.lattice();
        for (int axis = 0; axis < lattice.coarse().size(); axis++) {
            if (lattice.coarse().get(axis) instanceof Axis.Classes) {
                Axis here = lattice.coarse().get(axis);
                List<Edge> edges = new ArrayList<>();
                items.stream().flatMap(item -> item.exact().stream())
                        .filter(exact -> exact.axis().equals(here))
                        .flatMap(exact -> exact.value().stream())
                        .forEach(value -> edges.addAll(List.of(Edge.below(value), Edge.above(value))));
                lattice = lattice.cut(axis, edges);
            }
        }
        return scene.with(lattice);
    }

    Program program() {
        return program;
    }

    List<Item> items() {
        return items;
    }

    /** What some runs try. */
    Set<Item> tried(List<CaseRun> runs) {
        Set<Item> tried = new LinkedHashSet<>();
        for (CaseRun run : runs) {
            for (Watched watched : Watched.of(program, run)) {
                items.stream().filter(item -> !tried.contains(item) && item.isTriedBy(watched))
                        .forEach(tried::add);
            }
        }
        return tried;
    }

    /** Whether a session that can be logged in a state that can be stored tries an item. */
    boolean isPossible(Item item) {
        return scenes.stream().filter(scene -> scene.has(item.rule()))
                .anyMatch(scene -> scene.free(scene.wish(item)).isPresent() && bringing.hasRung(scene, item));
    }

    /**
     * The scenes of an item; for a rule of every stage the last stage first, from where more can be moved.
     */
    private List<Scene> scenes(Item item) {
        List<Scene> own = new ArrayList<>(scenes.stream().filter(scene -> scene.has(item.rule())).toList());
        if (item.rule().kind() == RuleKind.STOP) {
            Collections.reverse(own);
        }
        return own;
    }

    /** Events that try an item, if any were found; one for each scene that it can be tried in. */
    Stream<Play> plays(Item item) {
        return scenes(item).stream().flatMap(scene -> bringing.play(scene, scene.telling(scene.wish(item),
                item),
                item).stream());
    }

    /** Events that try an item, if any were found. */
    Optional<Play> play(Item item) {
        return scenes(item).stream()
                .flatMap(scene -> bringing.play(scene, scene.telling(scene.wish(item), item), item)
                        .or(() -> bringing.play(scene, scene.wish(item), item)).stream()).findFirst();
    }

    /** Events that try an item and in the same session as many of the others as will go with it. */
    Optional<Play> play(Item item, List<Item> others) {
        return scenes(item).stream()
                .flatMap(scene -> bringing.play(scene, joined(scene, item, others), item).stream())
                .findFirst().or(() -> play(item));
    }

    private static Wish joined(Scene scene, Item item, List<Item> others) {
        Wish wish = scene.telling(scene.wish(item), item);
        if (scene.free(wish).isEmpty()) {
            return wish;
        }
        for (Item other : others) {
            if (scene.has(other.rule())) {
                Wish both = wish.and(scene.telling(scene.wish(other), other));
                wish = both.cells().size() <= MOST_CELLS && scene.free(both).isPresent() ? both : wish;
            }
        }
        return wish;
    }

    /** What some runs try, with an example of what they do not. */
    public Coverage coverage(List<CaseRun> runs) {
        Set<Item> tried = tried(runs);
        List<Coverage.Entry> entries = new ArrayList<>();
        for (Item item : items) {
            Optional<Play> play = tried.contains(item) ? Optional.empty() : play(item);
            Coverage.Standing standing = tried.contains(item) ? Coverage.Standing.TRIED
                    : play.isPresent() ? Coverage.Standing.UNTRIED
                    : isPossible(item) ? Coverage.Standing.UNREACHED : Coverage.Standing.IMPOSSIBLE;
            entries.add(new Coverage.Entry(item.sort(), item.show(), item.rule().place(), standing,
                    play.map(each -> new Scribe(program).spec(item.show(), each))));
        }
        return new Coverage(entries);
    }
}
