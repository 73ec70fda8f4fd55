package rungwright.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.finding.Place;
import rungwright.spec.ConditionSpec;
import rungwright.spec.CriterionSpec;
import rungwright.spec.DoSpec;
import rungwright.spec.Entry;
import rungwright.spec.FactSpec;
import rungwright.spec.LadderSpec;
import rungwright.spec.MeasureSpec;
import rungwright.spec.RuleKind;
import rungwright.spec.RuleSpec;
import rungwright.spec.Spec;
import rungwright.spec.StageSpec;
import rungwright.spec.Text;

/** What stands in a spec after reading, and at which line and column. */
class SpecReaderTest {
    private static final Spec DIP = SpecReader.readBytes(bytes("first-bar-dip.yaml")).spec().orElseThrow();

    private static byte[] bytes(String name) {
        try (InputStream in = SpecReaderTest.class.getResourceAsStream(name)) {
            return in.readAllBytes();
        } catch (IOException wrong) {
            throw new UncheckedIOException(wrong);
        }
    }

    private static Text text(String value, int line, int column) {
        return new Text(value, new Place(line, column));
    }

    private static Optional<Text> some(String value, int line, int column) {
        return Optional.of(text(value, line, column));
    }

    private static Entry entry(Text key, Text value) {
        return new Entry(key, List.of(value), false);
    }

    @Test
    void aWholeSpecHasNoFindingsAndIsWhole() {
        assertEquals(List.of(), SpecReader.readBytes(bytes("first-bar-dip.yaml")).findings());
        assertTrue(DIP.whole());
        assertTrue(DIP.stages().stream().allMatch(StageSpec::whole));
    }

    @Test
    void theHeadIsReadAsItStands() {
        assertEquals(text("First bar dip", 1, 10), DIP.program());
        assertEquals(text("3", 2, 10), DIP.version());
        assertEquals(text("One full-range dip on parallel bars, without help", 3, 7), DIP.goal());
        assertEquals(some("Adults free of shoulder, elbow, wrist and chest complaints", 4, 6),
                DIP.audience());
        assertEquals(List.of(new Place(6, 5), new Place(7, 5)),
                DIP.cautions().stream().map(Text::place).toList());
        assertEquals(List.of(), DIP.sources());
    }

    @Test
    void factsMeasuresAndLaddersKeepTheirTexts() {
        FactSpec bands = DIP.trainee().get(1);
        assertEquals(text("bands", 11, 3), bands.name());
        assertEquals(some("2 to 60 kg by 0.5", 11, 21), bands.listOf());
        assertEquals(some("6", 11, 49), bands.atMost());
        MeasureSpec reps = DIP.measures().get(1);
        assertEquals(Optional.of(entry(text("values", 15, 12), text("0 to 60", 15, 20))), reps.values());
        assertEquals(some("highest", 15, 46), reps.take());
        assertEquals(some("Was every rep under control?", 16, 36), DIP.measures().get(2).ask());
        assertEquals(some("no", 18, 46), DIP.measures().get(4).ifNotLogged());
        assertEquals(some("reps * 4 s", 19, 22), DIP.measures().get(5).from());
        LadderSpec help = DIP.ladders().get(0);
        assertEquals(new LadderSpec(text("help", 22, 3), Optional.empty(), some("bands", 22, 20),
                some("yes", 22, 43), some("no band", 22, 54)), help);
    }

    @Test
    void rulesOfAStageAreReadInTheOrderOfTheText() {
        StageSpec stage = DIP.stages().get(1);
        assertEquals(text("assisted dip", 50, 3), stage.name());
        assertEquals(some("help", 51, 13), stage.ladder());
        assertEquals(List.of(RuleKind.ADVANCE, RuleKind.FALL_BACK, RuleKind.HOLD),
                stage.rules().stream().map(RuleSpec::kind).toList());
        RuleSpec fallBack = stage.rules().get(1);
        assertEquals(new Place(54, 5), fallBack.place());
        assertEquals(some("stage support hold", 54, 58), fallBack.atTheBottom());
        CriterionSpec under = new CriterionSpec(entry(text("reps", 54, 26), text("under 5", 54, 32)));
        ConditionSpec.AllOf all = new ConditionSpec.AllOf(new Place(54, 24), List.of(under));
        assertEquals(new ConditionSpec(new Place(54, 24), false, List.of(all), true), fallBack.when());
        ConditionSpec otherwise = new ConditionSpec(new Place(55, 19), true, List.of(), true);
        assertEquals(otherwise, stage.rules().get(2).when());
    }

    @Test
    void whatIsDoneIsReadKeyByKey() {
        DoSpec prescription = DIP.stages().get(1).prescription().orElseThrow();
        assertEquals(new Place(52, 5), prescription.place());
        Entry tempo = entry(text("tempo", 52, 64), text("3-0-1-0", 52, 71));
        assertEquals(Optional.of(tempo), prescription.entry("tempo"));
    }
}
