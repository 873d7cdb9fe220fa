package monochord.practice.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.ChordReading;
import monochord.practice.reading.Tones;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.note.Clause;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** Judges a chord, answered by its symbol or its notes. Where another note than the root is lowest, that is part of it. */
public final class ChordRubric extends Rubric<Tones> {
    private static final Clause LETTERS = Clause.byNaming(
            "notes are the letters A to G with b or #, and a symbol begins with one",
            "notes are the letters A to H with is or es, and a symbol begins with one",
            "notes are the syllables Do to Si with b or #, and a symbol begins with one");
    private static final Pattern DEGREE = Pattern.compile("[b#♭♯]*(?:[1-7]|[IViv]+).*");

    private final Chord chord;
    private final boolean spelling;
    private final Phrase rootReason;
    private final Chord alternative;
    private final Phrase remark;

    private ChordRubric(Chord chord, Other other, Phrase rootReason, Supplier<List<ModelledError<Tones>>> errors) {
        super(Tones.of(chord), errors);
        this.chord = chord;
        this.alternative = other.chord;
        this.remark = other.remark;
        this.spelling = other.spelling;
        this.rootReason = rootReason;
    }

    /** Another chord that is taken as well, what is said to it, and whether notes are wanted. */
    private record Other(Chord chord, Phrase remark, boolean spelling) {}

    /** @param rootReason a sentence that leads to the root */
    public static ChordRubric named(Chord chord, Phrase rootReason, Supplier<List<ModelledError<Tones>>> errors) {
        return named(chord, null, rootReason, errors);
    }

    /** @param alternative a chord on the same degree that is as customary in this key, or null */
    public static ChordRubric named(
            Chord chord, Chord alternative, Phrase rootReason, Supplier<List<ModelledError<Tones>>> errors) {
        Phrase remark = alternative == null
                ? Phrase.NOTHING
                : Phrase.sentence(
                        "Yes, {0} stands there too when the seventh of the minor scale is moved. Here I had {1} in mind.",
                        alternative, chord);
        return new ChordRubric(chord, new Other(alternative, remark, false), rootReason, errors);
    }

    /** The chord's symbol was given and its notes are wanted. */
    public static ChordRubric spelled(Chord chord, Supplier<List<ModelledError<Tones>>> errors) {
        return spelled(chord, null, Phrase.NOTHING, errors);
    }

    /**
     * @param alternative another chord that the symbol is customarily read as, or null
     * @param remark what is said to it
     */
    public static ChordRubric spelled(
            Chord chord, Chord alternative, Phrase remark, Supplier<List<ModelledError<Tones>>> errors) {
        Phrase root = Phrase.sentence("The root is {0}.", chord.root());
        return new ChordRubric(chord, new Other(alternative, remark, true), root, errors);
    }

    @Override
    String what() {
        return spelling ? "a row of notes" : "a chord symbol or a row of notes";
    }

    @Override
    String example() {
        return spelling ? example("Eb G Bb", "D F# A") : example("Ebm", "F#m");
    }

    @Override
    Tones read(String plain) {
        Tones given = toRead(plain);
        if (!spelling || given.symbol() == null) {
            return given;
        }
        if (given.symbol().toString().equals(given.symbol().root().toString()) && isOneNote(plain)) {
            return Tones.of(List.of(given.symbol().root()));
        }
        throw Unreadable.because(plain, 0, what(), "that is the name of the chord; spell it, root first", example());
    }

    private static boolean isOneNote(String plain) {
        return plain.length() <= 2 && plain.indexOf('M') < 0;
    }

    private Tones toRead(String plain) {
        try {
            return ChordReading.read(plain, example());
        } catch (Unreadable unreadable) {
            boolean degree = !spelling && DEGREE.matcher(plain).matches();
            Clause why = degree ? Clause.of("it says the degree; name the chord that stands there") : LETTERS;
            throw Unreadable.because(plain, 0, what(), why, example());
        }
    }

    @Override
    String write(Tones answer) {
        boolean inNotes = spelling || answer.symbol() == null;
        return inNotes ? Tones.of(answer.notes()).write(Signs.ASCII) : answer.write(Signs.ASCII);
    }

    @Override
    boolean same(Tones one, Tones other) {
        return one.hasSameNotes(other) && bass(one).equals(bass(other));
    }

    /** The right chord on another bass is told of its bass, whatever else leads there. */
    @Override
    boolean fits(Tones given, Tones error) {
        return same(given, error) && !given.hasSameNotes(wanted());
    }

    /** The bass as far as it is asked for; notes may come in any order. */
    private NoteName bass(Tones tones) {
        return chord.isInverted() && tones.symbol() != null ? tones.symbol().bass() : chord.bass();
    }

    @Override
    boolean isAlso(Tones given) {
        return alternative != null && same(given, Tones.of(alternative));
    }

    @Override
    Verdict acceptAlso(Tones given) {
        return verdict(Grade.REMARK, remark);
    }

    @Override
    Verdict accept(Tones given) {
        Chord symbol = given.symbol();
        Phrase notes = Phrase.row(symbol == null ? chord.fromBass() : chord.tones());
        if (symbol != null && !symbol.root().equals(chord.root())) {
            return verdict(
                    Grade.REMARK,
                    Phrase.sentence("Those are the notes, {0}; by its root the chord is {1}.", notes, chord));
        } else if (symbol != null && symbol.isInverted() && !chord.isInverted()) {
            return verdict(
                    Grade.REMARK,
                    Phrase.sentence("Yes, {0}. With nothing else said, the root goes in the bass.", chord));
        } else if (symbol == null && !given.notes().equals(chord.fromBass())) {
            return verdict(Grade.REMARK, inOrder(notes));
        }
        return verdict(
                Grade.RIGHT,
                spelling
                        ? Phrase.sentence("Yes: {0}.", notes)
                        : Phrase.sentence("Yes: {0}, which is {1}.", chord, notes));
    }

    private Phrase inOrder(Phrase notes) {
        return chord.isInverted()
                ? Phrase.sentence("Yes, these are the notes. From the bass up it reads {0}.", notes)
                : Phrase.sentence("Yes, these are the notes. From the root up it reads {0}.", notes);
    }

    @Override
    Optional<Tones> bySound() {
        return Optional.of(OtherSpelling.of(chord));
    }

    @Override
    boolean soundsRight(Tones given) {
        return given.soundsLike(wanted()) && !given.hasSameNotes(wanted());
    }

    private NoteDifference difference(Tones given) {
        return NoteDifference.of(given.notes(), wanted().notes());
    }

    @Override
    Grade grade(Tones given) {
        NoteName root =
                given.symbol() != null ? given.symbol().root() : given.notes().get(0);
        return difference(given).isOne() && root.equals(chord.root()) ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    Verdict otherwise(Tones given) {
        if (soundsRight(given)) {
            return spelledBySound(given);
        }
        NoteDifference notes = difference(given);
        if (given.symbol() != null && given.symbol().root().equals(chord.root())) {
            ChordDifference difference = new ChordDifference(given.symbol(), chord, notes);
            return verdict(grade(given), difference.misconception(), difference.said());
        } else if (given.symbol() != null || notes.kept().isEmpty() || isElsewhere(notes)) {
            return verdict(Grade.WRONG, Misconception.WRONG_DEGREE, elsewhere(given));
        }
        return amongNotes(notes, grade(given));
    }

    private boolean isElsewhere(NoteDifference notes) {
        return notes.missing().size() > 1 && !notes.kept().contains(chord.root());
    }

    private Verdict amongNotes(NoteDifference notes, Grade grade) {
        if (notes.strange().isEmpty()) {
            Phrase missing = ChordDifference.missing(chord, notes.missing());
            return verdict(
                    oneOff(notes.missing()),
                    Misconception.MISSING_NOTE,
                    notes.confirmed()
                            .then(Phrase.sentence(
                                    "{0}",
                                    Phrase.counted(
                                            notes.missing().size(), "{0} is missing.", "{0} are missing.", missing))));
        } else if (notes.missing().isEmpty()) {
            return verdict(oneOff(notes.strange()), Misconception.EXTRA_NOTE, ChordDifference.extra(notes.strange()));
        }
        return verdict(grade, Misconception.WRONG_QUALITY, replaced(notes));
    }

    private Phrase replaced(NoteDifference notes) {
        NoteName tone = notes.missing().get(0);
        if (tone.equals(chord.root())) {
            return notes.confirmed().then(Phrase.sentence("The root is not among them."));
        }
        Phrase place = ChordDifference.place(chord, tone);
        Phrase measure = ChordDifference.measure(chord, tone);
        boolean one = notes.isOne();
        return notes.confirmed()
                .then(
                        one
                                ? Phrase.of(
                                        "{0} is not: the {1} {2}",
                                        notes.strange().get(0), place, measure)
                                : Phrase.sentence("The {0} {1}", place, measure));
    }

    private static Grade oneOff(List<NoteName> notes) {
        return notes.size() == 1 ? Grade.NEARLY : Grade.WRONG;
    }

    private Verdict spelledBySound(Tones given) {
        NoteName first = difference(given).strange().get(0);
        NoteName due =
                wanted().notes().stream().filter(first::soundsLike).findFirst().orElse(chord.root());
        Phrase chart = given.notes().contains(chord.root()) ? Phrase.NOTHING : chartName();
        return verdict(
                Grade.NEARLY,
                Misconception.SPELLED_BY_SOUND,
                Phrase.sentence(
                                "The right keys, the wrong letters. Where you have {0}, some kind of {1} is due.",
                                first, NoteName.of(due.letter(), 0))
                        .then(chart));
    }

    private Phrase chartName() {
        return OtherSpelling.inCharts(chord)
                .map(printed -> Phrase.sentence("A chart may print {0}; asked to spell it, keep the letters.", printed))
                .orElse(Phrase.NOTHING);
    }

    private Phrase elsewhere(Tones given) {
        Phrase named = given.symbol() != null ? Phrase.of("{0}", given.symbol()) : Phrase.row(given.notes());
        return (given.notes().size() == 1 && given.symbol() == null
                        ? Phrase.sentence("{0} is no note of it.", named)
                        : Phrase.sentence("{0} is another chord.", named))
                .then(rootReason);
    }

    @Override
    List<Phrase> helpFrom(Tones given) {
        NoteDifference notes = difference(given);
        boolean rootRight = given.symbol() == null
                ? notes.kept().contains(chord.root())
                : given.symbol().root().equals(chord.root());
        if (!rootRight || soundsRight(given)) {
            return List.of();
        }
        if (notes.missing().isEmpty() && notes.strange().isEmpty()) {
            return List.of(
                    Phrase.sentence("The chord is right. Look at its lowest note."),
                    Phrase.sentence("The figures count from the bass up; turn them round until the root is lowest."));
        }
        return given.symbol() == null
                ? ChordDifference.towards(chord, notes)
                : ChordDifference.towards(
                        chord, new NoteDifference(List.of(chord.root()), notes.missing(), notes.strange()));
    }
}
