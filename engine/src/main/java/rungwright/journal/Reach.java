package rungwright.journal;

import java.util.List;

/**
 * How many of a cohort got to a place, and how long it took them. Whoever went past a stage got to it.
 *
 * @param place the number of a stage; the number after the last is the goal
 * @param began how many began there or beyond
 * @param came how many came there later
 * @param byCoach how many of those because the coach moved them, then or before, or who had come over from
 *     another version; they are left out of the times
 * @param underWay how many are not there yet
 * @param sessions the way there of all who began before it, in sessions
 * @param days the same in days
 */
public record Reach(int place, int began, int came, int byCoach, int underWay, KaplanMeier sessions,
        KaplanMeier days) {
    static Reach of(int place, List<Member> members) {
        List<Member> before = members.stream().filter(each -> each.beganBefore(place)).toList();
        List<Member> came = before.stream().filter(each -> each.arrivals().containsKey(place)).toList();
        int byCoach = (int) came.stream()
                .filter(each -> each.cameOver() || !each.arrivals().get(place).byProgram()).count();
        return new Reach(place, members.size() - before.size(), came.size(), byCoach,
                before.size() - came.size(), times(before, place, Member.Count.SESSIONS),
                times(before, place, Member.Count.DAYS));
    }

    private static KaplanMeier times(List<Member> before, int place, Member.Count count) {
        return KaplanMeier.of(before.stream().filter(each -> !each.cameOver())
                .map(each -> each.wait(place, count)).toList());
    }

    /** The way there, in sessions or days. */
    public KaplanMeier in(Member.Count count) {
        return switch (count) {
            case SESSIONS -> sessions;
            case DAYS -> days;
        };
    }

    /** How many got there in all. */
    public int reached() {
        return began + came;
    }
}
