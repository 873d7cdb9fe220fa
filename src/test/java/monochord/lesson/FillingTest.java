package monochord.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import monochord.theory.Key;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FillingTest {
    /** Source for scales, signatures and lowered degrees: Open Music Theory, first edition (2014), CC BY-SA 4.0. */
    @ParameterizedTest(name = "in {0}, {1} is {2}")
    @CsvSource(delimiter = '|', textBlock = """
            D  | ${key}                  | D major
            D  | ${tonic}                | D
            D  | ${degree 3}             | F♯
            D  | ${degree b6}            | B♭
            D  | ${degree ♭6}            | B♭
            D  | ${degree #4}            | G♯
            D  | ${scale}                | D E F♯ G A B C♯
            D  | ${scale harmonic minor} | D E F G A B♭ C♯
            D  | ${chord bVI}            | B♭
            D  | ${chord vii°}           | C♯dim
            D  | ${notes bVI}            | B♭ D F
            D  | ${notes I+}             | D F♯ A♯
            D  | ${number bVI}           | ♭6
            D  | ${number vi}            | 6-
            D  | ${signature}            | two sharps, F♯ and C♯
            D  | ${relative}             | B minor
            D  | ${relative chord iv}    | Em
            D  | ${relative degree 7}    | A♯
            D  | ${relative notes V}     | F♯ A♯ C♯
            D  | ${fingers right}        | 1 2 3 1 2 3 4 5
            Db | ${fingers left major}   | 3 2 1 4 3 2 1 3
            Eb | ${fingers left harmonic minor} | 2 1 4 3 2 1 3 2
            D  | ${parallel}             | D minor
            C  | ${signature}            | no sharps or flats
            F  | ${signature}            | one flat, B♭
            Eb | ${signature}            | three flats, B♭, E♭ and A♭
            Db | ${notes bVI}            | B𝄫 D♭ F♭
            Cb | ${degree b7}            | B𝄫
            C# | ${scale}                | C♯ D♯ E♯ F♯ G♯ A♯ B♯
            D  | on ${tonic}: ${notes I} | on D: D F♯ A
            D  | ${Bb}              | B♭
            D  | ${Eb G Bb}         | E♭ G B♭
            D  | ${Bbmaj7 F/A}      | B♭maj7 F/A
            D  | ${D minor}         | D minor
            D  | plan ${text A}          | plan A
            D  | $${tonic}               | $D
            D  | costs $5 {or so}        | costs $5 {or so}
            """)
    void fillsInWhatDependsOnTheKey(String key, String text, String filled) {
        assertEquals(List.of(), Filling.troubles(text));
        assertEquals(filled, new Filling(Key.parse(key)).of(text).toString());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            ${tonik}             |  0 | unknown fill "tonik" | write tonic
            so ${color}          |  3 | unknown fill "color" | write one of key, tonic, degree, scale, chord, notes, number, signature, relative, parallel, fingers, text
            ${degree}            |  0 | the fill degree needs to know which | write for example ${degree b6}
            ${degree b9}         |  0 | "b9" is not a degree: expected a number from 1 to 7 at character 2, found '9' | write for example ${degree b6}
            ${chord X}           |  0 | "X" is not a numeral: expected I to VII or i to vii at character 1, found 'X' | write for example ${chord bVI}
            ${scale harmonic}    |  0 | "harmonic" is not a scale: no scale has this name | write for example ${scale harmonic minor}
            ${F A H}             |  0 | "H" is not a chord: expected a letter from A to G at character 1, found 'H' | write for example Abmaj7
            ${key of D}          |  0 | the fill key takes nothing behind it | write ${key}
            ${relative song}     |  0 | "song" is not a fill: expected another fill behind it | write for example ${relative tonic}
            ${fingers foot}      |  0 | "foot" is not a fill: expected left or right first | write for example ${fingers right}
            ${fingers left dorian} |  0 | "left dorian" is not a fill: no fingers are known here for such a scale | write for example ${fingers right}
            the ${tonic          |  4 | ${ is not closed | write } behind the fill, without another in it
            """)
    void saysWhyATextCannotBeFilledIn(String text, int place, String what, String instead) {
        List<Trouble> troubles = Filling.troubles(text);
        assertEquals(1, troubles.size());
        assertEquals(place, troubles.get(0).place());
        assertEquals(what, troubles.get(0).what().toString());
        assertEquals(instead, troubles.get(0).instead().toString());
        assertEquals(text, new Filling(Key.parse("D")).of(text).toString());
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "${script:javascript:6*7}",
                "${file:UTF-8:pom.xml}",
                "${env:PATH}",
                "${sys:java.version}",
                "${java:version}",
                "${base64Encoder:a}",
                "${base64Decoder:SGk=}",
                "${urlEncoder:a b}",
                "${url:UTF-8:file:///etc/hostname}",
                "${dns:address|localhost}",
                "${date:yyyy}",
                "${const:java.lang.Integer.MAX_VALUE}",
                "${properties:a::b}",
                "${xml:a:b}",
                "${resourceBundle:a:b}",
                "${tonic:-nothing}",
                "${nothing:-${key}",
                "${ tonic}",
                "${TONIC}",
                "${}",
                "${${",
            })
    void looksNothingElseUp(String text) {
        assertEquals(text, new Filling(Key.parse("D")).of(text).toString());
        assertFalse(Filling.troubles(text).isEmpty());
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"${${tonic}}", "${degree ${tonic}}", "${chord ${script:1+1}}", "${${${key}}}"})
    void fillsNothingInsideAFill(String text) {
        assertEquals(text, new Filling(Key.parse("D")).of(text).toString());
        assertFalse(Filling.troubles(text).isEmpty());
    }
}
