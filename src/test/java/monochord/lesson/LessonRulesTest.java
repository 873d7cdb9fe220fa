package monochord.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.harmony.motion.VoiceLeading;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Rules that the lessons state for every key, computed in the fifteen major keys. Each quotes the words it stands for.
 *
 * <p>Source: the engine, whose own tables name theirs; how many notes differ or stay is arithmetic.
 */
class LessonRulesTest {
    private static Chord chord(String numeral, Key key) {
        return Numeral.parse(numeral).in(key);
    }

    private static NoteName degree(String degree, Key key) {
        return Degree.parse(degree).above(key.tonic());
    }

    /** How many notes two chords share. */
    @ParameterizedTest(name = "{0}: {1}: {2} in common")
    @CsvSource(delimiter = '|', textBlock = """
            2.3 | vi I, ii IV, iii V      | 2 | share two of its notes: 6 with 1, 2 with 4, 3 with 5
            2.5 | ii IV, vi I             | 2 | has two notes in common with ${chord IV} and does its work
            3.1 | I vi, I iii, ii IV, IV vi, iii V, V vii°, vii° ii | 2 | Roots a *third* apart: two in common
            3.1 | I IV, I V, ii V, ii vi, iii vi, iii vii°, IV vii° | 1 | Roots a *fourth or fifth* apart: one
            3.1 | I ii, ii iii, iii IV, IV V, V vi, vi vii°, vii° I | 0 | Roots a *step* apart: none
            3.4 | IV V                    | 0 | Their roots are a step apart, so they share no note
            3.4 | ii V                    | 1 | has two notes in common with the first and one with the second
            3.10 | IV ii, I vi            | 2 | IV and ii have two notes in common, and so have I and vi
            4.7 | IV Vsus4, IVadd9 V, IV V7 | 1 | have none in common, but
            5.7 | Vsus4 bVI               | 1 | Now ${degree 1} is in both chords
            5.7 | Vsus4 bVImaj7           | 2 | Add the seventh to the borrowed chord and ${degree 5} can stay as well
            5.4 | ii° iv                  | 2 | It has two notes in common with iv
            5.11 | Isus4 iv, V7sus4 iv    | 2 | has the same two
            5.11 | V iv                   | 0 | has none, and ${chord I} has one
            5.11 | V7sus4 bVII            | 2 | both are in ${chord V7sus4}
            7.3 | iv bVI                  | 2 | iv and ♭VI share two notes
            7.4 | V bVII, bIII I          | 1 | they share one note, ${degree 2}
            """)
    void howManyNotesTwoChordsShare(String number, String pairs, int shared, String words) throws IOException {
        LessonText.says(number, words);
        for (Key key : Key.majorKeys()) {
            for (String pair : pairs.split(", ")) {
                String[] two = pair.split(" ");
                List<NoteName> common = VoiceLeading.commonTones(chord(two[0], key), chord(two[1], key));
                assertEquals(shared, common.size(), () -> pair + " in " + key + ": " + common);
            }
        }
    }

    /** What a degree of the key is in a chord, counted from its root. */
    @ParameterizedTest(name = "{0}: {1} in {2} is its {3}")
    @CsvSource(delimiter = '|', textBlock = """
            4.3 | 4  | ii7    | m3  | the third is ${degree 4} and the seventh is ${degree 1}
            4.3 | 1  | ii7    | m7  | the third is ${degree 4} and the seventh is ${degree 1}
            4.3 | 4  | V7     | m7  | ${degree 4} *stays*, and becomes the seventh
            4.3 | 7  | V7     | M3  | ${degree 1} falls a half step to ${degree 7}, and becomes the third
            4.3 | 7  | Imaj7  | M7  | ${degree 7} *stays*, and becomes the seventh
            4.3 | 3  | Imaj7  | M3  | ${degree 4} falls a half step to ${degree 3}, and becomes the third
            4.7 | 1  | vi     | m3  | an open fifth, a minor seventh, a sus2, a sus4
            4.7 | 5  | vi     | m7  | an open fifth, a minor seventh, a sus2, a sus4
            4.7 | 5  | IV     | M9  | an open fifth, a minor seventh, a sus2, a sus4
            4.7 | 1  | V      | P4  | an open fifth, a minor seventh, a sus2, a sus4
            4.8 | 3  | ii7    | M9  | which is its ninth
            4.8 | 3  | V7     | M13 | where it is the thirteenth
            4.8 | 2  | Imaj7  | M9  | the ninth again
            5.6 | 5  | bVI    | M7  | the new note is ${degree 5}
            5.7 | 1  | bVI    | M3  | It is a suspended note in the one and the third of the other
            5.9 | 4  | bII    | M3  | One note belongs to the key, ${degree 4}, the third of the chord
            5.11 | b3 | bVII  | P4  | stays and is the fourth of
            5.11 | b6 | bIII  | P4  | stays as its fourth and falls to ${degree 5}
            """)
    void whatADegreeIsInAChord(String number, String degree, String chord, String interval, String words)
            throws IOException {
        LessonText.says(number, words.replace("the new note", "The new note"));
        for (Key key : Key.majorKeys()) {
            Interval above = chord(chord, key).root().to(degree(degree, key));
            assertEquals(Interval.parse(interval).withinOctave(), above.withinOctave(), () -> degree + " in " + key);
        }
    }

    /** Which degrees of the first scale are altered in the second. */
    @ParameterizedTest(name = "{0}: {1} and {2}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            1.6 | major | minor         | b3 b6 b7 | Lower the third, the sixth and the seventh by a half step each
            1.6 | minor | harmonic minor | 7       | Raise the seventh only
            1.6 | major | melodic minor | b3       | going up, only the third is lowered
            1.9 | major | lydian        | #4       | Lydian: major with a raised fourth
            1.9 | major | mixolydian    | b7       | Mixolydian: major with a lowered seventh
            1.9 | minor | dorian        | 6        | Dorian: minor with a raised sixth
            1.9 | minor | phrygian      | b2       | Phrygian: minor with a lowered second
            5.3 | major | mixolydian    | b7       | That scale is **Mixolydian**, and it is the nearest neighbour that holds the chord
            """)
    void whatTellsTwoScalesApart(String number, String one, String other, String degrees, String words)
            throws IOException {
        LessonText.says(number, words);
        for (Key key : Key.majorKeys()) {
            List<NoteName> first = new Scale(key.tonic(), ScaleKind.parse(one)).tones();
            Set<NoteName> changed = new HashSet<>(new Scale(key.tonic(), ScaleKind.parse(other)).tones());
            first.forEach(changed::remove);
            assertEquals(Stream.of(degrees.split(" ")).map(d -> degree(d, key)).collect(Collectors.toSet()), changed);
        }
    }

    @Test
    @DisplayName("1.3, 1.4: where the last sign stands, what a fifth adds, and what neighbours share")
    void whatTheRingSays() throws IOException {
        LessonText.says("1.3", "The last sharp is the seventh degree");
        LessonText.says("1.3", "The last flat is the fourth degree. The flat before it carries the tonic's name");
        LessonText.says("1.4", "The new sharp is always the seventh degree");
        LessonText.says("1.4", "the fourth degree of the new key is the new flat");
        LessonText.says("1.4", "Neighbours on the ring share six of their seven notes");
        for (Key key : Key.majorKeys()) {
            List<NoteName> signs = key.signatureNotes();
            if (key.signature() > 0) {
                assertEquals(degree("7", key), signs.get(signs.size() - 1));
            } else if (key.signature() < 0) {
                assertEquals(degree("4", key), signs.get(signs.size() - 1));
                assertTrue(signs.size() == 1 || signs.get(signs.size() - 2).equals(key.tonic()));
            }
            Set<NoteName> shared = new HashSet<>(key.scale().tones());
            shared.retainAll(
                    Key.major(key.tonic().plus(Interval.PERFECT_FIFTH)).scale().tones());
            assertEquals(6, shared.size());
        }
    }

    @Test
    @DisplayName("1.7: where the relative and the parallel minor lie")
    void whereTheMinorsLie() throws IOException {
        LessonText.says("1.7", "down three half steps, to the third letter");
        LessonText.says("1.7", "the parallel minor lies three steps to the flat side");
        LessonText.says("1.7", "Its harmonic form brings one new note, the raised seventh");
        for (Key key : Key.majorKeys()) {
            assertEquals(Interval.MINOR_THIRD, key.relative().tonic().to(key.tonic()));
            assertEquals(key.signature() - 3, key.parallel().signature());
            Set<NoteName> fresh = new HashSet<>(new Scale(key.relative().tonic(), ScaleKind.HARMONIC_MINOR).tones());
            key.scale().tones().forEach(fresh::remove);
            assertEquals(Set.of(degree("#5", key)), fresh);
        }
    }

    @Test
    @DisplayName("2.2, 2.6, 2.7: stretched and pinched fifths, the chord on 3 in minor, the fall that is short")
    void fifths() throws IOException {
        LessonText.says("2.2", "When the perfect fifth is sharp already, the stretched one has a double sharp");
        LessonText.says("2.2", "When it is flat already, the pinched one has a double flat");
        LessonText.says("2.6", "Put it into the chord on 3 and that chord becomes augmented");
        LessonText.says("2.7", "One of the falls, from 4 to 7, is a half step short");
        for (Key key : Key.majorKeys()) {
            NoteName fifth = degree("5", key);
            assertEquals(fifth.alteration() + 1, chord("I+", key).tones().get(2).alteration());
            assertEquals(fifth.alteration() - 1, chord("i°", key).tones().get(2).alteration());
            assertEquals(
                    Interval.AUGMENTED_FIFTH,
                    degree("b3", key).to(degree("7", key)).withinOctave());
            assertEquals(
                    Interval.DIMINISHED_FIFTH,
                    degree("7", key).to(degree("4", key)).withinOctave());
        }
    }

    @Test
    @DisplayName("4.6, 5.2, 5.7: added notes, and blocks that slide by a half step")
    void addedAndSliding() throws IOException {
        LessonText.says("4.6", "on iii the added ninth would lie outside the key");
        LessonText.says("4.6", "the pentatonic scale as one chord");
        LessonText.says("5.7", "Root, third and fifth all go up a half step");
        LessonText.says("5.2", "Where all three go down alike, no interval between them changes");
        for (Key key : Key.majorKeys()) {
            assertTrue(!key.holds(degree("3", key).plus(Interval.MAJOR_SECOND)));
            assertEquals(
                    Set.copyOf(new Scale(key.tonic(), ScaleKind.MAJOR_PENTATONIC).tones()),
                    Set.copyOf(chord("I6/9", key).tones()));
            for (int i = 0; i < 3; i++) {
                NoteName five = chord("V", key).tones().get(i);
                assertEquals(
                        Interval.MINOR_SECOND,
                        five.to(chord("bVI", key).tones().get(i)).withinOctave());
                assertEquals(
                        chord("bVI", key).tones().get(i).fifths() + 7,
                        chord("VI", key).tones().get(i).fifths());
            }
        }
    }

    @Test
    @DisplayName("6.7: how far from concert pitch each part is written")
    void howPartsAreWritten() throws IOException {
        LessonText.says("6.7", "two sharps more or two flats fewer");
        LessonText.says("6.7", "Their part is written a major sixth higher, for the baritone an octave besides");
        LessonText.says("6.7", "in the key three sharps further on");
        LessonText.says("6.7", "A horn in ${F} is written a fifth higher");
        assertEquals(2, Interval.MAJOR_SECOND.fifths());
        assertEquals(3, Interval.MAJOR_SIXTH.fifths());
        assertEquals(NoteName.parse("C"), NoteName.parse("A").minus(Interval.MAJOR_SIXTH));
        assertEquals(NoteName.parse("C"), NoteName.parse("G").minus(Interval.PERFECT_FIFTH));
    }
}
