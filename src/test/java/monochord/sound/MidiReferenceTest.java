package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import monochord.harmony.MusicText;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.score.Arrangement;
import monochord.score.Pattern;
import monochord.score.Piece;
import monochord.sound.file.MidiFile;
import monochord.theory.Key;
import monochord.theory.ReferenceLibraries;
import org.junit.jupiter.api.Test;

/** Source: {@code midi-file} 1.2.4 (npm, MIT) as reader; the strict walk sees each byte besides. */
class MidiReferenceTest {
    private static final Key KEY = Key.parse("Eb major");

    private static List<Performance> performances() {
        Piece song = Arrangement.piece(MusicText.read("| IV . I | V bVI | V I |", KEY));
        Piece tune = Piece.of(Melody.parse("Bb4 | Eb5:2 D5:1/2 C5:1/2 r:1 |"), Progression.parse("| I V |", KEY));
        List<Performance> all = new ArrayList<>();
        for (Pattern pattern : Pattern.values()) {
            all.add(Directions.USUAL.as(pattern).perform(song, KEY));
            all.add(Directions.USUAL
                    .as(pattern)
                    .inSwing(true)
                    .times(2)
                    .countedIn(true)
                    .perform(tune, KEY));
        }
        all.add(new Comparison(List.of(all.get(0), all.get(2))).inTurn());
        return all;
    }

    private static List<String> notes(Performance performance) {
        long begin = Sequencing.ticks(performance.countIn());
        return NoteEvent.of(performance.score().soundings()).stream()
                .sorted(Comparator.comparingLong(NoteEvent::on)
                        .thenComparingInt(NoteEvent::channel)
                        .thenComparingInt(NoteEvent::note))
                .map(press -> press.channel() + " " + press.note() + " " + (begin + press.on()) + " "
                        + (press.off() - press.on()) + " " + press.velocity())
                .toList();
    }

    @Test
    void anotherReaderFindsTheSameNotesTimesAndWords() throws Exception {
        List<Performance> all = performances();
        List<List<String>> questions = new ArrayList<>();
        for (Performance performance : all) {
            byte[] file = MidiFile.bytes(performance.sequence());
            MidiWalk.through(file);
            questions.add(List.of("midi", HexFormat.of().formatHex(file)));
        }
        List<List<String>> answers = ReferenceLibraries.answers(questions);
        assertEquals(all.size(), answers.size());
        for (int i = 0; i < all.size(); i++) {
            List<String> played = answers.get(i).stream()
                    .filter(line -> line.matches("[0-8] .*"))
                    .toList();
            assertEquals(notes(all.get(i)), played);
            assertTrue(
                    answers.get(i).containsAll(List.of("tempo 714286", "metre 4/4", "key -3 0")),
                    answers.get(i)::toString);
        }
        assertTrue(answers.get(0).containsAll(List.of("text 0 Ab", "text 1280 Eb", "text 1920 Bb", "text 2880 Cb")));
        assertTrue(answers.get(1).contains("9 76 0 60 70"), "the count-in begins with the high click");
    }
}
