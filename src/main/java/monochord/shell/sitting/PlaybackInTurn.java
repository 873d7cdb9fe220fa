package monochord.shell.sitting;

import java.util.List;
import java.util.Optional;
import monochord.harmony.Music;
import monochord.lesson.TuneExcerpt;
import monochord.shell.playback.Playable;
import monochord.shell.sound.PlayAnswer;
import monochord.sound.Directions;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.course.TuneAnswer;

/** Plays one thing, or several one after the other with a breath between, equally loud, to be compared. */
final class PlaybackInTurn {
    private PlaybackInTurn() {}

    static Answer play(List<Music> music, Key key, Sitting sitting) {
        return play(music, key, sitting.stage().directions(), sitting);
    }

    /** @param tempo beats a minute */
    static Answer play(List<Music> music, Key key, int tempo, Sitting sitting) {
        return play(music, key, sitting.stage().directions().at(tempo), sitting);
    }

    /** Shows a tune and plays it over its chords, at its own tempo where it has one. */
    static Answer play(TuneExcerpt tune, Sitting sitting) {
        Directions directions = sitting.stage().directions();
        Playable take = Playable.of(tune.melody(), Optional.of(tune.chords()), tune.key())
                .titled(Phrase.typed(tune.title()));
        return Answers.of(
                new TuneAnswer(tune), play(take, tune.tempo() > 0 ? directions.at(tune.tempo()) : directions, sitting));
    }

    private static Answer play(List<Music> music, Key key, Directions directions, Sitting sitting) {
        List<Playable> takes = music.stream().map(one -> Playable.of(one, key)).toList();
        return takes.size() > 1
                ? new AbComparison(takes, directions).listened(sitting)
                : play(takes.get(0), directions, sitting);
    }

    private static Answer play(Playable take, Directions directions, Sitting sitting) {
        PlaybackState stage = sitting.stage();
        stage.remember(take, directions);
        Phrase remark = stage.ear().play(directions.perform(take.piece(), take.key()));
        return new PlayAnswer(List.of(take.title()), directions, remark);
    }
}
