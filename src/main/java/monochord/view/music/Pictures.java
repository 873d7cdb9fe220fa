package monochord.view.music;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.Progression;
import monochord.score.Arrangement;
import monochord.score.Comping;
import monochord.score.TimedVoicing;
import monochord.text.Phrase;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.Scale;
import monochord.theory.note.Pitch;
import monochord.view.Look;
import monochord.view.keyboard.Drawing;
import monochord.view.keyboard.KeyboardPicture;
import monochord.view.keyboard.KeyboardWords;
import monochord.view.keyboard.MarkedKey;
import monochord.view.keyboard.ProgressionPicture;
import monochord.view.keyboard.ToneRole;
import monochord.view.keyboard.ToneRoles;
import monochord.view.keyboard.VoicingRow;

/** The keyboard picture under an answer, after an empty line; in plain looks the same in words. */
public final class Pictures {
    private static final int MOST_ROWS = 16;

    private Pictures() {}

    static StyledText chord(Chord chord, Look look) {
        return below(
                look.plain()
                        ? KeyboardWords.chord(chord, look.reader(), look.width())
                        : KeyboardPicture.chord(chord, look.reader(), look.pictureWidth()),
                look);
    }

    static StyledText scale(Scale scale, Look look) {
        return below(
                look.plain()
                        ? KeyboardWords.scale(scale, look.reader(), look.width())
                        : KeyboardPicture.scale(scale, look.reader(), look.pictureWidth()),
                look);
    }

    static StyledText pitches(List<Pitch> pitches, Look look) {
        List<MarkedKey> marks = marks(pitches);
        return below(
                look.plain()
                        ? KeyboardWords.pitches(marks, look.reader(), look.width())
                        : KeyboardPicture.pitches(marks, look.reader(), look.pictureWidth()),
                look);
    }

    /** The right hand's positions, each nearest to the one before; long progressions are not drawn. */
    public static StyledText progression(Progression progression, Look look) {
        List<monochord.view.keyboard.ChordOnKeys> drawn = drawn(progression);
        if (drawn.isEmpty()) {
            return StyledText.EMPTY;
        }
        return below(
                look.plain()
                        ? KeyboardWords.progression(drawn, look.reader(), look.width())
                        : ProgressionPicture.of(drawn, look.reader(), look.pictureWidth()),
                look);
    }

    private static List<monochord.view.keyboard.ChordOnKeys> drawn(Progression progression) {
        List<ChordRow> rows = ProgressionAnswer.rows(progression);
        if (rows.size() > MOST_ROWS) {
            return List.of();
        }
        List<TimedVoicing> voicings = Comping.voicings(Arrangement.changes(progression));
        List<monochord.view.keyboard.ChordOnKeys> drawn = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            drawn.add(new monochord.view.keyboard.ChordOnKeys(
                    rows.get(i).numeral(),
                    rows.get(i).chord(),
                    voicings.get(i).hands().right()));
        }
        return drawn;
    }

    private static StyledText below(StyledText picture, Look look) {
        if (look.apart()) {
            return StyledText.EMPTY;
        }
        return look.plain()
                ? picture
                : StyledText.builder().gap().lines(picture).build();
    }

    static List<Drawing> drawings(Chord chord) {
        return List.of(Drawing.of(Phrase.of("{0}", chord), ToneRoles.close(chord)));
    }

    static List<Drawing> drawings(Scale scale) {
        return List.of(Drawing.of(Phrase.of("{0}", scale), ToneRoles.marked(scale)));
    }

    static List<Drawing> drawings(List<Pitch> pitches) {
        return pitches.isEmpty() ? List.of() : List.of(Drawing.of(Phrase.NOTHING, marks(pitches)));
    }

    static List<Drawing> drawings(Progression progression) {
        return drawn(progression).stream()
                .map(row -> Drawing.of(Phrase.of("{0}  {1}", row.numeral(), row.chord()), row.marked()))
                .toList();
    }

    /** What each hand holds, chord by chord. */
    static List<Drawing> hands(List<VoicingRow> rows) {
        return rows.size() > MOST_ROWS
                ? List.of()
                : rows.stream()
                        .map(row -> new Drawing(
                                Phrase.of("{0}", row.chord()),
                                ToneRoles.marked(row.voicing().left(), row.chord()),
                                ToneRoles.marked(row.voicing().right(), row.chord())))
                        .toList();
    }

    private static List<MarkedKey> marks(List<Pitch> pitches) {
        return pitches.stream()
                .map(pitch -> new MarkedKey(pitch, ToneRole.NONE))
                .toList();
    }
}
