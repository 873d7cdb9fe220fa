package monochord.practice.skill.ear;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.harmony.voicing.Unvoiced;
import monochord.practice.Coaching;
import monochord.practice.Excerpt;
import monochord.practice.Form;
import monochord.practice.Listening;
import monochord.practice.Misconception;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Topic;
import monochord.practice.answer.EarRubric;
import monochord.practice.answer.Say;
import monochord.practice.teaching.Own;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** A row of chords behind the tonic chord: bass first, then the quality of each. */
public final class EarProgression implements Skill {
    @Override
    public String id() {
        return "ear-progression";
    }

    @Override
    public String title() {
        return "Progressions by ear";
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
        RowSense sense = new RowSense(about);
        String count = Say.count(about.chords().size());
        String prompt = "First the tonic chord of " + Say.key(key) + ", then " + count
                + " chords. Which are they? Numbers, numerals or names.";
        Listening listening = new Listening(() -> voices.heard(about.chords()), answer -> heard(sense, answer, voices));
        return Question.of(
                        new Topic(id(), about.toString(), key),
                        Form.PROGRESSION,
                        prompt,
                        new EarRubric<>(about.chords(), sense, () -> slips(about, sense)),
                        coaching(about))
                .byEar(listening)
                .withSeed(seed);
    }

    private static Optional<Excerpt> heard(RowSense sense, String answer, Voices voices) {
        try {
            return Optional.of(voices.heard(sense.read(answer)));
        } catch (Unreadable | Unvoiced neitherReadNorPlayed) {
            return Optional.empty();
        }
    }

    /** One row for each wrong procedure that could happen here: counted from the relative, or one chord misheard. */
    private static List<List<Chord>> slips(RowSubject about, RowSense sense) {
        Map<Misconception, List<Chord>> slips = new EnumMap<>(Misconception.class);
        Stream.concat(Stream.of(sense.fromRelative()), oneMisheard(about))
                .filter(row -> !sense.soundsRight(row))
                .forEach(row -> sense.misconception(row).ifPresent(known -> slips.putIfAbsent(known, row)));
        return List.copyOf(slips.values());
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
                IntStream.rangeClosed(1, 7).mapToObj(number -> Own.triad(number, key)),
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
                "Hear it again, and follow the bass alone: does it step, leap, or come home?",
                "Sing the tonic, " + Say.note(key.tonic()) + ", then each bass note, and count from the tonic up. "
                        + "The first goes to " + Say.note(bass.get(0)) + ".",
                "All but the last: " + most.numerals(Signs.MUSIC) + ".",
                "The bass goes " + Say.row(bass) + ", and over it stand "
                        + Say.words(chords.stream().map(Say::chord).toList()) + ": " + about.numerals(Signs.MUSIC)
                        + "." + outside(about));
    }

    private static String outside(RowSubject about) {
        List<Chord> strange = about.chords().stream()
                .filter(chord -> !chord.tones().stream().allMatch(about.key()::holds))
                .distinct()
                .toList();
        return strange.isEmpty() || about.key().isMinor()
                ? ""
                : " Borrowed: " + Say.words(strange.stream().map(Say::chord).toList()) + ".";
    }
}
