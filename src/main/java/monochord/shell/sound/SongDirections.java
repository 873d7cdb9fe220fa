package monochord.shell.sound;

import monochord.score.PlayingStyle;
import monochord.song.SongHead;
import monochord.sound.Directions;
import monochord.sound.Performance;

/** How a song is played where nobody says otherwise: at its own tempo, in the style of its feel, metre and tempo. */
public final class SongDirections {
    private SongDirections() {}

    public static Directions of(SongHead head, Directions usual) {
        PlayingStyle style = PlayingStyle.of(head);
        int tempo = Math.max(Performance.SLOWEST, Math.min(Performance.FASTEST, head.tempo()));
        Directions inTempo = head.tempo() > 0 ? usual.at(tempo) : usual;
        return inTempo.as(style.pattern()).inSwing(style.swung());
    }
}
