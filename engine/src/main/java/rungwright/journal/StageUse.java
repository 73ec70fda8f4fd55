package rungwright.journal;

import java.util.List;
import java.util.Optional;
import rungwright.step.Status;

/**
 * What the sessions of a cohort in one stage came to.
 *
 * @param stage its number
 * @param people how many trained there
 * @param sessions what their sessions came to
 * @param now how many stand there now, in training or stopped
 * @param stopped how many of those are stopped
 * @param stalled how many of those in training have gone on without an advance for long
 */
public record StageUse(int stage, int people, Spell sessions, int now, int stopped, int stalled) {
    static StageUse of(int stage, List<Member> members) {
        List<Spell> spells = members.stream().map(each -> Optional.ofNullable(each.spells().get(stage)))
                .flatMap(Optional::stream).toList();
        List<Member> here = members.stream().filter(each -> each.now().status() != Status.REACHED
                && each.now().at().stage() == stage).toList();
        int stopped = (int) here.stream().filter(each -> each.now().status() == Status.STOPPED).count();
        int stalled = (int) here.stream().filter(each -> each.isStalled()).count();
        return new StageUse(stage, spells.size(), spells.stream().reduce(Spell.NONE, Spell::plus),
                here.size(),
                stopped, stalled);
    }
}
