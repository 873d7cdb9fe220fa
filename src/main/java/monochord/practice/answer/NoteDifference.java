package monochord.practice.answer;

import java.util.List;
import monochord.text.Phrase;
import monochord.theory.note.NoteName;

/**
 * What differs between the notes that were typed and those that are due, found once: the verdict, the reason and the next
 * hint all speak of it.
 *
 * @param kept typed and due, in the order of the right answer
 * @param missing due and not typed, in that order
 * @param strange typed and not due, in the order in which they were typed
 */
public record NoteDifference(List<NoteName> kept, List<NoteName> missing, List<NoteName> strange) {
    static NoteDifference of(List<NoteName> given, List<NoteName> due) {
        return new NoteDifference(
                due.stream().filter(given::contains).toList(),
                due.stream().filter(note -> !given.contains(note)).toList(),
                given.stream().filter(note -> !due.contains(note)).toList());
    }

    /** {@code F and A are right}: of notes that were typed and are due. */
    public static Phrase areRight(List<NoteName> notes) {
        return Phrase.counted(notes.size(), "{0} is right", "{0} are right", Phrase.list(notes));
    }

    /** The same as a sentence; nothing where nothing is right. */
    Phrase confirmed() {
        return kept.isEmpty() ? Phrase.NOTHING : Phrase.sentence("{0}.", areRight(kept));
    }

    /** Whether one note of the right answer is missing, or replaced by one other, and no more. */
    boolean isOne() {
        return missing.size() <= 1 && strange.size() <= 1;
    }

    static List<Integer> keys(List<NoteName> notes) {
        return notes.stream().map(NoteName::pitchClass).toList();
    }

    static boolean letterTwice(List<NoteName> notes) {
        return notes.stream().map(NoteName::letter).distinct().count() < notes.size();
    }
}
