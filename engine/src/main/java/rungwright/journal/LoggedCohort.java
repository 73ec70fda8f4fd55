package rungwright.journal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Program;
import rungwright.replay.LogLine;
import rungwright.replay.ReplayListener;
import rungwright.replay.Traced;

/** Makes a {@link Cohort} of a replay as it goes; it keeps something a trainee, and nothing a session. */
public final class LoggedCohort implements ReplayListener {
    private final Program program;
    private final Map<String, Course> courses = new LinkedHashMap<>();
    private final List<LeftOut> unreadable = new ArrayList<>();

    /** That of a replay through this program. */
    public LoggedCohort(Program program) {
        this.program = program;
    }

    @Override
    public void decided(Traced traced) {
        courses.computeIfAbsent(traced.trainee(),
                name -> new Course(name, program.outline().stages().size()))
                .take(traced.event(), traced.decision());
    }

    @Override
    public void unreadable(LogLine.Unreadable line) {
        unreadable.add(new LeftOut(line.trainee().orElse(""),
                new LeftOut.Unreadable(line.line(), line.reason())));
    }

    /** What has come together so far. */
    public Cohort cohort() {
        List<Member> members = new ArrayList<>();
        List<LeftOut> leftOut = new ArrayList<>();
        courses.forEach((name, course) -> {
            Optional<Member> member = course.member();
            member.ifPresentOrElse(members::add, () -> leftOut.add(new LeftOut(name, course.whyNever())));
        });
        leftOut.addAll(unreadable);
        return new Cohort("", program, members, leftOut);
    }
}
