package monochord.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import monochord.theory.Scale;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;

/** Source: arithmetic; what is in turn adds up, what is together starts together. */
class ScoreTest {
    private static Score note(String pitch, String beats) {
        return Score.note(Pitch.parse(pitch), Beats.parse(beats));
    }

    private static List<String> told(Score score) {
        return score.soundings().stream()
                .map(s -> s.pitch() + " from " + s.start() + " for " + s.length() + " " + s.hand() + " " + s.label())
                .map(String::strip)
                .toList();
    }

    @Test
    void notesInTurnFollowEachOther() {
        Score line = note("C4", "1/3")
                .then(note("D4", "1/3"))
                .then(note("E4", "1/3"))
                .then(note("F4", "1"));
        assertEquals(
                List.of(
                        "C4 from 0 for 1/3 EITHER",
                        "D4 from 1/3 for 1/3 EITHER",
                        "E4 from 2/3 for 1/3 EITHER",
                        "F4 from 1 for 1 EITHER"),
                told(line));
        assertEquals(Beats.of(2), line.beats());
    }

    @Test
    void aMelodyLiesOverHeldChords() {
        Score chord = Score.together(List.of(Pitch.parse("G3"), Pitch.parse("C4")), Beats.of(2))
                .by(Hand.LEFT)
                .labelled("C");
        Score melody = Score.rest(Beats.ONE).then(note("E5", "1")).by(Hand.RIGHT);
        assertEquals(
                List.of("G3 from 0 for 2 LEFT C", "C4 from 0 for 2 LEFT C", "E5 from 1 for 1 RIGHT"),
                told(chord.with(melody)));
    }

    @Test
    void theInnermostHandAndLabelCount() {
        Score inner = note("C4", "1").by(Hand.LEFT).labelled("Am");
        assertEquals(
                List.of("C4 from 0 for 1 LEFT Am"), told(inner.labelled("C").by(Hand.RIGHT)));
    }

    @Test
    void labelsStandOverTheirStretch() {
        Score score =
                note("C4", "2").labelled("C").then(Score.rest(Beats.of(1, 2)).labelled("hold"));
        assertEquals(
                List.of(new Caption("C", Beats.ZERO, Beats.of(2)), new Caption("hold", Beats.of(2), Beats.of(1, 2))),
                score.captions());
    }

    @Test
    void aRestAtTheEndIsPartOfTheLength() {
        assertEquals(Beats.of(3), note("C4", "1").then(Score.rest(Beats.of(2))).beats());
    }

    @Test
    void thePartsTogetherLastAsLongAsTheLongest() {
        assertEquals(Beats.of(3), note("C4", "1").with(note("E4", "3")).beats());
    }

    @Test
    void aScaleGoesUpNoteByNote() {
        Score scale = Score.inTurn(Scale.parse("E major").pitches(Pitch.parse("C4")), Beats.of(1, 2));
        assertEquals(
                List.of("E4", "F#4", "G#4", "A4", "B4", "C#5", "D#5", "E5"),
                scale.soundings().stream().map(s -> s.pitch().toString()).toList());
        assertEquals(Beats.of(4), scale.beats());
    }

    @Test
    void aNoteHasALength() {
        assertEquals(
                "a note must have a length, but C4 has none",
                assertThrows(IllegalArgumentException.class, () -> note("C4", "0"))
                        .getMessage());
    }

    @Test
    void aLongLineStaysFlat() {
        Score line = Score.rest(Beats.ZERO);
        for (int i = 0; i < 5000; i++) {
            line = line.then(note("C4", "1"));
        }
        assertEquals(5000, line.soundings().size());
        assertEquals(Beats.of(5000), line.beats());
    }
}
