package monochord.practice.skill.ear;

import static monochord.practice.Misconception.EXTRA_NOTE;
import static monochord.practice.Misconception.FIFTH_MISHEARD;
import static monochord.practice.Misconception.MISSING_NOTE;
import static monochord.practice.Misconception.THIRD_KEPT;
import static monochord.practice.Misconception.THIRD_MISHEARD;
import static monochord.practice.Misconception.WRONG_SEVENTH;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.practice.Misconception;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.note.NoteName;

/** What tells two kinds of chord on one root apart. */
record KindDifference(Chord wanted, Chord given) {
    static KindDifference of(Chord wanted, ChordKind given) {
        return new KindDifference(wanted, new Chord(wanted.root(), given));
    }

    /** The tone by which the second was heard for the first, if it is one alone. */
    Optional<Misconception> misconception() {
        if (due().size() > 1 || heard().size() > 1) {
            return Optional.empty();
        }
        boolean third = isSame(3);
        boolean fifth = isSame(5);
        boolean seventh = isSame(7);
        if (third && fifth && !seventh) {
            boolean both = has(wanted, 7) && has(given, 7);
            return Optional.of(both ? WRONG_SEVENTH : has(wanted, 7) ? MISSING_NOTE : EXTRA_NOTE);
        } else if (!third && fifth && seventh) {
            return Optional.of(has(wanted, 3) ? THIRD_MISHEARD : THIRD_KEPT);
        }
        return third && seventh && !fifth ? Optional.of(FIFTH_MISHEARD) : Optional.empty();
    }

    private boolean isSame(int number) {
        return wanted.kind().interval(number).equals(given.kind().interval(number));
    }

    private static boolean has(Chord chord, int number) {
        return chord.kind().interval(number).isPresent();
    }

    /** Which tones differ, seen from the second: {@code Yours has F♯ for F, a half step higher.} */
    Phrase inWords() {
        List<NoteName> due = due();
        List<NoteName> heard = heard();
        List<Phrase> said = new ArrayList<>();
        int pairs = Math.min(due.size(), heard.size());
        if (pairs == 1 && due.size() == heard.size()) {
            said.add(changed(heard.get(0), due.get(0)));
        } else if (pairs > 0) {
            said.add(Phrase.of(
                    "has {0} for {1}", Phrase.list(heard.subList(0, pairs)), Phrase.list(due.subList(0, pairs))));
        }
        if (due.size() > pairs) {
            said.add(Phrase.of("lacks {0}", Phrase.list(due.subList(pairs, due.size()))));
        }
        if (heard.size() > pairs) {
            said.add(Phrase.of("adds {0}", Phrase.list(heard.subList(pairs, heard.size()))));
        }
        return Phrase.sentence("Yours {0}.", Phrase.list(said));
    }

    private List<NoteName> due() {
        return without(wanted.tones(), given.tones());
    }

    private List<NoteName> heard() {
        return without(given.tones(), wanted.tones());
    }

    private static List<NoteName> without(List<NoteName> tones, List<NoteName> others) {
        return tones.stream().filter(tone -> !others.contains(tone)).toList();
    }

    private Phrase changed(NoteName heard, NoteName due) {
        int higher = half(heard) - half(due);
        Phrase size = MusicWords.halfStepsInWords(Math.abs(higher));
        return higher > 0
                ? Phrase.of("has {0} for {1}, {2} higher", heard, due, size)
                : Phrase.of("has {0} for {1}, {2} lower", heard, due, size);
    }

    private int half(NoteName tone) {
        return wanted.root().to(tone).withinOctave().semitones();
    }

    /** What of it was heard rightly, and then what to sing. */
    List<Phrase> help() {
        Phrase root = Phrase.sentence("Sing the root, then what lies above it, one note at a time.");
        boolean third = isSame(3) && has(wanted, 3);
        if (third && !isSame(5)) {
            return List.of(
                    Phrase.sentence("The third is right. Listen to the fifth."),
                    root,
                    Phrase.sentence("A perfect fifth rests; does this one?"));
        } else if (isSame(5) && !isSame(3)) {
            return List.of(
                    Phrase.sentence("The fifth is right. Listen to what lies between it and the root."),
                    root,
                    Phrase.sentence("Is it the bright third, the dark one, or a note beside the third?"));
        } else if (third && isSame(5)) {
            return List.of(
                    Phrase.sentence("The triad is right. Listen for what is added to it."),
                    Phrase.sentence("Count the notes you hear: three, or four?"),
                    Phrase.sentence(
                            "If there are four, the one under the octave tells: how far below it does it lie?"));
        }
        return List.of();
    }
}
