package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import monochord.page.naming.InProse;
import monochord.shell.answer.Answer;
import monochord.shell.answer.Look;
import monochord.shell.sitting.Course;
import monochord.shell.sitting.Ear;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.theory.NoteNaming;
import monochord.theory.Signs;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Note names of other countries at the line. */
class NotesElsewhereTest {
    private static final List<String> KEYS = List.of("Bb", "B", "Eb", "A", "F#", "Bm", "Bbm");
    private static final List<String> SENTENCES = List.of(
            "show bVImaj7/3",
            "show Bb7",
            "Bb B Eb",
            "4 1 5 b6 5 1",
            "IV iv I | bVII V7/V V",
            "voice IV iv I",
            "voice I V vi IV spread",
            "recolour 1 4 5 1",
            "recolour 1 6 4 5 under B4 Bb4 A4 G4",
            "fit B4 Bb4 Eb5 over Bb Eb F",
            "motion Bb3 D4 F4 | B3 D4 G4",
            "motion Bb Eb F Bb",
            "after V",
            "after bVI",
            "borrow",
            "borrow bVI",
            "transpose Bb Eb F from Bb to B",
            "name Bb D F Ab",
            "numeral V65/ii",
            "play 4 1 5 1",
            "ask borrowed-chord of bVI",
            "ask scale-spelling",
            "help",
            "lessons",
            "show Qx");

    private static Sitting sitting() {
        return new Sitting(Ear.silent(), () -> 7, Path.of("."), new Course(Run.OUR_LESSONS));
    }

    private static List<String> lines() {
        List<String> lines = new ArrayList<>();
        KEYS.forEach(key -> SENTENCES.forEach(line -> lines.add(
                List.of("help", "lessons", "show Qx", "name Bb D F Ab").contains(line) || line.startsWith("transpose")
                        ? line
                        : line + " in " + key)));
        new Verbs().all().forEach(verb -> lines.addAll(verb.usage().examples()));
        lines.removeIf(line -> line.startsWith("notes")
                || line.contains("--wav")
                || line.contains("--file")
                || line.startsWith("check"));
        return lines;
    }

    @Test
    @DisplayName("every answer has each name once in German, in pictures and in sentences")
    void namesEachNoteOnce() {
        Verbs verbs = new Verbs();
        Look english = new Look(200, Signs.MUSIC, false, false);
        Look german = english.naming(NoteNaming.GERMAN);
        for (Look look : List.of(english, english.asPlain())) {
            for (String line : lines()) {
                Answer answer = new Reading(verbs, sitting()).read(line);
                String expected = InProse.of(bare(answer.text(look).plain()), german.signs());
                assertEquals(
                        expected,
                        bare(answer.text(look.naming(NoteNaming.GERMAN)).plain()),
                        line);
            }
        }
        assertTrue(lines().size() > 200, "only " + lines().size());
    }

    /** Without what is drawn, and however it is set. */
    private static String bare(String text) {
        return text.replaceAll("[─┴█═●↗↘]", " ").replaceAll("\\s+", " ").strip();
    }
}
