package monochord.view.music;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import monochord.Thorough;
import monochord.harmony.motion.Passage;
import monochord.harmony.motion.Strictness;
import monochord.theory.Chord;
import monochord.view.Look;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Moving voices on a screen, in a narrow window, without drawing and without signs. */
class MotionAnswerTest {
    private static final MotionAnswer SLIDING = new MotionAnswer(
            Passage.parse("G2 B3 D4 G4 | Ab2 C4 Eb4 Ab4 | Ab2 C4 Eb4 G4"),
            Strictness.BAND,
            List.of(Chord.parse("G"), Chord.parse("Ab"), Chord.parse("Abmaj7")));

    @Test
    @DisplayName("a grid of the voices, held notes as lines, then each change in a teacher's words")
    void drawn() {
        assertEquals("""
                By band practice: one fault, one remark.
                Voiced here: the bass in the left hand, the nearest shape in the right.

                        G         A♭        A♭maj7
                top     G4        A♭4       G4
                third   D4        E♭4 ───── E♭4
                second  B3        C4 ────── C4
                bass    G2        A♭2 ───── A♭2

                G to A♭: 4 half steps in all, no note in common.
                  Parallel: bass–second, bass–third, bass–top, second–third, second–top,
                  third–top.
                  Remark: All four voices go up together as one block: a colour, but a flat one.
                  Fault: Parallel octaves between bass and top voice: G2 G4 to A♭2 A♭4.
                  Instead: Play Gsus4 first: its C belongs to the next chord too and can stay.
                A♭ to A♭maj7: 1 half step in all, A♭2, C4 and E♭4 kept.
                  Oblique: bass–top, second–top, third–top. Still: bass–second, bass–third,
                  second–third.""", SLIDING.text(Look.ofPipe()).plain());
    }

    @Test
    @DisplayName("plain: one fact a line, and no drawing")
    void plain() {
        String said = SLIDING.text(Look.ofPipe().asPlain()).plain();
        assertTrue(said.contains("\nTop voice: G4 up 1 half step to A♭4.\n"), said);
        assertTrue(said.contains("\nBass: A♭2 held.\n"), said);
        assertTrue(said.chars().noneMatch(c -> c == '─'), said);
    }

    @Test
    @DisplayName("no line is wider than the window, however long the passage, and ASCII stays ASCII")
    void fits() {
        Passage passage = Passage.parse("Gb2 Bb3 Db4 Gb4 Bb4 | Cb3 Bb3 Eb4 Gb4 Cb5 | ".repeat(40));
        for (Strictness strictness : Strictness.values()) {
            MotionAnswer answer = new MotionAnswer(passage, strictness, List.of());
            for (int width = 20; width <= 120; width += Thorough.times(13, 1)) {
                Look look = Look.ofPipe().inWidth(width);
                int room = width;
                assertTrue(answer.text(look).columns() <= width, () -> "wider than " + room);
                assertTrue(answer.text(look.asPlain()).columns() <= width, () -> "plain wider than " + room);
                String ascii = answer.text(look.inAscii()).plain();
                assertTrue(ascii.chars().allMatch(c -> c < 128), ascii);
            }
        }
    }

    @Test
    @DisplayName("the rules in force are always named, also where there is nothing to mend")
    void named() {
        Passage passage = Passage.parse("C3 G3 E4 C5 | A2 A3 E4 C5");
        assertTrue(new MotionAnswer(passage, Strictness.BAND, List.of())
                .text(Look.ofPipe())
                .plain()
                .startsWith("By band practice: nothing to mend.\n"));
        assertTrue(new MotionAnswer(passage, Strictness.CHORALE, List.of())
                .text(Look.ofPipe())
                .plain()
                .startsWith("By chorale rules: nothing to mend.\n"));
    }
}
