package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.shell.playback.Ear;
import monochord.shell.verb.Verbs;
import monochord.sound.Performance;
import monochord.text.Phrase;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole runs: what goes to which stream, with which exit status. */
class CommandLineTest {
    @TempDir
    Path folder;

    private static final String PLAIN_CHORD = """
            A♭maj7  A♭ C E♭ G
            In C major: ♭VImaj7, degrees ♭6 1 ♭3 5; borrowed from C minor (also phrygian,
            harmonic minor).
            """;

    @Test
    void aVerbAnswersOnStandardOutput() {
        assertTrue(Run.of("show Abmaj7").result(0).startsWith(PLAIN_CHORD));
        assertTrue(Run.of("SHOW Abmaj7").result(0).startsWith(PLAIN_CHORD));
    }

    @Test
    void musicNeedsNoVerbAndWordsNoQuotes() {
        assertTrue(Run.of("Abmaj7").result(0).startsWith(PLAIN_CHORD));
        assertEquals(new Run.Outside().run("show IV I in D"), new Run.Outside().run("show", "IV", "I", "in", "D"));
    }

    @Test
    void aLineThatCannotBeReadIsAMessage() {
        assertEquals("""
                "Q" is not a chord: expected a letter from A to G at character 1, found 'Q'.
                Example: Abmaj7
                Form: show CHORD, SCALE, NOTES or PROGRESSION [in KEY] [staff --svg OUT
                [--over]]
                """, Run.of("show Q").message(2));
        assertEquals("""
                "shwo" is neither music nor a word I know.
                Did you mean show?
                """, Run.of("shwo Abmaj7").message(2));
    }

    @Test
    void asJsonAnErrorIsAResult() {
        assertEquals(
                "{\"kind\":\"error\",\"error\":\"\\\"shwo\\\" is neither music nor a word I know.\",\"at\":1}\n",
                Run.of("shwo Abmaj7 --json").result(2));
    }

    @Thorough.Only
    @Test
    void aLineOfJavaIsRun() {
        assertEquals("x = 3\n", Run.of("int x = 3;").result(0));
    }

    @Test
    @DisplayName("the note names of a run are said on the command line, and hold for what is typed and what is told")
    void notesByOtherNames() {
        assertEquals(
                "Yes: B, which is B D F.\n",
                Run.of("ask borrowed-chord of bVI in D --answer B --notes german")
                        .result(0));
        assertEquals(
                "Yes: Si♭, which is Si♭ Re Fa.\n",
                Run.of("--notes latin ask borrowed-chord of bVI in Re --answer si bémol majeur")
                        .result(0));
        assertEquals(
                "Yes: B♭, which is B♭ D F.\n",
                Run.of("ask borrowed-chord of bVI in D --answer Bb, I think").result(0));
        assertEquals("""
                "dutch" are no note names I know.
                Write --notes english, or german or latin.
                """, Run.of("show C --notes dutch").message(2));
    }

    @Test
    void optionsMayStandAnywhere() {
        String plain = Run.of("show Ab --plain --ascii").result(0);
        assertTrue(plain.startsWith("Ab  Ab C Eb\n"), plain);
        assertFalse(plain.contains("──"), plain);
        assertEquals(plain, Run.of("--ascii show --plain Ab").result(0));
        assertEquals(plain, new Run.Outside().run("show Ab --ascii --plain").result(0));
    }

    static Stream<String> verbs() {
        return new Verbs().words().stream();
    }

    @ParameterizedTest
    @MethodSource("verbs")
    void everyVerbTellsItsFormAndItsExamplesWork(String verb) {
        Run help = Run.of(verb + " --help");
        assertEquals(help, Run.of("help " + verb));
        assertTrue(help.result(0).startsWith(verb), help.out());
        help.lines().stream()
                .filter(line -> line.startsWith("  " + verb))
                .map(String::strip)
                .forEach(this::works);
    }

    private void works(String example) {
        Run run = new Run.Outside().inFolder(folder).run(example.split(" "));
        boolean needsFile = example.matches(
                        "(check|open|replay) .*|publish [^0-9].*|answers .+|song [^-].*|learn [a-z].*|mark .*|assign song .*|sheet homework.*")
                || example.contains("--file");
        boolean needsMore = example.matches("(save|song|change) .*");
        int expected = needsFile ? 3 : needsMore ? 1 : 0; // no file is there, nothing was typed, no song is open
        assertEquals(expected, run.status(), example);
        assertTrue(expected > 0 || run.err().isEmpty(), run.err());
    }

    @Test
    void helpAloneListsEveryVerb() {
        String help = Run.of("--help").result(0);
        verbs().forEach(verb -> assertTrue(List.of(help.split("\\s+")).contains(verb), verb));
        assertEquals(help, Run.of("-h").result(0));
        assertTrue(help.startsWith(Run.of("help").result(0)), help);
        assertTrue(Run.of("help ears").result(0).contains("decibel")
                || Run.of("help ears").result(0).contains("dB"));
        assertEquals(
                "Warm up, sit well, and take regular breaks; begin no long practice all at once. See a doctor when"
                        + " worried. So far the student sheet of NASM and PAMA. What follows is common practice, no"
                        + " source. Five minutes off every half hour; shoulders and wrists loose. Stop at pain,"
                        + " tingling or numbness; do not play through it. If it comes back, see a doctor. voice lays"
                        + " out nothing wider than an octave in one hand, unless you say reach 9 or more. Roll or"
                        + " split what does not lie well.",
                Run.of("help hands").result(0).replaceAll("\\s+", " ").strip());
        assertTrue(Run.of("help music").result(0).contains("viiø7"));
        assertEquals(2, Run.of("help motoin").status());
    }

    @Test
    void aWrongAnswerIsStatusOneAndAResult() {
        assertEquals(1, Run.of("ask degree-quality of 3 in Eb --answer major").status());
        assertEquals("", Run.of("ask degree-quality of 3 in Eb --answer major").err());
    }

    @Test
    void whatIsPlayedIsHeardToItsEnd() {
        List<String> heard = new ArrayList<>();
        Ear ear = new Ear() {
            @Override
            public Phrase play(Performance performance) {
                heard.add("play at " + performance.tempo());
                return Phrase.NOTHING;
            }

            @Override
            public void stop() {
                heard.add("stop");
            }

            @Override
            public void listenToTheEnd() {
                heard.add("listen");
            }
        };
        new Run.Outside().hearing(ear).run("play", "C", "at", "99");
        assertEquals(List.of("play at 99", "listen"), heard);
        heard.clear();
        new Run.Outside().hearing(ear).typing("C\nD\n").run("play", "-", "at", "60");
        assertEquals(List.of("play at 60", "listen", "play at 60", "listen"), heard);
        heard.clear();
        new Run.Outside().hearing(ear).typing("show C\nplay at 60\n").run();
        assertEquals(List.of("play at 60", "listen"), heard);
        heard.clear();
        new Run.Outside().hearing(ear).typing("play C at 60\nstop\nquit\n").run();
        assertEquals(List.of("play at 60", "stop", "stop", "listen"), heard);
    }
}
