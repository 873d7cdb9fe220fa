package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.oneOf;
import static monochord.shell.sentence.FormPart.takes;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import monochord.harmony.Music;
import monochord.harmony.Progression;
import monochord.harmony.bass.BassLine;
import monochord.score.BarGrid;
import monochord.score.Pattern;
import monochord.shell.playback.Playable;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.PlaybackState;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.sounding.PlaybackOptions;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.music.BassAnswer;

/** Writes a line for the bass under a progression. */
final class BassVerb implements Verb {
    private static final String EXAMPLE = "bass C G Am F in C chromatic";

    @Override
    public String word() {
        return "bass";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.EXPLORING,
                        Phrase.of("lead the bass by steps, over a pedal or walking, and say why"))
                .form(
                        takes(Value.PROGRESSION),
                        may(oneOf(Value.PROGRESSION, "chromatic", "pedal", "walking")),
                        may(clause("in", Value.KEY)),
                        may(clause(PlaybackOptions.METRE, Value.METRE)))
                .examples(EXAMPLE, "bass pedal | C | F | G7 | C | in C", "bass walking Dm7 G7 Cmaj7 in C");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        Optional<BassLine.BassStyle> asked = Arrays.stream(BassLine.BassStyle.values())
                .filter(style -> sentence.clause(style.toString()).isPresent())
                .findFirst();
        Progression progression = music(sentence, asked).read(text -> Progression.parse(text, key));
        BarGrid metre = PlaybackOptions.metre(sentence);
        Beats bar =
                sentence.clause(PlaybackOptions.METRE).isPresent() ? metre.bar() : Beats.of(progression.beatsPerBar());
        List<BassLine> lines = asked.map(List::of).orElseGet(() -> List.of(BassLine.BassStyle.values())).stream()
                .map(style -> BassLine.of(progression, style, bar, metre.isCompound()))
                .toList();
        remember(lines, metre, sitting.stage());
        return new BassAnswer(lines);
    }

    /** What stands before the style, or behind it. */
    private static Sentence.SentencePart music(Sentence sentence, Optional<BassLine.BassStyle> asked) {
        List<Sentence.SentencePart> parts = Arrays.stream(BassLine.BassStyle.values())
                .flatMap(style -> sentence.clause(style.toString()).stream())
                .toList();
        Sentence.SentencePart behind = parts.isEmpty() ? sentence.body() : parts.get(0);
        if (parts.size() > 1 || asked.isPresent() && sentence.body().isEmpty() == behind.isEmpty()) {
            throw Unreadable.because(
                    sentence.whole(),
                    sentence.whole().length(),
                    "a sentence",
                    Clause.of("one style and the chords are wanted: chromatic, pedal or walking"),
                    EXAMPLE);
        }
        return sentence.body().isEmpty() ? behind : sentence.body();
    }

    /** The first line that is new can be played. */
    private static void remember(List<BassLine> lines, BarGrid metre, PlaybackState stage) {
        BassLine line = lines.stream().filter(BassLine::isNew).findFirst().orElse(lines.get(0));
        Playable take = Playable.of(
                new Music.OneProgression(line.chords()), line.chords().key(), metre);
        if (line.style() == BassLine.BassStyle.WALKING) {
            stage.remember(take, stage.directions().as(Pattern.WALKING));
        } else {
            stage.remember(take);
        }
    }
}
