package monochord.shell.answer;

import java.util.List;
import java.util.Optional;
import monochord.harmony.Music;
import monochord.page.Style;
import monochord.page.StyledText;
import monochord.theory.Signs;

/**
 * What is being played.
 *
 * @param music one thing, or several one after the other
 * @param tempo beats a minute
 * @param remark what the sound room has to say, or nothing
 */
public record PlayAnswer(List<Music> music, int tempo, String remark) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        for (Music one : music) {
            text.line((one == music.get(0) ? "Playing " : "then ") + what(one, look) + (one == last() ? "." : ","));
        }
        if (!remark.isEmpty()) {
            text.line(remark, Style.QUIET);
        }
        return text.build().in(look.signs()).wrapped(look.width());
    }

    private Music last() {
        return music.get(music.size() - 1);
    }

    private String what(Music music, Look look) {
        if (music instanceof Music.OneChord one) {
            return one.chord().write(Signs.MUSIC);
        } else if (music instanceof Music.OneScale one) {
            return one.scale().write(Signs.MUSIC);
        } else if (music instanceof Music.OneProgression one) {
            return one.progression().symbols(Signs.MUSIC) + " in "
                    + one.progression().key().write(Signs.MUSIC) + " at " + tempo;
        }
        return Words.joined(((Music.Notes) music).names(), " ", note -> note.write(Signs.MUSIC));
    }

    /** Whether there is a sound card is no matter of the music. */
    @Override
    public Optional<Answer> noted() {
        return Optional.of(new PlayAnswer(music, tempo, ""));
    }

    @Override
    public void json(Json json) {
        json.put("kind", "play").put("tempo", tempo).put("remark", remark);
    }
}
