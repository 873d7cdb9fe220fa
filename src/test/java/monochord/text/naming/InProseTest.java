package monochord.text.naming;

import static org.junit.jupiter.api.Assertions.assertEquals;

import monochord.text.StyledText;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Signs;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Source: German names from the source in {@link NoteNaming}; where A is a note was judged by a person, sentence by
 * sentence.
 */
class InProseTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Count up A B C♯ D: D is the fourth.         | Count up A H Cis D: D is the fourth.
            In B♭ major, ♭VI is G♭maj7, or bVI, or b6.  | In B major, ♭VI is Gesmaj7, or bVI, or b6.
            B is the leading note of C, Bm7 its chord.  | H is the leading note of C, Hm7 its chord.
            The bass plays A♭/C and F♯m7♭5/B.           | The bass plays As/C and Fism7♭5/H.
            B♭, E flat, A-flat and B double flat        | B, Es, As and Heses
            C7(♭9,♯11) on B4, D – F♯ – B.               | C7(♭9,♯11) on H4, D – Fis – H.
            Add the song.wav to B.mid; ctrl-B goes on.  | Add the song.wav to B.mid; ctrl-B goes on.
            S to D, the root rises, E♭ stays.           | S to D, the root rises, Es stays.
            expected a letter from A to G at character 2 | expected a letter from A to H at character 2
            """)
    void saysItInGerman(String english, String german) {
        assertEquals(german, InProse.of(english, Signs.MUSIC.with(NoteNaming.GERMAN)));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            A C♯ E is A.                          | La Do♯ Mi is La.
            A is the sixth. A half step down is A♭. | La is the sixth. A half step down is La♭.
            A flat in front of a degree lowers it.  | A flat in front of a degree lowers it.
            A major third up from A is C♯.          | A major third up from La is Do♯.
            A major has three sharps.               | La major has three sharps.
            A minor over C is C E A.                | La minor over Do is Do Mi La.
            A minor chord has a small third.        | A minor chord has a small third.
            A 6 means first inversion. A ♭VI too.   | A 6 means first inversion. A ♭VI too.
            A half B♭ whole C. A half is small.     | La half Si♭ whole Do. A half is small.
            Go on. Do it in G, and then Go is Gdim. | Go on. Do it in Sol, and then Go is Soldim.
            Am7 and Dsus4 in E dorian               | Lam7 and Resus4 in Mi dorian
            1.2  A key and its letters              | 1.2  A key and its letters
            S to D, the root falls; T, S, D: tonic  | S to D, the root falls; T, S, D: tonic
            80 dB(A) all day                        | 80 dB(A) all day
            """)
    void tellsTheArticleFromTheNote(String english, String latin) {
        assertEquals(latin, InProse.of(english, Signs.MUSIC.with(NoteNaming.LATIN)));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            'I    B♭maj7  F♯m  one' | 'I    Bmaj7   Fism  one'
            'I    A♭      E♭   one' | 'I    As      Es   one'
            'F♯  F♯  one'           | 'Fis  Fis  one'
            'F♯  F♯      one'       | 'Fis  Fis    one'
            """)
    void keepsColumns(String english, String german) {
        assertEquals(
                german,
                StyledText.of(english).in(Signs.MUSIC.with(NoteNaming.GERMAN)).plain());
    }
}
