package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.note.NoteName;

/** What the voices can do through a change, as measured from the tones: at most one sentence. */
final class LeadingReasons {
    private LeadingReasons() {}

    static List<Phrase> of(Change change) {
        Optional<HalfStepLine> line = saysItself(change) ? Optional.empty() : HalfStepLine.of(change);
        return line.map(LeadingReasons::line).or(() -> held(change)).stream().toList();
    }

    /** A bass and a cliché are lines already; where a note falls or leans by the books, that has been said. */
    private static boolean saysItself(Change change) {
        return change.idiom().colour() == Colour.BASS
                || List.of(
                                LineIdioms.LINE_CLICHE,
                                LineIdioms.RISING_LINE,
                                LineIdioms.COMMON_TONE_DIMINISHED,
                                BorrowedIdioms.NEAPOLITAN)
                        .contains(change.idiom().name());
    }

    private static Phrase line(HalfStepLine line) {
        return line.isRising()
                ? Phrase.sentence("One voice can rise by half steps: {0}.", Phrase.row(line.notes()))
                : Phrase.sentence("One voice can fall by half steps: {0}.", Phrase.row(line.notes()));
    }

    /** Tones of the chord before that sound in all that come, and in the one behind where they do. */
    private static Optional<Phrase> held(Change change) {
        if (change.before() == null || change.idiom().colour() == Colour.SUSPENDED) {
            return Optional.empty();
        }
        List<NoteName> held = new ArrayList<>();
        for (NoteName tone : change.before().tones()) {
            boolean through = change.chords().stream().allMatch(event -> holds(event.chord(), tone));
            if (through && change.after() != null && holds(change.after(), tone)) {
                held.add(tone);
            }
        }
        return held.isEmpty()
                ? Optional.empty()
                : Optional.of(Phrase.counted(
                        held.size(),
                        "{0} can be held right through.",
                        "{0} can be held right through.",
                        Phrase.list(held)));
    }

    private static boolean holds(Chord chord, NoteName tone) {
        return chord.tones().stream().anyMatch(tone::soundsLike);
    }
}
