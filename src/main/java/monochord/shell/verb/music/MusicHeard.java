package monochord.shell.verb.music;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import monochord.harmony.Music;
import monochord.harmony.MusicText;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.theory.note.Unreadable;

/**
 * Music whose key is asked for: a tune or chords, told apart by how it is written. Lengths make a tune ({@code E4:2}), and
 * so does whatever {@link MusicText} reads as notes, bar lines and rests left aside.
 *
 * @param remarks what is to be known about how it was read
 */
record MusicHeard(Optional<Melody> tune, Optional<Progression> chords, List<Phrase> remarks) {
    private static final String EXAMPLE = "key of Am F C G";

    /** Note names, the first with its octave; {@code C5 F5 G5} are chords without a third all the same. */
    private static final Pattern TUNE =
            Pattern.compile("(?=.*[346])[A-G](?:#|b|x)*[3-6](?:\\s+[A-G](?:#|b|x)*[3-6]?){2,}");

    /**
     * @param key in which numerals and numbers are read
     * @throws Unreadable if the text is neither a tune nor chords
     */
    static MusicHeard read(String text, Key key) {
        if (text.isEmpty()) {
            throw Unreadable.because(text, 0, "music", "expected chords or a tune", EXAMPLE);
        }
        if (text.indexOf(':') >= 0 || TUNE.matcher(text.strip()).matches()) {
            return ofTune(Melody.parse(text));
        }
        String bare = text.replaceAll("[|.]|\\b[rR]\\b", " ");
        if (bare.length() != bare.strip().length() || !bare.equals(text)) {
            return isNotes(bare, key) ? ofTune(Melody.parse(text)) : ofChords(Progression.parse(text, key), text);
        }
        Music music = MusicText.read(text, key);
        if (music instanceof Music.Notes notes) {
            return ofTune(Melody.parse(written(notes)));
        } else if (music instanceof Music.OneScale) {
            throw Unreadable.because(
                    text, 0, "music", "a scale names its key itself; expected chords or a tune", EXAMPLE);
        }
        return ofChords(Progression.parse(text, key), text);
    }

    private static boolean isNotes(String bare, Key key) {
        try {
            return !bare.isBlank() && MusicText.read(bare.strip(), key) instanceof Music.Notes;
        } catch (Unreadable chordsPerhaps) {
            return false;
        }
    }

    private static String written(Music.Notes notes) {
        return notes.pitches().isEmpty()
                ? notes.names().stream().map(NoteName::toString).collect(Collectors.joining(" "))
                : notes.pitches().stream().map(Pitch::toString).collect(Collectors.joining(" "));
    }

    private static MusicHeard ofTune(Melody tune) {
        return new MusicHeard(Optional.of(tune), Optional.empty(), List.of());
    }

    private static MusicHeard ofChords(Progression chords, String text) {
        List<Phrase> remarks = hangsOnKey(chords, text)
                ? List.of(Phrase.sentence("Numerals and numbers are read in {0}.", chords.key()))
                : List.of();
        return new MusicHeard(Optional.empty(), Optional.of(chords), remarks);
    }

    /** Whether numerals or numbers are among the chords, so that they would be others in another key. */
    static boolean hangsOnKey(Progression chords, String text) {
        Key other = Key.major(NoteName.at(chords.key().tonic().fifths() + 1));
        return !chords.chords().equals(Progression.parse(text, other).chords());
    }
}
