package monochord.shell.answer;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Progression;
import monochord.page.KeyboardPicture;
import monochord.page.KeyboardWords;
import monochord.page.Marked;
import monochord.page.ProgressionPicture;
import monochord.page.Role;
import monochord.page.StyledText;
import monochord.score.Arrangement;
import monochord.score.Comping;
import monochord.score.Grip;
import monochord.theory.Chord;
import monochord.theory.Pitch;
import monochord.theory.Scale;

/** The keyboard picture under an answer, after an empty line; in plain looks the same in words. */
final class Pictures {
    private static final int MOST_ROWS = 16;

    private Pictures() {}

    static StyledText chord(Chord chord, Look look) {
        return below(
                look.plain()
                        ? KeyboardWords.chord(chord, look.signs(), look.width())
                        : KeyboardPicture.chord(chord, look.signs(), look.pictureWidth()),
                look);
    }

    static StyledText scale(Scale scale, Look look) {
        return below(
                look.plain()
                        ? KeyboardWords.scale(scale, look.signs(), look.width())
                        : KeyboardPicture.scale(scale, look.signs(), look.pictureWidth()),
                look);
    }

    static StyledText pitches(List<Pitch> pitches, Look look) {
        List<Marked> marks =
                pitches.stream().map(pitch -> new Marked(pitch, Role.NONE)).toList();
        return below(
                look.plain()
                        ? KeyboardWords.pitches(marks, look.signs(), look.width())
                        : KeyboardPicture.pitches(marks, look.signs(), look.pictureWidth()),
                look);
    }

    /** The right hand's positions, each nearest to the one before; long progressions are not drawn. */
    static StyledText progression(Progression progression, Look look) {
        List<ChordRow> rows = ProgressionAnswer.rows(progression);
        if (rows.size() > MOST_ROWS) {
            return StyledText.EMPTY;
        }
        List<Grip> grips = Comping.grips(Arrangement.changes(progression));
        List<monochord.page.ChordRow> drawn = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            drawn.add(new monochord.page.ChordRow(
                    rows.get(i).numeral(), rows.get(i).chord(), grips.get(i).right()));
        }
        return below(
                look.plain()
                        ? KeyboardWords.progression(drawn, look.signs(), look.width())
                        : ProgressionPicture.of(drawn, look.signs(), look.pictureWidth()),
                look);
    }

    private static StyledText below(StyledText picture, Look look) {
        return look.plain()
                ? picture
                : StyledText.builder().gap().lines(picture).build();
    }
}
