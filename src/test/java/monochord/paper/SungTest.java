package monochord.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import monochord.song.Section;
import monochord.song.Song;
import monochord.song.SongReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is sung to each note of two bars of three. Source: the ABC standard 2.1, section 5, whose signs these are. */
class SungTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = ';', textBlock = """
            la lo lu li le ly         ; la,lo,lu,li,le,ly
            wa-ter is wide            ; wa-,ter,is,wide,,
            auld__ lang syne          ; auld,,,lang,syne,
            auld _ _ lang syne        ; auld,,,lang,syne,
            * and then                ; ,and,then,,,
            kind- ness yet            ; kind-,ness,yet,,,
            of~the well\\-known one   ; of the,well-known,one,,,
            la | lo lu                ; la,,,lo,lu,
            la lo lu | li             ; la,lo,lu,li,,
            la | _ lu                 ; la,,,,lu,
            """)
    void eachNoteHasItsSyllable(String words, String expected) {
        Song song = SongReader.read(
                "---\ntitle: A\nkey: C\nmetre: 3/4\n---\n\n## A\n\n```tune\nC4 D4 E4 | F4 G4 A4\n```\n\n" + "```words\n"
                        + words + "\n```\n");
        Section section = song.sections().get(0);
        Sung sung = new Sung(section);
        List<String> all = new ArrayList<>();
        for (int note = 0; note < 6; note++) {
            List<?> syllables = sung.next();
            all.add(syllables.isEmpty() ? "" : syllables.get(0).toString());
            if (note == 2) {
                sung.endBar(0);
            }
        }
        assertEquals(expected, String.join(",", all));
    }
}
