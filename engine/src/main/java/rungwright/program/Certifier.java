package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Budget;
import rungwright.region.Moment;
import rungwright.verify.Certificate;
import rungwright.verify.Certificate.Block;
import rungwright.verify.Certificate.Decider;
import rungwright.verify.Certificate.Part;
import rungwright.verify.Certificate.Run;

/**
 * Writes down which rule of a proven program decides where, so that it can be confirmed without the program:
 * for each stage and section boxes that leave nothing out, those first that outrank the others.
 */
public final class Certifier {
    private final int most;

    private Certifier(int most) {
        this.most = most;
    }

    /**
     * The certificate of a program, or nothing where some stage or section takes more boxes than
     * {@code most}.
     */
    public static Optional<Certificate> of(Program program, int most) {
        return of(program.outline(), most);
    }

    static Optional<Certificate> of(Outline outline, int most) {
        Certifier certifier = new Certifier(most);
        List<Optional<Part>> parts = new ArrayList<>();
        for (Stage stage : outline.stages()) {
            Situation situation = Situation.in(outline, stage, Budget.of(1));
            parts.add(certifier.part("stage " + stage.name(), situation.grounds(), situation.parts()));
        }
        outline.afterABreak().map(list -> Situation.alone(outline, list, Moment.BREAK, Budget.of(1)))
                .ifPresent(ground -> parts.add(certifier.part("after a break", ground)));
        outline.placement().map(list -> Situation.alone(outline, list, Moment.PLACEMENT, Budget.of(1)))
                .ifPresent(ground -> parts.add(certifier.part("place", ground)));
        return parts.stream().anyMatch(Optional::isEmpty) ? Optional.empty()
                : Optional.of(new Certificate(outline.name(), outline.version(),
                        parts.stream().flatMap(Optional::stream).toList()));
    }

    private Optional<Part> part(String name, Ground ground) {
        return part(name, List.of(ground), List.of(ground.whole()));
    }

    private Optional<Part> part(String name, List<Ground> layers, List<Box> inhabited) {
        Partition partition = new Partition(layers, inhabited, most);
        List<Axis> axes = layers.get(0).space().axes();
        List<CutAxis> scales = IntStream.range(0, axes.size())
                .mapToObj(axis -> CutAxis.of(axes.get(axis), cuts(axis, layers))).toList();
        return partition.pieces().map(pieces -> new Part(name, scales.stream().map(CutAxis::side).toList(),
                pieces.stream().map(piece -> block(piece, scales)).toList()));
    }

    private static Block block(Partition.Piece piece, List<CutAxis> scales) {
        List<Run> runs = new ArrayList<>();
        for (int axis = 0; axis < scales.size(); axis++) {
            runs.add(scales.get(axis).run(piece.box().along(axis)));
        }
        return new Block(piece.rule().map(rule -> new Decider(rule.label(), rule.place().line(),
                rule.place().column())), runs);
    }

    /** The positions at which the rules here begin or end on an axis. */
    private static TreeSet<Long> cuts(int axis, List<Ground> layers) {
        TreeSet<Long> cuts = new TreeSet<>();
        for (Ground ground : layers) {
            for (int rule = 0; rule < ground.rules().size(); rule++) {
                ground.boxes(rule).forEach(box -> cuts.addAll(List.of(box.along(axis).from(),
                        box.along(axis).to())));
            }
        }
        cuts.remove(0L);
        cuts.remove(layers.get(0).space().axes().get(axis).size());
        return cuts;
    }
}
