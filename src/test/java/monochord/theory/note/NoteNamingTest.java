package monochord.theory.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoteNamingTest {
    /**
     * Source: single accidentals, "Welche Tonhöhen und Tonnamen gibt es?" (bernhardt-iner.de), table of is and es; double
     * ones, "Doppelversetzungszeichen" (lehrklaenge.de), and German Wikipedia, "Doppel-b" (2023), for Heses.
     */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(delimiter = '|', textBlock = """
            C   | C
            D   | D
            E   | E
            F   | F
            G   | G
            A   | A
            B   | H
            'C#' | Cis
            'D#' | Dis
            'E#' | Eis
            'F#' | Fis
            'G#' | Gis
            'A#' | Ais
            'B#' | His
            Cb  | Ces
            Db  | Des
            Eb  | Es
            Fb  | Fes
            Gb  | Ges
            Ab  | As
            Bb  | B
            'C##' | Cisis
            'F##' | Fisis
            'G##' | Gisis
            Dbb | Deses
            Ebb | Eses
            Abb | Ases
            Bbb | Heses
            """)
    void hasGermanNames(String english, String german) {
        NoteName name = NoteName.parse(english);
        assertEquals(german, name.write(Signs.MUSIC.with(NoteNaming.GERMAN)));
        assertEquals(german, name.write(Signs.ASCII.with(NoteNaming.GERMAN)));
    }

    /** Common practice, no source. */
    @ParameterizedTest(name = "{0} is {1}, in ASCII {2}")
    @CsvSource(delimiter = '|', textBlock = """
            C   | Do   | Do
            D   | Re   | Re
            E   | Mi   | Mi
            'F#' | Fa♯  | Fa#
            'G##' | Sol𝄪 | Sol##
            Ab  | La♭  | Lab
            Bbb | Si𝄫  | Sibb
            """)
    void hasLatinNames(String english, String latin, String ascii) {
        NoteName name = NoteName.parse(english);
        assertEquals(latin, name.write(Signs.MUSIC.with(NoteNaming.LATIN)));
        assertEquals(ascii, name.write(Signs.ASCII.with(NoteNaming.LATIN)));
    }

    @Test
    @DisplayName("every name of the line is read as it is written, in small letters too, by the longest reading")
    void readsWhatItWrites() {
        int read = 0;
        for (Signs signs : Signs.values()) {
            for (int fifths = -NoteName.FARTHEST + 10; fifths <= NoteName.FARTHEST - 10; fifths++) {
                NoteName name = NoteName.at(fifths);
                String written = name.write(signs);
                for (String text : List.of(written, written.toLowerCase(Locale.ROOT))) {
                    NoteNaming.FoundName found = signs.naming().find(text, 0).get(0);
                    assertEquals(name, found.name(), text);
                    assertEquals(text.length(), found.end(), text);
                    read++;
                }
            }
        }
        assertTrue(read > 2000, "only " + read);
    }

    /** Asas and a letter with a sign are written, too; German Wikipedia, "Doppel-b", and common practice. */
    @ParameterizedTest(name = "{0}: {1} is {2}")
    @CsvSource(delimiter = '|', textBlock = """
            german | Asas | Abb
            german | b    | Bb
            german | h    | B
            german | Bb   | Bb
            german | F♯   | 'F#'
            german | Hb   | Bb
            latin  | ré   | D
            latin  | SOL  | G
            latin  | sib  | Bb
            latin  | Eb   | Eb
            """)
    void readsOtherWritings(String naming, String text, String english) {
        NoteNaming.FoundName found =
                NoteNaming.of(naming).orElseThrow().find(text, 0).get(0);
        assertEquals(english, found.name().toString());
        assertEquals(text.length(), found.end());
    }

    @Test
    void knowsNoOtherNaming() {
        assertEquals(Optional.empty(), NoteNaming.of("klingon"));
        assertEquals(List.of(), NoteNaming.GERMAN.find("", 0));
        assertEquals(List.of(), NoteNaming.GERMAN.find("Q", 0));
    }
}
