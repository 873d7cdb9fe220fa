package monochord.shell.cell;

import java.util.List;
import monochord.harmony.Music;
import monochord.theory.Key;
import monochord.view.Answer;

/**
 * What came of a cell.
 *
 * @param plays what is now to be played, one after the other
 * @param shown the music that was shown last, or null
 */
public record Outcome(Answer answer, List<Play> plays, Music shown) {
    /**
     * Something that a cell wants heard.
     *
     * @param tempo beats a minute, or 0 where the cell did not say
     */
    public record Play(Music music, Key key, int tempo) {}

    public Outcome {
        plays = List.copyOf(plays);
    }

    static Outcome of(Answer answer) {
        return new Outcome(answer, List.of(), null);
    }
}
