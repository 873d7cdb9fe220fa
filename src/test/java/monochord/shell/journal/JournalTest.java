package monochord.shell.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.notebook.Exchange;
import monochord.notebook.Notebook;
import monochord.notebook.NotebookReader;
import monochord.notebook.NotebookReading;
import monochord.notebook.Screen;
import monochord.notebook.Start;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.NoteNaming;
import monochord.view.Look;
import monochord.view.NotebookRemark;
import monochord.view.Saying;
import monochord.view.Statement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is typed, answered or noted, what the journal holds is a sound notebook, and so is its draft. */
class JournalTest {
    private static final Path FILE = Path.of("evening.md");
    private static final int CASES = 300;
    private static final List<String> SCRAPS = List.of(
            "show bVI",
            "```",
            "````console",
            "~~~",
            "    ```",
            "> ",
            "- ",
            "1. ",
            "---",
            "===",
            "# A",
            "<script>",
            "<!--",
            "</b>",
            "\\<a",
            "`",
            "[a](b)",
            "[a]: b",
            "▸ x",
            "▹",
            "$ ls",
            "\u001b[2J",
            "\u202e",
            "\u0000",
            "\t",
            "\r",
            "\n",
            "\n\n",
            "  ",
            "A♭",
            "𝄫",
            "&lt;",
            "|",
            "*");

    @TempDir
    private Path home;

    private static Start start() {
        return Start.of(Key.parse("C"), OptionalLong.empty(), new Screen(80, 24), "", NoteNaming.ENGLISH);
    }

    private static Journal journal() {
        return new Journal(JournalTest::start, Look::ofPipe);
    }

    private static String scrap(Random random) {
        return IntStream.range(0, random.nextInt(5))
                .mapToObj(any -> SCRAPS.get(random.nextInt(SCRAPS.size())))
                .collect(Collectors.joining());
    }

    @Test
    void whateverIsNotedIsReadAgainAndSoIsItsDraft() throws IOException {
        for (int seed = 0; seed < CASES; seed++) {
            Random random = new Random(seed);
            Path mine = home.resolve("home" + seed);
            Journal journal = journal();
            journal.keep(new Drafts(mine, () -> 0).drafting());
            List<String> typed = noted(journal, random);
            if (journal.isEmpty()) {
                continue;
            }
            Notebook made = journal.notebook();
            NotebookReading reading = NotebookReader.read(FILE, made.toString());
            assertEquals(List.of(), reading.faults(), made::toString);
            assertEquals(made.toString(), reading.notebook().orElseThrow().toString());
            assertEquals(typed, made.exchanges().stream().map(Exchange::text).toList(), "seed " + seed);
            NotebookReading draft = NotebookReader.read(only(mine));
            assertEquals(List.of(), draft.faults(), made::toString);
            assertEquals(
                    made.toString(),
                    Drafts.asNotebook(draft.notebook().orElseThrow()).toString(),
                    "the draft, seed " + seed);
            journal.leave(true);
        }
    }

    private static List<String> noted(Journal journal, Random random) {
        List<String> typed = new ArrayList<>();
        for (int entry = random.nextInt(7); entry > 0; entry--) {
            String line = scrap(random);
            if (random.nextInt(3) == 0 && !line.isBlank()) {
                assertEquals(Optional.empty(), journal.words(line));
            } else {
                assertEquals(Optional.empty(), journal.note(line, Saying.of(scrap(random) + "x")));
                typed.add(Exchange.of(monochord.text.SafeText.clean(line), "").text());
            }
        }
        return typed;
    }

    private static Path only(Path home) throws IOException {
        try (Stream<Path> files = Files.list(home.resolve("drafts"))) {
            return files.reduce((one, other) -> {
                        throw new AssertionError(one + " and " + other);
                    })
                    .orElseThrow();
        }
    }

    @Test
    void aWordAsideIsNotNoted() {
        Journal journal = journal();
        journal.note("save evening.md", new NotebookRemark(Statement.of(Phrase.of("Saved."))));

        assertTrue(journal.isEmpty());
        assertEquals(0, journal.typed());
    }

    /** Answers of 12,000 characters of three bytes each, as long as a cell of Java can give one. */
    @Test
    void whatIsFullCanStillBeOpened() {
        Journal journal = journal();
        int told = 0;
        for (int i = 0; i < 2100; i++) {
            told += journal.note("C", Saying.of("█".repeat(12_000))).isPresent() ? 1 : 0;
        }

        assertEquals(1, told, "it is said once that the notebook is full");
        NotebookReading reading = NotebookReader.read(FILE, journal.notebook().toString());
        assertEquals(List.of(), reading.faults());
        assertTrue(journal.typed() > 10);
        assertTrue(journal.words("more").isEmpty());
        assertFalse(journal.notebook().toString().contains("more"));
    }

    @Test
    void manyShortLinesAreBoundedByTheReadersBound() {
        Journal journal = journal();
        IntStream.range(0, NotebookReader.MOST_TYPED + 5).forEach(any -> journal.note("C", Saying.of("C")));

        assertEquals(NotebookReader.MOST_TYPED, journal.typed());
        assertEquals(
                List.of(),
                NotebookReader.read(FILE, journal.notebook().toString()).faults());
    }
}
