package monochord.view.staff;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;

/** Source: accidentals-decided.txt, where each note was decided by an engraving program that shares nothing with ours. */
class AccidentalMemoryTest {
    @Test
    void eachNoteOfFiveThousandBarsAsAnotherDecides() throws IOException {
        List<String> rows = rows();
        assertEquals(5000, rows.size());
        AccidentalMemory memory = new AccidentalMemory(0);
        int signs = 0;
        for (String row : rows) {
            String[] cells = row.split("\t");
            if (Integer.parseInt(cells[0]) != signs) {
                signs = Integer.parseInt(cells[0]);
                memory = new AccidentalMemory(signs);
            }
            memory.barLine();
            List<String> chords = new ArrayList<>();
            for (String chord : cells[1].split(" \\| ")) {
                chords.add(marked(chord, memory));
            }
            assertEquals(cells[1], String.join(" | ", chords), row);
        }
    }

    /** The chord as it was written, with our own marks. */
    private static String marked(String chord, AccidentalMemory memory) {
        List<Pitch> pitches =
                Stream.of(chord.replace("!", "").split(" ")).map(Pitch::parse).toList();
        List<Pitch> needed = memory.needed(pitches);
        return String.join(
                " ",
                pitches.stream()
                        .map(pitch -> pitch + (needed.contains(pitch) ? "!" : ""))
                        .toList());
    }

    private static List<String> rows() throws IOException {
        try (BufferedReader table = new BufferedReader(new InputStreamReader(
                AccidentalMemoryTest.class.getResourceAsStream("accidentals-decided.txt"), StandardCharsets.UTF_8))) {
            return table.lines().filter(line -> !line.startsWith("#")).toList();
        }
    }
}
