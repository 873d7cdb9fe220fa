package monochord.shell.sitting;

import java.util.List;
import monochord.harmony.Music;
import monochord.score.Arrangement;
import monochord.score.Score;
import monochord.shell.answer.Answer;
import monochord.shell.answer.PlayAnswer;
import monochord.sound.Performance;
import monochord.theory.Beats;
import monochord.theory.Key;

/** Plays several things, one after the other, with a breath between them. */
final class InTurn {
    private static final Beats BREATH = Beats.of(2);

    private InTurn() {}

    static Answer play(List<Music> music, Key key, Sitting sitting) {
        return play(music, Performance.of(score(music)).in(key), sitting);
    }

    /** @param tempo beats a minute */
    static Answer play(List<Music> music, Key key, int tempo, Sitting sitting) {
        return play(music, Performance.of(score(music)).in(key).at(tempo), sitting);
    }

    private static Answer play(List<Music> music, Performance performance, Sitting sitting) {
        sitting.stage().remember(performance, music);
        return new PlayAnswer(music, performance.tempo(), sitting.stage().ear().play(performance));
    }

    private static Score score(List<Music> music) {
        Score score = Arrangement.of(music.get(0));
        for (Music next : music.subList(1, music.size())) {
            score = score.then(Score.rest(BREATH)).then(Arrangement.of(next));
        }
        return score;
    }
}
