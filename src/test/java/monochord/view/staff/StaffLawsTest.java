package monochord.view.staff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.harmony.Progression;
import monochord.harmony.voicing.VoicedProgression;
import monochord.harmony.voicing.VoicingSearch;
import monochord.harmony.voicing.VoicingStyle;
import monochord.harmony.voicing.VoicingTask;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Scale;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import monochord.view.keyboard.MarkedKey;
import monochord.view.keyboard.ToneRoles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds on every staff, read from the finished picture. The rules: common practice of engraving, no source. */
class StaffLawsTest {
    private static final List<String> KINDS = List.of(
            ("m dim aug 5 sus2 sus4 6 m6 6/9 m6/9 add9 madd9 7 maj7 m7 m7b5 dim7 m(maj7) 7sus4 maj7#5 7#5 7b5 9 maj9 m9 7b9"
                            + " 7#9 7b9#9 7b9b13 7#9b13 7alt 9sus4 11 m11 maj7#11 7#11 13 maj13 m13 13#11 13b9 dim7")
                    .split(" "));

    /** One clef's top line, as C4 = 28: F5 on the treble staff, A3 on the bass staff. */
    private static final int TREBLE_TOP = 38;

    private static final int BASS_TOP = 26;

    static Stream<Key> keys() {
        return Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream());
    }

    @Test
    void thereAreThirtyKeysAndFortyKinds() {
        assertEquals(30, keys().count());
        assertTrue(new HashSet<>(KINDS).size() >= 40, KINDS::toString);
    }

    @Thorough.FirstOf(10)
    @ParameterizedTest(name = "{0}")
    @MethodSource("keys")
    void holdForEachChordKindInEachInversion(Key key) throws Exception {
        for (String kind : KINDS) {
            Chord chord = new Chord(key.tonic(), ChordKind.parse(kind));
            for (NoteName bass : chord.tones()) {
                NoteValue value = NoteValue.values()[Math.floorMod(bass.fifths(), NoteValue.values().length)];
                List<Pitch> pitches = ToneRoles.close(chord.over(bass)).stream()
                        .map(MarkedKey::pitch)
                        .toList();
                check(
                        key.signature(),
                        List.of(StaffColumn.of(pitches, value)),
                        chord.over(bass).toString());
            }
        }
    }

    /** Each degree's seventh chord, in a row: what one bar says must not hold in the next column's way. */
    @Thorough.FirstOf(10)
    @ParameterizedTest(name = "{0}")
    @MethodSource("keys")
    void holdForProgressionsAndHands(Key key) throws Exception {
        Progression progression = Progression.parse("1 bVI7 | #IVm7b5 V7 | bII . . 4m6 | 2 | 1maj7 |", key);
        check(MusicOnStaff.progression(progression), "progression in " + key);
        VoicedProgression hands = VoicingSearch.best(VoicingTask.of(progression, VoicingStyle.SPREAD), 1)
                .get(0);
        check(MusicOnStaff.voiced(progression, hands.voicings()), "hands in " + key);
    }

    @Thorough.FirstOf(10)
    @ParameterizedTest(name = "{0}")
    @MethodSource("keys")
    void holdForScales(Key key) throws Exception {
        for (String kind : List.of("major", "harmonic minor", "melodic minor", "dorian", "lydian", "major blues")) {
            StaffMusic scale = MusicOnStaff.scale(Scale.parse(key.tonic() + " " + kind));
            check(scale, scale.title().toString());
        }
    }

    /** Clusters far above and below the staff, where ledger lines are long. */
    @Test
    void holdForClustersOnLedgerLines() throws Exception {
        for (String notes : List.of("C#6 E6 G6 A6", "Bb5 Cb6 Db6 Ebb6", "C8 D8 E#8", "F#3 G3 A#3 B3", "C1 Db1 E##1")) {
            List<Pitch> pitches = Stream.of(notes.split(" ")).map(Pitch::parse).toList();
            for (NoteValue value : NoteValue.values()) {
                check(0, List.of(StaffColumn.of(pitches, value)), notes);
            }
        }
    }

    private static void check(int signature, List<StaffColumn> columns, String what) throws Exception {
        List<StaffBar> bars = columns.stream()
                .map(column -> StaffBar.of(List.of(column), StaffBar.BarLine.NONE))
                .toList();
        check(StaffMusic.of(Phrase.typed(what), signature, bars), what);
    }

    private static void check(StaffMusic music, String what) throws Exception {
        PrintedSvg svg = new PrintedSvg(StaffSvg.file(music, Reader.ENGLISH));
        heights(svg, music, what);
        nothingTouches(svg, what);
        ledgers(svg, music, what);
        onPaper(svg, what);
        assertEquals(
                expectedNotes(music),
                svg.all("note").stream().map(PrintedSvg.Thing::pitch).sorted().toList(),
                what);
        assertEquals(expectedAccidentals(music), accidentals(svg), what);
    }

    /** The top lines of the staves: every fifth line, each system with one staff or two. */
    private static List<Double> tops(PrintedSvg svg) {
        List<Double> lines = svg.all("staff-line").stream()
                .map(line -> line.box().getCenterY())
                .toList();
        return IntStream.range(0, lines.size() / 5)
                .mapToObj(i -> lines.get(5 * i))
                .toList();
    }

    private static void heights(PrintedSvg svg, StaffMusic music, String what) {
        for (PrintedSvg.Thing thing : svg.things) {
            if (!thing.is("note") && !thing.is("accidental")) {
                continue;
            }
            int letters = Pitch.parse(thing.pitch()).staffPosition();
            List<Double> tops = tops(svg);
            boolean found = IntStream.range(0, tops.size())
                    .map(staff -> (int) Math.round((music.isGrand() && staff % 2 == 1 ? BASS_TOP : TREBLE_TOP)
                            - 2 * (thing.origin()[1] - tops.get(staff))))
                    .anyMatch(position -> position == letters);
            assertTrue(found, what + ": " + thing);
        }
    }

    /** Heads a second apart share the width of the stem between them. */
    private static void nothingTouches(PrintedSvg svg, String what) {
        List<PrintedSvg.Thing> solid = svg.things.stream()
                .filter(thing -> thing.is("note")
                        || thing.is("accidental")
                        || thing.is("clef")
                        || thing.is("signature")
                        || thing.is("bar-line"))
                .toList();
        for (int i = 0; i < solid.size(); i++) {
            for (int j = i + 1; j < solid.size(); j++) {
                PrintedSvg.Thing one = solid.get(i);
                PrintedSvg.Thing other = solid.get(j);
                boolean inCorners = one.is("accidental") || other.is("accidental");
                double allowed = one.is("note") && other.is("note") ? ChordOnStaff.STEM + 0.001 : 0;
                assertTrue(
                        inCorners ? !inkTouches(one, other) : !one.touches(other, allowed),
                        () -> what + ": " + one + " touches " + other);
            }
        }
        for (PrintedSvg.Thing accidental : svg.all("accidental")) {
            for (PrintedSvg.Thing line : svg.all("ledger")) {
                assertTrue(!inkTouches(accidental, line), () -> what + ": " + accidental + " touches " + line);
            }
            for (PrintedSvg.Thing line : svg.all("stem")) {
                assertTrue(!inkTouches(accidental, line), () -> what + ": " + accidental + " touches " + line);
            }
        }
    }

    /** An accidental may lie in a free corner of another or of a head, or have one in its own, as a flat has at its top. */
    private static boolean inkTouches(PrintedSvg.Thing one, PrintedSvg.Thing other) {
        return one.touches(other, 0) && one.inkTouches(other);
    }

    /** Between a head beyond the staff and the staff there is a line at every other height, through the head's middle. */
    private static void ledgers(PrintedSvg svg, StaffMusic music, String what) {
        Set<String> there = new HashSet<>();
        for (PrintedSvg.Thing note : svg.all("note")) {
            for (double top : tops(svg)) {
                double y = note.origin()[1];
                if (Math.abs(y - top - 2) > 60 || nearest(svg, y, Pitch.parse(note.pitch()), music) != top) {
                    continue;
                }
                for (double line = top - 1; line >= y - 0.01; line--) {
                    there.add(needed(svg, note, line, what));
                }
                for (double line = top + 5; line <= y + 0.01; line++) {
                    there.add(needed(svg, note, line, what));
                }
            }
        }
        assertEquals(svg.all("ledger").size(), there.size(), what + ": ledger lines that nothing needs");
    }

    /** The top of the staff on which a note of this name is where it is. */
    private static double nearest(PrintedSvg svg, double y, Pitch pitch, StaffMusic music) {
        List<Double> tops = tops(svg);
        for (int staff = 0; staff < tops.size(); staff++) {
            int top = music.isGrand() && staff % 2 == 1 ? BASS_TOP : TREBLE_TOP;
            if (Math.abs(tops.get(staff) + (top - pitch.staffPosition()) / 2.0 - y) < 0.01) {
                return tops.get(staff);
            }
        }
        return Double.NaN;
    }

    private static String needed(PrintedSvg svg, PrintedSvg.Thing note, double y, String what) {
        return svg.all("ledger").stream()
                .filter(line -> Math.abs(line.box().getCenterY() - y) < 0.01
                        && line.box().getMinX() < note.box().getMinX() - 0.3
                        && line.box().getMaxX() > note.box().getMaxX() + 0.3)
                .map(line -> line.box().toString())
                .findFirst()
                .orElseThrow(() -> new AssertionError(what + ": no line at " + y + " for " + note));
    }

    private static void onPaper(PrintedSvg svg, String what) {
        for (PrintedSvg.Thing thing : svg.things) {
            Rectangle2D box = thing.box();
            boolean inside =
                    box.isEmpty() ? svg.paper.contains(thing.origin()[0], thing.origin()[1]) : svg.paper.contains(box);
            assertTrue(inside, () -> what + ": " + thing + " leaves " + svg.paper);
        }
    }

    private static List<String> expectedNotes(StaffMusic music) {
        List<String> notes = new ArrayList<>();
        for (StaffColumn column : music.columns()) {
            for (int staff = 0; staff < 2; staff++) {
                column.pitches(staff).stream()
                        .sorted(Comparator.comparingInt(Pitch::staffPosition))
                        .forEach(pitch -> notes.add(pitch.toString()));
            }
        }
        return notes.stream().sorted().toList();
    }

    private static List<String> accidentals(PrintedSvg svg) {
        return svg.all("accidental").stream()
                .map(PrintedSvg.Thing::pitch)
                .sorted()
                .toList();
    }

    /** Counted another way: what each line and space says now, as a player reads it from left to right. */
    private static List<String> expectedAccidentals(StaffMusic music) {
        List<String> needed = new ArrayList<>();
        for (int staff = 0; staff < 2; staff++) {
            String[] says = new String[100];
            for (StaffBar bar : music.bars()) {
                for (StaffColumn column : bar.columns()) {
                    reads(column.pitches(staff), music.signature(), says, needed);
                }
                says = bar.end() == StaffBar.BarLine.NONE ? says : new String[100];
            }
        }
        return needed.stream().sorted().toList();
    }

    private static void reads(List<Pitch> notes, int signature, String[] says, List<String> needed) {
        for (Pitch note : notes) {
            String said = says[note.staffPosition()];
            String now = said != null ? said : inKey(note, signature);
            if (isTwice(note, notes) || !now.equals(note.name().toString())) {
                needed.add(note.toString());
            }
        }
        for (Pitch note : notes) {
            says[note.staffPosition()] =
                    isTwice(note, notes) ? "?" : note.name().toString();
        }
    }

    private static boolean isTwice(Pitch note, List<Pitch> notes) {
        return notes.stream()
                        .filter(other -> other.staffPosition() == note.staffPosition())
                        .count()
                > 1;
    }

    /** What the note's letter is called in the major key with this signature. */
    private static String inKey(Pitch note, int signature) {
        Key key = Key.major(NoteName.at(signature));
        return IntStream.rangeClosed(1, 7)
                .mapToObj(key::note)
                .filter(name -> name.letter() == note.name().letter())
                .findFirst()
                .orElseThrow()
                .toString();
    }
}
