package monochord.practice.answer;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.practice.reading.ChordReading;
import monochord.practice.reading.Tones;
import monochord.theory.Chord;
import monochord.theory.note.Clause;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** Judges a chord, answered by its symbol or its notes. */
public final class ChordRubric extends Rubric<Tones> {
    private static final Clause LETTERS = Clause.byNaming(
            "notes are the letters A to G with b or #, and a symbol begins with one",
            "notes are the letters A to H with is or es, and a symbol begins with one",
            "notes are the syllables Do to Si with b or #, and a symbol begins with one");
    private static final Pattern DEGREE = Pattern.compile("[b#♭♯]*(?:[1-7]|[IViv]+).*");

    private final Chord chord;
    private final boolean spelling;
    private final String rootReason;
    private final Chord alternative;
    private final String remark;

    private ChordRubric(
            Chord chord,
            Chord alternative,
            String remark,
            boolean spelling,
            String rootReason,
            Supplier<List<Slip<Tones>>> slips) {
        super(Tones.of(chord), slips);
        this.chord = chord;
        this.alternative = alternative;
        this.remark = remark;
        this.spelling = spelling;
        this.rootReason = rootReason;
    }

    /** @param rootReason a sentence that leads to the root */
    public static ChordRubric named(Chord chord, String rootReason, Supplier<List<Slip<Tones>>> slips) {
        return new ChordRubric(chord, null, "", false, rootReason, slips);
    }

    /** @param alternative a chord on the same degree that is as customary in this key, or null */
    public static ChordRubric named(
            Chord chord, Chord alternative, String rootReason, Supplier<List<Slip<Tones>>> slips) {
        String remark = alternative == null
                ? ""
                : "Yes, " + Say.chord(alternative) + " stands there too when the seventh of the minor scale is "
                        + "moved. Here I had " + Say.chord(chord) + " in mind.";
        return new ChordRubric(chord, alternative, remark, false, rootReason, slips);
    }

    /** The chord's symbol was given and its notes are wanted. */
    public static ChordRubric spelled(Chord chord, Supplier<List<Slip<Tones>>> slips) {
        return spelled(chord, null, "", slips);
    }

    /**
     * @param alternative another chord that the symbol is customarily read as, or null
     * @param remark what is said to it
     */
    public static ChordRubric spelled(
            Chord chord, Chord alternative, String remark, Supplier<List<Slip<Tones>>> slips) {
        String root = "The root is " + Say.note(chord.root()) + ".";
        return new ChordRubric(chord, alternative, remark, true, root, slips);
    }

    @Override
    Tones read(String text) {
        String what = spelling ? "a row of notes" : "a chord symbol or a row of notes";
        String example = spelling ? example("Eb G Bb", "D F# A") : example("Ebm", "F#m");
        Tones given = read(AnswerText.plain(text, what, example), what, example);
        if (spelling && given.symbol() != null && same(given, wanted())) {
            throw Unreadable.because(text, 0, what, "that is the name of the chord; spell it, root first", example);
        }
        return given;
    }

    private static Tones read(String plain, String what, String example) {
        try {
            return ChordReading.read(plain, example);
        } catch (Unreadable unreadable) {
            boolean degree = DEGREE.matcher(plain).matches();
            Clause why = degree ? Clause.of("it says the degree; name the chord that stands there") : LETTERS;
            throw Unreadable.because(plain, 0, what, why, example);
        }
    }

    @Override
    String write(Tones answer) {
        boolean inNotes = spelling || answer.symbol() == null;
        return inNotes ? Tones.of(answer.notes()).write(Signs.ASCII) : answer.write(Signs.ASCII);
    }

    @Override
    boolean same(Tones one, Tones other) {
        return one.hasSameNotes(other);
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
        String notes = Say.row(wanted().notes());
        if (given.symbol() != null && !given.symbol().root().equals(chord.root())) {
            return verdict(
                    Grade.REMARK,
                    "Those are the notes, " + notes + "; by its root the chord is " + Say.chord(chord) + ".");
        } else if (given.symbol() != null
                && given.symbol().isInverted()
                && !given.symbol().bass().equals(chord.bass())) {
            return verdict(
                    Grade.REMARK, "Yes, " + Say.chord(chord) + ". With nothing else said, the root goes in the bass.");
        } else if (!given.notes().equals(wanted().notes())) {
            return verdict(Grade.REMARK, "Yes, these are the notes. From the root up it reads " + notes + ".");
        }
        return verdict(
                Grade.RIGHT,
                spelling ? "Yes: " + notes + "." : "Yes: " + Say.chord(chord) + ", which is " + notes + ".");
    }

    @Override
    Optional<Tones> bySound() {
        return Optional.of(Chart.print(chord).map(Tones::of).orElseGet(this::otherNames));
    }

    /** The root kept, every altered tone under its other name. */
    private Tones otherNames() {
        return Tones.of(wanted().notes().stream()
                .map(note -> note.equals(chord.root()) ? note : otherName(note))
                .toList());
    }

    private static NoteName otherName(NoteName note) {
        return note.alteration() == 0 ? note : note.respelled();
    }

    @Override
    boolean soundsRight(Tones given) {
        return given.soundsLike(wanted());
    }

    @Override
    Grade grade(Tones given) {
        long kept = given.notes().stream().filter(chord::holds).count();
        NoteName root =
                given.symbol() != null ? given.symbol().root() : given.notes().get(0);
        boolean oneOff =
                given.notes().size() - kept <= 1 && wanted().notes().size() - kept <= 1 && root.equals(chord.root());
        return oneOff ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    Verdict otherwise(Tones given) {
        if (soundsRight(given)) {
            return spelledBySound(given);
        }
        List<NoteName> kept = given.notes().stream().filter(chord::holds).toList();
        List<NoteName> missing = Difference.without(wanted().notes(), kept);
        List<NoteName> strange = Difference.without(given.notes(), kept);
        if (kept.isEmpty() || missing.size() > 1 && isElsewhere(given, kept)) {
            return verdict(Grade.WRONG, Misconception.WRONG_DEGREE, elsewhere(given));
        } else if (strange.isEmpty()) {
            return verdict(oneOff(missing), Misconception.MISSING_NOTE, ChordDifference.missing(chord, kept, missing));
        } else if (missing.isEmpty()) {
            return verdict(oneOff(strange), Misconception.EXTRA_NOTE, ChordDifference.extra(strange));
        }
        return verdict(
                grade(given), Misconception.WRONG_QUALITY, ChordDifference.replace(chord, kept, strange, missing));
    }

    /** A chord on another root, by its name or for want of the right one, whatever else the two share. */
    private boolean isElsewhere(Tones given, List<NoteName> kept) {
        boolean otherRoot = given.symbol() != null && !given.symbol().root().equals(chord.root());
        return otherRoot || !kept.contains(chord.root());
    }

    private static Grade oneOff(List<NoteName> notes) {
        return notes.size() == 1 ? Grade.NEARLY : Grade.WRONG;
    }

    private Verdict spelledBySound(Tones given) {
        String chart = given.notes().contains(chord.root()) ? "" : chartName();
        NoteName first = Difference.without(given.notes(), wanted().notes()).get(0);
        NoteName due =
                wanted().notes().stream().filter(first::soundsLike).findFirst().orElse(chord.root());
        return verdict(
                Grade.NEARLY,
                Misconception.SPELLED_BY_SOUND,
                "The right keys, the wrong letters. Where you have " + Say.note(first) + ", some kind of "
                        + due.letter() + " is due." + chart);
    }

    private String chartName() {
        return Chart.print(chord)
                .map(printed -> " A chart may print " + Say.chord(printed) + "; asked to spell it, keep the letters.")
                .orElse("");
    }

    private String elsewhere(Tones given) {
        String named = given.symbol() != null ? Say.chord(given.symbol()) : Say.row(given.notes());
        return named + " is another chord. " + rootReason;
    }
}
