package monochord.practice.reading;

import java.util.List;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;

/**
 * A key signature as it was answered.
 *
 * @param count sharps, flats below zero; meaningless if the notes are no signature
 * @param notes the signs that were named, in that order; those of the signature if only a count was written
 */
public record Signature(int count, List<NoteName> notes) {
    private static final int MOST = 7;

    public Signature {
        notes = List.copyOf(notes);
    }

    /** The signature with so many sharps, or flats below zero. */
    public static Signature of(int count) {
        return new Signature(count, Key.major(NoteName.at(count)).signatureNotes());
    }

    /** These signs; sharps count up, flats down, whichever the first one is. */
    public static Signature of(List<NoteName> notes) {
        boolean flats = !notes.isEmpty() && notes.get(0).alteration() < 0;
        return new Signature(flats ? -notes.size() : notes.size(), notes);
    }

    /** Whether these signs stand in some signature, in whatever order. */
    public boolean isRegular() {
        return Math.abs(count) <= MOST && notes.containsAll(of(count).notes);
    }

    public boolean inOrder() {
        return Math.abs(count) <= MOST && notes.equals(of(count).notes);
    }

    /** {@code 2 sharps}, {@code 1 flat}, {@code none}. */
    @Override
    public String toString() {
        int size = Math.abs(count);
        String signs = count < 0 ? "flat" : "sharp";
        return size == 0 ? "none" : !isRegular() ? row(Signs.ASCII) : size + " " + signs + (size == 1 ? "" : "s");
    }

    private String row(Signs signs) {
        return String.join(" ", notes.stream().map(note -> note.write(signs)).toList());
    }
}
