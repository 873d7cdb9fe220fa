package monochord.shell.verb.music;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.oneOf;
import static monochord.shell.sentence.FormPart.takes;

import java.util.List;
import java.util.stream.Stream;
import monochord.harmony.Music;
import monochord.harmony.Progression;
import monochord.harmony.motion.Passage;
import monochord.harmony.motion.Strictness;
import monochord.score.Arrangement;
import monochord.score.Comping;
import monochord.score.Score;
import monochord.score.TimedVoicing;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.sound.Performance;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.music.MotionAnswer;

/** Watches how voices move from chord to chord. */
final class MotionVerb implements Verb {
    private static final String EXAMPLE = "motion C3 G3 E4 C5 | A2 A3 E4 C5";
    private static final Beats HELD = Beats.of(2);
    private static final String WHAT = "something to watch";

    @Override
    public String word() {
        return "motion";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.EXPLORING,
                        Phrase.of("watch how each voice moves, and what runs in parallel"))
                .form(
                        takes(Value.VOICES, Value.PROGRESSION),
                        may(clause("in", Value.KEY)),
                        may(oneOf("chorale", "band")))
                .examples(EXAMPLE, "motion F3 C4 A4 F5 | G3 D4 B4 D5 chorale", "motion F C G Ab in C");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = SentenceKey.of(sentence, sitting);
        Strictness strictness = strictness(sentence);
        return Passage.isWrittenIn(sentence.body().text())
                ? given(sentence.body().read(Passage::parse), strictness, sitting)
                : voiced(sentence.body().read(text -> progression(text, key)), strictness, sitting);
    }

    private static Answer given(Passage passage, Strictness strictness, Sitting sitting) {
        List<Pitch> all = passage.chords().stream().flatMap(List::stream).toList();
        Music notes = new Music.Notes(all.stream().map(Pitch::name).toList(), all);
        Score score = new Score.InTurn(passage.chords().stream()
                .map(chord -> Score.together(chord.stream().distinct().toList(), HELD))
                .toList());
        sitting.stage().remember(Performance.of(score).in(sitting.key()), List.of(notes));
        return new MotionAnswer(passage, strictness, List.of());
    }

    private static Answer voiced(Progression progression, Strictness strictness, Sitting sitting) {
        sitting.stage().remember(new Music.OneProgression(progression));
        return new MotionAnswer(voiced(progression), strictness, progression.chords());
    }

    private static Strictness strictness(Sentence sentence) {
        boolean chorale = sentence.clause("chorale").isPresent();
        if (chorale && sentence.clause("band").isPresent()) {
            throw Unreadable.because(sentence.whole(), 0, WHAT, "say chorale or band, not both", EXAMPLE);
        }
        Stream.of("chorale", "band")
                .flatMap(word -> sentence.clause(word).stream())
                .forEach(MotionVerb::refuseMore);
        return chorale ? Strictness.CHORALE : Strictness.BAND;
    }

    private static void refuseMore(Sentence.SentencePart part) {
        if (!part.isEmpty()) {
            throw Unreadable.because(
                            part.text(), 0, WHAT, "the chords come first, then chorale or band", EXAMPLE + " chorale")
                    .within(part.text(), part.place());
        }
    }

    private static Progression progression(String text, Key key) {
        Progression progression = Progression.parse(text, key);
        if (progression.chords().size() < 2) {
            throw Unreadable.because(text, text.length(), WHAT, "it takes two chords to move", EXAMPLE);
        }
        return progression;
    }

    private static Passage voiced(Progression progression) {
        return new Passage(Comping.voicings(Arrangement.changes(progression)).stream()
                .map(MotionVerb::keys)
                .toList());
    }

    private static List<Pitch> keys(TimedVoicing voicing) {
        return voicing.hands().pitches();
    }
}
