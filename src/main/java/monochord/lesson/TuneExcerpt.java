package monochord.lesson;

import java.util.List;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Interval;

/**
 * Some bars of a tune that a lesson shows and plays: its notes, the chords under them and the words.
 *
 * @param title of the song
 * @param place in it, such as {@code Verse, bars 1 to 4}
 * @param key in which it stands
 * @param tempo beats a minute; 0 where its file says none
 * @param words a syllable for each note of the melody, empty where none is sung; none at all where there are no words
 */
public record TuneExcerpt(
        String title, Phrase place, Key key, int tempo, Melody melody, Progression chords, List<String> words) {
    /** An interval of more half steps than this is turned round, so that a tune stays near where it was. */
    private static final int FARTHEST = 6;

    /** @throws IllegalArgumentException if there are words, and not as many as notes */
    public TuneExcerpt {
        words = List.copyOf(words);
        if (!words.isEmpty() && words.size() != melody.notes().size()) {
            throw new IllegalArgumentException(
                    words.size() + " syllables for " + melody.notes().size() + " notes");
        }
    }

    /**
     * As a learner in a major key meets it: in that key, or where the tune is in minor, in the relative minor, whose notes
     * are those of the key. Tune and chords go the nearer way, at most six half steps.
     */
    public TuneExcerpt in(Key major) {
        Key target = key.isMinor() ? major.relative() : major;
        Interval up = key.tonic().to(target.tonic());
        Interval way = up.semitones() > FARTHEST ? up.minus(Interval.OCTAVE) : up;
        return new TuneExcerpt(title, place, target, tempo, melody.plus(way), chords.in(target), words);
    }

    /** With other chords under the same notes. */
    public TuneExcerpt over(Progression others) {
        return new TuneExcerpt(title, place, key, tempo, melody, others, words);
    }
}
