package rungwright.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.json.CheckedSpec;
import rungwright.program.Checked;
import rungwright.program.Outline;
import rungwright.program.RuleList;
import rungwright.spec.Spec;
import rungwright.yaml.Reading;
import rungwright.yaml.SpecReader;

/** A spec's file, its text for people, and what checking it gave. */
record Examined(String file, String source, Optional<Spec> spec, Checked checked) {
    /** Reads and proves the spec in {@code bytes}, looking at so many boxes a stage. */
    static Examined of(String file, byte[] bytes, long budget) {
        Reading reading = SpecReader.readBytes(bytes);
        Checked checked = reading.spec().map(spec -> Checked.of(spec, reading.findings(), budget))
                .orElseGet(() -> new Checked(Optional.empty(), Optional.empty(), reading.findings()));
        return new Examined(file, Input.text(bytes), reading.spec(), checked);
    }

    /** What there is to say about it. */
    CheckedSpec summary() {
        Optional<Outline> outline = checked.outline();
        return new CheckedSpec(file, outline.map(Outline::name), outline.map(Outline::version),
                outline.map(each -> each.stages().size()).orElse(0),
                outline.map(Examined::rules).orElse(0), checked.findings());
    }

    private static int rules(Outline outline) {
        int inStages = outline.stages().stream().mapToInt(stage -> stage.rules().size()).sum();
        Stream<RuleList> sections = Stream.of(List.of(outline.stop(), outline.everyStage()),
                        outline.afterABreak().stream().toList(), outline.placement().stream().toList())
                .flatMap(List::stream);
        return inStages + sections.mapToInt(list -> list.rules().size()).sum();
    }
}
