package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.cell.Cell;
import monochord.cell.CellReport;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.text.Phrase;
import monochord.theory.Key;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which lines go to the cell at all. Guard: {@code JavaText.mayBe} in {@code LineReading.isJava}. */
class JavaTextTest {
    private final List<String> touched = new ArrayList<>();

    /** A cell that only notes what is asked of it, and holds a {@code verse}. */
    private final class Untouched implements Cell {
        @Override
        public void ready() {
            touched.add("ready");
        }

        @Override
        public Extent extent(String text) {
            touched.add("extent");
            return Extent.WHOLE;
        }

        @Override
        public CellReport run(String text, Key key) {
            touched.add("run");
            return CellReport.notRun(Phrase.of("ran"));
        }

        @Override
        public Completions complete(String text, int cursor) {
            touched.add("complete");
            return new Completions(0, List.of());
        }

        @Override
        public boolean holds(String name) {
            return name.equals("verse");
        }

        @Override
        public List<String> variables() {
            return List.of("verse");
        }

        @Override
        public Optional<String> typed(String variable) {
            touched.add("typed");
            return Optional.of("F C");
        }

        @Override
        public void stop() {
            // nothing runs
        }

        @Override
        public void close() {
            // nothing is open
        }
    }

    private List<String> touchedBy(String line) {
        Sitting sitting = new Run.Outside().around(null, null, null).sitting();
        sitting.cells().take(new Untouched());
        touched.clear();
        new LineReading(new Verbs(), sitting).read(line);
        return List.copyOf(touched);
    }

    @ParameterizedTest(name = "<{0}>")
    @ValueSource(
            strings = {
                "sho Abmaj7",
                "hello",
                "hello there",
                "plya 4 1 5 b6",
                "Abmja7",
                "Abmaj7(",
                "C7(b9",
                "C7(b9)",
                "C F Hm",
                "| C F | G",
                "IV(add9) I",
                "show (C)",
                "transpose C to",
                "play $verses in D",
                "how do I play a chord?",
                "this is it.",
                "4 1 5 8",
                "1/2",
                "N.C.",
                "quit it",
                "C/E.",
                "-",
                "?",
                "\"",
                "\"C F G\""
            })
    void aSlipStartsNoJvm(String line) {
        assertEquals(List.of(), touchedBy(line));
    }

    @ParameterizedTest(name = "<{0}>")
    @ValueSource(
            strings = {
                "var x = 5",
                "x = 5",
                "int n;",
                "1 + 1",
                "chord(\"C\")",
                "chrod(\"C\")",
                "List.of(1, 2)",
                "verse",
                "verse.chords()",
                "\"a\" + 1",
                "\"a\".length()",
                "for (int i = 0; i < 3; i++) play(\"C\")",
                "record Song(String name) { }",
                "import java.time.*",
                "void rest() { }",
                "C = chord(\"C\")",
                "show(\"C\")",
                "key = key(\"D\")",
                "new int[3]",
                "class Song {",
                "if (true) {"
            })
    void javaGoesToTheCell(String line) {
        List<String> asked = touchedBy(line);
        assertEquals("run", asked.isEmpty() ? "nothing" : asked.get(asked.size() - 1));
    }

    @ParameterizedTest(name = "<{0}>")
    @ValueSource(strings = {"show $verse", "play $verse in D"})
    void aVariableIsLookedUpAndNothingElseAsked(String line) {
        assertEquals(List.of("typed"), touchedBy(line));
    }
}
