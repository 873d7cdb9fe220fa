package monochord.view.music;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import monochord.harmony.voicing.AlternativeVoicing;
import monochord.harmony.voicing.MovementCount;
import monochord.harmony.voicing.Reach;
import monochord.harmony.voicing.RootPositionComparison;
import monochord.harmony.voicing.VoicedProgression;
import monochord.harmony.voicing.Voicing;
import monochord.harmony.voicing.VoicingExplanation;
import monochord.harmony.voicing.VoicingTask;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.note.Pitch;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.keyboard.Drawing;
import monochord.view.keyboard.VoicingGrid;
import monochord.view.keyboard.VoicingRow;

/**
 * A progression voiced for two hands, drawn and explained.
 *
 * @param ways the best first, at least one
 * @param keyboards whether each chord is drawn on a keyboard
 */
public record VoiceAnswer(List<VoicedProgression> ways, boolean keyboards) implements Answer {
    private static final int MOST_CHANGES_TOLD = 8;
    private static final int FEW_CHORDS = 2;

    /** Source: Boyle, Boyle and Booker, APPC 2015, for who reaches a tenth; the advice is common practice. */
    private static final Phrase CARE = Phrase.sentence(
            "Some of this asks for more than an octave in one hand. Take only what"
                    + " lies easily: roll it from the bottom, or give a note to the other hand. If the hand aches, stop.");

    /** Where so much was asked for and nothing needs it; the same source. */
    private static final Phrase NOT_NEEDED = Phrase.sentence("Many grown hands do not reach a tenth. "
            + "Nothing here asks for more than an octave; if the hand aches, stop.");

    private static final int TENTH = 10;

    public VoiceAnswer {
        ways = List.copyOf(ways);
    }

    private VoicedProgression best() {
        return ways.get(0);
    }

    private VoicingTask task() {
        return best().task();
    }

    private List<VoicingRow> rows() {
        return IntStream.range(0, task().chords().size())
                .mapToObj(i ->
                        new VoicingRow(task().chords().get(i), best().voicings().get(i)))
                .toList();
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(heading(), Style.HEADING)
                .lines(
                        look.plain()
                                ? VoicingGrid.words(rows(), look.reader())
                                : VoicingGrid.of(rows(), look.reader(), look.pictureWidth()));
        say(text);
        StyledText told = text.build().wrapped(look.width());
        boolean drawn = (keyboards || rows().size() <= FEW_CHORDS) && !look.plain() && !look.apart();
        return drawn ? told.plus(VoicingGrid.keyboards(rows(), look.reader(), look.pictureWidth())) : told;
    }

    private Phrase heading() {
        return Phrase.of(
                "In {0}, {1}, each hand within {2}",
                task().key(), task().style().inWords(), task().reach().inWords());
    }

    private void say(StyledText.Builder text) {
        VoicingExplanation explanation = new VoicingExplanation(RootPositionComparison.of(best()));
        List<Phrase> changes = explanation.changes();
        changes.stream().limit(MOST_CHANGES_TOLD).forEach(text::line);
        if (changes.size() > MOST_CHANGES_TOLD) {
            int more = changes.size() - MOST_CHANGES_TOLD;
            text.line(Phrase.counted(more, "… and {0} more change.", "… and {0} more changes.", more), Style.QUIET);
        }
        explanation.reason().ifPresent(text::line);
        if (!changes.isEmpty()) {
            explanation.comparison().forEach(text::line);
        }
        explanation.departures().forEach(text::line);
        AlternativeVoicing.than(best()).forEach(other -> text.line(told(other), Style.QUIET));
        care().ifPresent(text::line);
    }

    private static Phrase told(AlternativeVoicing other) {
        return Phrase.sentence("Another way: {0}; say {1}.", other.differs(), other.asked());
    }

    private Optional<Phrase> care() {
        if (isWide()) {
            return Optional.of(CARE);
        }
        return task().reach().steps() >= TENTH ? Optional.of(NOT_NEEDED) : Optional.empty();
    }

    private boolean isWide() {
        return best().voicings().stream().anyMatch(voicing -> isWide(voicing.left()) || isWide(voicing.right()));
    }

    private static boolean isWide(List<Pitch> hand) {
        return !hand.isEmpty()
                && Reach.isWide(
                        hand.get(hand.size() - 1).midiNumber() - hand.get(0).midiNumber());
    }

    @Override
    public List<Drawing> drawings() {
        return Pictures.hands(rows());
    }

    @Override
    public void json(Json json) {
        json.put("kind", "voice");
        RootPositionComparison comparison = RootPositionComparison.of(best());
        json.put("key", task().key().toString())
                .put("style", task().style().toString())
                .put("reach", task().reach().steps());
        voicings(json, best().voicings());
        numbers(json, best().cost().total(), comparison.tally());
        json.objects(
                "next",
                ways.subList(1, ways.size()),
                (next, way) -> numbers(next, way.cost().total(), way.tally()));
        json.objects("others", AlternativeVoicing.than(best()), (object, other) -> {
            voicings(object, other.way().voicings());
            object.put("cost", other.way().cost().total())
                    .put("differs", Phrase.sentence("{0}.", other.differs()).toString());
        });
        json.object("plain", plain -> {
            voicings(plain, comparison.plain());
            numbers(plain, comparison.plainCost().total(), comparison.plainTally());
        });
    }

    private void voicings(Json json, List<Voicing> voicings) {
        List<VoicingRow> rows = IntStream.range(0, voicings.size())
                .mapToObj(i -> new VoicingRow(task().chords().get(i), voicings.get(i)))
                .toList();
        json.objects(
                "voicings",
                rows,
                (object, row) -> object.put("symbol", row.chord().toString())
                        .put("left", row.voicing().left())
                        .put("right", row.voicing().right()));
    }

    private static void numbers(Json json, int cost, MovementCount tally) {
        json.put("cost", cost)
                .put("moved", tally.moved())
                .put("parallels", tally.parallels())
                .put("held", tally.held());
    }
}
