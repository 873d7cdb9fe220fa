package monochord.shell.verb.song;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import monochord.shell.sentence.Sentence;
import monochord.shell.sitting.Sitting;
import monochord.song.Song;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Interval;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.music.SongAnswer;

/** Puts the whole song into another key: the nearest way, or up or down as it is said. */
final class KeyChange {
    private static final String EXAMPLE = "change key to F";
    private static final Pattern WAY = Pattern.compile("(?i)(.*\\S)\\s+(up|down)");
    private static final int HALF_AN_OCTAVE = 6;

    private KeyChange() {}

    static Answer of(Sentence sentence, String to, String why, Sitting sitting) {
        Song song = sitting.song().song().orElseThrow();
        Sentence.SentencePart said = sentence.clause(to)
                .filter(part -> !part.isEmpty())
                .orElseThrow(() -> Unreadable.because(
                        sentence.whole(), sentence.whole().length(), "a change", "expected to and a key", EXAMPLE));
        Matcher way = WAY.matcher(said.text());
        String name = way.matches() ? way.group(1) : said.text();
        Key key = said.read(text -> key(name, song.head().key()));
        String which = way.matches() ? way.group(2).toLowerCase(java.util.Locale.ROOT) : "";
        if (key.equals(song.head().key()) && which.isEmpty()) {
            return SongAnswer.SongStatement.of(song, Phrase.sentence("It is in {0} already; nothing is changed.", key));
        }
        String because = sentence.clause(why).map(Sentence.SentencePart::text).orElse("");
        Song moved = song.moved(key, up(song.head().key(), key, which), because);
        sitting.settle(key);
        return ChangeVerb.changed(moved, sitting);
    }

    /** A tonic alone is the key of the song's own mode on it. */
    private static Key key(String text, Key now) {
        Key read = Key.parse(text);
        Key own = new Key(read.tonic(), now.mode());
        boolean isTonicAlone = text.strip().matches("[A-Ga-g](?:b{1,2}|#|x)?");
        if (!isTonicAlone && read.mode() != now.mode()) {
            throw Unreadable.because(
                    text, 0, "a key for this song", Clause.of("it stays in its mode: {0}", own), EXAMPLE);
        }
        return own;
    }

    /** From tonic to tonic, a tritone at most unless it is said which way. */
    static Interval up(Key from, Key to, String way) {
        Interval up = from.tonic().to(to.tonic());
        Interval octave = Interval.OCTAVE;
        boolean isSame = up.semitones() == 0;
        return switch (way) {
            case "up" -> isSame ? octave : up;
            case "down" -> up.minus(octave);
            default -> up.semitones() > HALF_AN_OCTAVE ? up.minus(octave) : up;
        };
    }
}
