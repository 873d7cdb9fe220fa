package monochord.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import monochord.harmony.Fingering;
import monochord.theory.Key;
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
 * What lessons say of signatures, of parts for other instruments, of fingers and of one another, computed beside the words
 * it stands for.
 *
 * <p>Source: {@code Key} and {@code Fingering}, whose own tables name theirs; transposing instruments: Integrated Music
 * Theory, an open university course.
 */
class ChartsInLessonsTest {
    private static final List<Integer> BLACK = List.of(1, 3, 6, 8, 10);

    private static NoteName degree(String degree, Key key) {
        return Degree.parse(degree).above(key.tonic());
    }

    @Test
    @DisplayName(
            "1.3: up to five signs a signed letter is the black key beside the white one; from six on some are white")
    void whichKeysASignatureLeavesOut() throws IOException {
        LessonText.says("1.3", "take the black key just above each. With flats you leave out ${B}, ${E} and so on");
        LessonText.says("1.3", "From six signs on the key that you take may be a white one with another letter");
        for (Key key : Key.majorKeys()) {
            boolean allBlack = key.signatureNotes().stream().allMatch(note -> BLACK.contains(note.pitchClass()));
            assertEquals(Math.abs(key.signature()) < 6, allBlack, key.toString());
        }
    }

    @Test
    @DisplayName("1.6: on D♭, G♭ and C♭ the parallel minor needs a double flat, on no other of the fifteen")
    void whereADoubleFlatIsNeeded() throws IOException {
        LessonText.says("1.6", "On ${D♭}, ${G♭} and ${C♭} the parallel minor needs a **double flat**");
        Set<String> needing = new TreeSet<>();
        for (Key key : Key.majorKeys()) {
            boolean isDouble = new Scale(key.tonic(), ScaleKind.MINOR)
                    .tones().stream().anyMatch(note -> note.toString().endsWith("bb"));
            if (isDouble) {
                needing.add(key.tonic().toString());
            }
        }
        assertEquals(Set.of("Db", "Gb", "Cb"), needing);
    }

    @Test
    @DisplayName(
            "6.7: the B♭ part lies two fifths further on, the E♭ part three, and only from F♯ and C♯ in no printed key")
    void partsForTheHorns() throws IOException {
        LessonText.says("6.7", "always two steps apart on the ring of fifths");
        LessonText.says("6.7", "in the key three sharps further on: concert ${C}, written ${A}");
        LessonText.says("6.7", "From concert ${F♯} the part would stand in ${G♯}: write ${A♭}");
        LessonText.says("6.7", "From ${C♯} it would stand in ${D♯}: write ${E♭}");
        Set<String> unprinted = new TreeSet<>();
        for (Key key : Key.majorKeys()) {
            NoteName trumpet = key.tonic().plus(Interval.MAJOR_SECOND);
            assertEquals(key.tonic().fifths() + 2, trumpet.fifths());
            assertEquals(
                    key.tonic().fifths() + 3,
                    key.tonic().plus(Interval.parse("M6")).fifths());
            assertEquals(
                    List.of(degree("2", key), degree("5", key), degree("6", key)),
                    List.of(
                            key.tonic().plus(Interval.MAJOR_SECOND),
                            degree("4", key).plus(Interval.MAJOR_SECOND),
                            degree("5", key).plus(Interval.MAJOR_SECOND)));
            if (!Key.majorKeys().contains(Key.major(trumpet))) {
                unprinted.add(key.tonic().toString());
            }
        }
        assertEquals(Set.of("F#", "C#"), unprinted);
    }

    @Test
    @DisplayName("6.8: ♭6 of D♭ is B𝄫, so the sentence for the bass names the degree and no letter")
    void whatTheBassIsTold() throws IOException {
        LessonText.says("6.8", "Bass: ♭6, a half step under what you know.");
        LessonText.says("6.8", "the ♭6 of ${D♭} is ${B𝄫}");
        for (Key key : Key.majorKeys()) {
            int down = Math.floorMod(
                    degree("6", key).pitchClass() - degree("b6", key).pitchClass(), 12);
            assertEquals(1, down, key.toString());
        }
    }

    @Test
    @DisplayName(
            "1.10: which scales share their fingers, and that the right hand on a black tonic waits with the thumb")
    void whichFingersScalesShare() throws IOException {
        LessonText.says("1.10", "${C}, ${G}, ${D}, ${A} and ${E} begin on a white key and have the same fingers");
        LessonText.says("1.10", "${F} differs in the right hand");
        LessonText.says("1.10", "${B} differs in the left, which begins with finger 4");
        Fingering common = fingers("C");
        Stream.of("G", "D", "A", "E").forEach(tonic -> assertEquals(common, fingers(tonic), tonic));
        assertEquals(common.left(), fingers("F").left());
        assertEquals(List.of(1, 2, 3, 4, 1, 2, 3, 4), fingers("F").right());
        assertEquals(common.right(), fingers("B").right());
        assertEquals(4, fingers("B").left().get(0));
        LessonText.says("1.10", "the thumb takes the first white key that comes");
        for (Key key : Key.majorKeys()) {
            List<NoteName> tones = key.scale().tones();
            List<Integer> right = fingers(key.tonic().toString()).right();
            if (BLACK.contains(key.tonic().pitchClass())) {
                int white = 0;
                while (BLACK.contains(tones.get(white).pitchClass())) {
                    white++;
                }
                assertEquals(white, right.indexOf(1), key.toString());
            }
        }
    }

    private static Fingering fingers(String tonic) {
        return Fingering.of(Scale.parse(tonic + " major")).orElseThrow();
    }

    @Test
    @DisplayName(
            "3.9: in first inversion the wide gap lies on top, in second below, and the fingers there are wider apart")
    void theWideGapGetsTheWideFingers() throws IOException {
        LessonText.says("3.9", "the fourth is on top. Right hand 1 2 5, left hand 5 3 1.");
        LessonText.says("3.9", "the fourth lies below. Right hand 1 3 5, left hand 5 2 1.");
        for (Key key : Key.majorKeys()) {
            List<NoteName> tones = key.scale().tones();
            assertEquals(Interval.PERFECT_FOURTH, tones.get(4).to(tones.get(0)).withinOctave());
            assertFalse(tones.get(2).to(tones.get(4)).withinOctave().equals(Interval.PERFECT_FOURTH));
        }
        List<List<Integer>> first = fingersOf("First inversion");
        assertTrue(gap(first.get(0), 1) > gap(first.get(0), 0), first.toString());
        assertTrue(gap(first.get(1), 1) >= gap(first.get(1), 0), first.toString());
        List<List<Integer>> second = fingersOf("Second inversion");
        assertTrue(gap(second.get(0), 0) >= gap(second.get(0), 1), second.toString());
        assertTrue(gap(second.get(1), 0) > gap(second.get(1), 1), second.toString());
    }

    /** Right hand, then left hand, as lesson 3.9 prints them. */
    private static List<List<Integer>> fingersOf(String position) throws IOException {
        Matcher said = Pattern.compile("\\*\\*" + position + "\\*\\*: .*?ight hand ([1-5 ]+), left hand ([1-5 ]+)\\.")
                .matcher(Files.readString(Path.of("lessons", "3-moving-well", "9-fingers-for-chords.md")));
        assertTrue(said.find(), position);
        return Stream.of(said.group(1), said.group(2))
                .map(hand -> Stream.of(hand.split(" ")).map(Integer::valueOf).toList())
                .toList();
    }

    /** Fingers between two neighbours of a chord, from the bottom. */
    private static int gap(List<Integer> hand, int place) {
        return Math.abs(hand.get(place + 1) - hand.get(place));
    }

    /** Words that point to another lesson, and words that stand in the one they point to. */
    @ParameterizedTest(name = "{0} points to {2}")
    @CsvSource(delimiter = '|', textBlock = """
            1.6  | has a lesson to itself, the next                       | 1.7  | ## The relative: same notes, another home
            1.7  | When we borrow chords, in the fifth book               | 5.1  | bringing one thing home from it at a time
            1.7  | and that has its own use, in the fourth book           | 4.4  | The raised note is always the leading note of the goal
            1.8  | which the next lesson brings                           | 1.9  | **Dorian**
            2.9  | It waits for the fifth book.                           | 5.9  | A major chord on the lowered second
            2.10 | You know that from the lesson on chords turned over.   | 2.8  | Bands write a **slash**
            2.10 | What these chords are is told in the fourth book       | 4.3  | Read 57 as "five, seven"
            2.10 | What these chords are is told in the fourth book       | 4.8  | So a thirteenth chord is a seventh
            3.1  | the lesson on sliding blocks, three on from here       | 3.4  | ## The whole block moves
            3.1  | which comes in the fifth book                          | 5.1  | ## The neighbour on your own tonic
            3.3  | and the next lesson is about just that                 | 3.4  | That is *parallel* in every voice at once
            3.9  | You will need that in the next book                    | 4.1  | ## The seventh
            4.2  | That is worth knowing for the end of this book.        | 4.8  | third and seventh in the right
            4.3  | In the same way 513, in a later lesson                 | 4.8  | V13
            4.8  | in the lesson on two, five, one                        | 4.3  | That is the whole phrase in three notes at a time
            4.9  | the rule is the same as in the third book              | 3.8  | A chord changes on a **strong beat**
            5.13 | a short book on nothing but this, the seventh          | 7.1  | A short book for people who play by ear
            6.1  | on a page since the second book                        | 2.10 | ## Your song
            6.4  | the suspended five of the last book                    | 5.7  | the five becomes ${chord Vsus4}
            """)
    void whereLessonsPoint(String number, String words, String other, String target) throws IOException {
        LessonText.says(number, words);
        LessonText.says(other, target);
    }

    /** Numbers of lessons that stand in lessons and in what the line types: each is the number of one. */
    @Test
    void everyLessonNumberIsThatOfALesson() throws IOException {
        Set<String> known = new HashSet<>();
        Set<String> named = new TreeSet<>();
        Pattern number = Pattern.compile("(?:learn|lesson) ([1-9]\\.[0-9]{1,2})\\b");
        try (Stream<Path> files = Files.walk(LessonText.FOLDER)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".md")).toList()) {
                Matcher place = Pattern.compile("([1-7])-[a-z-]+/([0-9]+)-")
                        .matcher(file.toString().replace('\\', '/'));
                if (place.find()) {
                    known.add(place.group(1) + "." + place.group(2));
                }
                Matcher said = number.matcher(Files.readString(file));
                while (said.find()) {
                    named.add(said.group(1));
                }
            }
        }
        assertEquals(70, known.size());
        named.removeIf(one -> known.contains(one) || one.startsWith("20."));
        assertEquals(Set.of(), named);
    }
}
