package monochord.view.staff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import monochord.Thorough;
import monochord.song.SongMetre;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.theory.note.Beats;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What holds of music with rhythm, read from the finished picture of random bars. The rules: common practice of engraving, no
 * source.
 */
class RhythmLawsTest {
    private static final int BARS = 8;
    private static final StaffEvent.Voice SECOND = new StaffEvent.Voice(0, true);

    static List<Integer> seeds() {
        return IntStream.range(0, 60).boxed().toList();
    }

    /** One voice or two, with rests, dots, tuplets and ties, in 2/4, 3/4, 4/4 and 6/8. */
    private static StaffMusic music(int seed) {
        Random chance = new Random(seed);
        SongMetre metre = SongMetre.parse(List.of("4/4", "3/4", "2/4", "6/8").get(seed % 4));
        boolean two = seed % 3 == 0;
        List<StaffBar> bars = new ArrayList<>();
        for (int i = 0; i < BARS; i++) {
            TreeMap<Beats, List<StaffEvent>> events = new TreeMap<>();
            voice(StaffEvent.Voice.ONLY, two ? 34 : 28, metre, chance, events);
            if (two) {
                voice(SECOND, 28, metre, chance, events);
            }
            List<StaffColumn> columns = new ArrayList<>();
            events.forEach((at, some) -> columns.add(StaffColumn.of(at, some)));
            bars.add(StaffBar.of(columns, i + 1 < BARS ? StaffBar.BarLine.SINGLE : StaffBar.BarLine.FINAL));
        }
        return new StaffMusic(Phrase.of("random"), seed % 15 - 7, Optional.of(metre), List.of(Clef.TREBLE), bars);
    }

    /** Fills a bar; heights go seven letters up from the lowest. */
    private static void voice(
            StaffEvent.Voice voice,
            int lowest,
            SongMetre metre,
            Random chance,
            TreeMap<Beats, List<StaffEvent>> events) {
        Beats now = Beats.ZERO;
        while (now.compareTo(metre.bar()) < 0) {
            Beats end =
                    now.plus(Beats.of(1 + chance.nextInt(6), List.of(1, 2, 2, 4).get(chance.nextInt(4))));
            end = end.compareTo(metre.bar()) > 0 ? metre.bar() : end;
            boolean rest = chance.nextInt(6) == 0;
            int height = lowest + chance.nextInt(8);
            Pitch pitch = new Pitch(NoteName.at(chance.nextInt(7) - 1), 4);
            Pitch placed = new Pitch(pitch.name(), (height - pitch.name().letterStep()) / 7);
            List<RhythmSpelling.Spelled> values = RhythmSpelling.of(now, end, metre);
            for (int i = 0; i < values.size(); i++) {
                NoteLength length = values.get(i).length();
                StaffEvent event =
                        rest ? StaffEvent.rest(voice, length) : StaffEvent.notes(voice, List.of(placed), length);
                boolean tied = !rest && i + 1 < values.size();
                events.computeIfAbsent(values.get(i).at(), at -> new ArrayList<>())
                        .add(tied ? event.held() : event);
            }
            now = end;
        }
    }

    @Thorough.FirstOf(6)
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void holdForRandomBars(int seed) throws Exception {
        StaffMusic music = music(seed);
        PrintedSvg svg = new PrintedSvg(StaffSvg.file(music, Reader.ENGLISH));
        onPaper(svg);
        nothingTouches(svg);
        stemsAreLongEnough(svg);
        beamsLieOnStems(svg);
        long tied = music.columns().stream()
                .flatMap(column -> column.events().stream())
                .filter(StaffEvent::tied)
                .count();
        assertTrue(
                svg.all("tie").size() >= tied,
                tied + " ties, but " + svg.all("tie").size());
        long stemmed = music.columns().stream()
                .flatMap(column -> column.events().stream())
                .filter(StaffEvent::hasStem)
                .count();
        assertEquals(stemmed, svg.all("stem").size());
    }

    private static void onPaper(PrintedSvg svg) {
        for (PrintedSvg.Thing thing : svg.things) {
            assertTrue(thing.box().isEmpty() || svg.paper.contains(thing.box()), () -> thing + " leaves " + svg.paper);
        }
    }

    /** Heads, accidentals, dots and bar lines; two voices may share a head. */
    private static void nothingTouches(PrintedSvg svg) {
        List<PrintedSvg.Thing> solid = svg.things.stream()
                .filter(thing -> thing.is("note") || thing.is("accidental") || thing.is("dot") || thing.is("bar-line"))
                .toList();
        for (int i = 0; i < solid.size(); i++) {
            for (int j = i + 1; j < solid.size(); j++) {
                PrintedSvg.Thing one = solid.get(i);
                PrintedSvg.Thing other = solid.get(j);
                boolean shared = one.meaning().equals(other.meaning())
                        && one.origin()[0] == other.origin()[0]
                        && one.origin()[1] == other.origin()[1];
                assertTrue(
                        shared || !one.touches(other, 0.001) || !one.inkTouches(other),
                        () -> one + " touches " + other);
            }
        }
    }

    private static void stemsAreLongEnough(PrintedSvg svg) {
        for (PrintedSvg.Thing stem : svg.all("stem")) {
            assertTrue(stem.box().getHeight() > 2.4, () -> stem + " is short");
        }
    }

    /** Each beam begins and ends at a stem, but for a stub, which has one end there. */
    private static void beamsLieOnStems(PrintedSvg svg) {
        for (PrintedSvg.Thing beam : svg.all("beam")) {
            long ends = svg.all("stem").stream()
                    .filter(stem -> stem.box()
                            .intersects(
                                    beam.box().getX() - 0.01,
                                    beam.box().getY() - 0.01,
                                    beam.box().getWidth() + 0.02,
                                    beam.box().getHeight() + 0.02))
                    .count();
            assertTrue(ends >= 1, () -> beam + " joins nothing");
        }
    }

    /** Expected values written by hand; common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "4/4, 0, 4, WHOLE",
        "4/4, 0, 3, HALF.",
        "4/4, 1, 3, HALF",
        "4/4, 1, 5/2, QUARTER EIGHTH",
        "4/4, 3/2, 5/2, EIGHTH EIGHTH",
        "4/4, 1/2, 3/2, QUARTER",
        "4/4, 0, 3/2, QUARTER.",
        "3/4, 0, 3, HALF.",
        "6/8, 0, 3, HALF.",
        "6/8, 0, 3/2, QUARTER.",
        "6/8, 1, 2, EIGHTH EIGHTH",
        "4/4, 0, 1/3, EIGHTH3",
        "4/4, 1/3, 1, QUARTER3",
    })
    void aLengthIsSpelledSoThatBeatsAreSeen(String metre, String start, String end, String expected) {
        List<String> values = RhythmSpelling.of(Beats.parse(start), Beats.parse(end), SongMetre.parse(metre)).stream()
                .map(RhythmSpelling.Spelled::length)
                .map(length -> length.value() + ".".repeat(length.dots()) + (length.isInTuplet() ? length.in() : ""))
                .toList();
        assertEquals(expected, String.join(" ", values));
    }

    @Test
    void aTieOverALineEndIsDrawnOnBoth() throws Exception {
        Pitch g = Pitch.parse("G4");
        NoteLength whole = NoteLength.of(NoteValue.WHOLE);
        StaffEvent held =
                StaffEvent.notes(StaffEvent.Voice.ONLY, List.of(g), whole).held();
        StaffEvent last = StaffEvent.notes(StaffEvent.Voice.ONLY, List.of(g), whole);
        StaffMusic music = StaffMusic.barred(
                Phrase.of("tied"),
                0,
                false,
                List.of(
                        StaffBar.of(List.of(StaffColumn.of(Beats.ZERO, List.of(held))), StaffBar.BarLine.SINGLE)
                                .endingLine(),
                        StaffBar.of(List.of(StaffColumn.of(Beats.ZERO, List.of(last))), StaffBar.BarLine.FINAL)));
        PrintedSvg svg = new PrintedSvg(StaffSvg.file(music, Reader.ENGLISH));
        assertEquals(2, svg.all("tie").size());
        assertEquals(10, svg.all("staff-line").size());
    }

    /** Another clef, key and metre within a piece, repeats and endings. */
    @Test
    void changesAndRepeatsAreDrawn() throws Exception {
        StaffColumn note = StaffColumn.of(List.of(Pitch.parse("F#4")), NoteValue.WHOLE);
        StaffBar.Before changes =
                new StaffBar.Before(true, Optional.of(-2), Optional.of(SongMetre.parse("3/4")), Optional.of(Clef.BASS));
        StaffMusic music = StaffMusic.barred(
                Phrase.of("changes"),
                1,
                false,
                List.of(
                        StaffBar.of(List.of(note), StaffBar.BarLine.SINGLE),
                        StaffBar.of(List.of(note), StaffBar.BarLine.REPEAT)
                                .with(changes)
                                .inEnding("1"),
                        StaffBar.of(List.of(note), StaffBar.BarLine.FINAL)
                                .inEnding("2")
                                .named(Phrase.of("Chorus"))));
        PrintedSvg svg = new PrintedSvg(StaffSvg.file(music, Reader.ENGLISH));
        assertEquals(2, svg.all("clef").size());
        assertEquals(3, svg.all("signature").size());
        assertEquals(2, svg.all("metre").size());
        assertEquals(4, svg.all("repeat-dot").size());
        assertEquals(
                2,
                svg.things.stream()
                        .filter(thing -> thing.is("ending") && thing.box().isEmpty())
                        .count());
        assertEquals(2, svg.all("accidental").size(), "a sharp again where the key has none");
        onPaper(svg);
        nothingTouches(svg);
    }
}
