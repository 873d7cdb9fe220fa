package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import monochord.course.Course;
import monochord.shell.playback.Ear;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Signs;
import monochord.view.Look;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each verb of music says to learners with other note names: notes are named, and no word is taken for one. */
class MusicInOtherNamesTest {
    private static final Verbs VERBS = new Verbs();

    private static String said(String line, NoteNaming naming) {
        Sitting sitting = new Sitting(Ear.silent(), () -> 7, Path.of("."), new Course(Run.OUR_LESSONS));
        Look look = new Look(200, Signs.MUSIC, false, false).naming(naming);
        return new LineReading(VERBS, sitting)
                .read(line)
                .text(look)
                .plain()
                .replaceAll("\\s+", " ")
                .strip();
    }

    /** What begins with {@code …} is a part of the answer. */
    private static void holds(String expected, String said) {
        if (expected.startsWith("…")) {
            assertTrue(said.contains(expected.substring(1)), said);
        } else {
            assertEquals(expected, said);
        }
    }

    /** Source of the names: German and Romance naming, as in every score of those countries. */
    @ParameterizedTest(name = "{0}")
    @DisplayName("each verb, in German and in Latin names")
    @CsvSource(delimiter = '!', textBlock = """
            key A ! …A major: three sharps, Fis, Cis and Gis. Scale: A H Cis D E Fis Gis Triads: A Hm ! …La major: three sharps, Fa♯, Do♯ and Sol♯. Scale: La Si Do♯ Re Mi Fa♯ Sol♯ Triads: La Sim
            show Bb7 in A ! …In A major: ♭II7, degrees ♭2 4 ♭6 ♭1; the tritone substitute of V7, E7. ! …In La major: ♭II7, degrees ♭2 4 ♭6 ♭1; the tritone substitute of V7, Mi7.
            show A blues ! …A minor blues A C D Es E G Half steps from note to note: 3 2 1 1 3 2. ! …La minor blues La Do Re Mi♭ Mi Sol Half steps from note to note: 3 2 1 1 3 2.
            show 4 b6 1 in A ! …In A major D F A IV ♭VI I F, ♭VI: borrowed from A minor (also phrygian, locrian, harmonic minor). ! …In La major Re Fa La IV ♭VI I Fa, ♭VI: borrowed from La minor (also phrygian, locrian, harmonic minor).
            show A4 C#5 E5 ! …A Cis E is A. ! …La Do♯ Mi is La.
            name A C# E F# ! A Cis E Fis is A6, also Fism7/A. ! La Do♯ Mi Fa♯ is La6, also Fa♯m7/La.
            numeral bVI in D ! ♭VI in D major is B, spelled B D F. By number ♭6, degrees ♭6 1 ♭3; borrowed from D minor (also phrygian, locrian, harmonic minor). ! ♭VI in Re major is Si♭, spelled Si♭ Re Fa. By number ♭6, degrees ♭6 1 ♭3; borrowed from Re minor (also phrygian, locrian, harmonic minor).
            borrow mixolydian in A ! …From A mixolydian, one degree darker iii° Cisdim Cis E G changes ♭7 tune on 3 5 ! …From La mixolydian, one degree darker iii° Do♯dim Do♯ Mi Sol changes ♭7 tune on 3 5
            borrow bVI in D ! …it turns Fis into F and H into B. Reached from V: deceptive: ♭VI where the tonic was expected. Reached from I: a colour by a third: the tonic stays as its third. ! …it turns Fa♯ into Fa and Si into Si♭. Reached from V: deceptive: ♭VI where the tonic was expected. Reached from I: a colour by a third: the tonic stays as its third.
            borrow bVI in D ! …Left to V7sus4: back by a suspension: D stays as its fourth, then falls to Cis. Left to V: the root sinks a half step onto the dominant. Under the tune: 1 (D) rests; 2 (E), 4 (G) and 5 (A) colour; 3 (Fis), 6 (H) and 7 (Cis) clash on a strong beat. The rule about the tune is common practice, no source. More ways on: after ♭VI. A changed chord is agreed with the band before anyone plays it. ! …Left to V7sus4: back by a suspension: Re stays as its fourth, then falls to Do♯. Left to V: the root sinks a half step onto the dominant. Under the tune: 1 (Re) rests; 2 (Mi), 4 (Sol) and 5 (La) colour; 3 (Fa♯), 6 (Si) and 7 (Do♯) clash on a strong beat. The rule about the tune is common practice, no source. More ways on: after ♭VI. A changed chord is agreed with the band before anyone plays it.
            after V in A ! …vi Fism Deceptive: vi where the tonic was expected; about one in 16, 117 songs. ! …vi Fa♯m Deceptive: vi where the tonic was expected; about one in 16, 117 songs.
            after V in A ! …ii Hm It steps back for another run-up; now and then, 63 songs. ! …ii Sim It steps back for another run-up; now and then, 63 songs.
            motion A2 C4 E4 A4 | B2 D4 F#4 B4 ! …Remark: All four voices go up together as one block: a colour, but a flat one. Fault: Parallel octaves between bass and top voice: A2 A4 to H2 H4. Instead: Let E hang over as the fourth of Hsus4, and let it fall a step afterwards. ! …Remark: All four voices go up together as one block: a colour, but a flat one. Fault: Parallel octaves between bass and top voice: La2 La4 to Si2 Si4. Instead: Let Mi hang over as the fourth of Sisus4, and let it fall a step afterwards.
            fit B4:2 Bb4 A4 over A D in A ! beat note chord role 1 H4:2 A tension 3 B4 D clash sing H4 4 A4 D chord tone H4 colours A as its ninth. B4 rubs against the A of D. Sing H4 there, or change the chord. One note clashes; by beat and length that is about one fourth of the tune. Which colours a tune may rest on is custom, not law: take it as advice, and trust your ear. ! beat note chord role 1 Si4:2 La tension 3 Si♭4 Re clash sing Si4 4 La4 Re chord tone Si4 colours La as its ninth. Si♭4 rubs against the La of Re. Sing Si4 there, or change the chord. One note clashes; by beat and length that is about one fourth of the tune. Which colours a tune may rest on is custom, not law: take it as advice, and trust your ear.
            recolour I V vi IV in A ! …In A major, D leading back to A before A E Fism D I V vi IV after A E7sus4 Fmaj7 D I V7sus4 ♭VImaj7 IV Fmaj7 comes where Fism was expected after the dominant, and the suspended A of E7sus4 stays as its third. One voice can rise by half steps: E F Fis. ! …In La major, Re leading back to La before La Mi Fa♯m Re I V vi IV after La Mi7sus4 Famaj7 Re I V7sus4 ♭VImaj7 IV Famaj7 comes where Fa♯m was expected after the dominant, and the suspended La of Mi7sus4 stays as its third. One voice can rise by half steps: Mi Fa Fa♯.
            voice IV I in A ! …In A major, close, each hand within an octave D A right Fis4 ! …In La major, close, each hand within an octave Re La right Fa♯4
            voice IV I in A ! …D to A: A3 stays; the bass goes down a fourth; D4 to Cis4, Fis4 to E4. Why it stays: A is the fifth of D and the root of A. In all 8 half steps moved, no parallel fifths or octaves, 1 note held. ! …Re to La: La3 stays; the bass goes down a fourth; Re4 to Do♯4, Fa♯4 to Mi4. Why it stays: La is the fifth of Re and the root of La. In all 8 half steps moved, no parallel fifths or octaves, 1 note held.
            transpose A D E in A for clarinet ! A major A D E H major, written for B instruments H E Fis ! La major La Re Mi Si major, written for Si♭ instruments Si Mi Fa♯
            transpose Bb F Gm in Bb capo ! …Capo 1, shapes of A major: all open but Fism; low, so most of the neck stays. A E Fism ! …Capo 1, shapes of La major: all open but Fa♯m; low, so most of the neck stays. La Mi Fa♯m
            play A D E in A as broken ! Playing A D E in A major at 84, as broken. ! Playing La Re Mi in La major at 84, as broken.
            compare A D E A vs A D F A in A ! …Then A D F A in A major: 26 half steps moved, 3 notes held, nothing in parallel. Changed: chord 3, F for E. On top A4 A4 Gis4 A4, then A4 A4 A4 A4. Agree a changed chord with the band first. ! …Then La Re Fa La in La major: 26 half steps moved, 3 notes held, nothing in parallel. Changed: chord 3, Fa for Mi. On top La4 La4 Sol♯4 La4, then La4 La4 La4 La4. Agree a changed chord with the band first.
            """)
    void saysItInOtherNames(String line, String german, String latin) {
        holds(german, said(line, NoteNaming.GERMAN));
        holds(latin, said(line, NoteNaming.LATIN));
    }
}
