package monochord.practice.skill.ear;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.harmony.voicing.Unvoiced;
import monochord.practice.AnswerForm;
import monochord.practice.Coaching;
import monochord.practice.Excerpt;
import monochord.practice.Listening;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.EarRubric;
import monochord.practice.teaching.DiatonicTriads;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/** A row of chords behind the tonic chord: bass first, then the quality of each. */
public final class EarProgression implements Skill {
    @Override
    public String id() {
        return "ear-progression";
    }

    @Override
    public Phrase title() {
        return Phrase.of("Progressions by ear");
    }

    @Override
    public List<String> subjects(Key key) {
        return RowSubject.all(key);
    }

    @Override
    public Question question(Key key, String subject) {
        return question(key, subject, 0);
    }

    @Override
    public Question question(Key key, String subject, long seed) {
        Chance chance = new Chance(seed);
        RowSubject about = Alternatives.of(subject, row -> RowSubject.parse(row, key), chance);
        Voices voices = Voices.of(key, chance);
        HeardRow task = new HeardRow(about);
        Phrase count = Phrase.number(about.chords().size());
        Phrase prompt = Phrase.sentence(
                "First the tonic chord of {0}, then {1} chords. Which are they? Numbers, numerals or names.",
                key, count);
        Listening listening = new Listening(() -> voices.heard(about.chords()), answer -> heard(task, answer, voices));
        return Question.of(
                        new Topic(id(), about.toString(), key),
                        AnswerForm.PROGRESSION,
                        prompt,
                        new EarRubric<>(about.chords(), task, () -> errors(about, task)),
                        coaching(about))
                .byEar(listening)
                .withSeed(seed);
    }

    private static Optional<Excerpt> heard(HeardRow task, String answer, Voices voices) {
        try {
            return Optional.of(voices.heard(task.read(answer)));
        } catch (Unreadable | Unvoiced neitherReadNorPlayed) {
            return Optional.empty();
        }
    }

    /** One row for each wrong procedure that could happen here: counted from the relative, or one chord misheard. */
    private static List<List<Chord>> errors(RowSubject about, HeardRow task) {
        Map<Misconception, List<Chord>> errors = new EnumMap<>(Misconception.class);
        Stream.concat(Stream.of(task.fromRelative()), oneMisheard(about))
                .filter(row -> !task.soundsRight(row))
                .forEach(row -> task.misconception(row).ifPresent(known -> errors.putIfAbsent(known, row)));
        return List.copyOf(errors.values());
    }

    private static Stream<List<Chord>> oneMisheard(RowSubject about) {
        return IntStream.range(0, about.chords().size())
                .boxed()
                .flatMap(
                        i -> misheard(about.chords().get(i), about.key()).map(other -> with(other, i, about.chords())));
    }

    /** The key's own chords, and the same bass with the other third. */
    private static Stream<Chord> misheard(Chord chord, Key key) {
        ChordKind other = chord.kind().equals(ChordKind.MINOR) ? ChordKind.MAJOR : ChordKind.MINOR;
        return Stream.concat(
                IntStream.rangeClosed(1, 7).mapToObj(number -> DiatonicTriads.triad(number, key)),
                Stream.of(new Chord(chord.root(), other)));
    }

    private static List<Chord> with(Chord other, int place, List<Chord> chords) {
        List<Chord> row = new ArrayList<>(chords);
        row.set(place, other);
        return row;
    }

    private static Coaching coaching(RowSubject about) {
        Key key = about.key();
        List<Chord> chords = about.chords();
        List<NoteName> bass = chords.stream().map(Chord::root).toList();
        RowSubject most = about.with(chords.subList(0, chords.size() - 1));
        return Coaching.of(
                Phrase.sentence("Hear it again, and follow the bass alone: does it step, leap, or come home?"),
                Phrase.sentence(
                        "Sing the tonic, {0}, then each bass note, and count from the tonic up. The first goes to {1}.",
                        key.tonic(), bass.get(0)),
                Phrase.sentence("All but the last: {0}.", most.numerals()),
                Phrase.sentence(
                                "The bass goes {0}, and over it stand {1}: {2}.",
                                Phrase.row(bass), Phrase.list(chords), about.numerals())
                        .then(outside(about)));
    }

    private static Phrase outside(RowSubject about) {
        List<Chord> strange = about.chords().stream()
                .filter(chord -> !chord.tones().stream().allMatch(about.key()::holds))
                .distinct()
                .toList();
        return strange.isEmpty() || about.key().isMinor()
                ? Phrase.NOTHING
                : Phrase.sentence("Borrowed: {0}.", Phrase.list(strange));
    }
}
