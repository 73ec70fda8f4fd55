package rungwright.program;

import java.util.List;
import java.util.Optional;

/**
 * A spec proven to have exactly one next step for every trainee it allows, in every state that can be stored,
 * at every session. Only {@link Checked} makes one, so whoever holds one need not ask again.
 */
public final class Program {
    private final Outline outline;
    private final Layer stop;
    private final Layer everyStage;
    private final Optional<Layer> afterABreak;
    private final Optional<Layer> placement;
    private final List<Layer> stages;
    /** Empty until somebody asks: proving a spec does not, and should not wait for it. */
    private volatile String fingerprint = "";

    Program(Outline outline) {
        this.outline = outline;
        this.stop = new Layer(outline.stop().rules());
        this.everyStage = new Layer(outline.everyStage().rules());
        this.afterABreak = outline.afterABreak().map(list -> new Layer(list.rules()));
        this.placement = outline.placement().map(list -> new Layer(list.rules()));
        this.stages = outline.stages().stream().map(stage -> new Layer(stage.rules())).toList();
    }

    /** What the spec says, with every name resolved. */
    public Outline outline() {
        return outline;
    }

    /**
     * A short code of what decides, which comments, layout, order of keys and words for people leave alone.
     */
    public String fingerprint() {
        if (fingerprint.isEmpty()) {
            fingerprint = Fingerprint.of(outline);
        }
        return fingerprint;
    }

    /**
     * A short code of what one rule of this program means: a row of sessions is gone on with in another
     * version only where the rule that counts them has the same code there.
     */
    public String code(Rule rule) {
        return Fingerprint.of(rule);
    }

    /** The stop rules; they may pass. */
    public Layer stop() {
        return stop;
    }

    /** The rules that hold in every stage and outrank a stage's own; they may pass. */
    public Layer everyStage() {
        return everyStage;
    }

    /** The rules looked at before the session that follows an absence, where the spec has them. */
    public Optional<Layer> afterABreak() {
        return afterABreak;
    }

    /** The rules that say where a trainee starts, where the spec has them. */
    public Optional<Layer> placement() {
        return placement;
    }

    /** A stage's own rules; stages count from 0. */
    public Layer stage(int number) {
        return stages.get(number);
    }
}
