package rungwright.verify;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.criteria.Names;
import rungwright.criteria.Rungs;
import rungwright.spec.LadderSpec;
import rungwright.spec.PlaceSpec;
import rungwright.spec.RuleListSpec;
import rungwright.spec.RuleSpec;
import rungwright.spec.Spec;
import rungwright.spec.StageSpec;
import rungwright.verify.Certificate.Part;

/**
 * Confirms a certificate against the criteria of a spec: in each part the boxes share nothing and are
 * together as many positions as there are, each lies inside its rule and touches no rule that would speak
 * instead, and in those of nobody there is no session.
 */
public final class Verifier {
    private final Spec spec;
    private final List<String> doubts = new ArrayList<>();

    private Verifier(Spec spec) {
        this.spec = spec;
    }

    /** What could not be confirmed; empty where all of it was. */
    public static List<String> doubts(Spec spec, Certificate certificate) {
        Verifier verifier = new Verifier(spec);
        try {
            verifier.compare(certificate);
        } catch (IllegalArgumentException unreadable) {
            verifier.doubts.add("the spec cannot be read: " + unreadable.getMessage());
        }
        return List.copyOf(verifier.doubts);
    }

    private void compare(Certificate certificate) {
        if (!spec.whole()) {
            doubts.add("the spec cannot be read; `check` says why");
            return;
        }
        Map<String, List<List<RuleSpec>>> known = new LinkedHashMap<>();
        List<RuleSpec> stop = rules(spec.stop());
        spec.stages().forEach(stage -> known.put("stage " + Names.tidy(stage.name()),
                List.of(stop, rules(spec.everyStage()), stage.rules())));
        spec.afterABreak().ifPresent(list -> known.put("after a break", List.of(list.rules())));
        spec.place().ifPresent(place -> known.put("place", List.of(place.rules())));
        List<String> parts = certificate.parts().stream().map(Part::name).toList();
        if (!certificate.program().equals(Names.tidy(spec.program()))
                || !certificate.version().equals(Names.tidy(spec.version()))
                || !parts.equals(List.copyOf(known.keySet()))) {
            doubts.add("the certificate is of another spec: " + certificate.program() + ", version "
                    + certificate.version() + ", with " + String.join(", ", parts));
            return;
        }
        for (Part part : certificate.parts()) {
            Names names = new Names(spec.trainee(), part.name().equals("place")
                    ? spec.place().map(PlaceSpec::assessments).orElse(List.of()) : spec.measures());
            Optional<LadderSpec> ladder = spec.stages().stream()
                    .filter(stage -> part.name().equals("stage " + Names.tidy(stage.name()))).findFirst()
                    .flatMap(StageSpec::ladder).flatMap(name -> spec.ladders().stream()
                            .filter(each -> Names.tidy(each.name()).equals(Names.tidy(name))).findFirst());
            doubts.addAll(new PartCheck(part, known.get(part.name()), names, new Rungs(ladder, names))
                    .doubts());
        }
    }

    private static List<RuleSpec> rules(Optional<RuleListSpec> list) {
        return list.map(RuleListSpec::rules).orElse(List.of());
    }
}
