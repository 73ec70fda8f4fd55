package rungwright.journal;

import java.io.IOException;
import java.util.Optional;
import rungwright.program.Program;
import rungwright.step.ProgramId;

/** What one journal adds to a cohort: a trainee, or a reason why there is none. */
record Counted(Optional<Member> member, Optional<LeftOut> leftOut) {
    static Counted of(Program program, NamedStore journal) {
        try {
            return of(program, journal.name(), journal.store().read());
        } catch (IOException e) {
            return leftOut(journal.name(), new LeftOut.Unopened());
        }
    }

    private static Counted of(Program program, String name, Contents contents) {
        Fold fold = Fold.of(program, contents.entries());
        Optional<LeftOut.Cause> trouble = contents.damage().<LeftOut.Cause>map(LeftOut.Damaged::new)
                .or(() -> fold.otherProgram().map(ProgramId::name).map(LeftOut.OtherProgram::new));
        if (trouble.isPresent()) {
            return leftOut(name, trouble.get());
        }
        Course course = new Course(name, program.outline().stages().size());
        fold.happenings().forEach(each -> course.take(each.event(), each.decision()));
        return course.member().map(member -> new Counted(Optional.of(member), Optional.empty()))
                .orElseGet(() -> leftOut(name, course.whyNever()));
    }

    private static Counted leftOut(String name, LeftOut.Cause cause) {
        return new Counted(Optional.empty(), Optional.of(new LeftOut(name, cause)));
    }
}
