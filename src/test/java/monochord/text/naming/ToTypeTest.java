package monochord.text.naming;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import monochord.shell.verb.Verbs;
import monochord.theory.note.NoteNaming;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Examples in the note names of a country. Source of the names: see NoteNaming. */
class ToTypeTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Eb                              | Es                              | Mib
            play F C G Bb in D              | play F C G B in D               | play Fa Do Sol Sib in Re
            show B7/F# --plain              | show H7/Fis --plain             | show Si7/Fa# --plain
            E4:2 D4 B3:1/2                  | E4:2 D4 H3:1/2                  | Mi4:2 Re4 Si3:1/2
            C3, Bb4 G                       | C3, B4 G                        | Do3, Sib4 Sol
            F# minor, bVI V7/V              | Fis minor, bVI V7/V             | Fa# minor, bVI V7/V
            note Try this in the last one.  | note Try this in the last one.  | note Try this in the last one.
            """)
    void namesNotesOnly(String english, String german, String latin) {
        assertEquals(german, ToType.in(english, NoteNaming.GERMAN));
        assertEquals(latin, ToType.in(english, NoteNaming.LATIN));
        assertEquals(english, ToType.in(english, NoteNaming.ENGLISH));
    }

    @Test
    @DisplayName("every example of every verb, typed with other names, means what it means with English ones")
    void everyExampleReadsBack() {
        int read = 0;
        for (NoteNaming naming : List.of(NoteNaming.GERMAN, NoteNaming.LATIN)) {
            for (String example : new Verbs()
                    .all().stream()
                            .flatMap(verb -> verb.usage().examples().stream())
                            .filter(example -> !example.contains("--") && !example.contains(" as "))
                            .toList()) {
                String typed = ToType.in(example, naming);
                assertEquals(example, AsTyped.of(typed, naming).english(), typed);
                read++;
            }
        }
        assertTrue(read > 80, "only " + read);
    }
}
