package monochord.score;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import monochord.song.SongHead;
import monochord.song.SongMetre;

/**
 * How hands play a song where nobody says how: by what its head says of its feel, else by its metre and its tempo. Common
 * practice, no source.
 *
 * @param pattern how the hands strike
 * @param swung whether eighths swing
 */
public record PlayingStyle(Pattern pattern, boolean swung) {
    private static final Set<String> SWINGS = Set.of("swing", "swung", "shuffle", "shuffled", "jazz");
    private static final Set<String> STRAIGHT = Set.of("straight", "even", "no", "not");
    /** Beats a minute up to which a song in quarters is slow, and up to which it is at a medium pace. */
    private static final int SLOW = 88;

    private static final int MEDIUM = 120;
    /** Dotted quarters a minute up to which a song in 6/8 is slow. */
    private static final int SLOW_IN_THREES = 72;

    public static PlayingStyle of(SongHead head) {
        String feel = head.swing().toLowerCase(Locale.ROOT);
        List<String> words = List.of(feel.split("[^a-z]+"));
        boolean swung =
                words.stream().anyMatch(SWINGS::contains) && words.stream().noneMatch(STRAIGHT::contains);
        BarGrid bars = SongScore.bars(head.metre());
        return new PlayingStyle(
                named(feel)
                        .filter(pattern -> pattern.fits(bars))
                        .orElseGet(() -> swung && bars.hasQuarters(4) ? Pattern.WALKING : usual(head)),
                swung);
    }

    /** A pattern that is named among the words. */
    private static Optional<Pattern> named(String feel) {
        String words = " " + feel.replaceAll("[^a-z]+", " ") + " ";
        return Arrays.stream(Pattern.values())
                .filter(pattern -> words.contains(" " + pattern.toString().replace('-', ' ') + " "))
                .findFirst();
    }

    private static Pattern usual(SongHead head) {
        SongMetre metre = head.metre();
        int tempo = head.tempo();
        if (metre.isFree()) {
            return Pattern.BLOCK;
        } else if (metre.isCompound()) {
            return tempo <= SLOW_IN_THREES ? Pattern.BROKEN : Pattern.BASS_AND_CHORD;
        } else if (SongScore.bars(metre).hasQuarters(3)) {
            return Pattern.WALTZ;
        } else if (SongScore.bars(metre).hasQuarters(4) && metre.value() == 4) {
            return tempo <= SLOW ? Pattern.BALLAD : tempo <= MEDIUM ? Pattern.PULSE : Pattern.BASS_AND_CHORD;
        }
        return Pattern.BASS_AND_CHORD;
    }
}
