package monochord.practice.answer;

import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.practice.Grade;
import monochord.practice.Misconception;
import monochord.practice.Verdict;
import monochord.practice.reading.AnswerText;
import monochord.practice.reading.ChordReading;
import monochord.theory.Chord;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;

/** Judges a chord named with its bass: {@code C/E}, or {@code C first inversion}. */
public final class InversionRubric extends Rubric<Chord> {
    private static final String WHAT = "a chord with its bass";
    private static final Pattern IN_WORDS =
            Pattern.compile("(?i)(.*?)[ ,]*(?:in )?(root position|(first|1st|second|2nd|third|3rd) inversion)");
    private static final Pattern OVER = Pattern.compile("(?i) +(?:over|with) +| */ *");

    /** @param chord with one of its own tones in the bass */
    public InversionRubric(Chord chord, Supplier<List<Slip<Chord>>> slips) {
        super(chord, slips);
    }

    /** A slash chord that is not the answer. */
    public static String exampleFor(Chord chord) {
        Chord first = Chord.parse("F/A");
        return (chord.equals(first) ? Chord.parse("G/B") : first).write(Signs.MUSIC);
    }

    @Override
    Chord read(String text) {
        String example = exampleFor(wanted());
        String plain = AnswerText.plain(text, WHAT, example);
        Matcher words = IN_WORDS.matcher(plain);
        try {
            return words.matches()
                    ? inverted(words)
                    : ChordReading.symbol(OVER.matcher(plain).replaceFirst("/"));
        } catch (Unreadable unreadable) {
            throw Unreadable.because(plain, 0, WHAT, "name the chord, and its lowest note behind a slash", example);
        }
    }

    private static Chord inverted(Matcher words) {
        Chord chord = ChordReading.symbol(words.group(1));
        if (words.group(3) == null) {
            return chord;
        }
        int place = switch (words.group(3).charAt(0)) {
            case 'f', 'F', '1' -> 1;
            case 's', 'S', '2' -> 2;
            default -> 3;
        };
        List<NoteName> tones = chord.tones();
        if (place >= tones.size()) {
            throw Unreadable.because(words.group(), 0, WHAT, "the chord has no such inversion", "F/A");
        }
        return chord.over(tones.get(place));
    }

    @Override
    String write(Chord answer) {
        return answer.toString();
    }

    @Override
    boolean same(Chord one, Chord other) {
        return one.equals(other);
    }

    /** The same notes under another root, such as a sixth chord for a seventh chord. */
    @Override
    boolean isAlso(Chord given) {
        return given.soundsLike(wanted())
                && given.bass().equals(wanted().bass())
                && given.tones().containsAll(wanted().tones());
    }

    @Override
    Verdict acceptAlso(Chord given) {
        return verdict(
                Grade.REMARK,
                "Yes, " + Say.chord(given) + " has these notes. In thirds they stand on " + Say.note(wanted().root())
                        + ": " + Say.chord(wanted()) + ".");
    }

    @Override
    Verdict accept(Chord given) {
        return verdict(
                Grade.RIGHT,
                "Yes: " + Say.chord(given) + ", " + Say.note(given.root()) + " with " + Say.note(given.bass())
                        + " in the bass.");
    }

    @Override
    Grade grade(Chord given) {
        boolean near = given.root().equals(wanted().root()) || given.tones().equals(wanted().tones());
        return near ? Grade.NEARLY : Grade.WRONG;
    }

    @Override
    boolean soundsRight(Chord given) {
        return given.soundsLike(wanted());
    }

    @Override
    Verdict otherwise(Chord given) {
        String thirds = "Stacked in thirds the notes are " + Say.row(wanted().tones()) + ".";
        if (soundsRight(given)) {
            return verdict(Grade.NEARLY, Misconception.SPELLED_BY_SOUND, "The right keys under other names. " + thirds);
        }
        boolean root = given.root().equals(wanted().root());
        return verdict(
                grade(given),
                root ? Misconception.WRONG_QUALITY : Misconception.WRONG_DEGREE,
                (root ? "The root is right. " : Say.chord(given) + " has other notes. ") + thirds);
    }
}
