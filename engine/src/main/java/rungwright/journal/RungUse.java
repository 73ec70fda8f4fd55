package rungwright.journal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.measure.Amount;
import rungwright.measure.Ratio;
import rungwright.program.Ladder;
import rungwright.program.Stage;
import rungwright.program.Standing;
import rungwright.step.Status;

/**
 * What the sessions of a cohort on one rung came to. Rungs of trainees' own lists are one by their name,
 * whatever their number for each.
 *
 * @param at the stage and rung; its number is that of whoever trained there first
 * @param people how many trained there
 * @param sessions what their sessions came to
 * @param now how many stand there now, in training or stopped
 * @param stalled how many of those in training have gone on without an advance for long
 */
public record RungUse(Standing at, int people, Spell sessions, int now, int stalled) {
    /** Those of one stage; none where it has no rungs with names. */
    static List<RungUse> of(Stage stage, List<Member> members) {
        Map<String, List<Spell>> spells = new LinkedHashMap<>();
        Map<String, Standing> places = new LinkedHashMap<>();
        for (Member member : members) {
            Map<String, Spell> own = new LinkedHashMap<>();
            member.rungs().forEach((at, spell) -> {
                if (at.stage() == stage.number() && !at.rungName().isEmpty()) {
                    places.putIfAbsent(at.rungName(), at);
                    own.merge(at.rungName(), spell, Spell::plus);
                }
            });
            own.forEach((name, spell) -> spells.computeIfAbsent(name, rung -> new ArrayList<>()).add(spell));
        }
        return places.values().stream().sorted(order(stage.ladder()))
                .map(at -> of(at, spells.get(at.rungName()), members)).toList();
    }

    private static RungUse of(Standing at, List<Spell> spells, List<Member> members) {
        List<Member> here = members.stream().filter(each -> each.now().status() != Status.REACHED
                && each.now().at().samePlace(at)).toList();
        return new RungUse(at, spells.size(), spells.stream().reduce(Spell.NONE, Spell::plus), here.size(),
                (int) here.stream().filter(Member::isStalled).count());
    }

    /** Easiest first: of somebody's own list by how much it helps, else by number. */
    private static Comparator<Standing> order(Ladder ladder) {
        Comparator<Standing> byNumber = Comparator.comparingInt(Standing::rung);
        return ladder instanceof Ladder.EachOf
                ? Comparator.comparing(RungUse::help).reversed().thenComparing(byNumber)
                : byNumber;
    }

    private static Ratio help(Standing at) {
        Optional<Amount> amount = Amount.read(at.rungName());
        return amount.map(Amount::base).orElse(Ratio.ZERO);
    }
}
