package monochord.shell.playback;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.harmony.Music;
import monochord.harmony.Progression;
import monochord.harmony.contrast.ComparedVersion;
import monochord.harmony.melody.Melody;
import monochord.score.Arrangement;
import monochord.score.BarGrid;
import monochord.score.Piece;
import monochord.score.Score;
import monochord.score.Sounding;
import monochord.score.TimedVoicing;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Scale;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import monochord.view.Title;

/**
 * Something that can be played, and what it is called.
 *
 * @param chords those of the piece, in order, each once though it may come again; none for a line alone
 */
public record Playable(Phrase title, Piece piece, Key key, List<Chord> chords) {
    public Playable {
        chords = List.copyOf(chords);
    }

    public static Playable of(Music music, Key key) {
        return of(music, key, BarGrid.COMMON);
    }

    public static Playable of(Music music, Key key, BarGrid metre) {
        Piece piece = Arrangement.piece(music, metre);
        if (music instanceof Music.OneProgression one) {
            return new Playable(
                    Title.of(music),
                    piece,
                    one.progression().key(),
                    one.progression().chords());
        }
        List<Chord> chords = music instanceof Music.OneChord one ? List.of(one.chord()) : List.of();
        Key own = music instanceof Music.OneScale one ? key(one.scale()).orElse(key) : key;
        return new Playable(Title.of(music), piece, own, chords);
    }

    /** The key with a scale's signature, on the scale's tonic if there is one there; none if a scale has no signature. */
    private static Optional<Key> key(Scale scale) {
        Stream<Key> onTonic = Stream.of(Key.major(scale.tonic()), Key.minor(scale.tonic()));
        return scale.signature().isEmpty()
                ? Optional.empty()
                : Stream.concat(onTonic, Key.majorKeys().stream())
                        .filter(key -> key.signature() == scale.signature().getAsInt())
                        .findFirst();
    }

    /** A tune, alone or over chords. */
    public static Playable of(Melody melody, Optional<Progression> chords, Key key) {
        Piece piece = chords.map(under -> Piece.of(melody, under)).orElseGet(() -> Piece.of(melody));
        return new Playable(
                Title.of(melody, chords),
                piece,
                chords.map(Progression::key).orElse(key),
                chords.map(Progression::chords).orElse(List.of()));
    }

    /** A progression in these voicings. */
    public static Playable of(Progression progression, List<TimedVoicing> voicings) {
        return new Playable(
                Title.of(progression), Piece.of(voicings, BarGrid.COMMON), progression.key(), progression.chords());
    }

    public Playable titled(Phrase other) {
        return new Playable(other, piece, key, chords);
    }

    public Playable playing(Piece other) {
        return new Playable(title, other, key, chords);
    }

    /** What can be said about it beside another version. */
    public ComparedVersion side() {
        List<TimedVoicing> voicings = piece.voicings();
        List<Chord> each = chords.isEmpty()
                ? List.of()
                : IntStream.range(0, voicings.size())
                        .mapToObj(i -> chords.get(i % chords.size()))
                        .toList();
        List<Beats> lengths = Stream.concat(
                        voicings.stream().map(TimedVoicing::beats),
                        line().stream().map(Sounding::length))
                .toList();
        return new ComparedVersion(each, voicings.stream().map(Playable::keys).toList(), pitches(line()), lengths);
    }

    private static List<Pitch> keys(TimedVoicing voicing) {
        return voicing.hands().pitches();
    }

    /** What is struck alone: the chord that notes end in is theirs once more. */
    private List<Sounding> line() {
        List<Sounding> all = piece.line().map(Score::soundings).orElse(List.of());
        return IntStream.range(0, all.size())
                .filter(i -> (i == 0 || !together(all, i - 1)) && (i == all.size() - 1 || !together(all, i)))
                .mapToObj(all::get)
                .toList();
    }

    /** Whether this one and the next are struck together. */
    private static boolean together(List<Sounding> inOrder, int i) {
        return inOrder.get(i).start().equals(inOrder.get(i + 1).start());
    }

    private static List<Pitch> pitches(List<Sounding> soundings) {
        return soundings.stream().map(Sounding::pitch).toList();
    }
}
