package monochord.shell.verb;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import monochord.shell.sentence.Sentence;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SentenceTest {
    private static final Set<String> SMALL = Set.of("in", "at", "with", "of");
    private static final Set<String> OPTIONS = Set.of("wav", "seed", "answer");

    private static Sentence parse(String text) {
        return Sentence.parse(text, SMALL, OPTIONS);
    }

    /** The parts of a sentence as {@code word@place=text}, the body first. */
    private static String parts(Sentence sentence) {
        Stream<String> clauses = List.of("in", "at", "with", "of").stream()
                .flatMap(word -> sentence.clause(word).stream().map(part -> shown(word, part)));
        Stream<String> options = List.of("wav", "seed", "answer").stream()
                .flatMap(name -> sentence.option(name).stream().map(part -> shown("--" + name, part)));
        return Stream.of(Stream.of(shown("", sentence.body())), clauses, options)
                .flatMap(parts -> parts)
                .collect(Collectors.joining(" ; "));
    }

    private static String shown(String word, Sentence.SentencePart part) {
        return word + "@" + part.place() + "=" + part.text();
    }

    /** Source: our own form of sentences. */
    @ParameterizedTest(name = "<{0}>")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            IV I V in D at 84               | @0=IV I V ; in@10=D ; at@15=84
            IV I V AT 84 In D               | @0=IV I V ; in@16=D ; at@10=84
            in D                            | @0= ; in@3=D
            C in                            | @0=C ; in@4=
            `  C    E  in   F# minor  `     | @2=C    E ; in@15=F# minor
            `C\tin\tD`                      | @0=C ; in@5=D
            C inD                           | @0=C inD
            C with electric piano 1 --wav a b.wav | @0=C ; with@7=electric piano 1 ; --wav@30=a b.wav
            C --wav "my song in D.wav" in D | @0=C ; in@30=D ; --wav@9=my song in D.wav
            `"C in D" in E`                 | @1=C in D ; in@12=E
            "C" "D"                         | @0="C" "D"
            C" in D                         | @0=C" ; in@6=D
            "C in D                         | @0="C ; in@6=D
            interval --answer a fifth in D  | @0=interval ; --answer@18=a fifth in D
            interval --answer D in E --seed 3 | @0=interval ; --seed@32=3 ; --answer@18=D in E
            C -- D                          | @0=C -- D
            C - D                           | @0=C - D
            """)
    void isCutWhereASmallWordOrAnOptionBegins(String text, String expected) {
        assertEquals(expected, parts(parse(text.replace("\\t", "\t"))));
    }

    @Test
    void anEmptySentenceHasAnEmptyBodyAndNothingElse() {
        assertEquals("@0=", parts(parse("")));
        assertTrue(parse("").body().isEmpty());
        assertEquals("", parse("").whole());
    }

    @Test
    void wordsThatTheVerbDoesNotKnowBelongToTheBody() {
        Sentence sentence = Sentence.parse("C in D", Set.of(), Set.of());
        assertEquals("C in D", sentence.body().text());
    }

    @ParameterizedTest(name = "<{0}>")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            C in D in E | 7 | "C in D in E" is not a sentence: "in" stands in it twice. Example: show bVI in D
            C In D IN E | 7 | "C In D IN E" is not a sentence: "in" stands in it twice. Example: show bVI in D
            C --midi x  | 2 | "C --midi x" is not a sentence: there is no option --midi here. Example: show Abmaj7 --plain
            C --        |   |
            --wav a --wav b | 8 | "--wav a --wav b" is not a sentence: "--wav" stands in it twice. Example: show bVI in D
            """)
    void saysWhereItGoesWrong(String text, Integer place, String message) {
        if (place == null) {
            assertEquals("@0=C --", parts(parse(text)));
            return;
        }
        Unreadable unreadable = assertThrows(Unreadable.class, () -> parse(text));
        assertEquals(message, unreadable.getMessage());
        assertEquals(place, unreadable.place());
        assertEquals(text, unreadable.text());
    }

    /** A refused part counts its place from the start of the whole sentence, whatever stands before it. */
    @ParameterizedTest(name = "<{0}> goes wrong at {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            C in H          | 5
            C in   Dx minir | 9
            C in "H"        | 6
            """)
    void aPartTellsItsPlaceInTheSentence(String text, int place) {
        Sentence.SentencePart in = parse(text).clause("in").orElseThrow();
        assertEquals(
                place, assertThrows(Unreadable.class, () -> in.read(Key::parse)).place());
    }
}
