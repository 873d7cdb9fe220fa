package monochord.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import monochord.song.SongHead;
import monochord.song.SongMetre;
import monochord.theory.Key;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How hands play a song where nobody says how. Source: common practice, no source. */
class PlayingStyleTest {
    private static SongHead head(String metre, int tempo, String feel) {
        return new SongHead("", "", Key.parse("C"), SongMetre.parse(metre), tempo, feel);
    }

    @ParameterizedTest(name = "{0} at {1}, {2}")
    @CsvSource(delimiter = '|', textBlock = """
            4/4  | 0   |                        | BALLAD         | false
            4/4  | 72  |                        | BALLAD         | false
            4/4  | 104 |                        | PULSE          | false
            4/4  | 160 |                        | BASS_AND_CHORD | false
            4/4  | 140 | swing                  | WALKING        | true
            4/4  | 90  | a light shuffle        | WALKING        | true
            4/4  | 120 | straight eighths       | PULSE          | false
            4/4  | 120 | straight, no swing     | PULSE          | false
            4/4  | 120 | Bossa, straight        | BOSSA          | false
            4/4  | 76  | gospel push, swung     | PUSH           | true
            4/4  | 120 | off-beats              | OFF_BEATS      | false
            3/4  | 100 |                        | WALTZ          | false
            3/4  | 120 | jazz                   | WALTZ          | true
            3/4  | 120 | bossa                  | WALTZ          | false
            6/8  | 50  |                        | BROKEN         | false
            6/8  | 112 |                        | BASS_AND_CHORD | false
            6/8  | 60  | as a ballad            | BALLAD         | false
            2/4  | 100 |                        | BASS_AND_CHORD | false
            2/2  | 90  |                        | BASS_AND_CHORD | false
            none | 90  |                        | BLOCK          | false
            """)
    void aSongIsPlayedAsItsFeelItsMetreAndItsTempoSay(
            String metre, int tempo, String feel, Pattern pattern, boolean swung) {
        assertEquals(new PlayingStyle(pattern, swung), PlayingStyle.of(head(metre, tempo, feel == null ? "" : feel)));
    }

    /** Whatever the head says, the hands can play so in its bars. */
    @Test
    void theStyleFitsTheBars() {
        for (String metre :
                new String[] {"none", "1/4", "2/4", "3/4", "4/4", "5/4", "7/8", "6/8", "12/8", "3/2", "9/16"}) {
            for (Pattern pattern : Pattern.values()) {
                for (int tempo : new int[] {0, 40, 100, 200}) {
                    PlayingStyle style = PlayingStyle.of(head(metre, tempo, "swing, as " + pattern));
                    assertTrue(style.pattern().fits(SongScore.bars(SongMetre.parse(metre))), metre + " " + pattern);
                }
            }
        }
    }
}
