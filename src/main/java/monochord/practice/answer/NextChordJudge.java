package monochord.practice.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.harmony.Borrowing;
import monochord.harmony.after.Continuation;
import monochord.harmony.after.Continuations;
import monochord.harmony.after.SongCounts;
import monochord.practice.Grade;
import monochord.practice.Judge;
import monochord.practice.Misconception;
import monochord.practice.Mistake;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.practice.reading.ChordReading;
import monochord.practice.reading.Tones;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/**
 * Judges which chord comes next: right if a rule leads there, right with a remark if it belongs to the key or its parallel
 * modes, wrong if it is the same chord again or has nothing to do with the key.
 */
public final class NextChordJudge implements Judge {
    private static final String WHAT = "a chord symbol or a numeral";
    private static final String LOOK = "Ask which of its tones wants to move, and where its root would fall.";
    private static final String NUMERAL = "[b#♭♯]*[IViv]+.*";

    private final Numeral from;
    private final Key key;
    private final List<Continuation> ways;

    /** @param ways what leads on from the chord, the best first; not empty */
    public NextChordJudge(Numeral from, Key key, List<Continuation> ways) {
        this.from = from;
        this.key = key;
        this.ways = ways;
    }

    @Override
    public String expected() {
        return ways.get(0).chord().toString();
    }

    @Override
    public Verdict judge(String answer) {
        Chord given;
        try {
            given = read(answer);
        } catch (Unreadable unreadable) {
            return new Verdict(Grade.UNREADABLE, null, unreadable.getMessage() + ".", expected());
        }
        if (isSameAgain(given)) {
            return wrong(Misconception.STOOD_STILL, "That is " + Say.chord(from.in(key)) + " again. " + LOOK);
        }
        return way(given).map(way -> right(given, way)).orElseGet(() -> withoutRule(given));
    }

    private Chord read(String text) {
        String example = expected().equals("Bb") ? "Eb" : "Bb";
        String plain = AnswerText.plain(text, WHAT, example);
        if (plain.matches(NUMERAL)) {
            return Numeral.parse(plain.replace(" ", "")).in(key);
        }
        Tones tones = ChordReading.read(plain, example);
        return tones.symbol() != null ? tones.symbol() : ofNotes(tones.notes(), plain, example);
    }

    /** The chord with these notes, whichever of them is the root. */
    private static Chord ofNotes(List<NoteName> notes, String plain, String example) {
        return Stream.concat(notes.stream(), notes.stream())
                .limit(notes.size())
                .flatMap(root -> ChordKind.of(root, notes).map(kind -> new Chord(root, kind)).stream())
                .filter(chord ->
                        !chord.kind().toString().contains("no") && chord.kind().holds(Interval.PERFECT_FIFTH))
                .findFirst()
                .or(() -> ChordKind.of(notes.get(0), notes).map(kind -> new Chord(notes.get(0), kind)))
                .orElseThrow(() -> Unreadable.because(plain, 0, WHAT, "these notes make no chord", example));
    }

    private boolean isSameAgain(Chord given) {
        Chord here = from.in(key);
        return given.root().equals(here.root())
                && given.kind().triad().equals(here.kind().triad())
                && ways.stream()
                        .noneMatch(way -> way.chord().kind().equals(given.kind())
                                && way.chord().root().equals(given.root()));
    }

    /** The way to this chord, by itself or by its triad in root position. */
    private Optional<Continuation> way(Chord given) {
        Chord plain = given.over(given.root());
        return known(plain)
                .or(() -> known(new Chord(given.root(), given.kind().triad())))
                .or(() -> Continuations.way(from, Numeral.of(plain, key), key, SongCounts.NONE));
    }

    private Optional<Continuation> known(Chord chord) {
        return ways.stream().filter(way -> way.chord().equals(chord)).findFirst();
    }

    private Verdict right(Chord given, Continuation way) {
        String why = way.reason().toString();
        String said = "Yes, " + Say.chord(given) + ", " + Numeral.of(given, key).write(Signs.MUSIC) + ". "
                + Character.toUpperCase(why.charAt(0)) + why.substring(1) + ".";
        return new Verdict(Grade.RIGHT, null, said, expected());
    }

    private Verdict withoutRule(Chord given) {
        boolean related =
                key.isOwn(given) || !Borrowing.borrowedFrom(given, key).isEmpty();
        if (related) {
            return new Verdict(
                    Grade.REMARK,
                    null,
                    "It can be done: " + Say.chord(given) + " lies in a scale on " + Say.note(key.tonic())
                            + ". Nothing pulls there. " + offer(),
                    expected());
        }
        return wrong(
                Misconception.WRONG_KEY,
                Say.chord(given) + " belongs neither to " + Say.key(key) + " nor to a scale on the same tonic. "
                        + LOOK);
    }

    private Verdict wrong(Misconception misconception, String message) {
        return new Verdict(Grade.WRONG, misconception.id(), message, expected());
    }

    private String offer() {
        Continuation best = ways.get(0);
        return "Stronger is " + Say.chord(best.chord()) + " (" + best.reason() + ").";
    }

    @Override
    public List<Mistake> mistakes() {
        List<Mistake> mistakes = new ArrayList<>();
        add(mistakes, Misconception.STOOD_STILL, from.in(key));
        for (Interval off : List.of(Interval.MINOR_SECOND, Interval.AUGMENTED_FOURTH)) {
            Key other = new Key(key.tonic().plus(off), key.mode());
            add(mistakes, Misconception.WRONG_KEY, ways.get(0).numeral().in(other));
        }
        return mistakes;
    }

    private void add(List<Mistake> mistakes, Misconception misconception, Chord answer) {
        boolean led = judge(answer.toString()).grade().isRight();
        boolean known = mistakes.stream().anyMatch(mistake -> mistake.answer().equals(answer.toString()));
        if (!led && !known) {
            mistakes.add(new Mistake(misconception, answer.toString()));
        }
    }
}
