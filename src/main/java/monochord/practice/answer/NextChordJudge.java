package monochord.practice.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
import monochord.practice.reading.AnswerReading;
import monochord.practice.reading.ChordReading;
import monochord.practice.reading.DegreeReading;
import monochord.practice.reading.Tones;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.ScaleKind;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;

/**
 * Judges which chord comes next, by degrees: idiomatic where a rule leads there; possible, with a remark, if it belongs to
 * the key or its parallel modes, and said to undo the colour where it does; nearly right if it is one of these under another
 * spelling; wrong if it is the same chord again or has nothing to do with the key.
 */
public final class NextChordJudge implements Judge {
    private static final String WHAT = "a chord symbol or a numeral";
    /** The next chord, and what is to come after it. */
    private static final Pattern THEN =
            Pattern.compile("(.*?\\S)[\\s,;]*(?:(?<![a-z])(?:and )?(?:then|to|before)(?![a-z])|->|→|–).*");

    private static final int SAME_KEY = 12;
    /** Reasons up to this weight of eight are no more than tones that stay. */
    private static final int WEAK = 2;

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
        String example = expected().equals("Bb") ? "Eb" : "Bb";
        Chord given;
        try {
            given = AnswerReading.read(answer, WHAT, example, plain -> read(plain, example));
        } catch (Unreadable unreadable) {
            return Verdict.unreadable(unreadable, expected());
        }
        if (isSameAgain(given)) {
            return wrong(
                    Misconception.STOOD_STILL,
                    Phrase.sentence("That is {0} again.", from.in(key)).then(look()));
        }
        return respelled(given)
                .map(due -> spelledBySound(given, due))
                .or(() -> way(given).filter(way -> !isUndoing(way, given)).map(way -> right(given, way)))
                .orElseGet(() -> withoutRule(given));
    }

    private Chord read(String plain, String example) {
        Matcher then = THEN.matcher(plain);
        return one(then.matches() ? then.group(1) : plain, example);
    }

    private Chord one(String plain, String example) {
        if (DegreeReading.isNumeral(plain)) {
            return DegreeReading.read(plain, key).in(key);
        }
        Tones tones;
        try {
            tones = ChordReading.read(plain, example);
        } catch (Unreadable unreadable) {
            return degree(plain, unreadable);
        }
        return tones.symbol() != null ? tones.symbol() : ofNotes(tones.notes(), plain, example);
    }

    private Chord degree(String plain, Unreadable asChord) {
        try {
            return DegreeReading.read(plain, key).in(key);
        } catch (Unreadable unreadable) {
            throw asChord;
        }
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
        return known(given)
                .or(() -> Continuations.way(from, Numeral.of(given.over(given.root()), key), key, SongCounts.NONE));
    }

    private Optional<Continuation> known(Chord given) {
        Chord triad = new Chord(given.root(), given.kind().triad());
        return known(given.over(given.root()), triad);
    }

    private Optional<Continuation> known(Chord whole, Chord triad) {
        return ways.stream()
                .filter(way -> way.chord().equals(whole))
                .findFirst()
                .or(() -> ways.stream().filter(way -> way.chord().equals(triad)).findFirst());
    }

    /** The same keys under the name that this place gives them, where the answer has another. */
    private Optional<Chord> respelled(Chord given) {
        if (known(given).isPresent() || isRelated(given)) {
            return Optional.empty();
        }
        return Stream.of(SAME_KEY, -SAME_KEY)
                .map(away -> given.plus(Interval.simple(away)))
                .filter(this::belongs)
                .findFirst();
    }

    private boolean belongs(Chord chord) {
        return known(chord).isPresent()
                || key.isOwn(chord)
                || Borrowing.borrowedFrom(chord, key).stream()
                        .anyMatch(source -> !source.kind().equals(ScaleKind.LOCRIAN));
    }

    private boolean isRelated(Chord chord) {
        return key.isOwn(chord) || !Borrowing.borrowedFrom(chord, key).isEmpty();
    }

    private Verdict spelledBySound(Chord given, Chord due) {
        return Verdict.of(
                Grade.NEARLY,
                Misconception.SPELLED_BY_SOUND,
                Phrase.sentence(
                        "The right keys under another name: in {0} that root is some kind of {1}, not {2}.",
                        key, NoteName.of(due.root().letter(), 0), given.root()),
                expected());
    }

    private Verdict right(Chord given, Continuation way) {
        return Verdict.of(
                Grade.RIGHT,
                null,
                Phrase.sentence("Yes, {0}, {1}.", given, Numeral.of(given, key))
                        .then(Phrase.sentence("{0}.", way.reason())),
                expected());
    }

    private Verdict withoutRule(Chord given) {
        if (!isRelated(given)) {
            return wrong(
                    Misconception.WRONG_KEY,
                    Phrase.sentence("{0} belongs neither to {1} nor to a scale on the same tonic.", given, key)
                            .then(look()));
        }
        Phrase possible = undone(given)
                .map(note -> Phrase.sentence(
                        "It can be done, but {0} takes back what {1} has just coloured.", note, from.in(key)))
                .orElseGet(() -> Phrase.sentence(
                        "It can be done: {0} lies in a scale on {1}. Nothing pulls there.", given, key.tonic()));
        return Verdict.of(Grade.REMARK, null, possible.then(offer()), expected());
    }

    /** Whether nothing but a weak reason leads to a chord that takes back what the one before has coloured. */
    private boolean isUndoing(Continuation way, Chord given) {
        return way.weight() <= WEAK && undone(given).isPresent();
    }

    /** The note of the answer that puts the key's own note back where the chord before it had altered it. */
    private Optional<NoteName> undone(Chord given) {
        List<NoteName> coloured =
                from.in(key).tones().stream().filter(tone -> !key.holds(tone)).toList();
        return given.tones().stream()
                .filter(tone ->
                        coloured.stream().anyMatch(other -> other.letter() == tone.letter() && !other.equals(tone)))
                .findFirst();
    }

    private Phrase look() {
        return Phrase.sentence("Ask which tone of {0} wants to move, and where its root would fall.", from.in(key));
    }

    private Verdict wrong(Misconception misconception, Phrase said) {
        return Verdict.of(Grade.WRONG, misconception, said, expected());
    }

    private Phrase offer() {
        Continuation best = ways.get(0);
        return Phrase.sentence("Stronger is {0} ({1}).", best.chord(), best.reason());
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
        Verdict verdict = judge(answer.toString());
        boolean led = verdict.grade().isRight() || !misconception.id().equals(verdict.misconception());
        boolean known = mistakes.stream().anyMatch(mistake -> mistake.answer().equals(answer.toString()));
        if (!led && !known) {
            mistakes.add(new Mistake(misconception, answer.toString()));
        }
    }

    /** What stands is said first; then what pulls, from what the chord asks to what its root wants. */
    @Override
    public List<Phrase> help(String answer) {
        Verdict verdict = judge(answer);
        if (verdict.grade() == Grade.UNREADABLE || verdict.grade().isRight()) {
            return List.of();
        }
        Chord here = from.in(key);
        Phrase root = Phrase.sentence(
                "Let the root fall: count a fifth down from {0}, and see what stands there in {1}.", here.root(), key);
        if (verdict.grade() == Grade.NEARLY) {
            return List.of(
                    Phrase.sentence("The keys are right. Now the letter of the root, counted from {0}.", key.tonic()),
                    Phrase.sentence("Count the letters up to it; each degree has one of its own."),
                    verdict.said());
        }
        return List.of(
                Misconception.STOOD_STILL.id().equals(verdict.misconception())
                        ? Phrase.sentence("{0} can stay as it is, but then nothing moves: take another root.", here)
                        : Phrase.sentence("Stay near home: the chords of {0} first, then those of its parallel.", key),
                Phrase.sentence(
                        "{0} is {1}. Which of them wants to move by a half step?", here, Phrase.row(here.tones())),
                root);
    }
}
