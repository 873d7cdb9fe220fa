package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import monochord.harmony.MusicText;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.score.Arrangement;
import monochord.score.BarGrid;
import monochord.score.Pattern;
import monochord.score.Piece;
import monochord.sound.file.MidiFile;
import monochord.theory.Key;
import org.junit.jupiter.api.Test;

/**
 * Source: Standard MIDI-File Format Spec. 1.1 for time signatures (58: numerator, power of two, clocks a click, 32nds a
 * quarter); MIDI 1.0 for controllers 11 and 64, General MIDI for channel 10 (from memory).
 */
class DirectionsTest {
    private static final Key C = Key.parse("C");

    private static Piece chords(String text) {
        return Arrangement.piece(MusicText.read(text, C));
    }

    private static MidiWalk.File file(Directions directions, Piece piece) throws IOException {
        return MidiWalk.through(MidiFile.bytes(directions.perform(piece, C).sequence()));
    }

    private static List<String> of(MidiWalk.File file, int track, String pattern) {
        return file.track(track).stream()
                .filter(event -> event.matches(pattern))
                .toList();
    }

    /** Up a sixteenth of a beat before each change, down as much after it; in both hands. */
    @Test
    void thePedalIsChangedAtEachChord() throws IOException {
        MidiWalk.File file = file(Directions.USUAL.as(Pattern.BROKEN), chords("C F"));
        List<String> pedal = List.of("30: B0 40 7F", "930: B0 40 0", "990: B0 40 7F", "1890: B0 40 0");
        assertEquals(pedal, of(file, 1, ".* B0 40 .*"));
        assertEquals(pedal.stream().map(event -> event.replace("B0", "B1")).toList(), of(file, 2, ".* B1 40 .*"));
    }

    @Test
    void whatIsShortGoesWithoutPedal() throws IOException {
        assertEquals(List.of(), of(file(Directions.USUAL.as(Pattern.BASS_AND_CHORD), chords("C F")), 1, ".* B0 40 .*"));
    }

    /** One bar of clicks, the first higher; what follows is later by a bar. */
    @Test
    void aBarIsCountedBefore() throws IOException {
        MidiWalk.File file = file(Directions.USUAL.countedIn(true), chords("C"));
        assertEquals(
                List.of("0: 99 4C 46", "480: 99 4D 46", "960: 99 4D 46", "1440: 99 4D 46"), of(file, 3, ".* 99 .*"));
        assertEquals(List.of("1920: 91 30 4A"), of(file, 2, ".* 91 .*"));
        assertEquals(List.of("1920: FF01 43"), of(file, 0, ".*FF01.*"));
    }

    @Test
    void inThreeThereAreThreeClicksAndASignature() throws IOException {
        Piece waltz = Arrangement.piece(MusicText.read("| C | G7 |", C), BarGrid.parse("3/4"));
        MidiWalk.File file = file(Directions.USUAL.countedIn(true).as(Pattern.BASS_AND_CHORD), waltz);
        assertEquals(List.of("0: FF58 3 2 18 8"), of(file, 0, ".*FF58.*"));
        assertEquals(3, of(file, 3, ".* 99 .*").size());
    }

    /** A pick-up of one beat: a bar of 1/4 first; counted in, seven clicks of two bars of four come before it. */
    @Test
    void aPickUpHasABarOfItsOwn() throws IOException {
        Piece song = Piece.of(Melody.parse("G4 | C5:4 |"), Progression.parse("| C |", C));
        assertEquals(
                List.of("0: FF58 1 2 18 8", "480: FF58 4 2 18 8"), of(file(Directions.USUAL, song), 0, ".*FF58.*"));
        MidiWalk.File counted = file(Directions.USUAL.countedIn(true), song);
        assertEquals(List.of("0: FF58 4 2 18 8"), of(counted, 0, ".*FF58.*"));
        assertEquals(7, of(counted, 4, ".* 99 .*").size());
        assertEquals("3360: 92 43 5C", of(counted, 3, ".* 92 .*").get(0));
    }

    /** Common practice, no source: bass 74, inner voices 66, top 80; under a tune at 92 the top steps back to 66. */
    @Test
    void theTuneIsLouderThanItsChords() throws IOException {
        Piece song = Piece.of(Melody.parse("C6:2"), Progression.parse("C", C));
        MidiWalk.File file = file(Directions.USUAL, song);
        assertEquals(List.of("0: 90 3C 42", "0: 90 40 42", "0: 90 43 42"), of(file, 1, ".* 90 .*"));
        assertEquals(List.of("0: 91 30 4A"), of(file, 2, ".* 91 .*"));
        assertEquals(List.of("0: 92 54 5C"), of(file, 3, ".* 92 .*"));
        MidiWalk.File broken = file(Directions.USUAL.as(Pattern.BROKEN), chords("C"));
        assertTrue(of(broken, 1, ".* 90 .*").stream().allMatch(event -> event.endsWith(" 42")), "all inside");
        MidiWalk.File rolled = file(Directions.USUAL.as(Pattern.ROLLED), chords("C"));
        assertEquals(List.of("40: 90 3C 42", "80: 90 40 42", "120: 90 43 50"), of(rolled, 1, ".* 90 .*"));
    }

    @Test
    void eachHandHasItsOwnSound() throws IOException {
        MidiWalk.File file =
                file(Directions.USUAL.with(Patch.parse("acoustic bass"), Patch.parse("vibraphone")), chords("C"));
        assertEquals("0: C0 B", file.track(1).get(0));
        assertEquals("0: C1 20", file.track(2).get(0));
    }

    @Test
    void tellsHowLongItWouldLast() {
        assertEquals(1, Directions.USUAL.minutes(chords("C")));
        assertEquals(10, Directions.USUAL.at(20).times(50).minutes(chords("C")));
    }
}
