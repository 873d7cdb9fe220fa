package monochord.practice.answer;

import java.util.List;
import monochord.theory.note.NoteName;

/** What two rows of notes do not share. */
final class Difference {
    private Difference() {}

    static List<NoteName> without(List<NoteName> notes, List<NoteName> others) {
        return notes.stream().filter(note -> !others.contains(note)).toList();
    }

    static List<Integer> keys(List<NoteName> notes) {
        return notes.stream().map(NoteName::pitchClass).toList();
    }

    static boolean letterTwice(List<NoteName> notes) {
        return notes.stream().map(NoteName::letter).distinct().count() < notes.size();
    }
}
