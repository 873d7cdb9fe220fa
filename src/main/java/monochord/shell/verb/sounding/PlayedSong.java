package monochord.shell.verb.sounding;

import java.util.List;
import java.util.Optional;
import monochord.score.BarGrid;
import monochord.score.HeardPart;
import monochord.score.SongScore;
import monochord.shell.playback.Playable;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.SentenceKey;
import monochord.shell.sitting.OpenSong;
import monochord.shell.sitting.Sitting;
import monochord.shell.sound.SongDirections;
import monochord.song.Song;
import monochord.song.SongMetre;
import monochord.song.SongMusic;
import monochord.song.SongPlace;
import monochord.sound.Directions;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.Unreadable;

/**
 * The open song, or a place in it, as it is played: repeats and endings played out, at its tempo, in a style that fits.
 *
 * @param directions before what the sentence says
 */
record PlayedSong(Playable take, HeardPart part, Directions directions) {
    private static final String OF = "(?i)\\s+of\\s.*";
    private static final int HALF_AN_OCTAVE = 6;

    /** None where the sentence names no place of the song, or another row of chords for its tune. */
    static Optional<PlayedSong> of(Sentence sentence, Sitting sitting) {
        OpenSong open = sitting.song();
        boolean isNamed = open.isWhole() || open.place().isPresent();
        if (!isNamed || sentence.clause(PlayVerb.OVER).isPresent()) {
            return Optional.empty();
        }
        Song song = open.song().orElseThrow();
        SongMusic.Timeline music = open.place()
                .map(place -> place.played(song))
                .orElseGet(() -> song.music().played());
        if (music.notes().isEmpty() && music.chords().isEmpty()) {
            throw Unreadable.because(
                    sentence.body().text(), 0, "something to play", "no notes and no chords stand there", "play verse");
        }
        Key key = sentence.clause("in").isPresent()
                ? SentenceKey.of(sentence, sitting)
                : song.head().key();
        Playable take = take(music.plus(up(song.head().key(), key)), song.head().metre(), sentence, key)
                .titled(title(open.place(), song, key));
        return Optional.of(new PlayedSong(
                take,
                part(sentence.body().text()),
                SongDirections.of(song.head(), sitting.stage().directions())));
    }

    private static Interval up(Key from, Key to) {
        Interval up = from.tonic().to(to.tonic());
        return up.semitones() > HALF_AN_OCTAVE ? up.minus(Interval.OCTAVE) : up;
    }

    private static Playable take(SongMusic.Timeline music, SongMetre metre, Sentence sentence, Key key) {
        SongScore score = SongScore.of(music, metre);
        BarGrid bars = score.piece().metre();
        return new Playable(
                Phrase.NOTHING,
                sentence.clause(PlaybackOptions.METRE).isPresent()
                        ? score.piece().in(PlaybackOptions.metre(sentence).after(bars.pickup()))
                        : score.piece(),
                key,
                music.chords().stream().map(SongMusic.ChordChange::chord).toList());
    }

    private static Phrase title(Optional<SongPlace> place, Song song, Key key) {
        Phrase name =
                place.map(SongPlace::phrase).orElse(Phrase.typed(song.head().title()));
        SongMetre metre = song.head().metre();
        return List.of(SongMetre.COMMON, SongMetre.FREE).contains(metre)
                ? Phrase.of("{0} in {1}", name, key)
                : Phrase.of("{0} in {1}, in {2},", name, key, Phrase.typed(metre.toString()));
    }

    /** What stands before {@code of}, where that is a part. */
    private static HeardPart part(String text) {
        return HeardPart.named(text.replaceFirst(OF, ""))
                .filter(part -> text.matches(".*" + OF))
                .orElse(HeardPart.BOTH_HANDS);
    }
}
