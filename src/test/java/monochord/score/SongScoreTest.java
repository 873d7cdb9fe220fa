package monochord.score;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import monochord.song.Song;
import monochord.song.SongReader;
import monochord.song.abc.AbcBook;
import monochord.song.abc.AbcReader;
import org.junit.jupiter.api.Test;

/** A song as it is played: where its chords and its tune stand. */
class SongScoreTest {
    private static Song abc(String music) {
        AbcBook book = AbcBook.of("X:1\nT:One\nM:3/4\nL:1/4\nK:C\n" + music + "\n");
        return AbcReader.read(book, book.tunes().get(0));
    }

    private static List<Sounding> sounds(Song song, Pattern pattern) {
        return SongScore.of(song.music().played(), song.head().metre())
                .piece()
                .as(pattern, 1)
                .soundings();
    }

    /** {@code start note} of what the left hand has. */
    private static List<String> basses(Song song, Pattern pattern) {
        return sounds(song, pattern).stream()
                .filter(one -> one.hand() == Hand.LEFT)
                .map(one -> one.start() + " " + one.pitch().name())
                .toList();
    }

    /** The waltz has its basses on the first beat of each bar, whatever comes before it. */
    @Test
    void theBarsBeginBehindThePickup() {
        assertEquals(List.of("1 C", "4 G"), basses(abc("G|\"C\"c2 c|\"G\"B2 B|"), Pattern.WALTZ));
    }

    /** A chord in the pick-up is struck there. */
    @Test
    void aChordInThePickupSounds() {
        assertEquals(List.of("0 G", "1 C", "4 G"), basses(abc("\"G7\"G|\"C\"c2 c|\"G\"B2 B|"), Pattern.WALTZ));
    }

    /** Before the first chord only the tune sounds. */
    @Test
    void chordsThatBeginLaterWait() {
        for (Pattern pattern : List.of(Pattern.WALTZ, Pattern.BLOCK, Pattern.BALLAD)) {
            assertEquals("3 C", basses(abc("c2 c|\"C\"c2 c|"), pattern).get(0), pattern.toString());
        }
        assertEquals(
                "3 C", basses(abc("c2 c|\"C\"c2 c|\"G\"B2 B|"), Pattern.WALKING).get(0));
    }

    /** A part that is played twice sounds twice, with its endings. */
    @Test
    void repeatsArePlayedOut() {
        assertEquals(
                List.of("0 C", "3 G", "6 C", "9 F"),
                basses(abc("|:\"C\"c2 c|1\"G\"B2 B:|2\"F\"A2 A|]"), Pattern.WALTZ));
    }

    @Test
    void aTuneWithoutChordsSoundsAlone() {
        assertEquals(
                List.of("0 C5 2", "2 C5 1"),
                sounds(abc("c2 c|"), Pattern.BLOCK).stream()
                        .map(one -> one.start() + " " + one.pitch() + " " + one.length())
                        .toList());
    }

    /** A section that comes again is played again. */
    @Test
    void aSectionComesAgain() {
        Song song = SongReader.read(
                "---\ntitle: A\nkey: C\nmetre: 3/4\n---\n\n## A\n\n```chords\nC\n```\n\n## B\n\n```chords\nF\n```\n\n## A\n");
        assertEquals(List.of("0 C", "3 F", "6 C"), basses(song, Pattern.WALTZ));
    }
}
